import { en } from '../en.ts';
import type { CheckRecord } from './checkRecord.ts';
import { LINE, textHeight_em } from './columns.ts';
import { SHEET_HEIGHT_mm, SHEET_WIDTH_mm } from './pageStyle.ts';
import type { RatioRow } from './ratioRows.ts';
import { textWidth_em } from './textWidth.ts';
import { em_mm } from './typeSize.ts';

// Heights are reckoned from the numbers of the page's style, with the widths of a wide font.

const LARGEST_pt = 10;
/** From so many catches on their rows stand close and the trends are low, so that all of it still is one page. */
const CROWD = 16;
const CLOSE_LINE = 1.15;
export const isCrowded = ({ catches: { rows } }: CheckRecord): boolean => rows.length >= CROWD;
/** Above the trends, and what their marks mean. */
export const CHARTS_TITLE = en`Check by check`;
export const CHARTS_KEY = en`solid: the catches agree; hollow: they do not; long dashes: mean; short dashes: control limits; drawn through: limits`;
/** Below this it would not be read; what does not fit then goes on to a second page rather than be lost. */
const SMALLEST_pt = 5;
const STEP_pt = 0.1;
const GAP_mm = 1.2;
/** Bold letters take more room. */
const BOLD = 0.88;
/** Of the table of catches; the columns between share the rest. */
const FIRST_mm = 10;
const LAST_mm = 30;
const LIST_mm = SHEET_WIDTH_mm - 6;

/**
 * The largest type at which a check record stays on one page.
 *
 * @param picture_mm  height of the trends, 0 where there are none
 * @returns points, for the body of the page
 * @source our choice
 */
export function recordSize_pt(record: CheckRecord, picture_mm: number): number {
  for (let size_pt = LARGEST_pt; size_pt > SMALLEST_pt; size_pt -= STEP_pt)
    if (height_mm(record, picture_mm, em_mm(size_pt)) <= SHEET_HEIGHT_mm) return Math.round(size_pt * 10) / 10;
  return SMALLEST_pt;
}

function height_mm(record: CheckRecord, picture_mm: number, em: number): number {
  const h2_mm = (words: string) => Math.max(1.4, textHeight_em([words], SHEET_WIDTH_mm, 0.95, em) + 0.1) * em + 0.35;
  const listed_mm = (words: readonly string[], size: number) => textHeight_em(words, LIST_mm, size, em) * em;
  const titled_mm = (words: readonly string[]) => (words.length === 0 ? [] : [h2_mm('') + 0.7 * em + listed_mm(words, 0.82)]);
  const blocks_mm = [
    heading_em(record, em) * em,
    listed_mm(record.cautions, 0.82) + 0.8 * em + 1,
    verdict_em(record, em) * em + 2.4 + 0.6 * em,
    h2_mm(`${en`Catches`} ${record.how}`) + table_mm(record, em),
    h2_mm('') + rows_mm(record.result, em) + listed_mm([record.definition], 0.9) + 0.2 * em + 1,
    ...(picture_mm === 0 ? [] : [h2_mm(`${CHARTS_TITLE} ${CHARTS_KEY}`) + picture_mm]),
    ...titled_mm([...record.causes, ...(record.otherCauses === '' ? [] : [record.otherCauses])]),
    ...titled_mm(record.advice),
    ...titled_mm([...record.findings, ...(record.note === null ? [] : [en`Note: ${record.note}`])]),
    7.7 + 1.3 * em,
    Math.max(6 + 1.1 * em, 2 * textHeight_em([record.footer], 80, 0.85, em) * em),
  ];
  return blocks_mm.reduce((sum, block) => sum + block + GAP_mm, -GAP_mm);
}

function heading_em({ title, machine, material, wanted, proves }: CheckRecord, em: number): number {
  const big = (words: string) => Math.min(2 * 1.3 * 1.2, textHeight_em([words], BOLD * 88, 1.3, em));
  const left = Math.min(2 * 1.75 * 1.2, textHeight_em([title], BOLD * 88, 1.75, em)) + 3 * LINE;
  return Math.max(left, big(machine) + big(material) + textHeight_em([wanted, proves], 88, 1, em));
}

function verdict_em({ verdict: { word, reason, agree, rule } }: CheckRecord, em: number): number {
  const word_mm = (2.6 / BOLD) * textWidth_em(word) * em;
  const beside_mm = SHEET_WIDTH_mm - 2.4 - 1.6 * em - word_mm - 5;
  const texts = textHeight_em([reason], beside_mm, 1, em) + textHeight_em([agree], BOLD * beside_mm, 1, em);
  return Math.max(2.6 * 1.1, texts + textHeight_em([rule], beside_mm, 0.85, em));
}

function table_mm(record: CheckRecord, em: number): number {
  const { heads, rows } = record.catches;
  const [line, air_em] = isCrowded(record) ? [CLOSE_LINE, 0.08] : [LINE, 0.36];
  const cell_mm = (SHEET_WIDTH_mm - FIRST_mm - LAST_mm) / (heads.length - 2);
  const width_mm = (index: number, count: number): number => {
    if (index === 0) return FIRST_mm;
    if (index < count - 1) return cell_mm;
    // the last cell runs to the end of the row
    return LAST_mm + (heads.length - 1 - index) * cell_mm;
  };
  const row_em = (cells: readonly string[]) =>
    (Math.max(...cells.map((cell, index) => textHeight_em([cell], width_mm(index, cells.length) - 0.6 * em, 0.9, em))) * line) / LINE;
  return [heads, ...rows].reduce((sum, cells) => sum + (row_em(cells) + air_em) * em + 0.15, 0);
}

function rows_mm(rows: readonly RatioRow[], em: number): number {
  const row_em = ({ what, figure, against }: RatioRow) =>
    Math.max(textHeight_em([what], 33, 1, em), textHeight_em([figure], BOLD * 43, 1, em), textHeight_em([against], 103, 1, em));
  return rows.reduce((sum, row) => sum + (row_em(row) + 0.24) * em + 0.15, 0);
}
