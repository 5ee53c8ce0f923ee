import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MachineRow } from '../../core/src/file/machine.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { trainsOf } from '../../core/src/file/shaftTree.ts';
import type { Place } from '../../core/src/finding.ts';
import { CHAIN_SIZES } from '../../core/src/tables/chainSizes.ts';
import { shopFiles } from './arbitraries.ts';
import { type Change, changed, demoText, demoWith, GONE, isPlace, lines, opened } from './shop.ts';

const demo: unknown = JSON.parse(demoText());
const ONE: Place = ['machines', 0];
const TWO: Place = ['machines', 1];

/** What stands against the demo with some changes; every finding blocks and points at something in that file. */
function refused(...changes: readonly Change[]): readonly string[] {
  const json = changed(demo, ...changes);
  const read = readShopFile(JSON.stringify(json));
  expect(read.ok).toBe(false);
  for (const { where, severity } of read.findings) {
    expect(severity).toBe('blocks');
    expect(isPlace(json, where), where.join(' ')).toBe(true);
  }
  return lines(read.findings);
}

describe('ids that are used twice', () => {
  const pump = { id: 'pb6', displacement: { value: '6', unit: 'cc/rev' } };
  const rack = { id: 'main', name: 'Spare rack', pieces: [] };
  test.each<[string, Change, string]>([
    ['machines', [[...TWO, 'id'], 'bench-1'], 'machines 1 id: The id "bench-1" is used twice.'],
    ['materials', [['materials', 2, 'id'], 'e12'], 'materials 2 id: The id "e12" is used twice.'],
    ['racks', [['racks', 1], rack], 'racks 1 id: The id "main" is used twice.'],
    ['shafts', [[...TWO, 'shafts', 2, 'id'], 'jack'], 'machines 1 shafts 2 id: The id "jack" is used twice.'],
    ['stages', [[...TWO, 'stages', 1, 'id'], 's1'], 'machines 1 stages 1 id: The id "s1" is used twice.'],
    ['pumps', [[...ONE, 'B', 'pumps', 1], pump], 'machines 0 B pumps 1 id: The id "pb6" is used twice.'],
    ['pieces', [['racks', 0, 'pieces', 27, 'id'], '08b-16'], 'racks 0 pieces 27 id: The id "08b-16" is used twice.'],
  ])('%s: only that is said', (_what, change, said) => {
    expect(refused(change)).toEqual([said]);
  });
  test('each time but the first is named', () => {
    const again: readonly Change[] = [3, 9, 12].map((index) => [['racks', 0, 'pieces', index, 'id'], '06b-30']);
    expect(refused(...again)).toEqual([9, 12, 27].map((index) => `racks 0 pieces ${index} id: The id "06b-30" is used twice.`));
  });
  test('sheets and quote pages are numbered apart, and each number stands once', () => {
    const sheet = {
      id: 'x-1',
      number: '1',
      date: '',
      machine: 'bench-1',
      material: 'e12',
      mounted: { pumps: { A: 'a', B: 'b' }, teeth: [] },
      lines: [],
    };
    expect(refused([['changeSheets'], [sheet, sheet]])).toEqual(['changeSheets 1 id: The id "x-1" is used twice.']);
    const quotes = refused([['quotePages'], [{ id: 'x-1' }, { id: 'x-1' }]]);
    expect(quotes).toContain('quotePages 1 id: The id "x-1" is used twice.');
    expect(quotes).toContain('quotePages 0 page: "page" is missing: an object in braces is expected.');
  });
  test('one id may stand in two lists, and in two machines', () => {
    expect(readShopFile(demoWith([['materials', 0, 'id'], 'bench-1'], [['racks', 0, 'pieces', 0, 'id'], 'motor'])).ok).toBe(true);
  });
});

describe('what points nowhere', () => {
  test.each<[string, Change, readonly string[]]>([
    ['a rack', [[...ONE, 'rack'], 'cellar'], ['machines 0 rack: There is no rack with the id "cellar".']],
    ['the shaft of a pump', [[...ONE, 'A', 'shaft'], 'axle'], ['machines 0 A shaft: There is no shaft with the id "axle".']],
    ['a fitted pump', [[...TWO, 'B', 'fitted'], 'pb9'], ['machines 1 B fitted: The fitted pump "pb9" is not among the pumps of side B.']],
    [
      'a turning shaft',
      [[...TWO, 'shafts', 1, 'turnedBy', 'shaft'], 'axle'],
      ['machines 1 shafts 1 turnedBy shaft: There is no shaft with the id "axle".'],
    ],
    [
      'a stage, which leaves another without a shaft',
      [[...ONE, 'shafts', 1, 'turnedBy', 'stage'], 's9'],
      ['machines 0 shafts 1 turnedBy stage: There is no stage with the id "s9".', 'machines 0 stages 0: The stage "s1" turns no shaft.'],
    ],
  ])('%s', (_what, change, said) => {
    expect(refused(change)).toEqual(said);
  });
});

describe('shafts that are no tree', () => {
  const shaft = (id: string, by: string) => ({ id, turnedBy: { shaft: by } });
  test.each<[string, readonly Change[], readonly string[]]>([
    [
      'a ring of two',
      [[[...TWO, 'shafts', 1, 'turnedBy', 'shaft'], 'pump-b']],
      [
        'machines 1 shafts 1 turnedBy shaft: The shafts jack, pump-b turn each other in a ring: every shaft must lead back to the motor shaft.',
      ],
    ],
    [
      'a ring through the motor shaft',
      [[[...TWO, 'shafts', 0, 'turnedBy'], { shaft: 'pump-b' }]],
      [
        'machines 1 shafts 0 turnedBy shaft: The shafts motor, pump-b, jack turn each other in a ring: every shaft must lead back to the motor shaft.',
      ],
    ],
    [
      'a shaft that turns itself',
      [[[...TWO, 'shafts', 1, 'turnedBy', 'shaft'], 'jack']],
      ['machines 1 shafts 1 turnedBy shaft: The shaft jack turns itself: every shaft must lead back to the motor shaft.'],
    ],
    [
      'a ring that no pump sits on, told once, without the shaft that hangs on it',
      [
        [[...ONE, 'shafts', 2], shaft('tail', 'left')],
        [[...ONE, 'shafts', 3], shaft('left', 'right')],
        [[...ONE, 'shafts', 4], shaft('right', 'left')],
      ],
      [
        'machines 0 shafts 3 turnedBy shaft: The shafts left, right turn each other in a ring: every shaft must lead back to the motor shaft.',
      ],
    ],
    [
      'two motor shafts',
      [
        [[...TWO, 'shafts', 1, 'turnedBy'], GONE],
        [[...TWO, 'shafts', 2, 'turnedBy', 'stage'], 's2'],
      ],
      [
        'machines 1 shafts: Only the motor shaft is turned by no other; here are 2: motor, jack.',
        'machines 1 stages 0: The stage "s1" turns no shaft.',
      ],
    ],
    [
      'a stage that turns two shafts, and so another turns none',
      [[[...TWO, 'shafts', 2, 'turnedBy', 'stage'], 's1']],
      [
        'machines 1 shafts 2 turnedBy stage: The stage "s1" already turns the shaft "jack".',
        'machines 1 stages 1: The stage "s2" turns no shaft.',
      ],
    ],
    [
      'a stage that turns none',
      [[[...ONE, 'stages', 1], { id: 's7', kind: 'chain', size: '40', driver: {}, driven: {} }]],
      ['machines 0 stages 1: The stage "s7" turns no shaft.'],
    ],
  ])('%s', (_what, changes, said) => {
    expect(refused(...changes)).toEqual(said);
  });
  test('a shaft coupled straight to another, and one that carries no pump, are fine', () => {
    const more: readonly Change[] = [
      [[...ONE, 'shafts', 2], shaft('fan', 'pump-b')],
      [[...ONE, 'B', 'shaft'], 'fan'],
      [[...TWO, 'shafts', 3], shaft('spare', 'motor')],
    ];
    const file = opened(demoWith(...more));
    expect(file.machines.map(trainsOf)).toEqual([
      { A: [], B: [0] },
      { A: [], B: [0, 1] },
    ]);
  });
});

describe('sizes', () => {
  const known = (line: string) =>
    line
      .replace(/^.*known are /, '')
      .replace(/\.$/, '')
      .split(', ');
  const SIZES: readonly Place[] = [
    [...TWO, 'stages', 1, 'size'],
    ['racks', 0, 'pieces', 5, 'size'],
  ];
  test.each(SIZES.map((where) => [where.join(' '), where] as const))(
    'an unknown chain number is named beside those that are known: %s',
    (_what, where) => {
      const [line = '', ...more] = refused([where, '9Z']);
      expect(more).toEqual([]);
      expect(line).toMatch(/: "9Z" is not a chain number known here; known are /);
      expect(known(line)).toHaveLength(CHAIN_SIZES.length);
      for (const size of known(line)) expect(readShopFile(demoWith([where, size])).ok, size).toBe(true);
    },
  );
});

test('a fault elsewhere in the same row hides nothing', () => {
  const said = refused(
    [[...TWO, 'motor'], 'quick'],
    [[...TWO, 'stages', 1, 'driver', 'teeth'], 'many'],
    [[...TWO, 'stages', 1, 'size'], '9Z'],
    [[...TWO, 'shafts', 1, 'turnedBy', 'shaft'], 'pump-b'],
    [[...TWO, 'B', 'pumps', 0, 'displacement'], 15],
    [[...TWO, 'B', 'fitted'], 'pb9'],
    [[...TWO, 'rack'], 'cellar'],
    [['racks', 0, 'pieces', 0], 'lost'],
    [['racks', 0, 'pieces', 2, 'id'], '08b-16'],
  );
  expect(said.map((line) => line.replace(/: .*/, '')).sort()).toEqual(
    [
      'machines 1 B fitted',
      'machines 1 B pumps 0 displacement',
      'machines 1 motor',
      'machines 1 rack',
      'machines 1 shafts 1 turnedBy shaft',
      'machines 1 stages 1 driver teeth',
      'machines 1 stages 1 size',
      'racks 0 pieces 0',
      'racks 0 pieces 2 id',
    ].sort(),
  );
});

test('the train of a pump is what turns the shaft that turns its shaft, and so on to the motor [followed the other way round]', () => {
  fc.assert(
    fc.property(shopFiles, (file) => {
      for (const machine of file.machines) {
        const trains = trainsOf(machine);
        for (const side of ['A', 'B'] as const) expect(trains[side]).toEqual(stagesAbove(machine, machine[side].shaft));
      }
    }),
  );
  function stagesAbove(machine: MachineRow, id: string): readonly number[] {
    const by = machine.shafts.find((shaft) => shaft.id === id)?.turnedBy;
    if (by === undefined) return [];
    const own = machine.stages.flatMap((stage, index) => (stage.id === by.stage ? [index] : []));
    return [...stagesAbove(machine, by.shaft), ...own];
  }
});
