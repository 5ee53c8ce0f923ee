import { budgetOf, type Verdict } from './budget.ts';
import { en } from './en.ts';
import { flowOf } from './flow.ts';
import { exactRatioText, fixed, offRatioText, ratioText, type Say, signedRangeText } from './format.ts';
import { layOption, type Mounted } from './layOut.ts';
import { mountedText } from './mountedWords.ts';
import { insideWord, worstRangeText } from './optionWords.ts';
import type { Build, Plan } from './plan.ts';
import { type Fraction, float, ONE } from './ratio.ts';
import { amountText } from './shown.ts';

/** One material of the shop on the machine, worded: what it wants, and the best that can be built for it. */
export interface MaterialReach {
  readonly id: string;
  readonly name: string;
  /** By volume as run. */
  readonly wantedAPerB: Fraction;
  readonly wanted: string;
  readonly limits: string;
  /** Null where nothing can be built. */
  readonly best: BestReach | null;
}

export interface BestReach {
  readonly aPerB: Fraction;
  readonly ratio: string;
  readonly offRatio: string;
  readonly inside: boolean | null;
  /** Of the off-ratio budget; null where the material has no limits. */
  readonly verdict: Verdict | null;
  /** Both ends of its worst case; null where nothing of it is given. */
  readonly worstCase: string | null;
  /** What that worst case lacks, as a sentence names it. */
  readonly notGiven: readonly string[];
  /** Stage by stage, and pumps that are not fitted now. */
  readonly teeth: string;
  readonly changed: number;
  /** Of both sides, over what the dial may be set to. */
  readonly flow: string;
}

/**
 * What a machine can do for one material, in words for a table.
 *
 * @param best  the first option of the search; null where nothing can be built
 * @source our choice of words
 * @example materialReach(E12 on Bench 1 of the demo, 23 driving 25 teeth, say).best?.offRatio  // '0.07 % B-lean'
 */
export function materialReach(plan: Plan, best: Mounted | null, say: Say): MaterialReach {
  const wantedAPerB = ONE.div(plan.mix.wantedBPerA);
  const { limits } = plan.mix;
  return {
    id: plan.material.id,
    name: plan.material.name,
    wantedAPerB,
    wanted: ratioText(wantedAPerB, say),
    limits: limits === null ? en`not given` : signedRangeText(limits.low, limits.high, say),
    best: best === null ? null : bestReach(plan, best, say),
  };
}

function bestReach(plan: Plan, mounted: Mounted, say: Say): BestReach {
  const option = layOption(plan, mounted, say);
  const aPerB = ONE.div(option.bPerA);
  const budget = budgetOf(plan, option);
  const slip = budget.slipNotEstimated.map((side) => en`the slip of pump ${side}`);
  return {
    aPerB,
    ratio: aPerB.d === 1n ? `${aPerB.n} : 1` : `${exactRatioText(aPerB)} = ${fixed(aPerB, 4, say)}`,
    offRatio: offRatioText(option.offRatio, say),
    inside: option.inside,
    verdict: budget.verdict,
    worstCase: budget.contributions.length === 0 ? null : worstRangeText(budget, say),
    notGiven: [...budget.lacking.map(({ what }) => what), ...slip],
    teeth: mountedText(plan, mounted),
    changed: option.changed,
    flow: flowText(plan, option, say),
  };
}

/**
 * Flow of both sides of a build over what the dial may be set to.
 *
 * @source as `flowOf`; our choice of words
 * @example flowText(E12 on Bench 1 of the demo, 23 driving 25 teeth, say)  // '315.4 to 1576.8 cc/min'
 */
export function flowText(plan: Plan, build: Build, say: Say): string {
  const { ends } = flowOf(plan, build);
  return ends === null ? en`none` : flowRangeText(ends.from.total.value, ends.to.total.value, say);
}

/**
 * From one flow to another, the unit once.
 *
 * @source our choice
 * @example flowRangeText(least, most, say)  // '315.4 to 1576.8 cc/min'
 */
export function flowRangeText(from: Fraction, to: Fraction, say: Say): string {
  const [low = '', high] = [from, to].map((flow) => amountText(flow, 'flow', say));
  const [number, unit] = low.split('\u00A0');
  return en`${unit !== undefined && high?.endsWith(`\u00A0${unit}`) === true ? number : low} to ${high}`;
}

/** A flag of the rule: name, off-ratio of the best option, and whether that is inside. */
export function flagWords({ name, best }: MaterialReach): string {
  if (best === null) return en`${name}: nothing can be built`;
  const inside = insideWord(best.inside);
  return `${name}, ${best.offRatio}${inside === null ? '' : `, ${inside}`}`;
}

/** The limits of a material as ratios on the rule, A per B; the most B is the low end. */
export function limitsOnRule({ mix: { wantedBPerA, limits } }: Plan): { readonly low: number; readonly high: number } | null {
  if (limits === null) return null;
  const lean = wantedBPerA.mul(ONE.add(limits.low));
  return { low: 1 / float(wantedBPerA.mul(ONE.add(limits.high))), high: lean.n === 0n ? Number.POSITIVE_INFINITY : 1 / float(lean) };
}
