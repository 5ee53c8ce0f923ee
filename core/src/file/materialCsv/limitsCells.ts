import { en } from '../../en.ts';
import { quoted } from '../../visible.ts';
import type { LimitsRow } from '../material.ts';
import { definitionCalled, LIMIT_DEFINITIONS, type LimitDefinition } from './columns.ts';
import { readLimits } from './limitsCell.ts';
import type { Say } from './ratioCells.ts';

/** What a row says of its limits, cell by cell; empty where it says nothing. */
export interface LimitsCells {
  readonly limits: string;
  readonly plusMinus: string;
  readonly low: string;
  readonly high: string;
  readonly definition: string;
  /** Of the head of the column that is filled. */
  readonly headed: LimitDefinition | null;
}

/**
 * The limits of a row.
 *
 * @param otherwise  the definition where neither cell nor head says one
 * @returns null where there are none or something was said; `assumed` where the definition is `otherwise`
 * @source our choice
 */
export function limitsOf(
  cells: LimitsCells,
  otherwise: LimitDefinition,
  say: Say,
): { readonly row: LimitsRow; readonly assumed: boolean } | null {
  const written = definitionCalled(cells.definition);
  if (cells.definition !== '' && written === null)
    say('limits definition', en`${quoted(cells.definition)} is no definition known here: ${LIMIT_DEFINITIONS.join(', ')}.`);
  const ends = cells.low !== '' || cells.high !== '';
  const given = [cells.limits !== '', cells.plusMinus !== '', ends].filter((one) => one).length;
  if (given > 1) say('limits', en`The limits are given twice: keep one of their columns.`);
  if (given === 0 && cells.definition !== '') say('limits', en`There is a definition, but no limits.`);
  if (given !== 1) return null;
  if (ends) {
    if (cells.low === '' || cells.high === '') {
      say(cells.low === '' ? 'limit low' : 'limit high', en`Nothing is given: limits have a low and a high end.`);
      return null;
    }
    const [low, high] = [cells.low, cells.high].map((text) => text.replace(/\s*%$/, ''));
    const definition = written ?? cells.headed;
    return { row: { definition: definition ?? otherwise, low: low ?? '', high: high ?? '' }, assumed: definition === null };
  }
  const column = cells.limits === '' ? '±' : 'limits';
  const read = readLimits(cells.limits || cells.plusMinus, column === '±');
  if (!read.ok) {
    say(column, read.expected);
    return null;
  }
  const { low, high, definition: inCell } = read.value;
  if (inCell !== null && written !== null && inCell !== written)
    say('limits definition', en`${quoted(written)} stands beside limits in ${inCell}: keep one of them.`);
  const definition = inCell ?? written ?? cells.headed;
  return { row: { definition: definition ?? otherwise, low, high }, assumed: definition === null };
}
