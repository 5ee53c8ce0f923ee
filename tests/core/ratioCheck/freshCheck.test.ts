import { describe, expect, test } from 'vitest';
import type { ShopFile } from '../../../core/src/index.ts';
import { freshCheck, isOn, lastFitted, nextCheckId } from '../../../core/src/ratioCheck/freshCheck.ts';
import { takeCatches } from '../../../core/src/ratioCheck/takeCatches.ts';
import { demoFile } from './demoChecks.ts';
import { typed } from './written.ts';

const machineOf = (file: ShopFile, at = 0) => {
  const machine = file.machines[at];
  if (machine === undefined) throw new RangeError('no machine');
  return machine;
};
const sheetOf = (file: ShopFile) => {
  const sheet = file.changeSheets[0];
  if (sheet === undefined) throw new RangeError('no sheet');
  return sheet;
};

describe('a check before anything is written', () => {
  test('proves the sheet that was fitted last, with scale and turns of the last kept check', () => {
    const file = demoFile();
    expect(freshCheck(file, machineOf(file))).toEqual({
      machine: 'bench-1',
      changeSheet: 'sheet-0001',
      runBy: 'turns',
      turns: '20',
      step: '0.1',
      weighing: 'net',
      catches: [
        { A: {}, B: {} },
        { A: {}, B: {} },
        { A: {}, B: {} },
      ],
    });
  });

  test('the last kept check is that of the latest day: a tared scale, seconds at a dial', () => {
    const file = demoFile();
    const [first] = file.ratioChecks;
    if (first === undefined) throw new RangeError('no check');
    first.date = '2026-12-01';
    first.run = { time: { value: '12', unit: 's' }, dial: { value: '80', unit: '%' } };
    first.scale = { step: { value: '0.5', unit: 'oz' }, tared: true };
    expect(freshCheck(file, machineOf(file))).toMatchObject({ runBy: 'time', time: '12', dial: '80', step: '0.5 oz', weighing: 'tared' });
  });

  test('gross is weighed again where it was weighed in any catch of the last check, on either side', () => {
    const g = (value: string) => ({ value, unit: 'g' });
    const net = { net: g('100') };
    const gross = { gross: g('112'), tare: g('12') };
    const weighing = (...catches: readonly { readonly A: object; readonly B: object }[]) => {
      const file = demoFile();
      for (const check of file.ratioChecks) check.catches = [...catches];
      return freshCheck(file, machineOf(file)).weighing;
    };
    expect([weighing({ A: net, B: net }), weighing({ A: gross, B: net }), weighing({ A: net, B: gross })]).toEqual([
      'net',
      'gross',
      'gross',
    ]);
    expect(weighing({ A: net, B: net }, { A: gross, B: net })).toBe('gross');
  });

  test('a machine that was never checked: its turns for a catch, gross and tare, and no step', () => {
    const file = demoFile();
    const bench = machineOf(file, 1);
    bench.catchTurns = 12;
    const fresh = freshCheck(file, bench);
    expect([fresh.turns, fresh.weighing, fresh.step, fresh.changeSheet]).toEqual(['12', 'gross', undefined, undefined]);
  });
});

describe('the sheet that was fitted last', () => {
  test('is not what is on once a sprocket was changed by hand', () => {
    const file = demoFile();
    const bench = machineOf(file);
    expect(isOn(sheetOf(file).mounted, bench)).toBe(true);
    const [stage] = bench.stages;
    if (stage !== undefined) stage.driver.teeth = 22;
    expect(lastFitted(file.changeSheets, bench)).toBeNull();
  });

  test('of two, the one of the later day; one that was only printed does not count', () => {
    const file = demoFile();
    const sheet = sheetOf(file);
    const again = { ...sheet, id: 'sheet-0002', number: '0002', fittedOn: '2026-10-01' };
    const { fittedOn: _, ...printed } = { ...sheet, id: 'sheet-0003', number: '0003' };
    expect(lastFitted([again, sheet, printed], machineOf(file))?.id).toBe('sheet-0002');
  });
});

test('checks are numbered on from the largest', () => {
  expect(nextCheckId([])).toBe('check-0001');
  expect(nextCheckId([{ id: 'check-0009' }, { id: 'check-0003' }, { id: 'mine' }])).toBe('check-0010');
});

describe('catches out of a table', () => {
  const g = (value: string, unit = 'g') => ({ value, unit });
  test('take the place of those before, each unit kept, and show the boxes they need', () => {
    const check = typed([['1', '2']], { weighing: 'net' });
    const rows = [
      { A: { gross: g('256.9'), tare: g('12.3'), volume: g('240', 'cc') }, B: { gross: g('4', 'oz'), tare: g('0') } },
      { A: {}, B: {}, leftOut: 'spilled' },
    ];
    expect(takeCatches(check, rows)).toBeNull();
    expect([check.weighing, check.volumes]).toEqual(['gross', true]);
    expect(check.catches).toEqual([
      { A: { gross: '256.9', tare: '12.3', volume: '240' }, B: { gross: '4 oz', tare: '0' } },
      { A: {}, B: {}, leftOut: 'spilled' },
    ]);
  });

  test('gross in some and net in others are refused, and nothing is changed', () => {
    const check = typed([['1', '2']]);
    const before = structuredClone(check);
    expect(takeCatches(check, [{ A: { gross: g('1') }, B: { net: g('2') } }])).toContain('write them all one way');
    expect(check).toEqual(before);
  });

  test('net weights leave a tared scale what it is', () => {
    const check = typed([], { weighing: 'tared' });
    takeCatches(check, [{ A: { net: g('1') }, B: { net: g('2') } }]);
    expect(check.weighing).toBe('tared');
  });
});
