import { describe, expect, test } from 'vitest';
import { driveTree } from '../../core/src/file/driveTree.ts';
import { freshId } from '../../core/src/file/freshId.ts';

type Drive = Parameters<typeof driveTree>[0];
const by = (id: string, shaft: string, stage?: string) => ({ id, turnedBy: stage === undefined ? { shaft } : { shaft, stage } });
const drive = (shafts: Drive['shafts'], a: string, b: string): Drive => ({
  shafts,
  stages: shafts.flatMap(({ turnedBy }) => (turnedBy?.stage === undefined ? [] : [{ id: turnedBy.stage }])),
  A: { shaft: a },
  B: { shaft: b },
});

const direct = drive([{ id: 'motor' }, by('b', 'motor', 's')], 'motor', 'b');
const jackshaft = drive([{ id: 'motor' }, by('jack', 'motor', 'sJ'), by('a', 'jack', 'sA'), by('b', 'jack', 'sB')], 'a', 'b');

describe('shafts on a grid [drawn by hand]', () => {
  test('driveTree example: the motor carries pump A and turns pump B', () => {
    const tree = driveTree(direct);
    expect([tree.columns, tree.rows]).toEqual([2, 2]);
    expect(tree.pumps).toEqual([
      { side: 'A', column: 0, row: 0 },
      { side: 'B', column: 1, row: 1 },
    ]);
    expect(tree.links.map(({ stage, turns }) => [stage, turns])).toEqual([[0, 'B']]);
    expect(tree.shafts.map(({ shaft, row, lastRow }) => [shaft, row, lastRow])).toEqual([
      [0, 0, 1],
      [1, 1, 1],
    ]);
  });

  test('a jackshaft: what turns both pumps is told from what turns one', () => {
    const tree = driveTree(jackshaft);
    expect([tree.columns, tree.rows]).toEqual([3, 2]);
    expect(tree.links.map(({ stage, turns, to }) => [stage, turns, to.column, to.row])).toEqual([
      [0, 'both', 1, 0],
      [1, 'A', 2, 0],
      [2, 'B', 2, 1],
    ]);
  });

  test('no two things share a place, however the shafts branch', () => {
    const wide = drive([{ id: 'm' }, by('x', 'm', 's1'), by('y', 'm'), by('z', 'x', 's2'), by('u', 'x', 's3')], 'x', 'x');
    const tree = driveTree(wide);
    const places = [
      ...tree.links.map(({ to }) => `${to.column} ${to.row}`),
      ...tree.pumps.map(({ column, row }) => `pump ${column} ${row}`),
    ];
    expect(new Set(places).size).toBe(places.length);
    expect(tree.links.map(({ stage, turns }) => [stage, turns])).toEqual([
      [0, 'both'],
      [1, 'neither'],
      [2, 'neither'],
      [null, 'neither'],
    ]);
  });

  test('drives built alike have one shape, whatever their names', () => {
    const named = drive([{ id: 'p', turnedBy: { shaft: 'q', stage: 'x' } }, { id: 'q' }], 'q', 'p');
    expect(driveTree(named).shape).toBe(driveTree(direct).shape);
    expect(driveTree(jackshaft).shape).not.toBe(driveTree(direct).shape);
    expect(driveTree({ ...direct, A: { shaft: 'b' }, B: { shaft: 'motor' } }).shape).not.toBe(driveTree(direct).shape);
  });
});

test('freshId example', () => {
  expect(freshId([{ id: 'pump-1' }], 'pump')).toBe('pump-2');
  expect(freshId([], 'pump')).toBe('pump-1');
});
