import { describe, expect, test } from 'vitest';
import { Fraction, float } from '../../../core/src/ratio.ts';
import { CHAIN_SIZES, type ChainSize, chainSize, sameChain } from '../../../core/src/tables/chainSizes.ts';
import examples from '../../sources/chain.json';

function row(number: string): ChainSize {
  const found = chainSize(number);
  if (found === null) throw new Error(`chain ${number} should be in the table`);
  return found;
}

const american = CHAIN_SIZES.filter((size) => size.source === 'asme-b29.1');
const metric = CHAIN_SIZES.filter((size) => size.source === 'iso-606');

describe('pitch', () => {
  const { pitch_mm } = examples;

  test('in eighths of an inch by the first figure of an American number, exactly [chain-standards-article, seen]', () => {
    for (const { number, pitch_m } of american) {
      const eighths = new Fraction(number.slice(0, 1)).div(8);
      expect(pitch_m.equals(eighths.mul('0.0254')), number).toBe(true);
    }
  });

  test('in sixteenths of an inch by the first two figures of an ISO number, exactly; 05B is 8 mm [iso-606 designation, from memory]', () => {
    for (const { number, pitch_m } of metric) {
      const expected = number === '05B' ? new Fraction('0.008') : new Fraction(number.slice(0, 2)).div(16).mul('0.0254');
      expect(pitch_m.equals(expected), number).toBe(true);
    }
  });

  test(`as printed in mm, exactly [${pitch_mm.source}, ${pitch_mm.provenance}]`, () => {
    expect(Object.keys(pitch_mm.printed).sort()).toEqual(metric.map((size) => size.number).sort());
    for (const [number, printed] of Object.entries(pitch_mm.printed)) {
      expect(row(number).pitch_m.mul(1000).equals(new Fraction(printed)), number).toBe(true);
    }
  });
});

describe('minimum tensile strength', () => {
  const { textbook, article } = examples.tensile_lbf;
  const { standard, chart } = examples.tensile_kN;
  // 1 lbf = 0.45359237 kg × 9.80665 m/s² [NIST SP 811, exact, from memory]
  const NEWTONS = 0.45359237 * 9.80665;

  test(`in lbf [${textbook.source}, ${textbook.provenance}]`, () => {
    expect(Object.keys(textbook.printed).sort()).toEqual(american.map((size) => size.number).sort());
    for (const [number, printed] of Object.entries(textbook.printed)) {
      expect(row(number).leastTensileStrength_N / NEWTONS, number).toBeCloseTo(Number(printed), 9);
    }
  });

  test(`read again, unrounded for 25 and 35 [${article.source}, ${article.provenance}]`, () => {
    for (const [number, printed] of Object.entries(article.printed)) {
      // The textbook rounds to three figures: half a unit of the third at most.
      expect(Math.abs(row(number).leastTensileStrength_N / NEWTONS - Number(printed)), number).toBeLessThanOrEqual(5);
    }
  });

  test('12,500 lbf for each square inch of pitch, rounded to tens; 41 is a lighter chain [asme-b29.1, from memory]', () => {
    for (const { number, pitch_m, leastTensileStrength_N } of american) {
      const byRule_lbf = 12_500 * (float(pitch_m) / 0.0254) ** 2;
      const printed_lbf = leastTensileStrength_N / NEWTONS;
      if (number === '41') expect(printed_lbf).toBeLessThan(byRule_lbf / 2);
      else expect(Math.abs(printed_lbf - byRule_lbf), number).toBeLessThanOrEqual(5);
    }
  });

  test(`in kN [${standard.source}, ${standard.provenance}]`, () => {
    expect(Object.keys(standard.printed).sort()).toEqual(metric.map((size) => size.number).sort());
    for (const [number, printed] of Object.entries(standard.printed)) {
      expect(row(number).leastTensileStrength_N / 1000, number).toBeCloseTo(Number(printed), 9);
    }
  });

  test(`in kN as a chain maker lists it [${chart.source}, ${chart.provenance}]`, () => {
    for (const [number, printed] of Object.entries(chart.printed)) {
      // A maker may promise a little more than the standard asks, never less: up to 1.5 % for 16B.
      const more = Number(printed) / (row(number).leastTensileStrength_N / 1000) - 1;
      expect(more, number).toBeGreaterThan(-0.001);
      expect(more, number).toBeLessThan(0.016);
    }
  });
});

const PAIRS = [
  ['25', '04C'],
  ['35', '06C'],
  ['41', '085'],
  ['40', '08A'],
  ['50', '10A'],
  ['60', '12A'],
  ['80', '16A'],
] as const;

describe('names', () => {
  test.each(PAIRS)('%s and %s are one chain: same pitch and series, strength within 1 %% [iso-606 annex B, from memory]', (a, b) => {
    expect(sameChain(a, b)).toBe(true);
    expect(sameChain(b, a)).toBe(true);
    expect(row(a).pitch_m.equals(row(b).pitch_m)).toBe(true);
    expect([row(a).series, row(b).series]).toEqual(['A', 'A']);
    expect(Math.abs(row(a).leastTensileStrength_N / row(b).leastTensileStrength_N - 1)).toBeLessThan(0.01);
  });

  test('no other two rows are one chain, and no B with any but itself [iso-606, from memory]', () => {
    const pairs = new Set(PAIRS.flatMap(([a, b]) => [`${a} ${b}`, `${b} ${a}`]));
    for (const a of CHAIN_SIZES) {
      for (const b of CHAIN_SIZES) {
        const expected = a.number === b.number || pairs.has(`${a.number} ${b.number}`);
        expect(sameChain(a.number, b.number), `${a.number} ${b.number}`).toBe(expected);
      }
    }
  });

  test('the twenty chain numbers, each once, B for the European series', () => {
    expect(CHAIN_SIZES.map((size) => size.number).join(' ')).toBe(
      '25 35 40 41 50 60 80 04C 05B 06B 06C 08A 08B 085 10A 10B 12A 12B 16A 16B',
    );
    for (const { number, series } of CHAIN_SIZES) expect(series, number).toBe(number.endsWith('B') ? 'B' : 'A');
  });

  test.each([
    ['#40', '40'],
    [' 08b ', '08B'],
    ['No. 41', '41'],
    ['no.06c', '06C'],
    ['# 085', '085'],
  ])('%j is read as %s', (written, number) => {
    expect(chainSize(written)?.number).toBe(number);
    expect(sameChain(written, number)).toBe(true);
  });

  test.each(['', '#', '42', '8B', '40-2', '40 08A', 'number 40', '##40'])('%j is not in the table', (written) => {
    expect(chainSize(written)).toBeNull();
    expect(sameChain(written, '40')).toBe(false);
  });

  test('a chain that is not in the table is the same as itself only', () => {
    expect(sameChain('C2040', ' c2040')).toBe(true);
    expect(sameChain('C2040', '40')).toBe(false);
  });

  test('examples of the docstrings', () => {
    expect(chainSize(' #40 ')?.number).toBe('40');
    expect(sameChain('no. 40', '08a')).toBe(true);
  });
});
