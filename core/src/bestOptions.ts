import { en } from './en.ts';
import { flowOf } from './flow.ts';
import { offRatioText, ratioText, type Say, signedRangeText } from './format.ts';
import { exact } from './json.ts';
import { madeJson, mountedJson } from './jsonParts.ts';
import { layOption, type Mounted, mountedOf } from './layOut.ts';
import { flowRangeText } from './materialReach.ts';
import { mountedText } from './mountedWords.ts';
import type { PlannedOption } from './option.ts';
import { insideWord } from './optionWords.ts';
import type { Plan } from './plan.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import { metricAmount } from './shown.ts';

/** A material of the shop on one machine: its plan with the best that can be built, or what its plan lacks. */
export type Target =
  | { readonly id: string; readonly name: string; readonly plan: Plan; readonly best: Mounted | null }
  | { readonly id: string; readonly name: string; readonly plan: null; readonly missing: readonly string[] };

/** The best option laid out, with the flow of both sides over what the dial may be set to; null where nothing is left of the dial. */
export interface LaidBest {
  readonly option: PlannedOption;
  readonly flow_m3_per_s: { readonly from: Fraction; readonly to: Fraction } | null;
}

export function laidBest(plan: Plan, best: Mounted, say: Say): LaidBest {
  const option = layOption(plan, best, say);
  const { ends } = flowOf(plan, option);
  return { option, flow_m3_per_s: ends && { from: ends.from.total.value, to: ends.to.total.value } };
}

const percent = (share: Fraction) => exact(share.mul(whole(100)));

/** The table of best options as documented JSON, in the order of the targets. */
export function bestOptionsJson(targets: readonly Target[], say: Say) {
  return targets.map((target) => {
    const material = { id: target.id, name: target.name };
    if (target.plan === null) return { material, missing: target.missing, wanted: null, best: null };
    const { mix } = target.plan;
    const limits = mix.limits && { lowOffRatio_percent: percent(mix.limits.low), highOffRatio_percent: percent(mix.limits.high) };
    const { written, basis } = mix.sheet;
    const wanted = { written, basis, ratioAPerBByVolume: exact(ONE.div(mix.wantedBPerA)), limits };
    return { material, missing: [], wanted, best: target.best && bestJson(target.plan, laidBest(target.plan, target.best, say)) };
  });
}

function bestJson(plan: Plan, { option, flow_m3_per_s: flow }: LaidBest) {
  return {
    inside: option.inside,
    ...madeJson(option.bPerA, option.offRatio),
    partsChanged: option.changed,
    purchases: option.purchases,
    ...mountedJson(plan, mountedOf(option)),
    flow: flow && { from: metricAmount(flow.from, 'flow'), to: metricAmount(flow.to, 'flow') },
  };
}

/**
 * The same as lines of cells for a page of text, its head first.
 *
 * @source our choice of words
 */
export function bestOptionLines(targets: readonly Target[], say: Say): readonly (readonly string[])[] {
  const head = [
    '',
    en`wanted by volume`,
    en`limits`,
    en`best option`,
    '',
    en`off-ratio`,
    en`limits`,
    en`teeth`,
    en`parts`,
    en`flow of A and B`,
  ];
  return [
    head,
    ...targets.map((target) => {
      if (target.plan === null) return [target.name, en`not complete`, ...head.slice(2).map(() => '')];
      const { mix } = target.plan;
      const limits = mix.limits === null ? en`not given` : signedRangeText(mix.limits.low, mix.limits.high, say);
      const asked = [target.name, ratioText(ONE.div(mix.wantedBPerA), say), limits];
      if (target.best === null) return [...asked, en`nothing can be built`, ...head.slice(4).map(() => '')];
      const { option, flow_m3_per_s: flow } = laidBest(target.plan, target.best, say);
      const R = ONE.div(option.bPerA);
      return [
        ...asked,
        `${R.n} : ${R.d}`,
        ratioText(R, say),
        offRatioText(option.offRatio, say, 3),
        insideWord(option.inside) ?? '-',
        mountedText(target.plan, target.best),
        String(option.changed),
        flow === null ? en`none` : flowRangeText(flow.from, flow.to, say),
      ];
    }),
  ];
}
