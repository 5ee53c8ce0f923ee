import { describe, expect, test } from 'vitest';
import { float, ONE } from '../../core/src/ratio.ts';
import { byVolume, expectPrinted, mixOf, refused } from './mixFixture.ts';

describe('limits', () => {
  const limited = (definition: string, low: string, high: string, parts = '100:33') => ({
    ratio: byVolume(parts),
    limits: { definition, low, high },
  });
  test('100 : 33, allowed 30 to 40: -9.09091 and +21.21212 %, and the sentence of the sheet [glossary note on tolerances; arithmetic]', () => {
    const { limits, limitsWritten } = mixOf(limited('parts of B', '30', '40'));
    expectPrinted(100 * float(limits?.low ?? ONE), '-9.09091');
    expectPrinted(100 * float(limits?.high ?? ONE), '21.21212');
    expect(limitsWritten).toBe('30 to 40 parts of B');
  });
  test.each([
    ['% of B per A', '1', '2', 'low', 'The low limit 1 lies above the target, which is 0; a deviation below carries a minus sign.'],
    ['% of B per A', '-2', '-1', 'high', 'The high limit -1 lies below the target, which is 0.'],
    ['% of B per A', '-100', '2', 'low', 'The low limit -100 would leave no B: it must be above −100.'],
    ['% of A per B', '-100', '2', 'low', 'The low limit -100 would leave no A: it must be above −100.'],
    ['points of B in the total', '-25', '2', 'low', 'The low limit -25 would leave no B: it must be above −25.'],
    ['points of B in the total', '-5', '75', 'high', 'The high limit 75 would leave no A: it must be below 75.'],
    ['parts of B', '2', '4', 'low', 'The low limit 2 lies above the target, which is 1.'],
    ['parts of B', '0.5', '0.9', 'high', 'The high limit 0.9 lies below the target, which is 1.'],
    ['parts of B', '0', '2', 'low', 'The low limit 0 would leave no B: it must be above 0.'],
  ])('%s, %s to %s on 3 : 1: refused at "%s"', (definition, low, high, end, said) => {
    expect(refused(limited(definition, low, high, '3:1'))).toEqual([`materials 0 limits ${end}: ${said}`]);
  });
  test('just inside those they are taken, and they need not lie about the middle', () => {
    for (const [definition, low, high] of [
      ['% of B per A', '-99.9', '0'],
      ['% of B per A', '0', '5'],
      ['% of A per B', '-99.9', '1000'],
      ['points of B in the total', '-24.9', '74.9'],
      ['parts of B', '0.001', '1'],
    ] as const) {
      const { limits } = mixOf(limited(definition, low, high, '3:1'));
      expect(limits?.low.compare(0) ?? 1, definition).toBeLessThanOrEqual(0);
      expect(limits?.high.compare(0) ?? -1, definition).toBeGreaterThanOrEqual(0);
    }
  });
  test('none given: none made up', () => {
    const { limits, limitsWritten } = mixOf({ ratio: byVolume('2:1') });
    expect([limits, limitsWritten]).toEqual([null, null]);
  });
});
