import { type Buying, type BuyingTarget, bestLevel, type LaidBuying, type LaidPlan } from '../src/buying/index.ts';
import { boreText, gainText, priceText, pumpText, shortText, wheelsOf, wheelsText } from '../src/buyWords.ts';
import { en, plural } from '../src/en.ts';
import { exactRatioText, offRatioText, ratioText, type Say } from '../src/index.ts';
import { mountedText } from '../src/mountedWords.ts';
import { insideWord } from '../src/optionWords.ts';
import { ONE } from '../src/ratio.ts';
import { table } from './optionTable.ts';

interface Words {
  /** Materials without limits. */
  readonly passedOver: readonly string[];
  /** As many were asked for. */
  readonly most: number;
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
  { passedOver, most, priced, pumps, say }: Words,
): string {
  const plan = targets[0]?.plan;
  const best = bestLevel(found);
  const short = found.fewestPurchases === null ? shortText(found.mostPurchases, most, pumps) : null;
  const lines = [
    `${plan?.machine.name}, ${plan?.rack?.name ?? en`no rack`}${plan?.invented ? en` (invented example)` : ''}`,
    en`${toBuy(found.mostPurchases, plan?.choice.teeth ?? null, pumps)}; a material is served where an option inside its limits can be built`,
    ...(pumps ? [en`Each pump that a side may carry and that is not fitted is one part to buy.`] : []),
    ...passedOver.map((name) => en`${name} has no limits and is passed over.`),
    '',
    ...table([
      [en`material`, en`A : B by volume`, en`limits`],
      ...targets.map(({ plan: { material, mix }, wantedBPerA }) => [
        material.name,
        ratioText(ONE.div(wantedBPerA), say),
        mix.limitsWritten ?? '',
      ]),
    ]),
    '',
    ...table([
      [en`to buy`, en`served`, en`plans`],
      ...found.levels.map(({ purchases, servedCount, noGain, planCount }) => [
        String(purchases),
        en`${servedCount} of ${targets.length}`,
        noGain ? en`no gain` : String(planCount),
      ]),
    ]),
    ...(short === null ? [] : ['', short]),
    ...(found.unserved.length === 0 ? [] : ['', en`Served by no such plan: ${names(targets, found.unserved)}.`]),
    '',
    best.servedCount === 0
      ? en`Nothing is served; with what is at hand:`
      : best.purchases === 0
        ? en`Nothing need be bought for what can be served.`
        : fewest(best.purchases, found.fewestPurchases !== null, pumps),
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
        ? en`Lowest price: no plan was found that serves all materials.`
        : en`Lowest price: every plan that serves all materials needs a wheel that has no price.`;
    return ['', why];
  }
  const price = priceText(cheapest.price, targets[0]?.plan.currency ?? null, say);
  return [
    '',
    cheapest.provenUpTo === null
      ? en`Lowest price: ${price}, however many parts it takes`
      : en`Lowest price found: ${price}, and no plan of up to ${cheapest.provenUpTo} parts is cheaper`,
    ...planLines(targets, laid, cheapest.planCount, say),
    ...(cheapest.more ? [en`There may be further equal plans.`] : []),
  ];
}

function planLines(targets: readonly BuyingTarget[], plans: readonly LaidPlan[], planCount: number, say: Say): readonly string[] {
  const left = planCount - plans.length;
  const all = targets.map(({ plan }) => plan.material.name);
  return [
    ...plans.flatMap((plan, index) => [
      en`Plan ${index + 1}`,
      ...plan.purchases.map((one) => `  ${en`buy ${wheelsText(wheelsOf([one]))}, ${boreText(one.wheel, say)}: ${gainText(one, all)}`}`),
      ...(plan.pumps ?? []).map((pump) => `  ${en`buy ${pumpText(pump, say)}: ${gainText({ ...pump, quantity: 1 }, all)}`}`),
      ...table(targets.map((target, place) => optionRow(target, plan.options[place] ?? null, say))),
    ]),
    ...(left > 0 ? [en`${left} more equal plans are left out here.`] : []),
  ];
}

function optionRow({ plan }: BuyingTarget, option: LaidPlan['options'][number], say: Say): readonly string[] {
  const name = `  ${plan.material.name}`;
  if (option === null) return [name, en`nothing can be built`];
  return [
    name,
    mountedText(plan, option.mounted),
    exactRatioText(ONE.div(option.bPerA)),
    offRatioText(option.offRatio, say, 3),
    insideWord(option.inside) ?? '',
    plural(option.partsChanged)`${option.partsChanged} part to change|${option.partsChanged} parts to change`,
  ];
}

const names = (targets: readonly BuyingTarget[], indexes: readonly number[]): string =>
  indexes.map((index) => targets[index]?.plan.material.name).join(', ');

function fewest(count: number, all: boolean, pumps: boolean): string {
  if (all) return pumps ? en`Fewest parts, whatever they cost: ${count}` : en`Fewest wheels, whatever they cost: ${count}`;
  return pumps
    ? en`Fewest parts, whatever they cost: ${count}, for as many materials as can be served`
    : en`Fewest wheels, whatever they cost: ${count}, for as many materials as can be served`;
}

function toBuy(most: number, teeth: { readonly from: number; readonly to: number } | null, pumps: boolean): string {
  if (teeth === null)
    return pumps
      ? en`Up to ${most} parts to buy, wheels of the teeth that each slot takes`
      : en`Up to ${most} wheels to buy, of the teeth that each slot takes`;
  return pumps
    ? en`Up to ${most} parts to buy, wheels of ${teeth.from} to ${teeth.to} teeth`
    : en`Up to ${most} wheels to buy of ${teeth.from} to ${teeth.to} teeth`;
}
