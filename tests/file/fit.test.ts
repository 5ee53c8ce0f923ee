import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fitOption } from '../../core/src/file/fit.ts';
import { nextNumber } from '../../core/src/file/nextNumber.ts';
import { fittedPumps, planOption, readShopFile, resolve, type ShopFile, type Teeth } from '../../core/src/index.ts';

const say = { decimal: '.', system: 'metric' } as const;

function demo(): ShopFile {
  const outcome = readShopFile(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  if (!outcome.ok) throw new Error('the demo does not open');
  return outcome.value;
}

function mount(file: ShopFile, machine: string, teeth: readonly Teeth[]): void {
  const plan = resolve(file, { machine, material: 'e12' }, say);
  if (!plan.ok) throw new Error('the demo does not resolve');
  fitOption(file, machine, 'main', planOption(plan.value, fittedPumps(plan.value), teeth, say));
}

const quantity = (file: ShopFile, size: string, teeth: number) =>
  file.racks[0]?.pieces.filter((piece) => piece.size === size && piece.teeth === teeth).map((piece) => piece.quantity);
const pieces = (file: ShopFile) => file.racks[0]?.pieces.reduce((sum, piece) => sum + piece.quantity, 0);

test('new wheels leave the rack, old ones return, a new row where there is none', () => {
  const file = demo();
  mount(file, 'bench-1', [{ driver: 23, driven: 25 }]);
  const stage = file.machines[0]?.stages[0];
  expect([stage?.driver.teeth, stage?.driven.teeth, stage?.pitches, stage?.centreNow]).toEqual([
    23,
    25,
    64,
    { value: '253.97', unit: 'mm' },
  ]);
  expect([quantity(file, '08B', 23), quantity(file, '08B', 25), quantity(file, '08B', 30)]).toEqual([[0], [0], [2]]);
  expect(file.racks[0]?.pieces.at(-1)).toMatchObject({ size: '08B', teeth: 21, quantity: 1, bore: { value: '25', unit: 'mm' } });
});

test('a change and its way back leave the rack with the same number of pieces of each size', () => {
  const file = demo();
  const before = pieces(file);
  mount(file, 'bench-1', [{ driver: 23, driven: 25 }]);
  expect(pieces(file)).toBe(before);
  mount(file, 'bench-1', [{ driver: 21, driven: 30 }]);
  expect(pieces(file)).toBe(before);
  expect([quantity(file, '08B', 23), quantity(file, '08B', 25), quantity(file, '08B', 30), quantity(file, '08B', 21)]).toEqual([
    [1],
    [1],
    [1],
    [0],
  ]);
});

test('two wheels that change places never reach the rack', () => {
  const file = demo();
  const before = JSON.stringify(file.racks);
  mount(file, 'bench-2', [
    { driver: 24, driven: 20 },
    { driver: 20, driven: 23 },
  ]);
  // The 20 and the 24 of s1 swap ends; the rack also holds one of each, which may go on instead: either way nothing is lost.
  expect(pieces(file)).toBe(JSON.parse(before)[0].pieces.reduce((sum: number, piece: { quantity: number }) => sum + piece.quantity, 0));
  expect(file.machines[1]?.stages[0]?.driver.teeth).toBe(24);
});

test('two wheels of one stage that change places come from the machine: the rack stays as it is', () => {
  const file = demo();
  const before = structuredClone(file.racks);
  mount(file, 'bench-1', [{ driver: 30, driven: 21 }]);
  const stage = file.machines[0]?.stages[0];
  expect([stage?.driver.teeth, stage?.driven.teeth, stage?.pitches]).toEqual([30, 21, 66]);
  expect([pieces(file), file.racks[0]?.pieces.length]).toEqual([
    before[0]?.pieces.reduce((sum, piece) => sum + piece.quantity, 0),
    before[0]?.pieces.length,
  ]);
});

test('the file after a change is still a sound shop file', () => {
  const file = demo();
  mount(file, 'bench-2', [
    { driver: 27, driven: 17 },
    { driver: 20, driven: 23 },
  ]);
  expect(readShopFile(JSON.stringify(file)).ok).toBe(true);
  expect(new Set(file.racks[0]?.pieces.map((piece) => piece.id)).size).toBe(file.racks[0]?.pieces.length);
});

test('sheets are numbered through, whatever else the shop has typed as a number', () => {
  expect(nextNumber([])).toBe('0001');
  expect(nextNumber([{ number: '0007' }, { number: 'B-12' }, { number: '3' }])).toBe('0008');
});
