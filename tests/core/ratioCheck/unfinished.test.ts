import { describe, expect, test } from 'vitest';
import { float } from '../../../core/src/ratio.ts';
import { readBox } from '../../../core/src/ratioCheck/boxes.ts';
import { PAST } from './demoChecks.ts';
import { read, saidAt, say, typed } from './written.ts';

const first = PAST[0].catches.map(([a, b]) => [String(a), String(b)] as const);

describe('the first check of the invented example, as text', () => {
  test('0.50 % B-lean and pass [demo scenario], ready to be kept', () => {
    const { evaluation, typed: kept, findings } = read(typed([...first, [], []]));
    expect([evaluation?.verdict, evaluation && float(evaluation.offRatio.value).toFixed(4)]).toEqual(['pass', '-0.0050']);
    expect(findings).toEqual([]);
    expect(kept?.catches).toHaveLength(3);
    expect(kept?.catches[0]).toEqual({ A: { net: { value: '244.6', unit: 'g' } }, B: { net: { value: '101.9', unit: 'g' } } });
  });

  test('gross and tare give the same [net = gross − tare]', () => {
    const catches = PAST[0].catches.map(([a, b]) => ({
      A: { gross: String(a + 200), tare: '200' },
      B: { gross: `${((b + 12.5) / 1000).toFixed(4)} kg`, tare: '12,5', net: 'what was written before' },
    }));
    const { evaluation, waiting } = read(typed([], { weighing: 'gross', catches }));
    expect([evaluation && float(evaluation.offRatio.value).toFixed(4), waiting]).toEqual(['-0.0050', []]);
  });

  test('seconds at a dial: 16.67 s at 80 % of 90 rpm are 20 turns', () => {
    const { evaluation } = read(typed(first, { runBy: 'time', time: '16,6666666', dial: '80' }));
    expect(evaluation && float(evaluation.delivery.A?.share.value ?? evaluation.offRatio.value)).toBeCloseTo(1.0001, 4);
  });
});

describe('while it is written', () => {
  test('nothing yet: no verdict; one catch: not proven, and another is asked for', () => {
    expect(read(typed([[], []])).evaluation).toBeNull();
    const { evaluation } = read(typed([['244.6', '101.9'], []]));
    expect([evaluation?.verdict, evaluation?.further?.kind]).toEqual(['not proven', 'a second catch']);
  });

  test('a catch of one side waits, the others are judged, and it cannot be kept like this', () => {
    const written = read(typed([...first.slice(0, 2), ['244.4']]));
    expect([written.evaluation?.counted.length, written.waiting, written.typed]).toEqual([2, [3], null]);
    expect(saidAt(written, 'catches', 2, 'B')).toEqual(['Catch 3, B: nothing is written down.']);
    expect(written.judged?.catches[2]?.leftOut).toBe('not complete yet');
  });

  test('a line left blank between two catches is no catch, and is said', () => {
    const written = read(typed([...first.slice(0, 2), [], ['244.4', '101.8']]));
    expect([written.evaluation?.counted.map(({ number }) => number), written.waiting]).toEqual([[1, 2, 4], [3]]);
  });

  test.each([
    ['0', 'net is 0 g; it must be above 0.'],
    ['-3', '-3 g must be at least 0 g.'],
    ['abc', '"abc" is not a number with a unit known here.'],
    ['5 mm', 'mm'],
  ])('net weight "%s" is said at its box', (text, what) => {
    const written = read(typed([...first, [text, '101.8']]));
    expect(saidAt(written, 'catches', 3, 'A', 'net').join(' ')).toContain(what);
    expect([written.evaluation?.verdict, written.waiting, written.typed]).toEqual(['pass', [4], null]);
  });

  test('1000 kg in place of 244 g is held against what the pumps can give', () => {
    const written = read(typed([...first, ['1000000', '101.8']]));
    expect(saidAt(written, 'catches', 3, 'A').join(' ')).toContain('far from the 244.3 g that is to be expected');
    expect([written.evaluation?.counted.length, written.waiting]).toEqual([3, [4]]);
  });

  test('a tare that is missing is said at its box; one that cannot be read is said once', () => {
    const side = { gross: '444.6' };
    const catches = [{ A: side, B: { gross: '301.9', tare: '200x' } }];
    const written = read(typed([], { weighing: 'gross', catches }));
    expect(saidAt(written, 'catches', 0, 'A', 'tare').join(' ')).toContain('the tare is missing');
    expect(written.findings.filter(({ where }) => where.includes('B'))).toHaveLength(1);
  });

  test('units may be mixed, and it is said', () => {
    const written = read(typed([...first, ['0.2444 kg', '101.8']]));
    expect(saidAt(written, 'catches').join(' ')).toContain('Side A is written down in g and kg');
    expect([written.evaluation?.counted.length, written.typed === null]).toEqual([4, false]);
  });

  test('left out: counted no more, its reason is asked for', () => {
    const out = (leftOut: string) => typed([], { catches: [...typed(first).catches, { A: {}, B: { net: '20' }, leftOut }] });
    expect(saidAt(read(out(' ')), 'catches', 3, 'leftOut')).toEqual(['Catch 4 is left out: say why.']);
    const written = read(out('the cup tipped over'));
    expect([written.evaluation?.counted.length, written.typed?.catches[3]?.leftOut]).toEqual([3, 'the cup tipped over']);
  });

  test('without the step of the scale nothing is judged, and the step is asked for', () => {
    const { step, ...without } = typed(first);
    const written = read(without);
    expect([step, written.evaluation]).toEqual(['0.1', null]);
    expect(saidAt(written, 'step').join(' ')).toContain('smallest step of the scale is missing');
  });

  test('a day that there is not', () => {
    expect(saidAt(read(typed(first, { date: '2026-02-30' })), 'date').join(' ')).toContain('"2026-02-30" is no day');
  });

  test('the confidence that is asked for widens the interval', () => {
    const width = (confidence: string) => {
      const { evaluation } = read(typed(first, { confidence }));
      return evaluation?.interval ? evaluation.interval.to.value - evaluation.interval.from.value : 0;
    };
    // quantiles of Student's t with two degrees of freedom, 9.925 and 4.303 [NIST/SEMATECH e-Handbook 1.3.6.7.2; from memory]
    expect(width('99') / width('95')).toBeCloseTo(9.925 / 4.303, 2);
  });
});

describe('boxes', () => {
  test.each([
    ['step', '0', '0 g must be above 0 g.'],
    ['step', '101 kg', '101 kg must be at most 100000 g.'],
    ['turns', '0', '0 must be above 0.'],
    ['dial', '120', '120 % must be at most 100 %.'],
    ['confidence', '50', '50 % must be at least 60 %.'],
    ['time', '101 h', '101 h must be at most 360000 s.'],
  ] as const)('%s "%s": %s', (box, text, expected) => {
    expect(readBox(box, text, say)).toEqual({ ok: false, expected });
  });

  test.each([
    ['gross', '444,6', { value: '444,6', unit: 'g' }],
    ['dial', '80', { value: '80', unit: '%' }],
    ['uncertainty', '0', { value: '0', unit: 'g' }],
    ['turns', '', undefined],
  ] as const)('%s "%s" is taken', (box, text, value) => {
    expect(readBox(box, text, say)).toMatchObject({ ok: true, value });
  });
});
