import { describe, expect, test } from 'vitest';
import { addToRack } from '../../core/src/file/addToRack.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { writeShopFile } from '../../core/src/file/write.ts';
import { known, NOT_GIVEN } from '../../core/src/given.ts';
import { ratioOf } from '../../core/src/ratio.ts';
import { demoText, demoWith, GONE, opened } from './shop.ts';

const wheel = (teeth: number, size = '08B') => ({ kind: 'chain', size, teeth, bore_m: known(ratioOf(25, 1000)) });
const rows = (text: string, ...wheels: readonly ReturnType<typeof wheel>[]) => {
  const file = opened(text);
  const before = file.racks[0]?.pieces.length ?? 0;
  addToRack(file, 'bench-1', wheels);
  expect(readShopFile(writeShopFile(file, 'test')).ok).toBe(true);
  return { file, fresh: file.racks[0]?.pieces.slice(before) };
};

describe('wheels that were bought are laid on the rack of the machine', () => {
  test('in a row of their own, without part number and place', () => {
    expect(rows(demoText(), wheel(14)).fresh).toEqual([
      { id: '08b-14', kind: 'chain', size: '08B', teeth: 14, quantity: 1, bore: { value: '25', unit: 'mm' } },
    ]);
  });
  test('two of one kind in one row, and one that is there already in its row, which keeps part number and place', () => {
    const { file, fresh } = rows(demoText(), wheel(14), wheel(14), wheel(17));
    expect(fresh?.map(({ teeth, quantity }) => [teeth, quantity])).toEqual([[14, 2]]);
    expect(file.racks[0]?.pieces.find(({ id }) => id === '08b-17')).toMatchObject({ quantity: 3, part: '0817-25', place: 'R1-03' });
  });
  test('another bore is another row, and a blank one has none', () => {
    const file = opened(demoText());
    const before = file.racks[0]?.pieces.length ?? 0;
    addToRack(file, 'bench-1', [
      { ...wheel(17), bore_m: known(ratioOf(20, 1000)) },
      { ...wheel(17), bore_m: NOT_GIVEN },
    ]);
    expect(file.racks[0]?.pieces.slice(before).map(({ id, bore }) => [id, bore?.value])).toEqual([
      ['08b-17-2', '20'],
      ['08b-17-3', undefined],
    ]);
  });
  test('a machine without a rack gets one', () => {
    const file = opened(demoWith([['machines', 0, 'rack'], GONE], [['racks', 1], { id: 'rack-1', name: 'Spare', pieces: [] }]));
    addToRack(file, 'bench-1', [wheel(14)]);
    expect([file.machines[0]?.rack, file.racks[2]?.id, file.racks[2]?.pieces.length]).toEqual(['rack-2', 'rack-2', 1]);
  });
  test('a machine that is not there is refused', () => {
    expect(() => addToRack(opened(demoText()), 'bench-9', [wheel(14)])).toThrow(RangeError);
  });
});
