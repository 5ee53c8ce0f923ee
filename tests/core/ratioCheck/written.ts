import type { UnfinishedCheck } from '../../../core/src/file/unfinishedCheck.ts';
import type { Place } from '../../../core/src/index.ts';
import { termsOf } from '../../../core/src/ratioCheck/terms.ts';
import { readWritten, type Written } from '../../../core/src/ratioCheck/unfinished.ts';
import { fittedPumps, fittedTeeth } from '../../../core/src/train.ts';
import { demoPlan } from './demoChecks.ts';

export const say = { decimal: '.', system: 'metric' } as const;
export const PLACE: Place = ['unfinishedChecks', 0];

/** A check of Bench 1 with net weights, typed as text: each line A and B. */
export function typed(catches: readonly (readonly [a?: string, b?: string])[], more: Partial<UnfinishedCheck> = {}): UnfinishedCheck {
  return {
    machine: 'bench-1',
    runBy: 'turns',
    turns: '20',
    step: '0.1',
    weighing: 'net',
    catches: catches.map(([a, b]) => ({ A: a === undefined ? {} : { net: a }, B: b === undefined ? {} : { net: b } })),
    ...more,
  };
}

/** As it is read on Bench 1 with U40. */
export function read(check: UnfinishedCheck): Written {
  const plan = demoPlan();
  return readWritten(check, termsOf(plan, { pumps: fittedPumps(plan), teeth: fittedTeeth(plan) }), PLACE, say);
}

/** What is said at a place below the check, plainly. */
export const saidAt = (written: Written, ...rest: Place): readonly string[] =>
  written.findings
    .filter(({ where }) => where.join('.') === [...PLACE, ...rest].join('.'))
    .map(({ what }) => what.replaceAll('\u00a0', ' '));
