import { ratioOf } from '../ratio.ts';
import { firstEntries, optionOf, placeOf } from './findOptions.ts';
import { levelSearch } from './levelSearch.ts';
import { partOf } from './pace.ts';
import type { Hooks, Option, Rules, SearchProblem } from './problem.ts';
import type { RatioList } from './ratioLists.ts';
import type { Entry } from './shortlist.ts';
import { buildableSpace, type Space } from './space.ts';
import { DEFAULT_TUNING, type Tuning } from './tuning.ts';
import { comparePlaces, type Place } from './window.ts';
import { workLevels } from './workLevels.ts';

/** How much of the bar the closest option of all is given. */
const SHARE_OF_CLOSEST = 0.2;

/**
 * The trade-off between work and closeness: every option beside which no other costs no more and is placed at least as well
 * (inside the limits before outside, then by |off-ratio|), one of the two strictly. Of options alike in both the first of the ranking.
 *
 * @param problem only choices whose `failed` is 0 take part
 * @param rules   asked for every option that may come into the list
 * @param hooks   progress and cancelling
 * @returns least work first; each places better than the one before it, the last as well as the first of `findOptions`
 * @throws RangeError and Cancelled as `findOptions`
 * @source our choice of method: the space cut by work, each level searched for what beats all that costs less
 * @example tradeOff(problem, { admit: () => 0 }).map(({ ratio }) => ratio.toFraction())  // ['1', '2/3']
 */
export function tradeOff(problem: SearchProblem, rules: Rules, hooks: Hooks = {}, tuning: Tuning = DEFAULT_TUNING): readonly Option[] {
  const space = buildableSpace(problem, tuning);
  const [closest] = space ? firstEntries(space, rules, 1, null, partOf(hooks, 0, SHARE_OF_CLOSEST)) : [];
  const front = space && closest ? frontUpTo(closest, space, rules, partOf(hooks, SHARE_OF_CLOSEST, 1 - SHARE_OF_CLOSEST)) : [];
  hooks.progress?.(1);
  return front.map((entry) => optionOf(problem, entry));
}

/** No level is worth a look once the place of the closest is reached. */
function frontUpTo(closest: Entry, space: Space, rules: Rules, hooks: Hooks): readonly Entry[] {
  const levels = workLevels(space);
  const bestOf = levelSearch(levels, { rules, hooks });
  const before = placeBefore(space);
  const front: Entry[] = [];
  for (const level of levels) {
    const quicker = front.at(-1);
    const entry = bestOf(level, quicker ? before(placeOf(quicker)) : null);
    if (entry) front.push(entry);
    if (entry && comparePlaces(placeOf(entry), placeOf(closest)) === 0) break;
  }
  return front;
}

/**
 * A place that holds all that ranks before the given one, and nothing that ranks with it.
 * Every |e| has a denominator of at most `largest`, so that two which differ are at least 1/(largest * q) apart where q is that of one.
 */
function placeBefore({ factors, constant }: Space): (place: Place) => Place {
  const largest = factors.reduce((product, list) => product * largestDenominator(list), constant.d);
  return ({ inside, off }) => ({ inside, off: off.sub(ratioOf(1n, 2n * largest * off.d)) });
}

function largestDenominator({ exact, log }: RatioList): bigint {
  let largest = 1n;
  for (let g = 0; g < log.length; g++) {
    const [, denominator] = exact(g);
    if (denominator > largest) largest = denominator;
  }
  return largest;
}
