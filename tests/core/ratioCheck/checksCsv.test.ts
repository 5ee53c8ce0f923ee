import { expect, test } from 'vitest';
import { readCsv } from '../../../core/src/file/csv.ts';
import { checksCsv } from '../../../core/src/ratioCheck/checksCsv.ts';
import { demoFile } from './demoChecks.ts';

const rowsOf = (text: string) => {
  const [head, ...rows] = readCsv(text).rows.map(({ cells }) => cells);
  return rows.map((cells) => Object.fromEntries(cells.map((cell, index) => [head?.[index] ?? '', cell])));
};

test('the three past checks of the invented example, worked out apart from the program', () => {
  const rows = rowsOf(checksCsv(demoFile(), '.'));
  expect(
    rows.map((row) => [
      row.date,
      row.machine,
      row.material,
      row['change sheet'],
      row.catches,
      Number(row['A per B by weight']).toFixed(4),
      Number(row['off-ratio %']).toFixed(2),
      Number(row['from %']).toFixed(2),
      Number(row['to %']).toFixed(2),
      row.verdict,
      row['catches agree'],
      Number(row['delivery A %']).toFixed(2),
      Number(row['± of B']).toFixed(2),
    ]),
  ).toEqual([
    ['2026-09-15', 'Bench 1', 'U40 elastomer', "'0001", '3', '2.4012', '-0.50', '-0.66', '-0.34', 'pass', 'yes', '100.01', '0.38'],
    ['2026-10-12', 'Bench 1', 'U40 elastomer', "'0001", '3', '2.4179', '-1.18', '-1.35', '-1.01', 'pass', 'yes', '100.01', '0.38'],
    ['2026-11-09', 'Bench 1', 'U40 elastomer', "'0001", '3', '2.4396', '-2.06', '-4.55', '0.38', 'not proven', 'no', '99.94', '3.35'],
  ]);
  // by volume as run: times the density of B over that of A, 1.215745 over 1.018088
  expect(Number(rows[0]?.['A per B by volume'])).toBeCloseTo(Number(rows[0]?.['A per B by weight']) * (1.2157449 / 1.0180883), 4);
});

test('a minus that spreadsheets know, the decimal sign of the shop, one order of days', () => {
  const file = demoFile();
  file.ratioChecks.reverse();
  const text = checksCsv(file, ',');
  expect(text).not.toContain('\u2212');
  const rows = rowsOf(text);
  expect(rows.map(({ date }) => date)).toEqual(['2026-09-15', '2026-10-12', '2026-11-09']);
  expect(rows[0]?.['off-ratio %']).toMatch(/^-0,\d{4}$/);
});

test('words of the user are kept from being formulas, and a check that cannot be judged says why', () => {
  const file = demoFile();
  const [first, second] = file.ratioChecks;
  if (first === undefined || second === undefined) throw new Error('no checks');
  first.by = '=1+1';
  for (const one of second.catches) one.leftOut = 'spilt';
  const rows = rowsOf(checksCsv(file, '.'));
  expect(rows[0]?.by).toBe("'=1+1");
  expect([rows[1]?.verdict, rows[1]?.['off-ratio %']]).toEqual(['', '']);
  expect(rows[1]?.['not judged']).toMatch(/^No catch counts/);
});

test('what a check does not have is a blank cell, and what has gone from the file stands as its id', () => {
  const file = demoFile();
  const [first, second, third] = file.ratioChecks;
  if (first === undefined || second === undefined || third === undefined) throw new Error('no checks');
  delete first.terms.limits;
  delete second.run;
  delete third.changeSheet;
  third.catches.splice(1);
  file.machines = [];
  file.materials = [];
  file.changeSheets = [];
  const [a, b, c] = rowsOf(checksCsv(file, '.'));
  expect([a?.machine, a?.material, a?.['change sheet'], c?.['change sheet']]).toEqual(['bench-1', 'u40', 'sheet-0001', '']);
  expect([a?.['limit low %'], a?.['limit high %'], a?.verdict]).toEqual(['', '', 'no limits']);
  // 1/35 either way
  expect([b?.['limit low %'], b?.['limit high %'], b?.verdict]).toEqual(['-2.8571', '2.8571', 'pass']);
  for (const [side, deliveries] of [
    ['A', ['100.01', '']],
    ['B', ['99.65', '']],
  ] as const) {
    const found = [a, b].map((row) => row?.[`delivery ${side} %`] ?? '-');
    expect(found.map((cell) => (cell === '' ? '' : Number(cell).toFixed(2)))).toEqual(deliveries);
    expect([b?.[`± of ${side}`], c?.[`± of ${side}`]]).toEqual(['', '']);
  }
  // one catch: a ratio, and nothing that rests on spread
  expect([c?.catches, c?.['from %'], c?.['to %'], c?.['catches agree'], c?.verdict]).toEqual(['1', '', '', '', 'not proven']);
  expect(Number(c?.['A per B by weight'])).toBeCloseTo(244.5 / 100.4, 4);
});
