import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clashes, differences } from '../../core/src/file/differences.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { writeShopFile } from '../../core/src/file/write.ts';
import { type Change, demoText, demoWith, GONE, opened } from './shop.ts';

// What stands in two files is known here because the test itself changed it; RFC 6902 [from memory] calls these replace, add, remove and move.

const demo = (): ShopFile => opened(demoText());
const rack = (): ShopFile['racks'][number] => {
  const [first] = demo().racks;
  if (first === undefined) throw new Error('the example has no rack');
  return first;
};
const after = (...changes: readonly Change[]) => differences(demo(), opened(demoWith(...changes)));
const said = (...changes: readonly Change[]) => after(...changes).map(({ row, what }) => `${row} | ${what}`);

test('the example of the docstring: teeth of a driver', () => {
  expect(after([['machines', 0, 'stages', 0, 'driver', 'teeth'], 22])).toEqual([
    { key: 'machines/bench-1/stages/s1/driver/teeth', row: 'Machine Bench 1', what: 'stage s1, driver, teeth: 21 → 22' },
  ]);
});

test.each<readonly [string, Change, string]>([
  [
    'a quantity keeps its digits and its unit',
    [['machines', 0, 'motor', 'speed'], { value: '90.50', unit: 'rpm' }],
    'Machine Bench 1 | motor, speed: 90\u00a0rpm → 90.50\u00a0rpm',
  ],
  ['a field that is gone', [['machines', 0, 'catchTurns'], GONE], 'Machine Bench 1 | turns a catch: 20 → not given'],
  ['a name in quotation marks', [['machines', 0, 'name'], 'Bench 1b'], 'Machine Bench 1 | name: “Bench 1” → “Bench 1b”'],
  ['yes and no', [['machines', 0, 'stages', 0, 'offsetLink'], true], 'Machine Bench 1 | stage s1, offset link: no → yes'],
  [
    'a pump by its name',
    [['machines', 0, 'A', 'pumps', 0, 'speedTo'], { value: '110', unit: 'rpm' }],
    'Machine Bench 1 | A, pump PA12, most speed: 100\u00a0rpm → 110\u00a0rpm',
  ],
  ['the shop itself', [['shop', 'name'], 'Other'], 'The shop | name: “Ostermere Example Works” → “Other”'],
])('%s', (_what, change, expected) => {
  expect(said(change)).toEqual([expected]);
});

test('rows are added, removed and moved; the rest of a list is not told', () => {
  const [first, second, ...rest] = rack().pieces;
  const fresh = { id: 'piece-new', kind: 'chain', size: '08B', teeth: 37, quantity: 1, place: 'Z9' };
  const lines = said([
    ['racks', 0, 'pieces'],
    [second, ...rest, fresh],
  ]);
  expect(lines).toEqual([
    expect.stringMatching(new RegExp(`^Rack ${rack().name} \\| piece ${first?.size}, ${first?.teeth} teeth, .*removed$`)),
    `Rack ${rack().name} | piece 08B, 37 teeth, Z9, added`,
  ]);
  expect(
    said([
      ['racks', 0, 'pieces'],
      [second, first, ...rest],
    ]),
  ).toEqual([`Rack ${rack().name} | pieces, another order`]);
  expect(said([['machines'], [...demo().machines].reverse()])).toEqual(['The list of machines | another order']);
  expect(said([['materials'], demo().materials.slice(1)])).toEqual([`Material ${demo().materials[0]?.name} | removed`]);
});

test('a reference is told by the name of what it points at', () => {
  const other = { ...rack(), id: 'second', name: 'Second rack' };
  expect(said([['racks'], [rack(), other]], [['machines', 0, 'rack'], 'second'])).toEqual([
    `Machine Bench 1 | rack: “${rack().name}” → “Second rack”`,
    'Rack Second rack | added',
  ]);
});

test('limits below zero carry a true minus [typography]', () => {
  const [what] = said([['materials', 0, 'limits'], { definition: '% of B per A', low: '-7', high: '7' }]);
  expect(what).toContain('→ \u22127');
});

test('a kept sheet that changed is one line, however much of it differs', () => {
  const sheet = (lines: readonly string[], fittedOn?: string) => ({
    id: 'sheet-1',
    number: '2026-001',
    date: '2026-11-01',
    machine: 'bench-1',
    material: demo().materials[0]?.id,
    mounted: { pumps: { A: 'pa12', B: 'pb6' }, teeth: [{ driver: 21, driven: 30 }] },
    lines,
    ...(fittedOn !== undefined && { fittedOn }),
  });
  const before = opened(demoWith([['changeSheets'], [sheet(['a', 'b'])]]));
  const later = opened(demoWith([['changeSheets'], [sheet(['c', 'd', 'e'], '2026-11-02')]]));
  expect(differences(before, later).map(({ row, what }) => `${row} | ${what}`)).toEqual([
    'Change sheet 2026-001 | what was printed differs',
    'Change sheet 2026-001 | fitted on: not given → 2026-11-02',
  ]);
  expect(differences(demo(), before).map(({ row, what }) => `${row} | ${what}`)).toEqual(['Change sheet 2026-001 | added']);
});

describe('laws', () => {
  test('a file does not differ from itself, nor from what is written of it', () => {
    expect(differences(demo(), demo())).toEqual([]);
    expect(differences(demo(), opened(writeShopFile(demo(), 'somebody else')))).toEqual([]);
  });
  test('the way back tells the same places', () => {
    const spots: readonly Change[] = [
      [['machines', 0, 'stages', 0, 'driver', 'teeth'], 23],
      [['machines', 1, 'name'], 'Other bench'],
      [['materials', 0, 'A', 'runAt'], GONE],
      [['racks', 0, 'pieces', 3, 'quantity'], 9],
      [['shop', 'note'], GONE],
      [['materials'], demo().materials.slice(0, 1)],
    ];
    fc.assert(
      fc.property(fc.subarray([...spots.slice(0, 5)], { minLength: 1 }), (changes) => {
        const other = opened(demoWith(...changes));
        const there = differences(demo(), other).map(({ key }) => key);
        expect(new Set(there).size).toBe(changes.length);
        expect(differences(other, demo()).map(({ key }) => key)).toEqual(there);
      }),
    );
    const fewer = opened(demoWith(...spots.slice(5)));
    expect(differences(demo(), fewer).map(({ key }) => key)).toEqual(differences(fewer, demo()).map(({ key }) => key));
  });
});

test('two people meet where they changed one place, or something inside it', () => {
  const theirs = after([['machines', 0, 'stages', 0, 'driver', 'teeth'], 22], [['machines', 1, 'name'], 'Theirs']);
  const mine = after([['machines', 0, 'stages', 0, 'driver', 'teeth'], 24], [['shop', 'name'], 'Mine']);
  expect([...clashes(theirs, mine)]).toEqual(['machines/bench-1/stages/s1/driver/teeth']);
  const inner = [{ key: 'racks/main/name', row: 'Rack Main', what: '' }];
  const outer = [{ key: 'racks/main', row: 'Rack Main', what: '' }];
  expect([...clashes(inner, outer)]).toEqual(['racks/main/name', 'racks/main']);
  expect(clashes(inner, [{ key: 'racks/main-2', row: '', what: '' }]).size).toBe(0);
});
