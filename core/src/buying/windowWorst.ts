import { type Fraction, ratioOf } from '../ratio.ts';
import { type Candidate, findOptions, type Hooks, type Pair, type PumpPair, type SearchProblem, sweepReach } from '../search/index.ts';
import { holdsAll, type Need } from './need.ts';
import type { RatioWindow } from './ratioWindow.ts';
import type { Shop } from './shop.ts';

/** What a plan does for a window. */
export interface WindowWorst {
  /** How far off the worst target is served; null where nothing can be built. */
  readonly offRatio: Fraction | null;
  /** That target. */
  readonly worstTarget: Fraction;
}

/** Served no better than this, a target says nothing of a gap between two ratios. */
const ROUGH = ratioOf(99, 100);

/**
 * Follows a plan through the window.
 *
 * @param tolerance what is off by more is of interest; null: all
 * @param asked     whether the rules across the stages are asked: without them it may look better than it is, and is sooner told
 * @source the ratios of the search and their gaps
 */
export function windowWorst(
  shop: Shop,
  need: Need,
  window: Omit<RatioWindow, 'tolerance'>,
  { tolerance, asked, hooks }: { readonly tolerance: Fraction | null; readonly asked: boolean; readonly hooks: Hooks },
): WindowWorst {
  const { choices, needs } = shop;
  const { problem, original } = atHand(shop, need);
  // a stage that stays as it is and fails a check stands against every set of pumps
  if (problem.pumps.length === 0) return { offRatio: null, worstTarget: window.low };
  const admit = (candidate: Candidate): number | null => {
    const own = original(candidate);
    const fits = needs.of(own, () => choices.teethOf(own)).some((wanted) => holdsAll(need, wanted));
    return fits && (!asked || choices.runs(own)) ? 0 : null;
  };
  const { low, high } = window;
  if (low.equals(high)) {
    const [option] = findOptions({ ...problem, wanted: low, limits: null }, { admit }, 1, cancelOnly(hooks)).options;
    return { offRatio: option?.offRatio.abs() ?? null, worstTarget: low };
  }
  const wide = tolerance !== null && tolerance.compare(ROUGH) < 0 ? tolerance : ROUGH;
  const swept = sweepReach(problem, { admit }, cancelOnly(hooks));
  const gap = swept?.within({ low, high, tolerance: wide }, 1, cancelOnly(hooks)).worst ?? null;
  return { offRatio: gap?.off ?? null, worstTarget: gap?.worst ?? low };
}

/** The choices whose every part is at hand or bought, and the way back to all choices. */
function atHand(
  { choices: { problem }, needs }: Shop,
  need: Need,
): { readonly problem: SearchProblem; readonly original: (one: Candidate) => Candidate } {
  const bought = new Set(need);
  const isAtHand = (choice: Pair | PumpPair): boolean =>
    choice.failed === 0 && needs.lacking(choice).every((ways) => ways.some((part) => bought.has(part)));
  const placesOf = (list: readonly (Pair | PumpPair)[]): readonly number[] =>
    list.flatMap((choice, index) => (isAtHand(choice) ? [index] : []));
  const pairs = problem.stages.map((stage) => placesOf(stage.pairs));
  const pumps = placesOf(problem.pumps);
  return {
    problem: {
      ...problem,
      stages: problem.stages.map((stage, s) => ({ ...stage, pairs: (pairs[s] ?? []).flatMap((index) => stage.pairs[index] ?? []) })),
      pumps: pumps.flatMap((index) => problem.pumps[index] ?? []),
    },
    original: (one) => ({ pump: pumps[one.pump] ?? -1, pairs: one.pairs.map((pair, s) => pairs[s]?.[pair] ?? -1) }),
  };
}

const cancelOnly = ({ cancelled }: Hooks): Hooks => (cancelled === undefined ? {} : { cancelled });
