import { describe, expect, test } from 'vitest';
import { fixed } from '../../../core/src/format.ts';
import { limitReadings } from '../../../core/src/help/limitReadings.ts';
import { say } from '../planFixture.ts';

const read = (ratio: string, low: string, high: string) =>
  limitReadings(ratio, low, high).map(({ definition, leastB, mostB }) => [definition, fixed(leastB, 2, say), fixed(mostB, 2, say)]);

describe('readings of limits', () => {
  test('100 : 45 ± 3 [worked by hand: 45 · 0.97 and 1.03; 45 / 1.03 and / 0.97; 28.0345 / 71.9655 and 34.0345 / 65.9655; 45 ± 3]', () => {
    expect(read('100:45', '-3', '3')).toEqual([
      ['% of B per A', '43.65', '46.35'],
      ['% of A per B', '43.69', '46.39'],
      ['points of B in the total', '38.96', '51.59'],
      ['parts of B', '42.00', '48.00'],
    ]);
  });
  test('the same ratio written small: only parts of B, which count as the sheet counts, differ', () => {
    expect(read('20:9', '-3', '3').slice(0, 3)).toEqual(read('100:45', '-3', '3').slice(0, 3));
    expect(read('20:9', '-3', '3')[3]).toEqual(['parts of B', '30.00', '60.00']);
  });
  test('a reading that would leave no A or no B is none', () => {
    expect(read('5:1', '-20', '20').map(([definition]) => definition)).toEqual(['% of B per A', '% of A per B']);
    expect(read('1:1', '-100', '5').map(([definition]) => definition)).toEqual([]);
  });
  test.each([
    ['100:45', '42', '48'],
    ['100:45', '', '3'],
    ['100:45', '-3', '3o'],
    ['4:1:1', '-3', '3'],
    ['100:', '-3', '3'],
    ['100:45', '0', '0'],
  ])('%s, %s to %s: no readings', (ratio, low, high) => {
    expect(read(ratio, low, high)).toEqual([]);
  });
});
