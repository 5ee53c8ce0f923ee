import { expect, test } from 'vitest';
import { ratioSpan } from '../../../core/src/quick/ratioSpan.ts';

const one = { low: 1, high: 1 };
const wide = { low: 1 / 64, high: 64 };
const relative = (found: number, wanted: number) => Math.abs(found / wanted - 1);

test('a limit on one pump ends the ratios there, a little beyond and not before [the definition]', () => {
  const { low, high } = ratioSpan((a, b) => b <= 16 * a, one, wide, 1);
  expect(high).toBeGreaterThanOrEqual(16);
  expect(relative(high, 16)).toBeLessThan(3e-9);
  expect(low).toBeLessThanOrEqual(1 / 64);
  expect(relative(low, 1 / 64)).toBeLessThan(3e-9);
});
test('the same where pump A is the one that varies, times what the pumps put in', () => {
  const { low, high } = ratioSpan((a) => a >= 0.1 && a <= 2, wide, one, 3);
  expect(relative(low, 3 / 2)).toBeLessThan(3e-9);
  expect(relative(high, 30)).toBeLessThan(3e-9);
});
test('nothing is ruled out where both vary, or where nothing was found to pass', () => {
  for (const span of [ratioSpan((a, b) => b <= a, { low: 1, high: 2 }, wide, 1), ratioSpan(() => false, { low: 1, high: 2 }, wide, 1)]) {
    expect(relative(span.low, 1 / 128)).toBeLessThan(3e-9);
    expect(relative(span.high, 64)).toBeLessThan(3e-9);
  }
  expect(relative(ratioSpan(() => false, one, wide, 1).high, 64)).toBeLessThan(3e-9);
});
