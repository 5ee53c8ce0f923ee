import { describe, expect, test } from 'vitest';
import { optionFacts } from '../../core/src/facts/index.ts';
import { figuresJson, SCRIPT_SAY } from '../../core/src/figuresJson.ts';
import { Fraction } from '../../core/src/ratio.ts';
import { formula, input, work } from '../../core/src/working.ts';
import { type FactGroup, fact } from '../../core/src/workingText.ts';
import { E12_ON_BENCH_1, made, U40_ON_BENCH_2 } from './sheet/demoSheet.ts';

const displaced = formula({
  letter: 'Q',
  written: 'D · n',
  dimension: 'flow',
  source: 'definition of displacement',
  of: ({ D, n }: Record<'D' | 'n', Fraction>) => D.mul(n),
});
const doubled = formula({
  letter: 'F',
  written: '2 · T',
  dimension: 'force',
  source: 'arithmetic',
  of: ({ T }: Record<'T', number>) => 2 * T,
});
/** 12 cc/rev at 1.5 turns a second: 18 cc/s are 1080 cc/min. */
const flow = work(displaced, 'flow of A', {
  D: input('displacement', new Fraction('0.000012'), 'displacement'),
  n: input('speed', new Fraction('1.5'), 'speed'),
});
const one = (facts: FactGroup['facts'], withWorkings = false) =>
  figuresJson([{ id: 'flow', title: 'Flow and speed', facts }], withWorkings).flow;

describe('a figure by group and id', () => {
  test('exact: its number in the metric unit, and the fraction in SI [18 · 10⁻⁶ m³/s, arithmetic]', () => {
    expect(one([fact('flowA', flow, SCRIPT_SAY)])).toEqual({
      flowA: { what: 'flow of A', value: 1080, unit: 'cc/min', exactSI: '9/500000' },
    });
  });
  test('a float has no exact value, a note stands where there is one, a share is in per cent', () => {
    const facts = [fact('share', input('share', 0.25, 'share'), SCRIPT_SAY, { note: 'a quarter' })];
    expect(one(facts)).toEqual({ share: { what: 'share', value: 25, unit: '%', note: 'a quarter' } });
  });
  test('a word is a text, without number and unit', () => {
    const verdict = { id: 'verdict', what: 'against the limits', figure: 'outside', note: '', working: null };
    expect(one([verdict], true)).toEqual({ verdict: { what: 'against the limits', text: 'outside' } });
  });
  test('less than a litre is in litres all the same: one unit for each dimension, so that numbers compare', () => {
    expect(one([fact('fill', input('fill', new Fraction('0.00025'), 'volume'), SCRIPT_SAY)])).toMatchObject({
      fill: { value: 0.25, unit: 'L' },
    });
  });
});

describe('workings, only where they are asked for', () => {
  test('formula, source, value in SI and every number put in', () => {
    expect(one([fact('flowA', flow, SCRIPT_SAY)], true)).toEqual({
      flowA: {
        what: 'flow of A',
        value: 1080,
        unit: 'cc/min',
        exactSI: '9/500000',
        working: {
          formula: 'Q = D · n',
          source: 'definition of displacement',
          valueSI: 0.000018,
          put: {
            D: { what: 'displacement', value: 12, unit: 'cc/rev', exactSI: '3/250000', valueSI: 0.000012 },
            n: { what: 'speed', value: 90, unit: 'rpm', exactSI: '3/2', valueSI: 1.5 },
          },
        },
      },
    });
  });
  test('what was worked out in its turn brings its own; what was typed brings none', () => {
    const torque = work(doubled, 'torque', { T: input('pull', 3, 'force') });
    const pull = work(doubled, 'pull', { T: torque });
    expect(one([fact('pull', pull, SCRIPT_SAY)], true)).toMatchObject({
      pull: {
        working: { valueSI: 12, put: { T: { valueSI: 6, working: { put: { T: { what: 'pull', value: 3, unit: 'N', valueSI: 3 } } } } } },
      },
    });
    expect(JSON.stringify(one([fact('typed', input('pull', 3, 'force'), SCRIPT_SAY)], true))).not.toContain('working');
  });
});

/** What one of each unit is in SI, zero point first [NIST SP 811, exact, from memory; a turn is counted]. */
const IN_SI: Readonly<Record<string, readonly [zero: number, size: number]>> = {
  '': [0, 1],
  '%': [0, 0.01],
  'cc/min': [0, 1e-6 / 60],
  rpm: [0, 1 / 60],
  'N m': [0, 1],
  N: [0, 1],
  W: [0, 1],
  K: [0, 1],
  '1/s': [0, 1],
  min: [0, 60],
  L: [0, 0.001],
  'm/s': [0, 1],
  rad: [0, 1],
  mm: [0, 0.001],
  pitches: [0, 1],
  'g/cm3': [0, 1000],
  bar: [0, 1e5],
  'cc/rev': [0, 1e-6],
  '1/K': [0, 1],
  '°C': [273.15, 1],
};

interface WorkingJson {
  readonly valueSI: number;
  readonly put: Readonly<Record<string, FigureJson>>;
}
interface FigureJson {
  readonly what: string;
  readonly value?: number;
  readonly unit?: string;
  readonly exactSI?: string;
  readonly valueSI?: number;
  readonly working?: WorkingJson;
}
type Figures = Readonly<Record<string, Readonly<Record<string, FigureJson>>>>;

/** A figure and every number that it rests on. */
const withPut = (figure: FigureJson): readonly FigureJson[] => [figure, ...Object.values(figure.working?.put ?? {}).flatMap(withPut)];

describe.each([
  ['E12 on Bench 1', made(E12_ON_BENCH_1)],
  ['U40 on Bench 2', made(U40_ON_BENCH_2)],
])('the figures of %s (invented example)', (_name, { plan, option }) => {
  const groups = optionFacts(plan, option, SCRIPT_SAY);
  const text = JSON.stringify(figuresJson(groups, true));
  const json = JSON.parse(text) as Figures;

  test('none is lost, and all come through as text', () => {
    expect(Object.entries(json).map(([id, facts]) => [id, Object.keys(facts)])).toEqual(
      groups.map(({ id, facts }) => [id, facts.map((one) => one.id)]),
    );
    expect(json).toEqual(figuresJson(groups, true));
  });
  test('number and unit say the same as the value in SI [NIST SP 811, from memory]', () => {
    const numbers = Object.values(json).flatMap((facts) => Object.values(facts).flatMap(withPut));
    expect(numbers.length).toBeGreaterThan(200);
    for (const { what, value, unit = '', exactSI, valueSI, working } of numbers) {
      if (value === undefined) continue;
      const [zero, size] = IN_SI[unit] ?? [Number.NaN, Number.NaN];
      const exact = exactSI === undefined ? undefined : Number(new Fraction(exactSI));
      const said = [valueSI, working?.valueSI, exact].filter((one) => one !== undefined);
      expect(said.length, what).toBeGreaterThan(0);
      const si = zero + value * size;
      for (const one of said) expect(Math.abs(one - si), `${what} in ${unit}`).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(si), zero));
    }
  });
  test('without workings the same figures, and nothing else', () => {
    const bare = figuresJson(groups, false);
    expect(JSON.stringify(bare)).not.toContain('"working"');
    const stripped: unknown = JSON.parse(text, (key, value) => (key === 'working' ? undefined : value));
    expect(bare).toEqual(stripped);
  });
});
