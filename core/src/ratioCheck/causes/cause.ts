import type { Say } from '../../format.ts';
import type { Plan, Teeth } from '../../plan.ts';
import type { Evaluation } from '../evaluate.ts';

/** Likely and possible speak for it; ruled out against it; not looked for where something that it needs is not given. */
export type CauseState = 'likely' | 'possible' | 'ruled out' | 'not looked for';

/** What a cause is judged by. */
export interface CauseSubject {
  readonly evaluation: Evaluation;
  /** The machine with the teeth and pumps that were on it, its rack and its material; null where the check's machine is gone. */
  readonly plan: Plan | null;
  /** Teeth before the change that is being proved; null where no sheet tells. */
  readonly teethBefore: readonly Teeth[] | null;
  /** Kept checks with the same two pumps, oldest first, none of them this one. */
  readonly earlier: readonly { readonly date: string; readonly evaluation: Evaluation }[];
}

/** What a cause has to say; `what` words it for a shop's way of reading numbers and ends with what to do. */
export interface CauseFound {
  readonly state: CauseState;
  readonly what: (say: Say) => string;
}

/** Something that may stand behind a measured off-ratio. One file each; the order of the list is the order in which to look. */
export interface Cause {
  readonly id: string;
  /** In two or three words. */
  readonly title: string;
  /** The same as it stands within a sentence. */
  readonly within: string;
  readonly source: string;
  /** Why one looks for it. */
  readonly why: string;
  judge(subject: CauseSubject): CauseFound;
}

export const likely = (what: CauseFound['what']): CauseFound => ({ state: 'likely', what });
export const possible = (what: CauseFound['what']): CauseFound => ({ state: 'possible', what });
export const ruledOut = (what: CauseFound['what']): CauseFound => ({ state: 'ruled out', what });
export const notLookedFor = (sentence: string): CauseFound => ({ state: 'not looked for', what: () => sentence });
