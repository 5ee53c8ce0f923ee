import { describe, expect, test } from 'vitest';
import { checkRecordLines } from '../../../core/src/sheet/checkRecordLines.ts';
import { checkRecordBody } from '../../../core/src/sheet/checkRecordPage.ts';
import { inFull, type Recorded, recorded } from './demoRecord.ts';
import { inch } from './demoSheet.ts';

const text = ({ record, charts }: Recorded): string =>
  `${checkRecordLines(
    record,
    charts.map(({ sentence }) => sentence),
  )
    .join('\n')
    .replaceAll('\u00A0', '~')}\n`;
const html = ({ record, charts, working }: Recorded): string =>
  checkRecordBody(
    record,
    charts.map(({ svg }) => svg),
    working,
  ).html;

describe('golden text of the check record (invented example)', () => {
  test('the second check: a pass', async () => {
    await expect(text(recorded({ index: 1 }))).toMatchFileSnapshot('../../golden/check-record-pass.txt');
  });
  test('the third check: not proven, with a decimal comma', async () => {
    await expect(text(recorded({ index: 2, say: inch }))).toMatchFileSnapshot('../../golden/check-record-not-proven-comma.txt');
  });
  test('gross, tare and volumes, one catch left out', async () => {
    await expect(text(recorded({ change: inFull }))).toMatchFileSnapshot('../../golden/check-record-gross-tare.txt');
  });
});

describe('the third check [worked out apart from the program]', () => {
  const { record } = recorded({ index: 2 });
  const figures = Object.fromEntries(
    record.result.map(({ what, figure }) => [what.replaceAll('\u00A0', ' '), figure.replaceAll('\u00A0', ' ')]),
  );

  test('verdict in a word, its reason, that it is unstable, and the rule', () => {
    expect(record.verdict.word).toBe('Not proven');
    expect(record.verdict.reason.replaceAll('\u00A0', ' ')).toContain('−4.55 to +0.38 %, reaches over the limits');
    expect(record.verdict.agree).toMatch(/^Unstable: the interval is wider than half/);
    expect(record.verdict.rule).toContain('whole interval lies inside');
  });
  test('figures', () => {
    expect(figures['By weight']).toBe('2.4396 : 1');
    expect(figures['Off-ratio']).toBe('2.06 % B-lean');
    expect(figures['Interval, 95 %']).toBe('−4.55 to +0.38 %');
    expect(figures['Catches range over']).toBe('1.96 %');
    expect(figures['Pump A delivered']).toBe('99.94 % ± 0.90 %');
    expect(figures['Pump B delivered']).toBe('98.02 % ± 3.35 %');
    expect(figures['Smallest catch']).toBe('A 47.6 g, B 19.9 g');
  });
  test('no sprocket is proposed, and the example is marked', () => {
    expect(record.advice.join(' ')).toContain('no sprockets are proposed');
    expect(record.invented).toBe('invented example');
  });
});

describe('the catches as they were written', () => {
  test('gross and tare as typed, net worked out exactly, left out with its reason', () => {
    const { heads, rows } = recorded({ change: inFull }).record.catches;
    expect(heads.slice(0, 9)).toEqual(['Catch', 'A gross', 'A tare', 'A net', 'A volume', 'B gross', 'B tare', 'B net', 'B volume']);
    expect(rows[0]?.slice(1, 9).map((cell) => cell.replaceAll('\u00A0', ' '))).toEqual([
      ...['256.9 g', '12.3 g', '244.6 g', '240 cc'],
      ...['113.8 g', '11,9 g', '101.9 g', '83.8 mL'],
    ]);
    expect(rows[2]?.at(-1)).toBe('left out: the cup of B tipped over');
  });
  test('a confidence of the shop’s own stands with its interval', () => {
    const { record } = recorded({
      change: (_, row) => {
        row.confidence = { value: '99.5', unit: '%' };
      },
    });
    expect(record.result.map(({ what }) => what.replaceAll('\u00A0', ' '))).toContain('Interval, 99.5 %');
  });
});

test('without limits there is no verdict, and nothing is called inside', () => {
  const { record } = recorded({
    change: (_, row) => {
      delete row.terms.limits;
      delete row.terms.limitsWritten;
    },
  });
  expect(record.verdict.word).toBe('No verdict');
  expect(record.result.find(({ what }) => what === 'Off-ratio')?.against).toBe('limits not given');
});

test('the user’s own words never become markup, on the page nor in the pictures', () => {
  const nasty = '<script>alert(1)</script>';
  const found = html(
    recorded({
      change: (file, row) => {
        for (const machine of file.machines) machine.name = nasty;
        for (const material of file.materials) material.name = nasty;
        row.by = nasty;
        row.note = nasty;
        row.terms.written = nasty;
      },
    }),
  );
  expect(found).not.toContain('<script>');
  expect(found.split('&lt;script&gt;').length - 1).toBeGreaterThanOrEqual(5);
});

test('every worked figure of the page is on the pages of workings', () => {
  const { working } = recorded({ index: 1 });
  const all = working.flatMap(({ workings }) => workings.map(({ what }) => what));
  for (const what of [
    'off-ratio',
    'least off-ratio',
    'greatest off-ratio',
    'delivery of pump A',
    'delivery of pump B',
    'smallest catch of A',
    'smallest catch of B',
  ])
    expect(all).toContain(what);
});
