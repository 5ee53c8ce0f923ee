import { en } from '../../core/src/en.ts';
import { SEVERITY_WORDS } from '../../core/src/finding.ts';
import type { Severity } from '../../core/src/index.ts';

/** `missing`, `clear` and `blocked` are states of a list or a row, not severities of a finding. */
export type SaidSeverity = Severity | 'missing' | 'clear' | 'blocked';

export const SAID_SEVERITY: Readonly<Record<SaidSeverity, string>> = {
  ...SEVERITY_WORDS,
  missing: en`missing`,
  clear: en`clear`,
  blocked: en`blocked`,
};
