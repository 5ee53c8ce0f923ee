import { en } from '../src/en.ts';
import { percentText } from '../src/format.ts';
import { exactRatioText, fixed, type Plan, ratioText, type Say } from '../src/index.ts';
import { buildOf } from '../src/layOut.ts';
import { flowText } from '../src/materialReach.ts';
import { mountedText } from '../src/mountedWords.ts';
import type { Fraction } from '../src/ratio.ts';
import { KEPT_GAPS, LISTED_RATIOS, type Reach, type ReachEnd, type ReachGap } from '../src/reach/figures.ts';
import { reachOf } from '../src/reach/reach.ts';
import { reachJson } from '../src/reachJson.ts';
import { countText } from '../src/reachWords.ts';
import { amountText } from '../src/shown.ts';
import type { Call } from './flags.ts';
import { table } from './optionTable.ts';
import type { Window } from './windowFlag.ts';

const SHOWN_GAPS = 12;
const BINS = 40;

/** What the machine can make of the targets in the window; served where none of them lies beyond the tolerance. */
export function reachAnswer(plan: Plan, window: Window, call: Call) {
  const reach = reachOf(plan, { ...window, bins: BINS });
  const gaps = reach.gaps.slice(0, call.rows ?? (call.json ? KEPT_GAPS : SHOWN_GAPS));
  const moreGaps = reach.moreGaps === null ? null : reach.moreGaps + reach.gaps.length - gaps.length;
  const shown = { ...reach, gaps, moreGaps };
  const served = reach.worst !== null && reach.worst.offRatio.compare(window.tolerance) <= 0;
  const lines = [...linesOf(plan, shown, call.say), ...(call.ratios ? ratioLines(plan, shown, call.say) : [])];
  return { lines, json: () => reachJson(plan, shown), served };
}

const percent = (share: Fraction, say: Say): string => percentText(share, say, 3);

function linesOf(plan: Plan, reach: Reach, say: Say): readonly string[] {
  const { wish, smallest, largest, worst, widest, weightFactor } = reach;
  const wanted = en`${exactRatioText(wish.low)} to ${exactRatioText(wish.high)}`;
  const head = [
    `${plan.machine.name}, ${plan.material.name}${plan.invented ? en` (invented example)` : ''}`,
    en`Reach, A to B by volume as run; window ${wanted}, tolerance ${percent(wish.tolerance, say)}`,
    weightFactor === null
      ? en`By weight: not known, a density is not given.`
      : en`By weight: times ${fixed(weightFactor, 4, say)}, at the densities as run`,
    '',
  ];
  if (smallest === null || largest === null || worst === null) return [...head, en`Nothing can be built.`];
  const covered =
    reach.covered === null
      ? en`not counted, the tolerance is too fine`
      : en`${fixed(100 * reach.covered, 2, say)} % of the window, by logarithm`;
  return [
    ...head,
    row(en`smallest of all`, endText(smallest, say)),
    row(en`largest of all`, endText(largest, say)),
    row(en`in the window`, countText(reach)),
    row(en`within tolerance`, covered),
    row(en`worst target`, en`${exactRatioText(worst.worstTarget)}, ${percent(worst.offRatio, say)} off, ${placeText(worst)}`),
    ...(widest === null
      ? []
      : [row(en`widest gap`, en`${placeText(widest)}: ${exactRatioText(widest.worstTarget)} is ${percent(widest.offRatio, say)} off`)]),
    '',
    ...gapLines(reach, say),
  ];
}

const row = (what: string, figure: string): string => what.padEnd(18) + figure;

function endText({ aPerB, flow_m3_per_s: flow }: ReachEnd, say: Say): string {
  const flows = flow === null ? en`no usable dial` : en`${amountText(flow.from, 'flow', say)} to ${amountText(flow.to, 'flow', say)}`;
  return en`${exactRatioText(aPerB)} = ${ratioText(aPerB, say)}, A and B together ${flows}`;
}

function placeText({ low, high }: ReachGap): string {
  if (low && high) return en`${exactRatioText(low)} to ${exactRatioText(high)}`;
  return low
    ? en`above the largest, ${exactRatioText(low)}`
    : high
      ? en`below the smallest, ${exactRatioText(high)}`
      : en`nothing can be built`;
}

function gapLines({ gaps, moreGaps, distinct }: Reach, say: Say): readonly string[] {
  if (gaps.length === 0)
    return [distinct === null && moreGaps === null ? en`Gaps were not counted.` : en`No gap is wider than the tolerance.`];
  const rows = gaps.map((gap, index) => [
    String(index + 1),
    gap.low ? exactRatioText(gap.low) : '-',
    gap.high ? exactRatioText(gap.high) : '-',
    ratioText(gap.worstTarget, say),
    percent(gap.offRatio, say),
  ]);
  const more = moreGaps === null || moreGaps === 0 ? [] : [en`and ${moreGaps} more`];
  return [...table([['', en`gap from`, en`to`, en`worst target`, en`off`], ...rows]), ...more];
}

/** Every ratio of the window with what is mounted for it first, and what then flows. */
function ratioLines(plan: Plan, { ratios, weightFactor }: Reach, say: Say): readonly string[] {
  if (ratios === null) return ['', en`The ratios are more than ${LISTED_RATIOS}, too many to list: ask for a narrower window.`];
  const rows = ratios.map(({ aPerB, first, partsChanged }) => [
    exactRatioText(aPerB),
    ratioText(aPerB, say),
    weightFactor === null ? '-' : ratioText(aPerB.mul(weightFactor), say),
    mountedText(plan, first),
    String(partsChanged),
    flowText(plan, buildOf(plan, first), say),
  ]);
  return ['', ...table([[en`A : B by volume`, '', en`by weight`, en`teeth`, en`parts`, en`flow of A and B`], ...rows])];
}
