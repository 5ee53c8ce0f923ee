import type { Choices } from '../choices.ts';
import { flowOf } from '../flow.ts';
import type { Plan } from '../plan.ts';
import { quickChoices } from '../quick/quickChoices.ts';
import { type Fraction, ONE } from '../ratio.ts';
import { extremes, type Hooks, listReach, type Option, type ReachList, reachWithin, sweepReach } from '../search/index.ts';
import { gapInAPerB, windowInBPerA } from './aPerB.ts';
import { KEPT_GAPS, type Reach, type ReachEnd, type ReachRatio, type ReachWish } from './figures.ts';
import { listedIn } from './listed.ts';

/** A machine with its rack, ready for one window after another. */
export interface Reachable {
  /** @throws RangeError on a window that holds nothing, or a tolerance or number of bins that is none; Cancelled when asked to stop */
  readonly within: (wish: ReachWish, hooks?: Hooks) => Reach;
}

/**
 * Every ratio that a machine can make with what the plan's search may use; worked out once, for any window.
 *
 * @param plan its wanted ratio and limits play no part
 * @throws Cancelled when asked to stop
 * @source the search's own ratios and rules; gaps by the definition beside `gapBetween`
 * @example reachable(Bench 1 of the demo).within({ low: 1, high: 5, tolerance: 2 %, bins: 40 }).distinct  // 191
 */
export function reachable(plan: Plan, hooks: Hooks = {}): Reachable {
  const choices = quickChoices(plan);
  const rules = choices.rules;
  const { problem } = choices;
  const toRatio = (option: Option): ReachRatio => {
    const { A, B } = choices.pumpsOf(option);
    const first = { pumps: { A: A.id, B: B.id }, teeth: choices.teethOf(option) };
    return { aPerB: ONE.div(option.ratio), first, partsChanged: option.changed, purchases: option.purchases };
  };
  const toEnd = (option: Option | null): ReachEnd | null =>
    option && { ...toRatio(option), flow_m3_per_s: flowOfOption(plan, choices, option) };
  const weight = weightFactor(plan);
  const list = listReach(problem, rules, hooks);
  const listed = list && listedIn(list, toRatio);
  const swept = list === null ? sweepReach(problem, rules, hooks) : null;
  const ends = list ? endsOf(list) : extremes(problem, rules, hooks);
  const [smallest, largest] = [toEnd(ends.highest), toEnd(ends.lowest)];
  return {
    within: (wish, more = {}) => {
      const window = windowInBPerA(wish);
      const served = list ? reachWithin(list, window, KEPT_GAPS) : swept?.within(window, KEPT_GAPS, more);
      if (served === undefined) throw new RangeError('reach: too many ratios');
      return {
        wish,
        smallest,
        largest,
        ...(listed?.(wish, more) ?? { distinct: null, ratios: null, perBin: null }),
        worst: served.worst && gapInAPerB(served.worst),
        widest: served.widest && gapInAPerB(served.widest),
        gaps: served.gaps.map(gapInAPerB),
        moreGaps: served.moreGaps,
        covered: served.covered,
        weightFactor: weight,
      };
    },
  };
}

/** Of all ratios the lowest and the highest, B per A. */
interface Ends {
  readonly lowest: Option | null;
  readonly highest: Option | null;
}

const endsOf = ({ log, firstOption }: ReachList): Ends =>
  log.length === 0 ? { lowest: null, highest: null } : { lowest: firstOption(0), highest: firstOption(log.length - 1) };

function flowOfOption(plan: Plan, { pumpsOf, teethOf }: Choices, option: Option): ReachEnd['flow_m3_per_s'] {
  const { ends } = flowOf(plan, { pumps: pumpsOf(option), teeth: teethOf(option) });
  return ends && { from: ends.from.total.value, to: ends.to.total.value };
}

/** The reach of one window, see `reachable`. */
export const reachOf = (plan: Plan, wish: ReachWish, hooks: Hooks = {}): Reach => reachable(plan, hooks).within(wish, hooks);

/** A per B by weight is A per B by volume over the density of B over that of A, both as run. */
function weightFactor({ mix: { densityBOverA } }: Plan): Fraction | null {
  return densityBOverA.known ? ONE.div(densityBOverA.value) : null;
}
