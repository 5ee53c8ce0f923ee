import { expect, test } from 'vitest';
import { ratiowright } from './run.ts';

interface ReachJson {
  readonly distinctRatios: number;
  readonly covered_percent: number;
  readonly worst: { readonly worstTarget: { readonly ratioAPerBByVolume: { readonly exact: string } } };
  readonly ratios: readonly { readonly ratioAPerBByVolume: { readonly exact: string }; readonly stages: readonly unknown[] }[];
  readonly gaps: readonly unknown[];
}
const demo = ['reach', 'demo.ratiowright', '--machine', 'bench-1', '--material', 'e12'] as const;

test('what Bench 1 of the invented example can make from 1:1 to 5:1; exit 1 as long as a gap is wider than the tolerance', () => {
  const ran = ratiowright(...demo, '--window', '1:5', '--tolerance', '2');
  expect([ran.exit, ran.err]).toEqual([1, '']);
  expect(ran.out).toContain('window 1 : 1 to 5 : 1, tolerance 2.000 %');
  expect(ran.out).toMatch(/^in the window +191 ratios$/m);
  expect(ran.out).toMatch(/^within tolerance +95\.42 % of the window/m);
  expect(ran.out).toMatch(/^worst target +5 : 1, 7\.143 % off, above the largest, 14 : 3$/m);
  expect(ran.out).toMatch(/^widest gap +35 : 8 to 14 : 3: 140 : 31 is 3\.226 % off$/m);
});
test('exit 0 where all of the window lies within the tolerance, which is 2 % if left out', () => {
  const ran = ratiowright(...demo, '--window', '2:2.5');
  expect(ran.exit).toBe(0);
  expect(ran.out).toContain('No gap is wider than the tolerance.');
});
test('JSON lists every ratio of the window with its first option, and no more gaps than rows', () => {
  const found = JSON.parse(ratiowright(...demo, '--window', '1:5', '--json', '--rows', '1').out) as ReachJson;
  expect([found.distinctRatios, found.ratios.length, found.gaps.length]).toEqual([191, 191, 1]);
  expect(found.covered_percent).toBeCloseTo(95.42, 2);
  expect(found.worst.worstTarget.ratioAPerBByVolume.exact).toBe('5/1');
  expect([found.ratios[0]?.ratioAPerBByVolume.exact, found.ratios.at(-1)?.ratioAPerBByVolume.exact]).toEqual(['1/1', '14/3']);
  expect(found.ratios[0]?.stages).toHaveLength(1);
});
test('exit 2 with everything that is wrong with window and tolerance', () => {
  const ran = ratiowright(...demo, '--window', '5:1', '--tolerance', '100');
  expect([ran.exit, ran.out]).toEqual([2, '']);
  expect(ran.err).toContain('--window takes two numbers above 0, the lower first, as 1:5, not "5:1".');
  expect(ran.err).toContain('--tolerance takes per cent from 0 to less than 100, not "100".');
  expect(ratiowright(...demo).err).toContain('reach needs --window LO:HI');
});
