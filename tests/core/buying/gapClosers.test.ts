import { describe, expect, it, test } from 'vitest';
import { type GapCloser, type GapClosers, gapClosers } from '../../../core/src/buying/index.ts';
import type { Plan } from '../../../core/src/plan.ts';
import { exactText, type Fraction, float, ONE, ratioOf } from '../../../core/src/ratio.ts';
import { demoPlan } from '../../file/demoPlan.ts';
import { diceOf } from '../search/randomProblem.ts';
import { type Kind, nameOf, randomShop } from './randomShop.ts';
import { choices, madeWith } from './slowPurchases.ts';

interface Targets {
  readonly low: Fraction;
  readonly high: Fraction;
}
interface Line {
  readonly wheels: string;
  readonly off: Fraction;
}

const built = (plan: Plan, wheels: readonly Kind[]): readonly Fraction[] =>
  madeWith(plan, wheels, false).flatMap(({ ratio, isBuildable }) => (isBuildable() ? [ratio] : []));

/** The nearest ratio serves a target; it is worst at an end of the targets or half way between two ratios. */
function worstOf(ratios: readonly Fraction[], { low, high }: Targets): Fraction {
  const sorted = ratios.toSorted((a, b) => a.compare(b));
  const middles = sorted.slice(1).map((ratio, index) => ratio.add(sorted[index] ?? ratio).div(2));
  const wanted = [low, ...middles.filter((one) => one.compare(low) > 0 && one.compare(high) < 0), high];
  const off = (target: Fraction) => sorted.map((ratio) => ratio.div(target).sub(1).abs()).reduce((a, b) => (a.compare(b) < 0 ? a : b));
  return wanted.map(off).reduce((a, b) => (a.compare(b) > 0 ? a : b));
}

/** The same answer by laying every wheel and every pair on the rack and listing all that can then be built. */
function everyCloser(plan: Plan, kinds: readonly Kind[], targets: Targets) {
  const left = (wheels: readonly Kind[]) => worstOf(built(plan, wheels), targets);
  const before = left([]);
  const alone = new Map(kinds.map((kind) => [kind, left([kind])]));
  const line = (wheels: readonly Kind[], off: Fraction): Line => ({ wheels: wheels.map(nameOf).sort().join('; '), off });
  const singles = [...alone].filter(([, off]) => off.compare(before) < 0).map(([kind, off]) => line([kind], off));
  const pairs = choices(kinds, 2).flatMap((wheels) => {
    const off = left(wheels);
    return wheels.every((kind) => off.compare(alone.get(kind) ?? before) < 0) ? [line(wheels, off)] : [];
  });
  return { before, singles, pairs };
}

/** By what they leave, then by name: the order among equals is that of the wheels. */
const sorted = (lines: readonly Line[]): readonly string[] =>
  lines.toSorted((a, b) => a.off.compare(b.off) || (a.wheels < b.wheels ? -1 : 1)).map(({ wheels, off }) => `${wheels}: ${exactText(off)}`);

const lineOf = ({ wheels, offRatio }: GapCloser): Line => ({
  wheels: wheels
    .map(({ size, teeth, bore_m }) => nameOf({ size, teeth, bore: bore_m.known ? bore_m.value.mul(1000).toString() : null }))
    .sort()
    .join('; '),
  off: offRatio,
});

describe('gapClosers against laying every wheel and every pair on the rack [slow twin]', () => {
  it.each([0, 30])('agrees on the gaps of 30 random shops from seed %i', (from) => {
    const told = { single: 0, pair: 0, beyond: 0, closed: 0 };
    for (let seed = from; seed < from + 30; seed++) {
      const dice = diceOf(seed);
      const { targets, wish, kinds: parts } = randomShop(dice);
      const [plan] = targets.map((target) => target.plan);
      if (plan === undefined) throw new Error('no target');
      const kinds = parts.filter((kind) => 'teeth' in kind);
      if (kinds.length === 0) continue;
      const ratios = [...new Map(built(plan, []).map((ratio) => [exactText(ratio), ratio])).values()].sort((a, b) => a.compare(b));
      const place = dice.between(0, ratios.length);
      const [below = null, above = null] = [ratios[place - 1], ratios[place]];
      if (below === null && above === null) continue;
      const low = (below ?? above ?? ONE).mul(below === null ? ratioOf(dice.between(60, 95), 100) : ratioOf(dice.between(98, 103), 100));
      const high = above === null ? low.mul(ratioOf(dice.between(105, 160), 100)) : above;
      if (low.compare(high) >= 0) continue;
      const window = { low, high, tolerance: ratioOf(dice.between(1, 8), 100) };
      const found: GapClosers = gapClosers(plan, { below, above }, window, wish.teeth);
      const inGap = { low: below !== null && below.compare(low) > 0 ? below : low, high };
      const slow = everyCloser(plan, kinds, inGap);
      expect(exactText(found.before.offRatio), `seed ${seed}`).toBe(exactText(slow.before));
      expect(found.singleCount, `seed ${seed}`).toBe(slow.singles.length);
      expect(sorted(found.singles.map(lineOf)), `seed ${seed}`).toEqual(sorted(slow.singles));
      const closes = slow.singles.some(({ off }) => off.compare(window.tolerance) <= 0);
      expect(found.singles.some((one) => one.closes)).toBe(closes);
      expect(found.pairCount, `seed ${seed}`).toBe(closes ? 0 : slow.pairs.length);
      const closing = (closes ? slow.singles : slow.pairs).filter(({ off }) => off.compare(window.tolerance) <= 0);
      expect(found.closingCount).toBe(closing.length);
      const kept = slow.pairs.map(({ off }) => off).sort((a, b) => a.compare(b));
      if (!closes) expect(found.pairs.map(({ offRatio }) => exactText(offRatio))).toEqual(kept.slice(0, 20).map(exactText));
      if (!closes && slow.pairs.length <= 20) expect(sorted(found.pairs.map(lineOf))).toEqual(sorted(slow.pairs));
      if (slow.singles.length > 0) told.single += 1;
      if (found.pairCount > 0) told.pair += 1;
      if (below === null || above === null) told.beyond += 1;
      if (closes) told.closed += 1;
    }
    // none of it is shown by gaps that nothing narrows
    for (const count of Object.values(told)) expect(count).toBeGreaterThan(0);
  });
});

const bench = demoPlan({ machine: 'bench-1', material: 'e12' });
const window = { low: ratioOf(1, 5), high: ONE, tolerance: ratioOf(1, 50) };
const words = ({ wheels, offRatio, worstTarget, closes }: GapCloser) => [
  wheels.map(({ size, teeth }) => `${size} ${teeth}`).join(' + '),
  (100 * float(offRatio)).toFixed(4),
  exactText(ONE.div(worstTarget)),
  closes,
];
const KINDS = Array.from({ length: 11 }, (_, i): Kind => ({ size: '08B', teeth: 30 + i, bore: '25' }));

test('Bench 1 (invented example), 35:8 to 14:3: one sprocket of 34 or of 36 teeth closes it', () => {
  const gap = { below: ratioOf(3, 14), above: ratioOf(8, 35) };
  const found = gapClosers(bench, gap, window, { from: 13, to: 40 });
  // 140:31 and 3.226 %, as the scenario states them
  expect([exactText(ONE.div(found.before.worstTarget)), exactText(found.before.offRatio)]).toEqual(['140/31', '1/31']);
  expect(found.singles.slice(0, 2).map(words)).toEqual([
    ['08B 34', '1.7774', '4760/1069', true],
    ['08B 36', '1.8182', '252/55', true],
  ]);
  expect([found.pairs, found.pairCount]).toEqual([[], 0]);
  const closing = KINDS.filter((kind) => worstOf(built(bench, [kind]), { low: gap.below, high: gap.above }).compare(window.tolerance) <= 0);
  expect(closing.map((kind) => nameOf(kind))).toEqual(['08B 34 25', '08B 36 25']);
});

test('Bench 1 (invented example), beyond 14:3: no single sprocket closes it, 13 teeth leave least; two do', () => {
  const found = gapClosers(bench, { below: null, above: ratioOf(3, 14) }, window, { from: 13, to: 40 });
  // 5:1 and 7.143 %, as the scenario states them
  expect([exactText(ONE.div(found.before.worstTarget)), exactText(found.before.offRatio)]).toEqual(['5/1', '1/14']);
  expect(found.singles.map(words)).toEqual([
    ['08B 13', '2.6738', '896/187', false],
    ['08B 37', '2.7778', '259/54', false],
    ['08B 14', '3.4483', '140/29', false],
    ['08B 36', '4.1667', '5/1', false],
  ]);
  expect(found.pairs.map(words)[0]).toEqual(['08B 36 + 08B 37', '1.4085', '336/71', true]);
});

test('a gap without neighbours is none', () => {
  expect(() => gapClosers(bench, { below: null, above: null }, window, null)).toThrow(RangeError);
});

test('asked to stop it stops, and progress never falls', () => {
  const gap = { below: null, above: ratioOf(3, 14) };
  expect(() => gapClosers(bench, gap, window, null, { cancelled: () => true })).toThrow('search cancelled');
  const steps: number[] = [];
  gapClosers(bench, gap, window, null, { progress: (done) => steps.push(done) });
  expect(steps.at(-1)).toBe(1);
  expect(steps).toEqual(steps.toSorted((a, b) => a - b));
});
