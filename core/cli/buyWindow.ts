import { planWindowLevels, type RatioWindow, type WindowBuying, type WindowLevels } from '../src/buying/index.ts';
import { boreText, pumpText, shortText, wheelText } from '../src/buyWords.ts';
import { en } from '../src/en.ts';
import { percentText } from '../src/format.ts';
import { type Plan, ratioText, type Say } from '../src/index.ts';
import { ONE } from '../src/ratio.ts';
import { windowBuyingJson } from '../src/windowBuyingJson.ts';
import type { Call } from './flags.ts';
import { table } from './optionTable.ts';
import { withProgress } from './progress.ts';
import type { Window } from './windowFlag.ts';

/** The window said in B per A, as machines are computed. */
export const windowOf = ({ low, high, tolerance }: Window): RatioWindow => ({ low: ONE.div(high), high: ONE.div(low), tolerance });

/** More wanted ratios are not spelled out on a terminal. */
const SPELLED = 12;

interface Wish {
  readonly teeth: Plan['choice']['teeth'];
  readonly mostPurchases: number;
  readonly pumps: boolean;
}

/** Which parts to buy so that every ratio of a window can be built within a tolerance, and what each number of parts leaves at worst. */
export function buyWindow(plan: Plan, window: RatioWindow, wish: Wish, call: Call): { readonly text: string; readonly allServed: boolean } {
  const found = withProgress(process.stderr, en`planning`, (hooks) => planWindowLevels(plan, window, wish, hooks));
  const text = call.json
    ? `${JSON.stringify(windowBuyingJson(plan, window, found), null, 2)}\n`
    : windowText(plan, window, found, { ...wish, say: call.say });
  return { text, allServed: found.within.fewestPurchases !== null };
}

function windowText(
  plan: Plan,
  window: RatioWindow,
  { levels, within }: WindowLevels,
  { pumps, mostPurchases, say }: Wish & { readonly say: Say },
): string {
  const ratio = (bPerA: RatioWindow['low']) => ratioText(ONE.div(bPerA), say);

  const short = shortText(within.mostPurchases, mostPurchases, pumps);
  const lines = [
    `${plan.machine.name}, ${plan.rack?.name ?? en`no rack`}${plan.invented ? en` (invented example)` : ''}`,
    en`Every ratio A to B by volume from ${ratio(window.high)} to ${ratio(window.low)} within ${percentText(window.tolerance, say)} of B per A`,
    ...(pumps ? [en`Each pump that a side may carry and that is not fitted is one part to buy.`] : []),
    '',
    ...table([
      [en`to buy`, en`least worst off-ratio`, en`left at`, en`plans`, en`the first`],
      ...levels.map((level) => [
        String(level.purchases),
        level.offRatio === null ? en`nothing can be built` : percentText(level.offRatio, say, 3),
        level.offRatio === null ? '' : ratio(level.worstTarget),
        level.noGain ? en`no gain` : level.more ? en`at least ${level.planCount}` : String(level.planCount),
        planTexts(level, say)[0] ?? '',
      ]),
    ]),
    ...(short === null ? [] : ['', short]),
    '',
    ...fewestLines(within, pumps, ratio, say),
  ];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

function fewestLines(within: WindowBuying, pumps: boolean, ratio: (bPerA: RatioWindow['low']) => string, say: Say): readonly string[] {
  const { fewestPurchases, more, mostPurchases, proofRatios } = within;
  if (fewestPurchases === 0) return [en`Nothing need be bought.`];
  const proof =
    proofRatios.length <= SPELLED
      ? proofRatios.map(ratio).join(', ')
      : en`${proofRatios.slice(0, SPELLED).map(ratio).join(', ')} and ${proofRatios.length - SPELLED} more, which --json tells`;
  const most = pumps ? en`No plan of up to ${mostPurchases} parts does.` : en`No plan of up to ${mostPurchases} wheels does.`;
  const fewest = pumps ? en`Fewest parts: ${fewestPurchases}` : en`Fewest wheels: ${fewestPurchases}`;
  return [
    ...(fewestPurchases === null ? [most] : [fewest, ...planTexts(within, say).map((plan) => `  ${plan}`)]),
    ...(more ? [en`There may be further equal plans.`] : []),
    fewestPurchases === null ? en`They cannot serve all of these: ${proof}.` : en`Fewer cannot serve all of these: ${proof}.`,
  ];
}

const planTexts = ({ plans, planPumps }: Pick<WindowBuying, 'plans' | 'planPumps'>, say: Say): readonly string[] =>
  plans.map((wheels, index) =>
    [
      ...wheels.map((wheel) => `${wheelText(wheel)}, ${boreText(wheel, say)}`),
      ...(planPumps[index] ?? []).map((pump) => pumpText(pump, say)),
    ].join(' + '),
  );
