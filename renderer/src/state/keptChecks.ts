import type { RatioCheckRow } from '../../../core/src/file/ratioCheckRow.ts';
import type { Finding } from '../../../core/src/index.ts';
import { type Evaluation, evaluate } from '../../../core/src/ratioCheck/evaluate.ts';
import { readCheck } from '../../../core/src/ratioCheck/readCheck.ts';
import { readTerms } from '../../../core/src/ratioCheck/terms.ts';

/** A kept check as its own terms judge it; no evaluation where the file was changed so that it cannot be judged. */
export interface Kept {
  readonly row: RatioCheckRow;
  readonly evaluation: Evaluation | null;
  readonly findings: readonly Finding[];
}

/** The kept checks of a machine, newest first. */
export function keptOf(rows: readonly RatioCheckRow[], machine: string | undefined): readonly Kept[] {
  return rows
    .flatMap((row, index): readonly Kept[] => {
      if (row.machine !== machine) return [];
      const read = readCheck(row, readTerms(row.terms), ['ratioChecks', index]);
      return [{ row, evaluation: read.ok ? evaluate(read.value) : null, findings: read.findings }];
    })
    .sort((a, b) => (a.row.date === b.row.date ? b.row.id.localeCompare(a.row.id) : a.row.date < b.row.date ? 1 : -1));
}
