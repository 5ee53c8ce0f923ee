import { exact } from './json.ts';
import { madeJson, mountedJson } from './jsonParts.ts';
import { asSheetCounts } from './madeRatio.ts';
import type { NearRatio } from './nearRatios.ts';
import type { Plan } from './plan.ts';
import { type Fraction, ONE } from './ratio.ts';

/** What can be built near a tried ratio, as documented JSON. */
export function nearRatiosJson(plan: Plan, tried: { readonly written: string; readonly bPerA: Fraction }, near: readonly NearRatio[]) {
  return {
    format: 'ratiowright near ratios',
    version: 1,
    shop: { name: plan.shop, inventedExample: plan.invented },
    machine: plan.machine,
    material: plan.material,
    rack: plan.rack,
    tried: {
      written: tried.written,
      basis: plan.mix.sheet.basis,
      ratioAPerBByVolume: exact(ONE.div(tried.bPerA)),
      ratioBPerAByVolume: exact(tried.bPerA),
    },
    ratios: near.map(({ bPerA, offRatio, inside, first, partsChanged }) => ({
      ...madeJson(bPerA, offRatio),
      partsBPer100A: { basis: plan.mix.sheet.basis, ...exact(asSheetCounts(plan, bPerA)) },
      inside,
      partsChanged,
      ...mountedJson(plan, first),
    })),
  };
}
