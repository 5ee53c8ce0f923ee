import type { Bench } from '../bench.ts';
import type { Claim, Outcome, Row } from '../report.ts';

/** One thing that is measured. */
export interface Entry {
  /** what `--only` calls it */
  readonly name: string;
  readonly run: (bench: Bench) => Outcome;
}

export const NOTHING: Outcome = { rows: [], claims: [], differences: [] };

/** How long one row took over another; null where one was stopped. */
export const timesAsLong = (row: Row, ordinary: Row): number | null =>
  row.median_ms === null || ordinary.median_ms === null ? null : row.median_ms / ordinary.median_ms;

export function noLonger(what: string, row: Row, than: Row, most: number): Claim {
  const stopped = row.note || than.note;
  return { what, figure: timesAsLong(row, than), most, unit: 'x', note: stopped };
}

/** What is said where two ways were compared: `apart` is null where they were not. */
export function comparedNote(note: string, apart: readonly string[] | null, as: string): string {
  const compared = apart === null ? '' : apart.length === 0 ? `same rows as ${as}` : `OTHER ROWS than ${as}`;
  return [note, compared].filter((part) => part !== '').join('; ');
}
