import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactText, float, ratioOf } from '../../core/src/ratio.ts';
import { movedWindow, type ReachWindow, readTolerance, readWindowEnd, windowAround, zoomedWindow } from '../../core/src/reachWindow.ts';

const window = (low: string, high: string): ReachWindow => {
  const [a, b] = [readWindowEnd(low), readWindowEnd(high)];
  if (!a.ok || !b.ok) throw new Error('no window');
  return { low: a.value, high: b.value };
};
const texts = ({ low, high }: ReachWindow) => [exactText(low), exactText(high)];

describe('an end of a window [our choice]', () => {
  test.each([
    ['5', '5/1'],
    ['2,5', '5/2'],
    ['14:3', '14/3'],
    ['100 : 45', '20/9'],
  ])('%s is %s', (text, exact) => {
    const read = readWindowEnd(text);
    expect(read.ok && exactText(read.value)).toBe(exact);
  });
  test.each(['0', '-1', 'wide', '', '1:2:3', '10001', '1:10001', '5:'])('"%s" is refused, with what was expected', (text) => {
    const read = readWindowEnd(text);
    expect(read.ok ? read.value : read.expected).toMatch(/Expected .+like|Expected .+as /);
  });
});

test.each([
  ['2', '1/50'],
  ['0,5 %', '1/200'],
  ['50', '1/2'],
])('a tolerance of %s is %s', (text, exact) => {
  const read = readTolerance(text);
  expect(read.ok && exactText(read.value)).toBe(exact);
});
test.each(['0', '51', '-2', 'two', '2 mm'])('"%s" is no tolerance', (text) => {
  expect(readTolerance(text).ok).toBe(false);
});

describe('moving and zooming [a log scale]', () => {
  test('half its width to the right, and twice as wide about its middle', () => {
    expect(texts(movedWindow(window('1', '4'), 0.5))).toEqual(['2/1', '8/1']);
    expect(texts(zoomedWindow(window('1', '4'), 0.5, 2))).toEqual(['1/2', '8/1']);
    expect(texts(zoomedWindow(window('1', '4'), 0, 0.5))).toEqual(['1/1', '2/1']);
  });
  test('it stays a window, within reach of its own fields, however it is moved and zoomed', () => {
    const share = fc.double({ min: -3, max: 3, noNaN: true });
    const times = fc.double({ min: 0.01, max: 30, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(share, share, times), { maxLength: 12 }), (steps) => {
        const end = steps.reduce((now, [by, about, wide]) => zoomedWindow(movedWindow(now, by), about, wide), window('1', '5'));
        expect(end.low.compare(end.high)).toBeLessThan(0);
        for (const ratio of [end.low, end.high]) expect(readWindowEnd(exactText(ratio).replace('/', ':')).ok).toBe(true);
      }),
    );
  });
  test('zooming keeps the ratio it is done about, but for four digits', () => {
    const { low, high } = zoomedWindow(window('1', '5'), 0.3, 0.5);
    const about = (from: number, to: number) => from * (to / from) ** 0.3;
    expect(about(float(low), float(high)) / about(1, 5)).toBeCloseTo(1, 3);
  });
});

test.each([
  [['1/1', '14/3'], '1/1', '5/1'],
  [['3/7', '100/9'], '2/5', '20/1'],
  [['2/1'], '2/1', '4/1'],
  [['12/1', '95/1'], '10/1', '100/1'],
])('around %j: %s to %s', (ratios, low, high) => {
  const [first, ...rest] = ratios.map((text) => ratioOf(BigInt(text.split('/')[0] ?? ''), BigInt(text.split('/')[1] ?? '')));
  if (first === undefined) throw new Error('no ratio');
  expect(texts(windowAround([first, ...rest]))).toEqual([low, high]);
});
