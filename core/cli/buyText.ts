import { type Buying, type BuyingTarget, bestLevel, type LaidBuying, type LaidPlan, type Purchase } from '../src/buying/index.ts';
import { priceText } from '../src/buyWords.ts';
import { exactRatioText, lengthText, offRatioText, ratioText, type Say } from '../src/index.ts';
import { float, ONE } from '../src/ratio.ts';
import { table } from './optionTable.ts';

interface Words {
  /** Materials without limits. */
  readonly passedOver: readonly string[];
  readonly priced: boolean;
  readonly say: Say;
}

/** A buying plan as a page of text for a terminal. */
export function buyText(targets: readonly BuyingTarget[], found: Buying, laid: LaidBuying, { passedOver, priced, say }: Words): string {
  const plan = targets[0]?.plan;
  const best = bestLevel(found);
  const lines = [
    `${plan?.machine.name}, ${plan?.rack?.name ?? 'no rack'}${plan?.invented ? ' (invented example)' : ''}`,
    `Up to ${found.mostPurchases} wheels to buy${teethText(plan?.choice.teeth ?? null)}; a material is served where an option inside its limits can be built`,
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
      : `Fewest wheels, whatever they cost: ${best.purchases}${found.fewestPurchases === null ? ', for as many materials as can be served' : ''}`,
    ...planLines(targets, laid.fewest, best.planCount, say),
    ...(priced ? cheapestLines(targets, found, laid.cheapest, say) : []),
  ];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

function cheapestLines(
  targets: readonly BuyingTarget[],
  { cheapest, fewestPurchases, mostPurchases }: Buying,
  laid: readonly LaidPlan[],
  say: Say,
): readonly string[] {
  if (fewestPurchases === null) return ['', 'Lowest price: no plan serves all materials.'];
  if (cheapest === null) return ['', 'Lowest price: every plan that serves all materials needs a wheel that has no price.'];
  const price = priceText(cheapest.price, targets[0]?.plan.currency ?? null, say);
  return ['', `Lowest price of all plans of up to ${mostPurchases} wheels: ${price}`, ...planLines(targets, laid, cheapest.planCount, say)];
}

function planLines(targets: readonly BuyingTarget[], plans: readonly LaidPlan[], planCount: number, say: Say): readonly string[] {
  const left = planCount - plans.length;
  return [
    ...plans.flatMap((plan, index) => [
      `Plan ${index + 1}`,
      ...plan.purchases.map((purchase) => `  buy ${purchaseText(targets, purchase, say)}`),
      ...table(targets.map((target, place) => optionRow(target, plan.options[place] ?? null, say))),
    ]),
    ...(left > 0 ? [`${left} more equal plans are left out here.`] : []),
  ];
}

function purchaseText(targets: readonly BuyingTarget[], { wheel, quantity, alone, lost }: Purchase, say: Say): string {
  const bore = wheel.bore_m.known ? `bore ${lengthText(float(wheel.bore_m.value), say, 2)}` : 'bore not given';
  const gain = alone.length === 0 ? 'alone adds nothing' : `alone adds ${names(targets, alone)}`;
  return `${quantity} of ${wheel.size}, ${wheel.teeth} teeth, ${bore}: ${gain}; without it ${names(targets, lost)} would be lost`;
}

function optionRow({ plan }: BuyingTarget, option: LaidPlan['options'][number], say: Say): readonly string[] {
  const name = `  ${plan.material.name}`;
  if (option === null) return [name, 'nothing can be built'];
  return [
    name,
    option.mounted.teeth.map(({ driver, driven }) => `${driver} to ${driven}`).join(', '),
    exactRatioText(ONE.div(option.bPerA)),
    offRatioText(option.offRatio, say, 3),
    option.inside ? 'inside' : 'outside',
    `${option.partsChanged} ${option.partsChanged === 1 ? 'part' : 'parts'} to change`,
  ];
}

const names = (targets: readonly BuyingTarget[], indexes: readonly number[]): string =>
  indexes.map((index) => targets[index]?.plan.material.name).join(', ');

const teethText = (teeth: { readonly from: number; readonly to: number } | null): string =>
  teeth === null ? ', of the teeth that each slot takes' : ` of ${teeth.from} to ${teeth.to} teeth`;
