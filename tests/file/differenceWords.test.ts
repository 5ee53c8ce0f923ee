// How a difference is told is our choice of words; each is held here as it is read.
import { describe, expect, test } from 'vitest';
import { keyWords, namesAmong, rows, rowWords, valueWords } from '../../core/src/file/differenceWords.ts';
import { schemaLeaves } from '../../core/src/file/schemaLeaves.ts';

test.each([
  ['prices', 'price'],
  ['fittedOn', 'fitted on'],
  ['validUntil', 'valid until'],
  ['densityUncertainty', 'density uncertainty'],
  ['temperatureUncertainty', 'temperature uncertainty'],
  ['chainLength', 'chain length'],
  ['changeSheet', 'change sheet'],
  ['leftOut', 'left out'],
  ['invented', 'invented example'],
  ['anyPump', 'any pump'],
  ['openShared', 'shared stages open'],
  ['asMeasured', 'as measured'],
  ['takeUp', 'take-up'],
  ['bore', 'bore'],
])('the key %s reads %s', (key, words) => expect(keyWords(key)).toBe(words));

test('no step of the schema is without its word', () => {
  for (const { steps } of schemaLeaves()) for (const step of steps) expect(keyWords(step), step).toMatch(/\S/);
});

describe('a row as people call it', () => {
  test.each<[string, Parameters<typeof rowWords>, string]>([
    ['its name', ['machines', { id: 'm', name: 'Bench 1', number: '7' }], 'machine Bench 1'],
    ['else its number', ['changeSheets', { id: 's', number: '0007', date: '2026-11-01' }], 'change sheet 0007'],
    ['a wheel', ['pieces', { id: 'p', size: '08B', teeth: 21 }], 'piece 08B, 21 teeth'],
    ['a wheel with its place', ['pieces', { id: 'p', size: '08B', teeth: 21, place: 'R1' }], 'piece 08B, 21 teeth, R1'],
    ['wheels with one price', ['prices', { id: 'p', size: '08B', from: 13, to: 20 }], 'price 08B, 13 to 20 teeth'],
    ['else its day', ['ratioChecks', { id: 'c', date: '2026-11-01' }], 'ratio check 2026-11-01'],
    ['else its id', ['shafts', { id: 'motor', name: '' }], 'shaft motor'],
    ['teeth without a size are no wheel', ['stages', { id: 's1', teeth: 21, place: 'R1' }], 'stage s1'],
    ['a size without teeth is none either', ['stages', { id: 's1', size: '08B' }], 'stage s1'],
  ])('%s', (_, call, words) => expect(rowWords(...call)).toBe(words));
});

test.each<[unknown, string]>([
  [undefined, 'not given'],
  [true, 'yes'],
  [false, 'no'],
  [21, '21'],
  [-2, '\u22122'],
  [{ value: '-5', unit: '°C' }, '\u22125\u00a0°C'],
  [{ value: '0.88', unit: '' }, '0.88'],
  ['-7', '\u22127'],
  ['100 : 38.9', '100 : 38.9'],
  ['.5', '.5'],
  [',5', ',5'],
  ['Bench -1', '“Bench -1”'],
  ['', '“”'],
  [['a', 1], '["a",1]'],
])('the value %j reads %s', (value, words) => expect(valueWords(value)).toBe(words));

describe('what an id stands for', () => {
  const names = namesAmong(
    {
      racks: [{ id: 'r', name: 'Main' }],
      changeSheets: [{ id: 's', number: '0007' }],
      pumps: [{ id: 'p', name: '' }],
      machines: [{ id: 'm', name: 'Bench' }],
      materials: [{ id: 'e', name: 'Epoxy' }],
    },
    (key, id) => (key === 'material' ? `outer ${id}` : null),
  );
  test.each([
    ['rack', 'r', 'Main'],
    ['machine', 'm', 'Bench'],
    ['changeSheet', 's', '0007'],
    ['fitted', 'p', null],
    ['material', 'e', 'Epoxy'],
    ['material', 'x', 'outer x'],
    ['rack', 'x', null],
    ['shaft', 'r', null],
  ])('%s %s', (key, id, name) => expect(names(key, id)).toBe(name));
});

test('only rows with an id of their own are rows', () => {
  expect([rows([{ id: 'a' }, { id: 1 }, {}, 'b', null]), rows({ id: 'a' }), rows(undefined)]).toEqual([[{ id: 'a' }], [], []]);
});
