import { expect, test } from 'vitest';
import { ratiowright } from './run.ts';

interface ReachJson {
  readonly distinctRatios: number;
  readonly covered_percent: number;
  readonly worst: { readonly worstTarget: { readonly ratioAPerBByVolume: { readonly exact: string } } };
  readonly ratios: readonly {
    readonly ratioAPerBByVolume: { readonly exact: string };
    readonly stages: readonly unknown[];
    readonly flow: unknown;
  }[];
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
test('flow at each ratio of the window: in JSON always, in the text where it is asked for [displacement x speed, by hand]', () => {
  const { ratios } = JSON.parse(ratiowright(...demo, '--window', '4:5', '--json').out) as ReachJson;
  const four = ratios.find(({ ratioAPerBByVolume }) => ratioAPerBByVolume.exact === '4/1');
  // 12 cc/rev of A at 90 rpm and full dial are 1080 cc/min, and a quarter of that of B; the dial goes down to 20 %.
  expect(four?.flow).toEqual({ from: { value: 270, unit: 'cc/min' }, to: { value: 1350, unit: 'cc/min' } });
  const text = ratiowright(...demo, '--window', '4:5', '--ratios').out;
  expect(text).toMatch(/^4 : 1 +4\.0000 : 1 +4\.7336 : 1 +15 to 30 +1 +270\.0 to 1350\.0 cc\/min$/m);
  expect(ratiowright(...demo, '--window', '4:5').out).not.toContain('flow of A and B');
  expect(ratiowright(...demo, '--best', '--ratios')).toMatchObject({ exit: 2, out: '', err: '--ratios belongs to --window.\n' });
});
test('exit 2 with everything that is wrong with window and tolerance', () => {
  const ran = ratiowright(...demo, '--window', '5:1', '--tolerance', '100');
  expect([ran.exit, ran.out]).toEqual([2, '']);
  expect(ran.err).toContain('--window takes two numbers above 0, the lower first, as 1:5, not "5:1".');
  expect(ran.err).toContain('--tolerance takes per cent above 0 and below 100, not "100".');
  expect(ratiowright(...demo).err).toContain('reach needs --window LO:HI');
});
