import { describe, expect, test } from 'vitest';
import { layOption, resolve } from '../../core/src/index.ts';
import { flagWords, limitsOnRule, materialReach } from '../../core/src/materialReach.ts';
import { triedRatios } from '../../core/src/nearRatios.ts';
import { ONE, ratioOf, whole } from '../../core/src/ratio.ts';
import { reachOf } from '../../core/src/reach/reach.ts';
import { coveredText, gapCountText, gapText, ratioInWords, reachSentences } from '../../core/src/reachWords.ts';
import { demoFile, metric } from './sheet/demoSheet.ts';

const planOf = (material: string) => {
  const plan = resolve(demoFile(), { machine: 'bench-1', material }, metric);
  if (!plan.ok) throw new Error('the demo does not resolve');
  return plan.value;
};
const wish = (low: number, high: number) => ({ low: whole(low), high: whole(high), tolerance: ratioOf(1, 50), bins: 10 });

describe('the reach of Bench 1 in words [the demo, worked out apart from the program]', () => {
  const reach = reachOf(planOf('e12'), wish(1, 5));
  test('count, share, worst target beyond the last ratio, widest gap, ends', () => {
    expect(reachSentences(reach, metric)).toEqual([
      '191 ratios from 1 to 5 : 1 by volume; 95.42\u00A0% of that window lies within ±\u00A02\u00A0% of one of them.',
      'Any target in it is met to 7.14\u00A0% or better. The worst is 5 : 1, which 14 : 3 (4.6667 : 1) makes 7.14\u00A0% B-rich; nothing higher can be built.',
      'The widest gap between two ratios is 4.3750 – 4.6667: a target of 140 : 31 (4.5161 : 1) is 3.23\u00A0% off.',
      'Of all that can be built, the smallest is 6 : 7 (0.8571 : 1), the largest 14 : 3 (4.6667 : 1).',
    ]);
  });
  test('a gap beyond the last ratio has one end', () => {
    expect(reach.gaps.map((gap) => gapText(gap, metric))).toContain('above 4.6667, the largest');
  });
  test('between two ratios both are told, each with its side', () => {
    const sentences = reachSentences(reachOf(planOf('e12'), { ...wish(4, 5), high: ratioOf(23, 5) }), metric);
    expect(sentences[1]).toBe(
      'Any target in it is met to 3.23\u00A0% or better. The worst is 140 : 31 (4.5161 : 1), which 35 : 8 (4.3750 : 1) makes 3.23\u00A0% B-rich and 14 : 3 (4.6667 : 1) makes 3.23\u00A0% B-lean.',
    );
    expect(sentences).toHaveLength(3);
  });
});

test('where gaps are too many to be looked for, no share is told', () => {
  const reach = { ...reachOf(planOf('e12'), wish(1, 5)), gaps: [], moreGaps: null, covered: null };
  expect(reachSentences(reach, metric)[0]).toBe(
    '191 ratios from 1 to 5 : 1 by volume; gaps wider than ±\u00A02\u00A0% are too many to be looked for.',
  );
  expect(gapCountText(reach)).toBe('too many gaps to be looked for, wider');
});
test('gaps are counted in words', () => {
  const reach = reachOf(planOf('e12'), wish(1, 5));
  const words = (keep: number, moreGaps: number) => gapCountText({ ...reach, gaps: reach.gaps.slice(0, keep), moreGaps });
  expect([words(0, 0), words(1, 0), words(2, 0), words(2, 5)]).toEqual(['no gap wider', '1 gap wider', '2 gaps wider', '7 gaps wider']);
});
test('a share short of all never reads as all', () => {
  expect([coveredText(1, metric), coveredText(0.999999, metric), coveredText(0.5, metric)]).toEqual([
    'all',
    'over 99.99\u00A0%',
    '50.00\u00A0%',
  ]);
});
test('long whole numbers of a ratio give way to decimals', () => {
  expect([ratioInWords(ratioOf(1001, 10007), metric), ratioInWords(whole(5), metric)]).toEqual(['0.1000 : 1', '5 : 1']);
});

describe('a material on the machine [the demo]', () => {
  test('its best option is the first of the search, told as the list of options tells it', () => {
    const plan = planOf('l5');
    const best = triedRatios(plan).near(plan.mix.wantedBPerA, 1)[0]?.first ?? null;
    const row = materialReach(plan, best, metric);
    if (best === null || row.best === null) throw new Error('nothing was found');
    expect(row.best.aPerB.equals(ONE.div(layOption(plan, best, metric).bPerA))).toBe(true);
    expect([row.wanted, row.best.ratio, row.best.offRatio, row.best.inside, row.best.teeth]).toEqual([
      '5.0000 : 1',
      '14 : 3 = 4.6667',
      '7.14\u00A0% B-rich',
      false,
      '15 to 35',
    ]);
    expect(flagWords(row)).toBe('L5 laminating resin, 7.14\u00A0% B-rich, outside');
    expect(row.best.flow).toMatch(/^[\d.]+ to [\d.]+\u00A0cc\/min$/);
  });
  test('where nothing can be built it says so', () => {
    expect(flagWords(materialReach(planOf('l5'), null, metric))).toBe('L5 laminating resin: nothing can be built');
  });
  test('limits turn round: the most B is the low end', () => {
    const limits = limitsOnRule(planOf('l5'));
    expect(limits?.low).toBeCloseTo(5 / 1.015, 12);
    expect(limits?.high).toBeCloseTo(5 / 0.985, 12);
  });
});
