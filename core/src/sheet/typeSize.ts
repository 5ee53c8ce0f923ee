import { en } from '../en.ts';
import type { CatchTable } from './catchTable.ts';
import type { Cautions } from './cautions.ts';
import type { ChangeRow } from './changeRows.ts';
import type { ChangeSheet, Heading } from './changeSheet.ts';
import type { ChangeGroup, Changes } from './changes.ts';
import { cautionColumns, LINE, stepColumns, textHeight_em } from './columns.ts';
import { SHEET_HEIGHT_mm } from './pageStyle.ts';
import type { RatioRow } from './ratioRows.ts';
import { textWidth_em } from './textWidth.ts';

// A sheet is one page whatever it has to say, so its type is as large as lets it fit. How high it comes out is reckoned from the
// same numbers as stand in its style, with the widths of a wide font; every margin between blocks is kept free.

/** Above the table beside the ratio. */
export const SLACK_AND_WEAR = en`Slack and wear`;
const LARGEST_pt = 10.5;
/** Below this a sheet would not be read; what does not fit then goes on to a second page rather than be lost. */
const SMALLEST_pt = 5;
const STEP_pt = 0.1;
/** Bold letters take more room: what is left of a width for them. */
const BOLD = 0.88;
const GAP_mm = 1.2;
const WRITING_LINE_mm = 8.2;
const CARE_COLUMNS_mm = [23, 38, 28];

/** The em of a type size. */
export const em_mm = (size_pt: number): number => (size_pt * 25.4) / 72;

/**
 * The largest type size at which a sheet stays on one page.
 *
 * @param picture_mm  height of the drawing, 0 or more
 * @returns points, for the body of the page
 * @source our choice
 */
export function typeSize_pt(sheet: ChangeSheet, picture_mm: number): number {
  for (let size_pt = LARGEST_pt; size_pt > SMALLEST_pt; size_pt -= STEP_pt) {
    if (height_mm(sheet, picture_mm, em_mm(size_pt)) <= SHEET_HEIGHT_mm) return Math.round(size_pt * 10) / 10;
  }
  return SMALLEST_pt;
}

function height_mm(sheet: ChangeSheet, picture_mm: number, body_mm: number): number {
  return blockHeights_mm(sheet, picture_mm, body_mm).reduce((sum, block_mm) => sum + block_mm + GAP_mm, -GAP_mm);
}

/** What each block of the page needs at most, from the heading down to the bar. */
function blockHeights_mm(sheet: ChangeSheet, picture_mm: number, em_mm: number): readonly number[] {
  const h2_mm = 1.4 * em_mm + 0.35;
  return [
    heading_em(sheet.heading, em_mm) * em_mm,
    ...(sheet.heading.notToBeBuilt.length === 0 ? [] : [(2.4 + textHeight_em(sheet.heading.notToBeBuilt, 178, 1, em_mm)) * em_mm + 2.4]),
    cautions_em(sheet.cautions, em_mm) * em_mm + 1,
    h2_mm + changes_mm(sheet.changes, em_mm),
    h2_mm + Math.max(ratio_mm(sheet, em_mm), side_mm(sheet, picture_mm, em_mm)),
    ...(sheet.running.length === 0 ? [] : [h2_mm + running_mm(sheet, em_mm)]),
    h2_mm + stepColumns([...sheet.steps.lines, ...sheet.steps.own], em_mm).height_em * em_mm,
    catch_mm(sheet.catches, em_mm),
    7.7 + 1.3 * em_mm,
    Math.max(6 + 1.1 * em_mm, 2 * textHeight_em([sheet.footer], 80, 0.85, em_mm) * em_mm),
  ];
}

function heading_em({ title, date, machine, material, components }: Heading, em_mm: number): number {
  const atMost = (lines: number, texts: readonly string[], size: number) =>
    Math.min(lines * LINE * size, textHeight_em(texts, 90, size, em_mm));
  const oneLine = ((1.75 / BOLD) * textWidth_em(title) + 1 + textWidth_em(date)) * em_mm <= 90;
  const left = textHeight_em([title], BOLD * 90, 1.75, em_mm) + (oneLine ? 0 : LINE) + atMost(2, [machine], 1.3) + LINE;
  const right = atMost(2, [material], 1.3) + 1.3 * LINE + atMost(2, [components], 1);
  return Math.max(left, right);
}

function cautions_em({ groups, own, deference }: Cautions, em_mm: number): number {
  const columns = groups.map(({ lines }) => textHeight_em(lines, 86, 0.9, em_mm) + 0.9 * LINE);
  const material = own.length === 0 ? 0 : cautionColumns(own, em_mm).height_em + 0.9 * LINE;
  return Math.max(...columns) + material + textHeight_em([deference], 180, 0.9, em_mm) + 1;
}

function changes_mm({ groups, stays }: Changes, em_mm: number): number {
  const cell_em = ({ detail, from }: ChangeRow) =>
    1.7 +
    0.9 * 0.85 * LINE +
    Math.min(1.8 * LINE, textHeight_em([from], 36, 0.9, em_mm)) +
    (detail === '' ? 0 : textHeight_em([detail], 36, 0.77, em_mm));
  const title_em = ({ title, detail }: ChangeGroup) =>
    Math.min(1.8 * LINE, textHeight_em([title], 28, 0.95, em_mm)) + textHeight_em([detail], 28, 0.9, em_mm);
  const rows_mm = groups.map((group) => (0.5 + Math.max(title_em(group), ...group.rows.map(cell_em))) * em_mm + 0.15);
  return rows_mm.reduce((sum, row) => sum + row, 0) + (textHeight_em(stays, 182, 0.9, em_mm) + 0.2 * stays.length) * em_mm;
}

function ratio_mm({ ratio, warnings }: ChangeSheet, em_mm: number): number {
  const rows_mm = ratio.rows.map(({ what, figure, against }) => {
    const upper_em = Math.max(
      textHeight_em([what], 10.3 * em_mm, 1, em_mm),
      textHeight_em([figure], BOLD * (83 - 10.4 * em_mm), 1.1, em_mm),
    );
    return (upper_em + textHeight_em([against], 83, 0.9, em_mm) + 0.3) * em_mm + 0.15;
  });
  const note_em = textHeight_em([ratio.definition], 83, 0.9, em_mm) + 0.2;
  const warnings_mm = warnings.length === 0 ? 0 : (2.1 + textHeight_em(warnings, 83, 0.82, em_mm)) * em_mm + 0.5;
  return rows_mm.reduce((sum, row) => sum + row, 0) + note_em * em_mm + warnings_mm;
}

function running_mm({ running }: ChangeSheet, em_mm: number): number {
  const row_em = ({ what, figure, against }: RatioRow) =>
    Math.max(textHeight_em([what], 17, 1, em_mm), textHeight_em([figure], BOLD * 43, 1, em_mm), textHeight_em([against], 119, 1, em_mm));
  return running.reduce((sum, row) => sum + (row_em(row) + 0.24) * em_mm + 0.15, 0);
}

function side_mm({ care }: ChangeSheet, picture_mm: number, em_mm: number): number {
  const rows_mm = care.rows.map(
    (row) =>
      (Math.max(...row.map((cell, column) => textHeight_em([cell], CARE_COLUMNS_mm[column] ?? 0, 0.85, em_mm))) + 0.4) * em_mm + 0.15,
  );
  return (
    1 +
    picture_mm +
    (care.rows.length === 0 ? 0 : (1.9 + textHeight_em([`${SLACK_AND_WEAR}  ${care.definition}`], 92, 1, em_mm)) * em_mm + 0.5) +
    rows_mm.reduce((sum, row) => sum + row, 0)
  );
}

function catch_mm({ how, rows, rule, otherwise }: CatchTable, em_mm: number): number {
  const texts_em =
    textHeight_em([`${en`Ratio check`} ${how}`], 182, 0.9, em_mm) + textHeight_em([`${rule} ${otherwise}`], 175, 0.95, em_mm) + 1.9;
  return texts_em * em_mm + 0.5 + rows.length * WRITING_LINE_mm;
}
