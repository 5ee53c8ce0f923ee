import { describe, expect, test } from 'vitest';
import { demo, demoPlan, demoRefused, E12, ONE, planned, refused, short } from './demoPlan.ts';
import { type Change, changed, GONE, smallest } from './shop.ts';

describe('which machine, material and rack', () => {
  test('by id', () => {
    const { machine, material, rack } = demoPlan({ machine: 'bench-2', material: 'l5', rack: 'main' });
    expect([machine.id, material.id, rack?.id]).toEqual(['bench-2', 'l5', 'main']);
  });
  test('the only one there is, without being named', () => {
    const { machine, material, rack } = planned(smallest({ ratio: { basis: 'volume', parts: '2:1' } }), {});
    expect([machine.id, material.id, rack]).toEqual(['bench', 'mix', null]);
  });
  test('where there are several, or not that one, the message lists them', () => {
    expect(demoRefused({})).toEqual([
      'machines: Say which machine is meant; there are: bench-1, bench-2.',
      'materials: Say which material is meant; there are: e12, u40, l5.',
    ]);
    expect(demoRefused({ machine: 'bench-9', material: 'glue', rack: 'cellar' })).toEqual([
      'machines: There is no machine with the id "bench-9"; there are: bench-1, bench-2.',
      'materials: There is no material with the id "glue"; there are: e12, u40, l5.',
      'racks: There is no rack with the id "cellar"; there are: main.',
    ]);
  });
  test('where there is none', () => {
    const empty = changed(demo, [['machines'], []], [['materials'], []]);
    expect(refused(empty, {})).toEqual([
      'machines: Say which machine is meant; the file holds none.',
      'materials: Say which material is meant; the file holds none.',
    ]);
  });

  const spare = { id: 'spare', name: 'Spare rack', pieces: [] };
  const unnamed: Change = [[...ONE, 'rack'], GONE];
  test("the rack asked for, else the machine's own, else the only one", () => {
    const two: Change = [['racks', 1], spare];
    expect(demoPlan({ ...E12, rack: 'spare' }, two).rack?.id).toBe('spare');
    expect(demoPlan(E12, two).rack?.id).toBe('main');
    expect(demoPlan(E12, unnamed).rack?.id).toBe('main');
    expect(demoPlan(E12, [[...ONE, 'rack'], 'spare'], two).pieces).toEqual([]);
  });
  test('where no rack is named among several, only the fitted wheels are at hand, and that is said', () => {
    const plan = demoPlan(E12, unnamed, [['racks', 1], spare]);
    expect([plan.rack, plan.pieces]).toEqual([null, []]);
    expect(short(plan.findings)).toEqual([
      'machine.rack notes: No rack is named: only the fitted wheels are at hand. There are: main, spare.',
    ]);
    expect(short(demoPlan({ ...E12, teeth: { from: 15, to: 40 } }, unnamed, [['racks', 1], spare]).findings)).toEqual([]);
    expect(short(planned(smallest({ ratio: { basis: 'volume', parts: '2:1' } }), {}).findings)).toContain(
      'machine.rack notes: No rack is named: only the fitted wheels are at hand.',
    );
  });
});
