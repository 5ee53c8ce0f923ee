import type { Say } from '../../format.ts';
import { agree } from './agree.ts';
import { air } from './air.ts';
import { basis } from './basis.ts';
import type { Cause, CauseState, CauseSubject } from './cause.ts';
import { drift } from './drift.ts';
import { shortSide } from './shortSide.ts';
import { swapped } from './swapped.ts';
import { wear } from './wear.ts';
import { wrongTeeth } from './wrongTeeth.ts';

export type { CauseState, CauseSubject } from './cause.ts';

/** In the order in which to look. */
export const causes: readonly Cause[] = [agree, drift, shortSide, air, swapped, basis, wrongTeeth, wear];

/** A cause with what it has to say, in words. */
export interface CauseSaid {
  readonly cause: string;
  readonly title: string;
  readonly within: string;
  readonly state: CauseState;
  readonly what: string;
  readonly source: string;
}

const ORDER: readonly CauseState[] = ['likely', 'possible', 'ruled out', 'not looked for'];

/**
 * Every cause that may stand behind a measured off-ratio, those that speak for themselves first.
 *
 * @source our choice
 */
export function causesOf(subject: CauseSubject, say: Say): readonly CauseSaid[] {
  return causes
    .map((cause): CauseSaid => {
      const { state, what } = cause.judge(subject);
      return { cause: cause.id, title: cause.title, within: cause.within, state, what: what(say), source: cause.source };
    })
    .sort((a, b) => ORDER.indexOf(a.state) - ORDER.indexOf(b.state));
}
