import type { RatioWindow, WindowBuying, WindowLevels } from './buying/index.ts';
import { boreJson, sidePumpJson } from './buyingJson.ts';
import { exact } from './json.ts';
import { ownerJson } from './jsonParts.ts';
import type { Plan } from './plan.ts';
import { ONE, whole } from './ratio.ts';

/** The buying plan of a window as documented JSON. */
export function windowBuyingJson(plan: Plan, { low, high, tolerance }: RatioWindow, { levels, within }: WindowLevels) {
  return {
    format: 'ratiowright buying plan for a window',
    version: 1,
    ...ownerJson(plan),
    teethToBuy: plan.choice.teeth,
    mostPurchases: within.mostPurchases,
    window: {
      lowAPerBByVolume: exact(ONE.div(high)),
      highAPerBByVolume: exact(ONE.div(low)),
      tolerance_percent: exact(tolerance.mul(whole(100))),
    },
    levels: levels.map((level) => ({
      purchases: level.purchases,
      leastWorstOffRatio_percent: level.offRatio && exact(level.offRatio.mul(whole(100))),
      worstAPerBByVolume: exact(ONE.div(level.worstTarget)),
      noGain: level.noGain,
      planCount: level.planCount,
      morePlans: level.more,
      plans: plansJson(level),
    })),
    fewestPurchases: within.fewestPurchases,
    plans: plansJson(within),
    morePlans: within.more,
    proofAPerBByVolume: within.proofRatios.map((ratio) => exact(ONE.div(ratio))),
  };
}

const plansJson = ({ plans, planPumps }: Pick<WindowBuying, 'plans' | 'planPumps'>) =>
  plans.map((wheels, index) => [
    ...wheels.map((wheel) => ({ kind: wheel.kind, size: wheel.size, teeth: wheel.teeth, bore_mm: boreJson(wheel) })),
    ...(planPumps[index] ?? []).map(sidePumpJson),
  ]);
