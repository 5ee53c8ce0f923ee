import { exactText, ONE, ratioOf } from '../../../core/src/ratio.ts';
import { type Gap, type ReachWindow, type Rules, type SearchProblem, sweepReach } from '../../../core/src/search/index.ts';
import { paceOf } from '../../../core/src/search/pace.ts';
import { reachSpace } from '../../../core/src/search/reachList.ts';
import { allRatios, MOST_PRODUCTS } from '../../../core/src/search/reachProducts.ts';
import { free } from '../bench.ts';
import { instance, oneOfEach, problemOf } from '../instances.ts';
import { rawCount } from '../nestedLoops.ts';
import type { Row } from '../report.ts';
import { median, timed } from '../timing.ts';
import { type Entry, noLonger } from './entry.ts';

const LISTED = instance(60, 2);
const SWEPT = instance(60, 3);
const WINDOW: ReachWindow = { low: ratioOf(1, 4), high: ratioOf(4, 1), tolerance: ratioOf(1, 50) };
const TIMES = { quick: 3, full: 9 } as const;
const KEEP = 1;

/** The worst of all targets in a window, of ratios too many to list, beside listing those of one stage less. */
export const reach: Entry = {
  name: 'reach',
  run: ({ form }) => {
    const short = problemOf(LISTED, ONE);
    const long = problemOf(SWEPT, ONE);
    const once = oneOfEach(long);
    const times = TIMES[form.name];
    const list = (): unknown => listed(short);
    const any = (): unknown => worstOf(long, free());
    const one = (): unknown => worstOf(long, once);
    const ms: [number[], number[], number[]] = [[], [], []];
    for (const run of [list, any, one]) run();
    // in turn, so that what else the machine does falls on all of them
    for (let i = 0; i < times; i++) for (const [k, run] of [list, any, one].entries()) ms[k]?.push(timed(run).ms);
    const listRow = rowOf(`${LISTED.name}, every ratio listed in order`, short, ms[0]);
    const anyRow = rowOf(`${SWEPT.name}, worst target of 1/4 to 4`, long, ms[1]);
    const onceRow = rowOf(`${SWEPT.name}, the same, quantity 1`, long, ms[2]);
    return {
      rows: [listRow, anyRow, onceRow],
      claims: [
        noLonger(`${anyRow.name}, over ${listRow.name}`, anyRow, listRow, 8),
        noLonger(`${onceRow.name}, over any quantity`, onceRow, anyRow, 1.2),
      ],
      differences: [
        ...(listed(short) === 579_619 ? [] : [`${LISTED.name}: ${listed(short)} ratios, not 579619`]),
        ...unlike('any quantity', worstOf(long, free()), '2.2731e-6'),
        ...unlike('quantity 1', worstOf(long, once), '2.3705e-6'),
      ],
    };
  },
};

/** From the pairs of the rack to all ratios in order, each once. */
function listed(problem: SearchProblem): number {
  const space = reachSpace(problem);
  return (space && allRatios(space, MOST_PRODUCTS, paceOf({})))?.log.length ?? 0;
}

const worstOf = (problem: SearchProblem, rules: Rules): Gap | null => sweepReach(problem, rules)?.within(WINDOW, KEEP).worst ?? null;

/** Five digits found by a separate program. */
const unlike = (what: string, gap: Gap | null, known: string): readonly string[] =>
  gap?.off.valueOf().toExponential(4) === known ? [] : [`${SWEPT.name}, ${what}: ${gap && exactText(gap.off)}, not ${known}`];

const rowOf = (name: string, problem: SearchProblem, times_ms: readonly number[]): Row => ({
  name,
  raw: rawCount(problem),
  median_ms: median(times_ms),
  max_ms: Math.max(...times_ms),
  loops: null,
  twin: null,
  memory_MB: null,
  note: '',
});
