import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deliveryTrend, type KeptCheck, keptChecks, offRatioTrend, type Trend } from '../../core/src/ratioCheck/history.ts';
import { individualsChart } from '../../core/src/ratioCheck/individuals.ts';
import { type ChartWish, trendChart } from '../../core/src/trendChart.ts';
import { trendScale } from '../../core/src/trendScale.ts';
import { demoFile } from './ratioCheck/demoChecks.ts';

const kept: readonly KeptCheck[] = keptChecks(demoFile().ratioChecks);
const WISH: ChartWish = {
  title: 'Delivery of pump B, %',
  limits: [],
  isSigned: false,
  width_mm: 62,
  height_mm: 36,
  say: { decimal: '.', system: 'metric' },
};
const LIMITS = [
  { value: -1 / 35, words: 'limit' },
  { value: 1 / 35, words: 'limit' },
];
const svgOf = (trend: Trend, wish: Partial<ChartWish> = {}) => trendChart(trend, { ...WISH, ...wish })?.svg ?? '';
const marksOf = (svg: string) => [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="0.95"[^>]*>/g)];
const trendOf = (values: readonly number[]): Trend => ({
  values: values.map((value, index) => ({ check: `check-${index}`, date: '2026-01-01', value, interval: null, stable: true })),
  chart: individualsChart(values),
  line: null,
  meetings: [],
});

describe('the trend of the invented example', () => {
  test('a mark a check: solid where its catches agree, hollow where they do not', () => {
    const marks = marksOf(svgOf(deliveryTrend(kept, 'B', null)));
    expect(marks.map(([all]) => all.includes('fill="none"'))).toEqual([false, false, true]);
    // pump B falls: lower on paper is a greater number
    const heights = marks.map(([, , y]) => Number(y));
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
  });

  test('in words: every check with its interval, mean, control limits and limits', () => {
    const wish = { ...WISH, title: 'Off-ratio, %, + is B-rich', limits: LIMITS, isSigned: true };
    const said = trendChart(offRatioTrend(kept), wish)?.sentence.replaceAll('\u00A0', ' ');
    // worked out apart from the program: mean −1.2467 and mean moving range 0.7814 % of −0.4977, −1.1821, −2.0605; 3 × 0.7814 / 1.128 = 2.0782
    expect(said).toBe(
      'Off-ratio, %, + is B-rich, 3 ratio checks. 2026-09-15: −0.50 %, −0.66 to −0.34 %; 2026-10-12: −1.18 %, −1.35 to −1.01 %; ' +
        '2026-11-09: −2.06 %, −4.55 to +0.38 %, the catches do not agree. Mean −1.25 %, control limits −3.32 to +0.83 %. Limit −2.86 %. Limit +2.86 %.',
    );
  });

  test('the days stand below, the words are escaped, and the picture has its name', () => {
    const svg = svgOf(deliveryTrend(kept, 'A', 0.95), { title: '<b>&', limits: [{ value: 0.95, words: 'least' }] });
    expect(svg).toContain('>2026-11-09</text>');
    expect(svg).not.toContain('<b>');
    expect(svg).toMatch(/role="img" aria-label="&lt;b&gt;&amp;, 3 ratio checks\./);
  });
});

describe('many, few and none', () => {
  test('what finds no room is left to the newest, and the sentence names the last twelve', () => {
    const trend = trendOf(Array.from({ length: 40 }, (_, index) => 1 + Math.sin(index) / 100));
    const svg = svgOf(trend);
    expect(marksOf(svg)).toHaveLength(Math.floor((62 - 24) / 3));
    expect(trendChart(trend, WISH)?.sentence).toMatch(/40 ratio checks\. The last 12: /);
  });

  test('what lies beyond the control limits has a ring', () => {
    const steady = [1, 1.001, 0.999, 1, 1.001, 0.999, 1];
    expect(svgOf(trendOf(steady)).match(/r="1.9"/g)).toBeNull();
    expect(svgOf(trendOf([...steady, 1.05])).match(/r="1.9"/g)).toHaveLength(1);
    expect(trendChart(trendOf([...steady, 1.05]), WISH)?.sentence).toContain('Beyond the control limits: 2026-01-01.');
  });

  test('one check is a mark without mean; none is no chart', () => {
    expect(marksOf(svgOf(offRatioTrend(kept.slice(0, 1))))).toHaveLength(1);
    expect(svgOf(offRatioTrend(kept.slice(0, 1)))).not.toContain('>mean<');
    expect(trendChart(trendOf([]), WISH)).toBeNull();
  });

  test('every mark lies within the drawing, whatever the values [law]', () => {
    const value = fc.double({ min: -0.9, max: 5, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 30 }), fc.array(value, { maxLength: 2 }), (values, limits) => {
        const svg = svgOf(trendOf(values), { limits: limits.map((limit) => ({ value: limit, words: 'limit' })) });
        expect(svg).not.toMatch(/NaN|Infinity/);
        for (const [, x, y] of marksOf(svg)) {
          expect(Number(x)).toBeGreaterThan(11);
          expect(Number(x)).toBeLessThan(62 - 13);
          expect(Number(y)).toBeGreaterThanOrEqual(5);
          expect(Number(y)).toBeLessThanOrEqual(36 - 4.5);
        }
      }),
    );
  });
});

describe('the upright scale', () => {
  test.each([
    [
      [97.6, 100.2],
      [98, 99, 100],
    ],
    [
      [-2.86, 2.86],
      [-2, 0, 2],
    ],
    [
      [0.014, 0.0141],
      [-0.02, 0, 0.02, 0.04, 0.06],
    ],
    [[5], [4.96, 4.98, 5, 5.02, 5.04]],
  ] as const)('%j has its round marks %j', (values, marks) => {
    expect(trendScale(values, 5).marks.map(({ value, places }) => Number(value.toFixed(places)))).toEqual(marks);
  });
});
