import { type Baseline, type Claim, holds, type Row, timesFaster } from './report.ts';

const HEADS = [
  'instance',
  'raw combinations',
  'median ms',
  'max ms',
  'faster than nested loops',
  'faster than the plain twin',
  'memory MB',
  'note',
];

/** What the marks mean. */
export const LEGEND = [
  'Each search starts from nothing: the problem is made anew and no search finds anything ready from another; three searches of the kind ran before the clock started.',
  'Times faster: the nested loops and the plain twin in this same process over the median. With ~ in front the baseline did not run: its measured time per combination was multiplied by the raw combinations.',
  'Memory: what one search has in use at its end, rubbish that nobody has collected yet included; the most of three.',
];

/** Three figures, grouped where there are more: 1 234 567, 12.3, 0.0123. */
export function figure(value: number | null): string {
  if (value === null) return '-';
  if (Math.abs(value) >= 1e9) return value.toExponential(1).replace('e+', 'e');
  if (Math.abs(value) >= 100)
    return Math.round(value)
      .toString()
      .replace(/\B(?=(\d{3})+$)/g, ' ');
  return Number(value.toPrecision(3)).toString();
}

function faster(row: Row, baseline: Baseline | null): string {
  const times = timesFaster(row, baseline);
  return times === null ? '-' : `${baseline?.how === 'rate' ? '~' : ''}${figure(times)}`;
}

const cellsOf = (row: Row): readonly string[] => [
  row.name,
  figure(row.raw),
  figure(row.median_ms),
  figure(row.max_ms),
  faster(row, row.loops),
  faster(row, row.twin),
  figure(row.memory_MB),
  row.note,
];

const CLAIM_HEADS = ['claim', 'figure', 'bound', 'met', 'note'];

function claimCells(claim: Claim): readonly string[] {
  const { least, most } = claim;
  const bound =
    least === undefined
      ? `at most ${figure(most ?? null)}`
      : most === undefined
        ? `at least ${figure(least)}`
        : `${figure(least)} to ${figure(most)}`;
  return [claim.what, `${figure(claim.figure)} ${claim.unit}`, `${bound} ${claim.unit}`, holds(claim) ? 'met' : 'not met', claim.note];
}

/** Lines of a table with columns that stand under one another. */
function lined(heads: readonly string[], rows: readonly (readonly string[])[], between: string): readonly string[] {
  const widths = heads.map((head, c) => Math.max(head.length, ...rows.map((cells) => cells[c]?.length ?? 0)));
  const padded = (cells: readonly string[]) => cells.map((cell, c) => cell.padEnd(widths[c] ?? 0)).join(between);
  return [padded(heads), widths.map((width) => '-'.repeat(width)).join(between), ...rows.map(padded)];
}

/** Which baselines ran, and which are a rate times a count: by name, so that nobody need read marks. */
export function howMeasured(rows: readonly Row[]): readonly string[] {
  const named = (of: (row: Row) => Baseline | null, how: Baseline['how']): string =>
    rows
      .filter((row) => of(row)?.how === how)
      .map(({ name }) => name)
      .join('; ') || 'none';
  const line = (what: string, of: (row: Row) => Baseline | null): string =>
    `${what} ran from beginning to end: ${named(of, 'ran')}. Rate times combinations: ${named(of, 'rate')}.`;
  return [line('Nested loops', ({ loops }) => loops), line('Plain twin', ({ twin }) => twin)];
}

export function plainText(rows: readonly Row[], claims: readonly Claim[]): string {
  const parts = [
    lined(HEADS, rows.map(cellsOf), '  '),
    lined(CLAIM_HEADS, claims.map(claimCells), '  '),
    [...LEGEND, ...howMeasured(rows)],
  ];
  return parts.map((part) => part.map((line) => line.trimEnd()).join('\n')).join('\n\n');
}

export const markdownTable = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  lined(heads, rows, ' | ')
    .map((line) => `| ${line} |`)
    .join('\n');

export function markdown(machine: string, rows: readonly Row[], claims: readonly Claim[]): string {
  const instances = markdownTable(HEADS, rows.map(cellsOf));
  const claimed = markdownTable(CLAIM_HEADS, claims.map(claimCells));
  return `${['# What the search was measured at', machine, claimed, instances, ...LEGEND, ...howMeasured(rows)].join('\n\n')}\n`;
}
