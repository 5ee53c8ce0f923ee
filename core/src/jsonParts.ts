import { exact, senseWord } from './json.ts';
import type { Mounted } from './layOut.ts';
import type { Plan } from './plan.ts';
import { type Fraction, ONE, whole } from './ratio.ts';

// What several documents of JSON say in the same keys.

/** Whose answer it is, where it is not that of one material. */
export const ownerJson = ({ shop, invented, machine, rack }: Plan) => ({
  shop: { name: shop, inventedExample: invented },
  machine,
  rack,
});

/** A ratio that is made, both ways round, and how far off it is. */
export const madeJson = (bPerA: Fraction, offRatio: Fraction) => ({
  ratioAPerBByVolume: exact(ONE.div(bPerA)),
  ratioBPerAByVolume: exact(bPerA),
  offRatio: exact(offRatio),
  offRatio_percent: exact(offRatio.mul(whole(100))),
  sense: senseWord(offRatio),
});

/** Pumps by id, teeth stage by stage. */
export const mountedJson = (plan: Plan, { pumps, teeth }: Mounted) => ({
  pumps,
  stages: teeth.map(({ driver, driven }, index) => ({
    stage: plan.stages[index]?.id ?? null,
    driverTeeth: driver,
    drivenTeeth: driven,
  })),
});
