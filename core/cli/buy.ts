import { type BuyingTarget, type BuyingWish, layBuying, planBuying, pricesOf, targetOf } from '../src/buying/index.ts';
import { buyingJson } from '../src/buyingJson.ts';
import { en } from '../src/en.ts';
import { type Finding, type Outcome, resolve, type ShopFile } from '../src/index.ts';
import { type Plan, SIDES } from '../src/plan.ts';
import { quoted } from '../src/visible.ts';
import { buyText } from './buyText.ts';
import { buyWindow, windowOf } from './buyWindow.ts';
import type { Call } from './flags.ts';
import { priceOf } from './prices.ts';
import { withProgress } from './progress.ts';
import type { Window } from './windowFlag.ts';

const SHOWN_PLANS = 5;

/** Which wheels to buy for the materials of a file, or for a window of ratios; or all that stands against asking. */
export function buy(file: ShopFile, call: Call): Outcome<{ readonly text: string; readonly allServed: boolean }> {
  return call.window === null ? buyForMaterials(file, call) : buyForWindow(file, call.window, call);
}

const materialsOf = (file: ShopFile, call: Call): readonly string[] => [...new Set(call.materials ?? file.materials.map(({ id }) => id))];

const planFor = (file: ShopFile, call: Call, material: string): Outcome<Plan> =>
  resolve(file, { ...call.selection, material, purchases: call.mostPurchases }, call.say);

// a pump that is not fitted is a part like a wheel
const wishOf = (plan: Plan, call: Call) => ({
  teeth: plan.choice.teeth,
  mostPurchases: call.mostPurchases,
  pumps: call.selection.anyPump === true,
});

/** A window asks nothing of a material: the first that is complete gives the plan, with limits or without. */
function buyForWindow(file: ShopFile, window: Window, call: Call): ReturnType<typeof buy> {
  const outcomes = materialsOf(file, call).map((material) => planFor(file, call, material));
  const resolved = outcomes.find(({ ok }) => ok) ?? outcomes[0] ?? planFor(file, call, '');
  if (!resolved.ok) return resolved;
  const plan = resolved.value;
  const value = buyWindow(plan, windowOf(window), wishOf(plan, call), call);
  return strangePump(plan, call) ?? { ok: true, value, findings: [] };
}

function buyForMaterials(file: ShopFile, call: Call): ReturnType<typeof buy> {
  const wanted = targetsFor(file, call);
  if (!wanted.ok) return wanted;
  const { targets, passedOver } = wanted.value;
  const [{ plan }] = targets;
  const strange = strangePump(plan, call);
  if (strange !== null) return strange;
  const { prices, pumpPrices } = call;
  const wish = wishOf(plan, call);
  // what is asked for goes before what the file says
  const priced = prices === null ? pricesOf(plan) : ({ teeth }: { readonly teeth: number }) => priceOf(prices, teeth);
  const asked: BuyingWish = {
    ...wish,
    ...(priced !== undefined && { priceOf: priced }),
    ...(pumpPrices !== null && { pumpPriceOf: ({ pump }) => pumpPrices.get(pump.id) ?? null }),
  };
  const found = withProgress(process.stderr, en`planning`, (hooks) => planBuying(targets, asked, hooks));
  const laid = withProgress(process.stderr, en`laying out`, (hooks) => layBuying(targets, found, call.rows ?? SHOWN_PLANS, hooks));
  const text = call.json
    ? `${JSON.stringify(buyingJson(plan, targets, found, laid), null, 2)}\n`
    : buyText(targets, found, laid, {
        passedOver,
        most: wish.mostPurchases,
        priced: priced !== undefined,
        pumps: wish.pumps,
        say: call.say,
      });
  return { ok: true, value: { text, allServed: found.fewestPurchases !== null }, findings: [] };
}

interface Wanted {
  readonly targets: readonly [BuyingTarget, ...BuyingTarget[]];
  /** Names of materials without limits that were not asked for by name. */
  readonly passedOver: readonly string[];
}

function targetsFor(file: ShopFile, call: Call): Outcome<Wanted> {
  const targets: BuyingTarget[] = [];
  const problems: Finding[] = [];
  const passedOver: string[] = [];
  for (const material of materialsOf(file, call)) {
    const resolved = planFor(file, call, material);
    const target = resolved.ok ? targetOf(resolved.value) : null;
    if (!resolved.ok) problems.push(...resolved.findings);
    else if (target !== null) targets.push(target);
    else if (call.materials === null) passedOver.push(resolved.value.material.name);
    else problems.push(problem(en`--materials: ${material} has no limits, so nothing could be called within reach.`));
  }
  const [fault, ...faults] = problems.filter((one, index) => problems.findIndex(({ what }) => what === one.what) === index);
  if (fault !== undefined) return { ok: false, findings: [fault, ...faults] };
  const [first, ...others] = targets;
  if (first === undefined)
    return { ok: false, findings: [problem(en`No material of the file has limits, so nothing could be called within reach.`)] };
  return { ok: true, value: { targets: [first, ...others], passedOver }, findings: [] };
}

/** A price for a pump that the machine does not have; null where there is none. */
function strangePump({ machine, sides }: Plan, { pumpPrices }: Call) {
  const isKnown = (id: string) => SIDES.some((side) => sides[side].pumps.some((pump) => pump.id === id));
  const unknown = [...(pumpPrices?.keys() ?? [])].find((id) => !isKnown(id));
  if (unknown === undefined) return null;
  return { ok: false, findings: [problem(en`--pump-prices: ${machine.name} has no pump with the id ${quoted(unknown)}.`)] } as const;
}

const problem = (what: string): Finding => ({
  check: 'buy.targets',
  severity: 'blocks',
  where: [],
  what,
  figure: null,
  limit: null,
  source: en`the command line`,
  missing: false,
});
