import type { Plan } from '../../../core/src/plan.ts';
import { exactText, type Fraction, ratioOf } from '../../../core/src/ratio.ts';
import type { Reach, ReachWish } from '../../../core/src/reach/figures.ts';
import { reachable } from '../../../core/src/reach/reach.ts';
import type { Hooks } from '../../../core/src/search/index.ts';
import { reachPlan } from '../reachShop.ts';
import type { Row } from '../report.ts';
import { figure } from '../table.ts';
import { median, timed } from '../timing.ts';
import { type Entry, noLonger } from './entry.ts';

const TIMES = { quick: 3, full: 7 } as const;
/** Wide enough for some thousand ratios, few enough to be listed with their options. */
const LOW = ratioOf(2, 1);
const HIGH = ratioOf(215, 100);

/** What the Reach page asks of a machine with every check across its stages, and again while its window is dragged. */
export const reachMachine: Entry = {
  name: 'reach-machine',
  run: ({ form }) => {
    const times = TIMES[form.name];
    const [two, three] = [reachPlan(2), reachPlan(3)];
    const ms: Record<'listed' | 'first' | 'moved' | 'swept' | 'again', number[]> = {
      listed: [],
      first: [],
      moved: [],
      swept: [],
      again: [],
    };
    const apart: string[] = [];
    let kept = 0;
    let progress = 0;
    const hooks: Hooks = {
      progress: () => {
        progress += 1;
      },
    };
    for (let i = 0; i < times; i++) {
      const listed = timed(() => reachable(two));
      const first = timed(() => listed.value.within(windowAt(0)));
      const moved = timed(() => listed.value.within(windowAt(1)));
      const swept = timed(() => {
        const machine = reachable(three, hooks);
        return { machine, reach: machine.within(ONE_TO_FIVE, hooks) };
      });
      const again = timed(() => swept.value.machine.within({ ...ONE_TO_FIVE, high: ratioOf(11, 2) }));
      ms.listed.push(listed.ms);
      ms.first.push(first.ms);
      ms.moved.push(moved.ms);
      ms.swept.push(swept.ms);
      ms.again.push(again.ms);
      kept = moved.value.ratios?.length ?? 0;
      if (i === 0) apart.push(...differing(two, moved.value));
    }
    const row = (name: string, plan: Plan, taken: readonly number[], note = ''): Row => ({
      name,
      raw: 40 ** (2 * plan.stages.length),
      median_ms: median(taken),
      max_ms: Math.max(...taken),
      loops: null,
      twin: null,
      memory_MB: null,
      note,
    });
    const first = row('40^4 machine, window of 2:1 to 2.15:1 with its options', two, ms.first);
    const moved = row('40^4 machine, the same moved by a tenth', two, ms.moved, `${kept} ratios`);
    const swept = row(
      '40^6 machine, from nothing to the worst target of 1:1 to 5:1',
      three,
      ms.swept,
      `progress told ${figure(progress / times)} times`,
    );
    return {
      rows: [
        row('40^4 machine, every ratio that its checks let through', two, ms.listed),
        first,
        moved,
        swept,
        row('40^6 machine, worst target of the next window', three, ms.again),
      ],
      claims: [noLonger(`${moved.name}, over the first`, { ...moved, note: '' }, first, 1 / 2)],
      differences: apart,
    };
  },
};

const wishFor = (low: Fraction, high: Fraction): ReachWish => ({ low, high, tolerance: ratioOf(1, 50), bins: 120 });
const ONE_TO_FIVE = wishFor(ratioOf(1, 1), ratioOf(5, 1));

/** The window after so many moves by a tenth of its width. */
function windowAt(moves: number): ReachWish {
  const by = HIGH.sub(LOW).mul(ratioOf(moves, 10));
  return wishFor(LOW.add(by), HIGH.add(by));
}

/** A window that was moved to must show what it shows where nothing was asked before. */
function differing(plan: Plan, moved: Reach): readonly string[] {
  const textOf = ({ ratios, worst }: Reach): string =>
    JSON.stringify([ratios?.map(({ aPerB, first }) => [exactText(aPerB), first]), worst && exactText(worst.offRatio)]);
  return textOf(reachable(plan).within(windowAt(1))) === textOf(moved) ? [] : ['40^4 machine: a moved window shows other ratios'];
}
