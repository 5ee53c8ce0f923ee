"""The search as somebody would write it in an afternoon: every train, exact fractions, the best few.

python3 plain.py SIZES STAGES TARGET KEEP FITTED...   for example: python3 plain.py 20 2 28193/10000 100 12/20 25/17

Tooth counts run from 9. Prints one line of JSON: seconds, and the best trains, driver and driven stage by stage.
"""

import heapq
import itertools
import json
import sys
import time
from fractions import Fraction


def search(sizes, stages, target, keep, fitted):
    def rank(train):
        ratio = Fraction(1)
        for driver, driven in zip(train[::2], train[1::2]):
            ratio *= Fraction(driver, driven)
        changed = sum(new != old for new, old in zip(train, fitted))
        return abs(ratio / target - 1), changed, train

    teeth = range(9, 9 + sizes)
    return heapq.nsmallest(keep, map(rank, itertools.product(teeth, repeat=2 * stages)))


def main():
    sizes, stages, target, keep, *fitted = sys.argv[1:]
    wheels = [int(teeth) for pair in fitted for teeth in pair.split("/")]
    started = time.perf_counter()
    best = search(int(sizes), int(stages), Fraction(target), int(keep), wheels)
    seconds = time.perf_counter() - started
    print(json.dumps({"seconds": seconds, "rows": [[str(off), changed, *train] for off, changed, train in best]}))


main()
