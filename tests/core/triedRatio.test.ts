import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ratioOf, whole } from '../../core/src/ratio.ts';
import { MOST_STEPS, type RatioWriting, readTried, slidText, stepsOf, triedByVolume, writingOf } from '../../core/src/triedRatio.ts';
import { demoPlan } from './sheet/demoSheet.ts';

const writing = (a: number, b: number, perHundred = false): RatioWriting => ({ partsA: whole(a), partsB: whole(b), perHundred });
const read = (text: string, of: RatioWriting) => {
  const tried = readTried(text, of);
  return tried.ok ? tried.value.toFraction() : tried.expected;
};

describe('a ratio to be tried', () => {
  test.each([
    ['100 : 45', '9/20'],
    ['2,5:1', '2/5'],
    ['38B:100A', '19/50'],
  ])('"%s" is %s B per A [arithmetic]', (text, bPerA) => expect(read(text, writing(100, 45))).toBe(bPerA));
  test('a number alone is a ratio only where the sheet writes B per 100 A', () => {
    expect(read('38,9', writing(100, 45, true))).toBe('389/1000');
    expect(read('38.9', writing(100, 45))).toContain('"38.9" has only one part. Expected A to B');
    expect(read('100 : 45', writing(100, 38, true))).toBe('9/20');
  });
  test.each([
    ['-3', '"-3" is not above zero. Expected parts of B per 100 A'],
    ['ten', 'is not a number'],
    ['4:1:1', '"4:1:1" has three parts. Expected A to B as metered'],
    ['', 'Expected'],
  ])('"%s" is refused with what was expected', (text, said) => expect(read(text, writing(100, 38, true))).toContain(said));
});

test('by volume as run, the sheet’s own ratio is the plan’s, and twice the B is twice [demo, E12: 2.1723 : 1]', () => {
  const plan = demoPlan({ selection: { machine: 'bench-1', material: 'e12' } });
  expect(triedByVolume(plan, ratioOf(389, 1000)).equals(plan.mix.wantedBPerA)).toBe(true);
  expect(triedByVolume(plan, ratioOf(389, 500)).equals(plan.mix.wantedBPerA.mul(2))).toBe(true);
  expect(writingOf(plan, true)).toEqual({ partsA: whole(100), partsB: ratioOf(389, 10), perHundred: true });
});

describe('the slide', () => {
  test.each([
    [writing(100, 45), 0, '100 : 45'],
    [writing(100, 45), -10, '100 : 45.45'],
    [writing(100, 45, true), 10, '44.55'],
    [writing(4, 1), 10, '4.04 : 1'],
    [writing(4, 1), -MOST_STEPS, '3.334 : 1'],
    [writing(1, 1), 1, '1 : 0.999'],
    [writing(2, 12345), -1, '2 : 12357'],
    [writing(2, 32345), -1, '2 : 32380'],
  ])('%o, %i steps: "%s" [x · 1.001 a step, four digits, or five that begin with 1]', (of, steps, text) =>
    expect(slidText(of, steps, '.')).toBe(text),
  );
  test('a decimal comma is written and read', () => {
    expect(slidText(writing(100, 45), -10, ',')).toBe('100 : 45,45');
    expect(read('100 : 45,45', writing(100, 45))).toBe('909/2000');
  });
  test('where it stands still, a short fraction stays exact and a long one is told by seven digits', () => {
    const resting = (partsB: RatioWriting['partsB']) => slidText({ partsA: whole(100), partsB, perHundred: false }, 0, '.');
    expect(resting(ratioOf(125, 3))).toBe('100 : 125/3');
    expect(resting(ratioOf(1_000_003, 24_000))).toBe('100 : 41.66679');
  });
  test('what it writes lies where it was written, so that no key is ever lost [property]', () => {
    const part = fc.integer({ min: 1, max: 99_999 });
    const anywhere = fc.integer({ min: -MOST_STEPS, max: MOST_STEPS });
    fc.assert(
      fc.property(part, part, fc.boolean(), anywhere, (a, b, perHundred, steps) => {
        const of = perHundred ? writing(100, b, true) : writing(a, b);
        const tried = readTried(slidText(of, steps, '.'), of);
        expect(tried.ok && stepsOf(of, tried.value)).toBe(steps);
      }),
      { numRuns: 2000 },
    );
  });
  test('beyond its ends it stands at them', () => {
    expect(stepsOf(writing(1, 1), whole(3))).toBe(-MOST_STEPS);
    expect(stepsOf(writing(1, 1), ratioOf(1, 3))).toBe(MOST_STEPS);
  });
});
