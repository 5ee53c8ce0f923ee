import { type Buying, type BuyingTarget, bestLevel, type LaidBuying, type LaidPlan, type SidePump, type Wheel } from './buying/index.ts';
import { type Exact, exact, pumpJson } from './json.ts';
import { madeJson, mountedJson, ownerJson } from './jsonParts.ts';
import type { Plan } from './plan.ts';
import { ONE, whole } from './ratio.ts';
import { fromSI } from './units.ts';

/** A buying plan as documented JSON; targets are told by the id of their material. */
export function buyingJson(plan: Plan, targets: readonly BuyingTarget[], found: Buying, laid: LaidBuying) {
  const ids = (indexes: readonly number[]) => indexes.flatMap((index) => targets[index]?.plan.material.id ?? []);
  const plans = (list: readonly LaidPlan[]) => list.map((one) => planJson(targets, one, ids));
  const best = bestLevel(found);
  return {
    format: 'ratiowright buying plan',
    version: 1,
    ...ownerJson(plan),
    teethToBuy: plan.choice.teeth,
    mostPurchases: found.mostPurchases,
    targets: targets.map((target) => ({
      material: target.plan.material,
      written: target.plan.mix.sheet.written,
      ratioAPerBByVolume: exact(ONE.div(target.wantedBPerA)),
      limits: {
        written: target.plan.mix.limitsWritten,
        lowOffRatio_percent: exact(target.limits.low.mul(whole(100))),
        highOffRatio_percent: exact(target.limits.high.mul(whole(100))),
      },
    })),
    coverage: found.levels.map(({ purchases, servedCount, noGain, planCount }) => ({ purchases, servedCount, noGain, planCount })),
    allServed: found.fewestPurchases !== null,
    neverServed: ids(found.unserved),
    fewest: { purchases: best.purchases, planCount: best.planCount, plans: plans(laid.fewest) },
    currency: plan.currency,
    cheapest: found.cheapest && {
      price: exact(whole(found.cheapest.price).div(whole(100))),
      planCount: found.cheapest.planCount,
      morePlans: found.cheapest.more,
      provenUpTo: found.cheapest.provenUpTo,
      plans: plans(laid.cheapest),
    },
  };
}

function planJson(
  targets: readonly BuyingTarget[],
  { purchases, pumps, served, options }: LaidPlan,
  ids: (indexes: readonly number[]) => string[],
) {
  return {
    buy: purchases.map(({ wheel, quantity, alone, lost }) => ({
      kind: wheel.kind,
      size: wheel.size,
      teeth: wheel.teeth,
      bore_mm: boreJson(wheel),
      quantity,
      addsAlone: ids(alone),
      lostWithoutOne: ids(lost),
    })),
    buyPumps: (pumps ?? []).map(({ alone, lost, ...bought }) => ({
      ...sidePumpJson(bought),
      addsAlone: ids(alone),
      lostWithoutOne: ids(lost),
    })),
    serves: ids(served),
    options: options.flatMap((option, index) => {
      const target = targets[index];
      if (target === undefined) return [];
      return { material: target.plan.material.id, option: option && optionJson(target.plan, option) };
    }),
  };
}

export const sidePumpJson = ({ side, pump }: SidePump) => ({ side, pump: pumpJson(pump) });

export const boreJson = ({ bore_m }: Wheel): Exact | null => (bore_m.known ? exact(fromSI('length', bore_m.value, 'mm')) : null);

function optionJson(plan: Plan, { mounted, bPerA, offRatio, inside, partsChanged }: NonNullable<LaidPlan['options'][number]>) {
  return {
    inside,
    ...madeJson(bPerA, offRatio),
    partsChanged,
    ...mountedJson(plan, mounted),
  };
}
