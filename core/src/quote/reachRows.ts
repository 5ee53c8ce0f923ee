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
  if (worst === null || smallest === null || largest === null) return [{ what: 'Reach', figure: 'none', against: 'nothing can be built' }];
  const flow = ({ flow_m3_per_s }: ReachEnd) => (flow_m3_per_s === null ? NONE : flowRangeText(flow_m3_per_s.from, flow_m3_per_s.to, say));
  const range = (factor = weightFactor) =>
    factor === null ? 'not known' : `${fixed(smallest.aPerB.mul(factor), 4, say)} to ${ratioText(largest.aPerB.mul(factor), say)}`;
  const weighed = `for ${clip(plan.material.name, NAME_LENGTH)}${weightFactor === null ? ', whose densities are not given' : runningText(plan, say)}`;
  return [
    {
      what: 'Different ratios in the window',
      figure: countText(reach),
      against: `${gapCountText(reach)} than ${toleranceText(wish.tolerance, say)}`,
    },
    {
      what: `Within ${toleranceText(wish.tolerance, say)} of one of them`,
      figure: reach.covered === null ? 'not looked for' : `${coveredText(reach.covered, say)} of the window`,
      against: 'on its log scale',
    },
    {
      what: 'Worst off-ratio for any target',
      figure: offText(worst.offRatio, say),
      against: `at ${ratioInWords(worst.worstTarget, say)}; ${placeText(worst, say)}`,
    },
    ...(widest === null
      ? []
      : [
          {
            what: 'Widest gap between two ratios',
            figure: offText(widest.offRatio, say),
            against: `at ${ratioInWords(widest.worstTarget, say)}; ${placeText(widest, say)}`,
          },
        ]),
    {
      what: 'All that can be built, by volume',
      figure: `${fixed(smallest.aPerB, 4, say)} to ${ratioText(largest.aPerB, say)}`,
      against: 'A : B as run',
    },
    { what: 'The same by weight', figure: range(), against: weighed },
    {
      what: 'Flow of A and B, most B',
      figure: flow(smallest),
      against: `at ${ratioInWords(smallest.aPerB, say)}, over what the dial may be set to`,
    },
    { what: 'Flow of A and B, least B', figure: flow(largest), against: `at ${ratioInWords(largest.aPerB, say)}` },
  ];
}

function runningText({ mix: { runAt_K } }: Plan, say: Say): string {
  const at = SIDES.flatMap((side) => (runAt_K[side].known ? [`${side} at ${temperatureText(runAt_K[side].value, say)}`] : []));
  return at.length === 0 ? '' : `, ${at.join(', ')}`;
}
