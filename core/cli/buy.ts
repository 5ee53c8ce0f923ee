import { type BuyingTarget, layBuying, planBuying, pricesOf, targetOf } from '../src/buying/index.ts';
import { buyingJson } from '../src/buyingJson.ts';
import { type Finding, type Outcome, resolve, type ShopFile } from '../src/index.ts';
import { SIDES } from '../src/plan.ts';
import { quoted } from '../src/visible.ts';
import { buyText } from './buyText.ts';
import { buyWindow, windowOf } from './buyWindow.ts';
import type { Call } from './flags.ts';
import { priceOf } from './prices.ts';

const SHOWN_PLANS = 5;

/** Which wheels to buy for the materials of a file; or all that stands against asking. */
export function buy(file: ShopFile, call: Call): Outcome<{ readonly text: string; readonly allServed: boolean }> {
  const targets: BuyingTarget[] = [];
  const problems: Finding[] = [];
  const passedOver: string[] = [];
  for (const material of new Set(call.materials ?? file.materials.map(({ id }) => id))) {
    const selection = { ...call.selection, material, purchases: call.mostPurchases };
    const resolved = resolve(file, selection, call.say);
    if (!resolved.ok) {
      problems.push(...resolved.findings);
      continue;
    }
    const target = targetOf(resolved.value);
    if (target !== null) targets.push(target);
    else if (call.materials === null) passedOver.push(resolved.value.material.name);
    else problems.push(problem(`--materials: ${material} has no limits, so nothing could be called within reach.`));
  }
  const different = problems.filter((one, index) => problems.findIndex(({ what }) => what === one.what) === index);
  const [first, ...others] = different;
  if (first !== undefined) return { ok: false, findings: [first, ...others] };
  const plan = targets[0]?.plan;
  if (plan === undefined)
    return { ok: false, findings: [problem('No material of the file has limits, so nothing could be called within reach.')] };
  // a pump that is not fitted is a part like a wheel
  const wish = { teeth: plan.choice.teeth, mostPurchases: call.mostPurchases, pumps: call.selection.anyPump === true };
  const unknown = [...(call.pumpPrices ?? new Map<string, number>()).keys()].find((id) =>
    SIDES.every((side) => plan.sides[side].pumps.every((pump) => pump.id !== id)),
  );
  if (unknown !== undefined)
    return { ok: false, findings: [problem(`--pump-prices: ${plan.machine.name} has no pump with the id ${quoted(unknown)}.`)] };
  if (call.window !== null) return { ok: true, value: buyWindow(plan, windowOf(call.window), wish, call), findings: [] };
  const { prices, pumpPrices } = call;
  // what is asked for goes before what the file says
  const priced = prices === null ? pricesOf(plan) : ({ teeth }: { readonly teeth: number }) => priceOf(prices, teeth);
  const found = planBuying(targets, {
    ...wish,
    ...(priced !== undefined && { priceOf: priced }),
    ...(pumpPrices !== null && { pumpPriceOf: ({ pump }) => pumpPrices.get(pump.id) ?? null }),
  });
  const laid = layBuying(targets, found, call.rows ?? SHOWN_PLANS);
  const text = call.json
    ? `${JSON.stringify(buyingJson(plan, targets, found, laid), null, 2)}\n`
    : buyText(targets, found, laid, { passedOver, priced: priced !== undefined, pumps: wish.pumps, say: call.say });
  return { ok: true, value: { text, allServed: found.fewestPurchases !== null }, findings: [] };
}

const problem = (what: string): Finding => ({
  check: 'buy.targets',
  severity: 'blocks',
  where: [],
  what,
  figure: null,
  limit: null,
  source: 'the command line',
  missing: false,
});
