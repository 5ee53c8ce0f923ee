import type { Fraction } from '../ratio.ts';

/** One choice of wheels for one open stage. */
export interface Pair {
  /** teeth */
  readonly driver: number;
  /** teeth */
  readonly driven: number;
  /** positions that differ from what is fitted; a closed slot never does */
  readonly changed: 0 | 1 | 2;
  /** what it costs to fit this pair, >= 0, in the one unit of the whole problem; what several choices cost adds up */
  readonly work: Fraction;
  /** bit field of the checks this pair fails, up to 30 bits; 0: buildable */
  readonly failed: number;
  /** how many of its wheels have to be bought, whatever the rest of the option; left out where that is not known */
  readonly bought?: 0 | 1 | 2;
}

/** What a stage does to B per A: `B` multiplies it by driver/driven, `A` by driven/driver, `none` is a stage both pumps share. */
export type Effect = 'B' | 'A' | 'none';

export interface OpenStage {
  readonly effect: Effect;
  readonly pairs: readonly Pair[];
}

export interface PumpPair {
  /** displacement of B over displacement of A, exact */
  readonly ratio: Fraction;
  readonly changed: 0 | 1 | 2;
  readonly work: Fraction;
  readonly failed: number;
  /** position in the order of the file */
  readonly order: number;
}

/** Numbers only: B per A made is `fixed` times the pump ratio times the effects of the stages. */
export interface SearchProblem {
  /** in the order of the file */
  readonly stages: readonly OpenStage[];
  /** at least one */
  readonly pumps: readonly PumpPair[];
  /** product of the closed stages, as it enters B per A */
  readonly fixed: Fraction;
  /** B per A by volume, > 0 */
  readonly wanted: Fraction;
  /** of the off-ratio, inclusive: -1 < low <= 0 <= high; null where the material states none */
  readonly limits: { readonly low: Fraction; readonly high: Fraction } | null;
  /** the rules refuse whatever more has to be bought for; left out where they do not say */
  readonly mostBought?: number;
}

export interface Candidate {
  /** index into `pumps` */
  readonly pump: number;
  /** index into the pairs of each stage */
  readonly pairs: readonly number[];
}

export const copyOf = ({ pump, pairs }: Candidate): Candidate => ({ pump, pairs: pairs.slice() });

export interface Option extends Candidate {
  /** B per A made */
  readonly ratio: Fraction;
  /** `ratio / wanted - 1` */
  readonly offRatio: Fraction;
  /** null where there are no limits */
  readonly inside: boolean | null;
  readonly changed: number;
  readonly purchases: number;
}

/** From one ratio to another, as floats. */
export interface RatioSpan {
  readonly low: number;
  readonly high: number;
}

/** Rules that look across the stages (quantities, pump speed); called once an option is expanded. */
export interface Rules {
  /** Purchases needed if the option may be listed, null if not. Must give the same answer for the same candidate, and not keep it: it is good until the next call. */
  readonly admit: (candidate: Candidate) => number | null;
  /** B per A, as floats: nothing below or above may be listed; left out where that is not known. */
  readonly span?: RatioSpan;
}

export interface Hooks {
  /** 0 to 1, never falling */
  readonly progress?: (done: number) => void;
  readonly cancelled?: () => boolean;
}

/** What a search throws once `Hooks.cancelled` says so. */
export class Cancelled extends Error {
  constructor() {
    super('search cancelled');
    this.name = 'Cancelled';
  }
}

/**
 * The same problem with every pair and pump taken as buildable, whatever has to be bought.
 *
 * @param problem what blocks a choice is in its `failed`
 * @returns a copy with every `failed` at 0
 * @source our choice: a search for what would have fitted asks this problem
 * @example withoutFailures(problem).pumps[0]?.failed  // 0
 */
export function withoutFailures({ mostBought: _most, ...problem }: SearchProblem): SearchProblem {
  const stages = problem.stages.map((stage) => ({ ...stage, pairs: stage.pairs.map((pair) => ({ ...pair, failed: 0 })) }));
  return { ...problem, stages, pumps: problem.pumps.map((pump) => ({ ...pump, failed: 0 })) };
}
