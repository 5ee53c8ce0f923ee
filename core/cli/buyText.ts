import {
  type Buying,
  type BuyingTarget,
  bestLevel,
  type LaidBuying,
  type LaidPlan,
  type Purchase,
  type SidePump,
  type Wheel,
} from '../src/buying/index.ts';
import { priceText } from '../src/buyWords.ts';
import { exactRatioText, lengthText, offRatioText, type Plan, ratioText, type Say } from '../src/index.ts';
import { SIDES } from '../src/plan.ts';
import { float, ONE } from '../src/ratio.ts';
import { amountText } from '../src/shown.ts';
import { table } from './optionTable.ts';

interface Words {
  /** Materials without limits. */
  readonly passedOver: readonly string[];
  readonly priced: boolean;
  /** Whether pumps that are not fitted have to be bought. */
  readonly pumps: boolean;
  readonly say: Say;
}

/** A buying plan as a page of text for a terminal. */
export function buyText(
  targets: readonly BuyingTarget[],
  found: Buying,
  laid: LaidBuying,
  { passedOver, priced, pumps, say }: Words,
): string {
  const plan = targets[0]?.plan;
  const best = bestLevel(found);
  const lines = [
    `${plan?.machine.name}, ${plan?.rack?.name ?? 'no rack'}${plan?.invented ? ' (invented example)' : ''}`,
    `Up to ${found.mostPurchases} ${partsWord(pumps)} to buy${teethText(plan?.choice.teeth ?? null, pumps)}; a material is served where an option inside its limits can be built`,
    ...(pumps ? ['Each pump that a side may carry and that is not fitted is one part to buy.'] : []),
    ...passedOver.map((name) => `${name} has no limits and is passed over.`),
    '',
    ...table([
      ['material', 'A : B by volume', 'limits'],
      ...targets.map(({ plan: { material, mix }, wantedBPerA }) => [
        material.name,
        ratioText(ONE.div(wantedBPerA), say),
        mix.limitsWritten ?? '',
      ]),
    ]),
    '',
    ...table([
      ['to buy', 'served', 'plans'],
      ...found.levels.map(({ purchases, servedCount, noGain, planCount }) => [
        String(purchases),
        `${servedCount} of ${targets.length}`,
        noGain ? 'no gain' : String(planCount),
      ]),
    ]),
    ...(found.unserved.length === 0 ? [] : ['', `Served by no such plan: ${names(targets, found.unserved)}.`]),
    '',
    best.purchases === 0
      ? 'Nothing need be bought for what can be served.'
      : `Fewest ${partsWord(pumps)}, whatever they cost: ${best.purchases}${found.fewestPurchases === null ? ', for as many materials as can be served' : ''}`,
    ...planLines(targets, laid.fewest, best.planCount, say),
    ...(priced ? cheapestLines(targets, found, laid.cheapest, say) : []),
  ];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

function cheapestLines(
  targets: readonly BuyingTarget[],
  { cheapest, fewestPurchases }: Buying,
  laid: readonly LaidPlan[],
  say: Say,
): readonly string[] {
  if (cheapest === null) {
    const why =
      fewestPurchases === null
        ? 'no plan was found that serves all materials'
        : 'every plan that serves all materials needs a wheel that has no price';
    return ['', `Lowest price: ${why}.`];
  }
  const price = priceText(cheapest.price, targets[0]?.plan.currency ?? null, say);
  const among =
    cheapest.provenUpTo === null ? ', however many parts it takes' : `, and no plan of up to ${cheapest.provenUpTo} parts is cheaper`;
  return [
    '',
    `Lowest price${cheapest.provenUpTo === null ? '' : ' found'}: ${price}${among}`,
    ...planLines(targets, laid, cheapest.planCount, say),
    ...(cheapest.more ? ['There may be further equal plans.'] : []),
  ];
}

function planLines(targets: readonly BuyingTarget[], plans: readonly LaidPlan[], planCount: number, say: Say): readonly string[] {
  const left = planCount - plans.length;
  return [
    ...plans.flatMap((plan, index) => [
      `Plan ${index + 1}`,
      ...plan.purchases.map((purchase) => `  buy ${purchaseText(targets, purchase, say)}`),
      ...(plan.pumps ?? []).map((purchase) => `  buy ${pumpText(purchase, say)}: ${gainText(targets, purchase)}`),
      ...table(targets.map((target, place) => optionRow(target, plan.options[place] ?? null, say))),
    ]),
    ...(left > 0 ? [`${left} more equal plans are left out here.`] : []),
  ];
}

function purchaseText(targets: readonly BuyingTarget[], { wheel, quantity, ...gain }: Purchase, say: Say): string {
  return `${quantity} of ${wheelText(wheel, say)}: ${gainText(targets, gain)}`;
}

function gainText(targets: readonly BuyingTarget[], { alone, lost }: Pick<Purchase, 'alone' | 'lost'>): string {
  const adds = alone.length === 0 ? 'alone adds nothing' : `alone adds ${names(targets, alone)}`;
  return `${adds}; without it ${names(targets, lost)} would be lost`;
}

export function wheelText({ size, teeth, bore_m }: Wheel, say: Say): string {
  const bore = bore_m.known ? `bore ${lengthText(float(bore_m.value), say, 2)}` : 'bore not given';
  return `${size}, ${teeth} teeth, ${bore}`;
}

export const pumpText = ({ side, pump }: SidePump, say: Say): string =>
  `pump ${pump.name} for side ${side}, ${amountText(pump.displacement_m3_per_rev, 'displacement', say)}`;

function optionRow({ plan }: BuyingTarget, option: LaidPlan['options'][number], say: Say): readonly string[] {
  const name = `  ${plan.material.name}`;
  if (option === null) return [name, 'nothing can be built'];
  return [
    name,
    option.mounted.teeth.map(({ driver, driven }) => `${driver} to ${driven}`).join(', '),
    ...(severalPumps(plan) ? [`pumps ${option.mounted.pumps.A}, ${option.mounted.pumps.B}`] : []),
    exactRatioText(ONE.div(option.bPerA)),
    offRatioText(option.offRatio, say, 3),
    option.inside ? 'inside' : 'outside',
    `${option.partsChanged} ${option.partsChanged === 1 ? 'part' : 'parts'} to change`,
  ];
}

const severalPumps = ({ choice, sides }: Plan): boolean => choice.anyPump && SIDES.some((side) => sides[side].pumps.length > 1);

const names = (targets: readonly BuyingTarget[], indexes: readonly number[]): string =>
  indexes.map((index) => targets[index]?.plan.material.name).join(', ');

const partsWord = (pumps: boolean): string => (pumps ? 'parts' : 'wheels');

function teethText(teeth: { readonly from: number; readonly to: number } | null, pumps: boolean): string {
  const of = pumps ? ', wheels ' : teeth === null ? ', ' : ' ';
  return teeth === null ? `${of}of the teeth that each slot takes` : `${of}of ${teeth.from} to ${teeth.to} teeth`;
}
