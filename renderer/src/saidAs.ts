import type { Verdict } from '../../core/src/budget.ts';
import { en } from '../../core/src/en.ts';
import type { Basis } from '../../core/src/file/sheetRatio.ts';
import type { Severity } from '../../core/src/index.ts';

// What people read where the code and the shop file have an identifier.

/** `missing`, `clear` and `blocked` are states of a list or a row, not severities of a finding. */
export type SaidSeverity = Severity | 'missing' | 'clear' | 'blocked';

export const SEVERITY: Readonly<Record<SaidSeverity, string>> = {
  blocks: en`blocks`,
  warns: en`warns`,
  notes: en`notes`,
  missing: en`missing`,
  clear: en`clear`,
  blocked: en`blocked`,
};

export const BY_BASIS: Readonly<Record<Basis, string>> = { weight: en`by weight`, volume: en`by volume` };

/** Where nothing says already that it is held against the limits. */
export const WHOLE_VERDICT: Readonly<Record<Verdict, string>> = {
  'inside with margin': en`inside with margin`,
  'inside, margin not known': en`inside, margin not known`,
  'inside only nominally': en`inside only nominally`,
  outside: en`outside`,
};
