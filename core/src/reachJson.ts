import { flowOf } from './flow.ts';
import { exact } from './json.ts';
import { mountedJson } from './jsonParts.ts';
import { buildOf, type Mounted } from './layOut.ts';
import type { Plan } from './plan.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import type { Reach, ReachGap, ReachRatio } from './reach/figures.ts';
import { metricAmount } from './shown.ts';

/** What a machine can make of the targets in a window, as documented JSON. */
export function reachJson(plan: Plan, reach: Reach) {
  const { wish, weightFactor } = reach;
  const ratio = (aPerB: Fraction) => ({
    ratioAPerBByVolume: exact(aPerB),
    ratioBPerAByVolume: exact(ONE.div(aPerB)),
    ratioAPerBByWeight: weightFactor && exact(aPerB.mul(weightFactor)),
  });
  const gap = ({ low, high, worstTarget, offRatio }: ReachGap) => ({
    low: low && ratio(low),
    high: high && ratio(high),
    worstTarget: ratio(worstTarget),
    offRatio_percent: exact(offRatio.mul(whole(100))),
  });
  const flow = (first: Mounted) => {
    const { ends } = flowOf(plan, buildOf(plan, first));
    return ends && { from: metricAmount(ends.from.total.value, 'flow'), to: metricAmount(ends.to.total.value, 'flow') };
  };
  const mounted = ({ aPerB, first, partsChanged, purchases }: ReachRatio) => ({
    ...ratio(aPerB),
    partsChanged,
    purchases,
    ...mountedJson(plan, first),
    flow: flow(first),
  });
  return {
    format: 'ratiowright reach',
    version: 1,
    shop: { name: plan.shop, inventedExample: plan.invented },
    machine: plan.machine,
    material: plan.material,
    rack: plan.rack,
    window: { low: ratio(wish.low), high: ratio(wish.high) },
    tolerance_percent: exact(wish.tolerance.mul(whole(100))),
    distinctRatios: reach.distinct,
    smallest: reach.smallest && mounted(reach.smallest),
    largest: reach.largest && mounted(reach.largest),
    worst: reach.worst && gap(reach.worst),
    widest: reach.widest && gap(reach.widest),
    gaps: reach.gaps.map(gap),
    moreGaps: reach.moreGaps,
    covered_percent: reach.covered === null ? null : 100 * reach.covered,
    ratiosPerBin: reach.perBin,
    ratios: reach.ratios?.map(mounted) ?? null,
  };
}
