import { expect, test } from 'vitest';
import { takeTried } from '../../core/src/file/takeTried.ts';
import { ratioOf } from '../../core/src/ratio.ts';
import { demoFile, demoPlan } from '../core/sheet/demoSheet.ts';

type Row = Parameters<typeof takeTried>[0];
const row = (more: Partial<Row>): Row => ({ id: 'm', name: 'M', A: {}, B: {}, ...more });
const taken = (more: Partial<Row>, text: string, times = ratioOf(10, 9)) => {
  const changed = row(more);
  takeTried(changed, text, times);
  return { ratio: changed.ratio, otherRatio: changed.otherRatio };
};

test('stands as it was typed, in place of the one before', () => {
  expect(taken({ ratio: { parts: '100:45', basis: 'weight' } }, ' 100 : 50 ').ratio).toEqual({ parts: '100 : 50', basis: 'weight' });
  expect(taken({ ratio: { perHundredA: '45', basis: 'volume' } }, '50').ratio).toEqual({ perHundredA: '50', basis: 'volume' });
  expect(taken({ ratio: { perHundredA: '45', basis: 'volume' } }, '2 : 1').ratio).toEqual({ parts: '2 : 1', basis: 'volume' });
});
test('a third part keeps its share of its tank [arithmetic]', () => {
  expect(taken({ ratio: { parts: '4:1:1', thirdInto: 'B' } }, '9 : 5').ratio).toEqual({ parts: '4 : 10/9 : 10/9', thirdInto: 'B' });
  expect(taken({ ratio: { parts: '4:1:1', thirdInto: 'A' } }, '9 : 2').ratio).toEqual({ parts: '4 : 10/9 : 1', thirdInto: 'A' });
});
test('a second ratio moves along [arithmetic]', () => {
  const both: Partial<Row> = { ratio: { parts: '100:45', basis: 'weight' }, otherRatio: { parts: '2:1', basis: 'volume' } };
  expect(taken(both, '100:50').otherRatio).toEqual({ parts: '2 : 10/9', basis: 'volume' });
});
test('a ratio from chemistry, or a text that is none, is our mistake', () => {
  expect(() => taken({ chemistry: {} }, '100:50')).toThrow(RangeError);
  expect(() => taken({ ratio: { parts: '1:1' } }, 'x')).toThrow(RangeError);
});
test('the plan then wants just what was tried [demo, E12]', () => {
  const selection = { machine: 'bench-1', material: 'e12' };
  const before = demoPlan({ selection });
  const material = demoFile().materials.findIndex(({ id }) => id === 'e12');
  const times = ratioOf(420, 389);
  const after = demoPlan({
    selection,
    change: (file) => {
      const changed = file.materials[material];
      if (changed !== undefined) takeTried(changed, '100 : 42', times);
    },
  });
  expect(after.mix.wantedBPerA.equals(before.mix.wantedBPerA.mul(times))).toBe(true);
  expect(after.mix.sheet.written).toBe('100 : 42 by weight');
});
