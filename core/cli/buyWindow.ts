import { planWindow, type RatioWindow, type Wheel, type WindowBuying } from '../src/buying/index.ts';
import { fixed, lengthText, type Plan, ratioText, type Say } from '../src/index.ts';
import { exact } from '../src/json.ts';
import { float, ONE, whole } from '../src/ratio.ts';
import { fromSI } from '../src/units.ts';
import type { Call } from './flags.ts';
import type { Window } from './windowFlag.ts';

/** The window said in B per A, as machines are computed. */
export const windowOf = ({ low, high, tolerance }: Window): RatioWindow => ({ low: ONE.div(high), high: ONE.div(low), tolerance });

/** Which wheels to buy so that every ratio of a window can be built within a tolerance. */
export function buyWindow(plan: Plan, window: RatioWindow, call: Call): { readonly text: string; readonly allServed: boolean } {
  const found = planWindow(plan, window, { teeth: plan.choice.teeth, mostPurchases: call.mostPurchases });
  const text = call.json ? `${JSON.stringify(windowJson(plan, window, found), null, 2)}\n` : windowText(plan, window, found, call.say);
  return { text, allServed: found.fewestPurchases !== null };
}

function windowText(plan: Plan, window: RatioWindow, found: WindowBuying, say: Say): string {
  const { fewestPurchases, plans, more, mostPurchases, proofRatios } = found;
  const ratio = (bPerA: RatioWindow['low']) => ratioText(ONE.div(bPerA), say);
  const lines = [
    `${plan.machine.name}, ${plan.rack?.name ?? 'no rack'}${plan.invented ? ' (invented example)' : ''}`,
    `Every ratio A to B by volume from ${ratio(window.high)} to ${ratio(window.low)} within ${fixed(window.tolerance.mul(whole(100)), 2, say)} % of B per A`,
    '',
    ...(fewestPurchases === null
      ? [`No plan of up to ${mostPurchases} wheels does.`]
      : fewestPurchases === 0
        ? ['Nothing need be bought.']
        : [
            `Fewest wheels: ${fewestPurchases}`,
            ...plans.map((wheels) => `  ${wheels.map((wheel) => wheelText(wheel, say)).join(' + ')}`),
            ...(more ? ['There may be further equal plans.'] : []),
          ]),
    ...(fewestPurchases === 0 ? [] : [`Fewer cannot serve all of these: ${proofRatios.map(ratio).join(', ')}.`]),
  ];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

function wheelText({ size, teeth, bore_m }: Wheel, say: Say): string {
  const bore = bore_m.known ? `bore ${lengthText(float(bore_m.value), say, 2)}` : 'bore not given';
  return `${size}, ${teeth} teeth, ${bore}`;
}

/** Documented in DEVELOPERS.md. */
function windowJson(plan: Plan, { low, high, tolerance }: RatioWindow, found: WindowBuying) {
  return {
    format: 'ratiowright buying plan for a window',
    version: 1,
    shop: { name: plan.shop, inventedExample: plan.invented },
    machine: plan.machine,
    rack: plan.rack,
    teethToBuy: plan.choice.teeth,
    mostPurchases: found.mostPurchases,
    window: {
      lowAPerBByVolume: exact(ONE.div(high)),
      highAPerBByVolume: exact(ONE.div(low)),
      tolerance_percent: exact(tolerance.mul(whole(100))),
    },
    fewestPurchases: found.fewestPurchases,
    plans: found.plans.map((wheels) =>
      wheels.map(({ kind, size, teeth, bore_m }) => ({
        kind,
        size,
        teeth,
        bore_mm: bore_m.known ? exact(fromSI('length', bore_m.value, 'mm')) : null,
      })),
    ),
    morePlans: found.more,
    proofAPerBByVolume: found.proofRatios.map((ratio) => exact(ONE.div(ratio))),
  };
}
