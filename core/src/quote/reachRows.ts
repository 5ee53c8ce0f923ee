import { en } from '../en.ts';
import { fixed, ratioText, type Say, temperatureText } from '../format.ts';
import { flowRangeText } from '../materialReach.ts';
import { type Plan, SIDES } from '../plan.ts';
import type { Reach, ReachEnd } from '../reach/figures.ts';
import { countText, coveredText, gapCountText, offText, placeText, ratioInWords, toleranceText } from '../reachWords.ts';
import { NONE } from '../sheet/paperText.ts';
import type { RatioRow } from '../sheet/ratioRows.ts';
import { clip } from '../visible.ts';

const NAME_LENGTH = 28;

/**
 * The reach of a machine in rows: how many ratios, how much of the window, the worst target, the ends of all by volume and weight, the flow.
 *
 * @param plan  the machine with the material that ratios by weight are counted for
 * @source our choice of words
 */
export function reachRows(plan: Plan, reach: Reach, say: Say): readonly RatioRow[] {
  const { worst, widest, smallest, largest, wish, weightFactor } = reach;
  if (worst === null || smallest === null || largest === null)
    return [{ what: en`Reach`, figure: en`none`, against: en`nothing can be built` }];
  const flow = ({ flow_m3_per_s }: ReachEnd) => (flow_m3_per_s === null ? NONE : flowRangeText(flow_m3_per_s.from, flow_m3_per_s.to, say));
  const range = (factor = weightFactor) =>
    factor === null ? en`not known` : en`${fixed(smallest.aPerB.mul(factor), 4, say)} to ${ratioText(largest.aPerB.mul(factor), say)}`;
  const material = clip(plan.material.name, NAME_LENGTH);
  const weighed =
    weightFactor === null
      ? en`for ${material}, whose densities are not given`
      : [en`for ${material}`, ...runningTexts(plan, say)].join(', ');
  return [
    {
      what: en`Different ratios in the window`,
      figure: countText(reach),
      against: en`${gapCountText(reach)} than ${toleranceText(wish.tolerance, say)}`,
    },
    {
      what: en`Within ${toleranceText(wish.tolerance, say)} of one of them`,
      figure: reach.covered === null ? en`not looked for` : en`${coveredText(reach.covered, say)} of the window`,
      against: en`on its log scale`,
    },
    {
      what: en`Worst off-ratio for any target`,
      figure: offText(worst.offRatio, say),
      against: en`at ${ratioInWords(worst.worstTarget, say)}; ${placeText(worst, say)}`,
    },
    ...(widest === null
      ? []
      : [
          {
            what: en`Widest gap between two ratios`,
            figure: offText(widest.offRatio, say),
            against: en`at ${ratioInWords(widest.worstTarget, say)}; ${placeText(widest, say)}`,
          },
        ]),
    {
      what: en`All that can be built, by volume`,
      figure: en`${fixed(smallest.aPerB, 4, say)} to ${ratioText(largest.aPerB, say)}`,
      against: en`A : B as run`,
    },
    { what: en`The same by weight`, figure: range(), against: weighed },
    {
      what: en`Flow of A and B, most B`,
      figure: flow(smallest),
      against: en`at ${ratioInWords(smallest.aPerB, say)}, over what the dial may be set to`,
    },
    { what: en`Flow of A and B, least B`, figure: flow(largest), against: en`at ${ratioInWords(largest.aPerB, say)}` },
  ];
}

const runningTexts = ({ mix: { runAt_K } }: Plan, say: Say): readonly string[] =>
  SIDES.flatMap((side) => (runAt_K[side].known ? [en`${side} at ${temperatureText(runAt_K[side].value, say)}`] : []));
