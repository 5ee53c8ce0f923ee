import { describe, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/file/read.ts';
import type { Place } from '../../core/src/finding.ts';
import { expectPlainEnglish, MACHINE, MATERIAL, PIECE, refused, SPEED, STAGE } from './refusedFile.ts';
import { demoWith, GONE } from './shop.ts';

describe('faults of content, each with its place and what to write instead', () => {
  const EXPECTED = 'Expected something like 38.9, 38,9, 1 1/2 or 7e-4.';
  test.each<[what: string, where: Place, value: unknown, said: string, at?: Place]>([
    ['a bare number', [...SPEED, 'value'], 90, '90 must be written in quotation marks, as "90", so that it stays exactly as typed.'],
    ['a bare id', [...MACHINE, 'id'], 12, '12 must be written in quotation marks, as "12", so that it stays exactly as typed.'],
    [
      'a bare ratio',
      [...MATERIAL, 'ratio', 'parts'],
      2.5,
      '2.5 must be written in quotation marks, as "2.5", so that it stays exactly as typed.',
    ],
    ['a number that is nothing', [...SPEED, 'value'], null, 'A number in quotation marks is expected, as "38.9".'],
    ['a quantity in one text', SPEED, '90 rpm', 'A number with its unit is expected, as { "value": "38.9", "unit": "mm" }.'],
    ['a quantity in a list', SPEED, ['90', 'rpm'], 'A number with its unit is expected, as { "value": "38.9", "unit": "mm" }.'],
    ['no unit', [...SPEED, 'unit'], GONE, '"unit" is missing: a unit in quotation marks is expected, as "mm", or "" where there is none.'],
    ['no number', [...SPEED, 'value'], GONE, '"value" is missing: a number in quotation marks is expected, as "38.9".'],
    ['an unreadable number', [...SPEED, 'value'], 'fast', `"fast" is not a number. ${EXPECTED}`, SPEED],
    ['an empty number', [...SPEED, 'value'], '', `Nothing was typed. ${EXPECTED}`, SPEED],
    ['an unknown unit', [...SPEED, 'unit'], 'knots', '"knots" is not a unit known here. Expected one of rev/s, rpm.', SPEED],
    ['a unit of another kind', [...SPEED, 'unit'], 'mm', '"mm" is not a unit known here. Expected one of rev/s, rpm.', SPEED],
    ['an unreadable limit', [...MATERIAL, 'limits', 'low'], '2 to 3', `"2 to 3" is not a number. ${EXPECTED}`],
    ['at its limit, which is left out', [...SPEED, 'value'], '0', '0 rpm is out of range: it must be above 0 rpm.', SPEED],
    ['above its limit', [...SPEED, 'value'], '100000.1', '100000.1 rpm is out of range: it must be at most 100000 rpm.', SPEED],
    [
      'a limit in another unit',
      [...STAGE, 'driver', 'bore'],
      { value: '800', unit: 'in' },
      '800 in is out of range: it must be at most 20 m.',
    ],
    [
      'a share without a unit',
      [...MACHINE, 'serviceFactor', 'value'],
      '0.5',
      '0.5 is out of range: it must be at least 1.',
      [...MACHINE, 'serviceFactor'],
    ],
    [
      'an uncertainty of all of it',
      [...MATERIAL, 'A', 'densityUncertainty', 'value'],
      '100',
      '100 % is out of range: it must be below 100 %.',
      [...MATERIAL, 'A', 'densityUncertainty'],
    ],
    [
      'teeth in quotation marks',
      [...STAGE, 'driver', 'teeth'],
      '21',
      '"21" stands in quotation marks: a whole number is expected, without quotation marks.',
    ],
    ['half a tooth', [...STAGE, 'driver', 'teeth'], 20.5, '20.5 is not a whole number.'],
    ['too few teeth', [...STAGE, 'driver', 'teeth'], 4, '4 is out of range: it must be at least 5.'],
    ['too many teeth', [...PIECE, 'teeth'], 401, '401 is out of range: it must be at most 400.'],
    ['a quantity below nothing', [...PIECE, 'quantity'], -1, '-1 is out of range: it must be at least 0.'],
    ['no quantity', [...PIECE, 'quantity'], GONE, '"quantity" is missing: a whole number is expected, without quotation marks.'],
    [
      'an id with a space',
      [...PIECE, 'id'],
      'a b',
      '"a b" is no id: an id has letters, digits, dots, hyphens and underscores, begins with a letter or a digit, and has at most 64 characters.',
    ],
    ['a name that is too long', [...MACHINE, 'name'], 'n'.repeat(201), 'The text has 201 characters: 200 are the most.'],
    ['a name that is a list', [...MACHINE, 'name'], [], 'Text in quotation marks is expected.'],
    ['yes in words', [...STAGE, 'offsetLink'], 'yes', 'True or false is expected, without quotation marks.'],
    ['a list that is an object', [...MACHINE, 'stages'], {}, 'A list in square brackets is expected.'],
    ['an object that is a list', [...MATERIAL, 'A'], [], 'An object in braces is expected.'],
    ['an object that is nothing', [...MACHINE, 'motor'], null, 'An object in braces is expected.'],
    ['no side at all', [...MACHINE, 'B'], GONE, '"B" is missing: an object in braces is expected.'],
    ['no machines', ['machines'], GONE, '"machines" is missing: a list in square brackets is expected.'],
    ['no shafts', [...MACHINE, 'shafts'], [], 'At least the motor shaft must be listed.'],
    ['no pumps', [...MACHINE, 'A', 'pumps'], [], 'At least the fitted pump must be listed.'],
    ['too many lines of your own', [...MACHINE, 'checklist'], Array(7).fill('look'), 'The sheet has room for 6 lines of your own.'],
    ['an unknown drive kind', [...STAGE, 'kind'], 'belt', '"belt" is not known here: the drive kinds are: chain.'],
    ['a drive kind that is a number', [...PIECE, 'kind'], 4, 'The drive kinds are: chain.'],
    [
      'an unknown basis',
      [...MATERIAL, 'ratio', 'basis'],
      'mass',
      '"mass" is not known here: the basis is "weight" or "volume"; it is never guessed.',
    ],
    [
      'an unknown definition of limits',
      [...MATERIAL, 'limits', 'definition'],
      '%',
      '"%" is not known here: limits are "% of B per A", "% of A per B", "points of B in the total", "parts of B" or, from chemistry, "index points"; the definition is never guessed.',
    ],
    [
      'limits without a definition',
      [...MATERIAL, 'limits', 'definition'],
      GONE,
      '"definition" is missing: limits are "% of B per A", "% of A per B", "points of B in the total", "parts of B" or, from chemistry, "index points"; the definition is never guessed.',
    ],
    [
      'the ratio given twice',
      [...MATERIAL, 'ratio', 'perHundredA'],
      '38.9',
      'The ratio is given once: either "parts" (A : B) or "perHundredA" (B per 100 A).',
      [...MATERIAL, 'ratio'],
    ],
    [
      'a ratio of one part',
      [...MATERIAL, 'ratio', 'parts'],
      '38.9',
      '"38.9" has only one part. Expected A to B, like 100:45, 2.5 : 1, 100A:38B or 4:1:1.',
    ],
    [
      'a ratio check on no day',
      ['ratioChecks', 0, 'date'],
      '2026-02-30',
      '"2026-02-30" is no day: year, month and day are expected, as "2026-11-09".',
    ],
    ['a ratio check without catches', ['ratioChecks', 0, 'catches'], [], 'A ratio check has at least one catch.'],
    ['a term that is no fraction', ['ratioChecks', 0, 'terms', 'wantedBPerA'], '0.35', 'An exact fraction is expected, as "7/20".'],
    ['a check that has the id of another', ['ratioChecks', 1, 'id'], 'check-0001', 'The id "check-0001" is used twice.'],
  ])('%s', (_what, where, value, said, at = where) => {
    const found = refused(demoWith([where, value]));
    expect(found).toEqual([`${at.join(' ')}: ${said}`]);
    expectPlainEnglish([said]);
  });

  const CENTRE: Place = [...STAGE, 'centre'];
  const EITHER = 'The centre distance is either { "fixed": ... } or { "from": ..., "to": ... }.';
  test.each<[what: string, value: unknown, said: readonly (readonly [Place, string])[]]>([
    ['neither fixed nor a window', {}, [[[], EITHER]]],
    ['both', { fixed: { value: '250', unit: 'mm' }, from: { value: '1', unit: 'mm' } }, [[[], EITHER]]],
    ['a text', '250 mm', [[[], EITHER]]],
    [
      'half a window',
      { from: { value: '250', unit: 'mm' } },
      [[['to'], '"to" is missing: a number with its unit is expected, as { "value": "38.9", "unit": "mm" }.']],
    ],
    [
      'a bare number in a window',
      { from: { value: 250, unit: 'mm' }, to: { value: '263', unit: 'mm' } },
      [[['from', 'value'], '250 must be written in quotation marks, as "250", so that it stays exactly as typed.']],
    ],
    [
      'both ends of a window wrong',
      { from: { value: '0', unit: 'mm' }, to: { value: '263', unit: 'furlongs' } },
      [
        [['from'], '0 mm is out of range: it must be above 0 mm.'],
        [['to'], '"furlongs" is not a unit known here. Expected one of m, mm, cm, in, ft.'],
      ],
    ],
    ['an unreadable fixed one', { fixed: { value: 'x', unit: 'mm' } }, [[['fixed'], `"x" is not a number. ${EXPECTED}`]]],
    [
      'a fixed one without a unit',
      { fixed: { value: '250', unit: '' } },
      [[['fixed'], '"250" has no unit. Expected one of m, mm, cm, in, ft.']],
    ],
  ])('centre distance: %s', (_what, value, said) => {
    expect(refused(demoWith([CENTRE, value]))).toEqual(
      said.map(([inside, sentence]) => `${[...CENTRE, ...inside].join(' ')}: ${sentence}`),
    );
    expectPlainEnglish(said.map(([, sentence]) => sentence));
  });
});

test('ten different faults are reported together, those of the schema and those of what points where', () => {
  const text = demoWith(
    [[...SPEED, 'value'], 'fast'],
    [[...STAGE, 'driver', 'teeth'], 2.5],
    [[...STAGE, 'centre', 'to', 'value'], 263],
    [[...STAGE, 'size'], '9Z'],
    [[...MACHINE, 'B', 'fitted'], 'pb9'],
    [['machines', 1, 'shafts', 2, 'turnedBy', 'shaft'], 'nowhere'],
    [[...MATERIAL, 'ratio', 'basis'], 'mass'],
    [['materials', 1, 'A'], GONE],
    [[...PIECE, 'id'], '08b-15'],
    [[...PIECE, 'quantity'], -2],
  );
  const read = readShopFile(text);
  expect(read.findings.map((finding) => finding.where.join(' ')).sort()).toEqual(
    [
      'machines 0 B fitted',
      'machines 0 motor speed',
      'machines 0 stages 0 centre to value',
      'machines 0 stages 0 driver teeth',
      'machines 0 stages 0 size',
      'machines 1 shafts 2 turnedBy shaft',
      'materials 0 ratio basis',
      'materials 1 A',
      'racks 0 pieces 4 id',
      'racks 0 pieces 4 quantity',
    ].sort(),
  );
  expectPlainEnglish(read.findings.map((finding) => finding.what));
});

describe('one of a few words: every key of the file that takes one says which they are', () => {
  const said = (words: string): readonly [string, string] => [
    `"other" is not known here: ${words}.`,
    `${words[0]?.toUpperCase()}${words.slice(1)}.`,
  ];
  const check: Place = ['ratioChecks', 0];
  const unfinished: Place = ['unfinishedChecks', 0];
  const chemistry = (value: object): readonly [Place, unknown] => [[...MATERIAL, 'chemistry'], value];
  test.each<[where: Place, words: string, ...whole: (readonly [Place, unknown])[]]>([
    [[...MATERIAL, 'chemistry', 'system'], 'the systems are "epoxy" and "urethane"', chemistry({})],
    [[...MATERIAL, 'chemistry', 'resinIn'], 'a tank is "A" or "B"; which one is never assumed', chemistry({})],
    [[...MATERIAL, 'chemistry', 'isocyanateIn'], 'a tank is "A" or "B"; which one is never assumed', chemistry({})],
    [[...MATERIAL, 'ratio', 'thirdInto'], 'the third part is premixed into the tank of "A" or of "B"'],
    [[...MACHINE, 'search', 'wheels'], 'wheels are "rack", "rack and purchases" or "any"', [[...MACHINE, 'search'], {}]],
    [
      [...MACHINE, 'batch', 'of'],
      'a batch is of the "mix", of "A" or of "B"',
      [[...MACHINE, 'batch'], { of: 'mix', amount: { value: '1', unit: 'kg' } }],
    ],
    [[...check, 'terms', 'basis'], 'the basis is "weight" or "volume"'],
    [
      [...unfinished, 'runBy'],
      'it is "turns" or "time"',
      [['unfinishedChecks'], [{ machine: 'bench-1', runBy: 'turns', weighing: 'net', catches: [] }]],
    ],
    [
      [...unfinished, 'weighing'],
      'it is "gross", "tared" or "net"',
      [['unfinishedChecks'], [{ machine: 'bench-1', runBy: 'turns', weighing: 'net', catches: [] }]],
    ],
  ])('%j', (where, words, ...whole) => {
    const [unknown, noText] = said(words);
    expect(refused(demoWith(...whole, [where, 'other']))).toContain(`${where.join(' ')}: ${unknown}`);
    expect(refused(demoWith(...whole, [where, 4]))).toContain(`${where.join(' ')}: ${noText}`);
    expectPlainEnglish([unknown, noText]);
  });
});
