import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { damageIn } from '../../core/src/file/damage.ts';
import { LARGEST_FILE_BYTES, VERSION } from '../../core/src/file/envelope.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { writeShopFile } from '../../core/src/file/write.ts';
import type { Place } from '../../core/src/finding.ts';
import { shopFiles } from './arbitraries.ts';
import { type Change, changed, demoText, demoWith, GONE, isPlace, lines, opened } from './shop.ts';

/** What is wrong with a text, as places and sentences. */
function refused(text: string): readonly string[] {
  const read = readShopFile(text);
  if (read.ok) throw new Error('the file was opened');
  for (const finding of read.findings) expect(finding).toMatchObject({ severity: 'blocks', check: 'file.content' });
  return lines(read.findings);
}

/** Sentences that a shop can read: a capital letter or what was typed first, a full stop last, no words of the library that reads the file. */
function expectPlainEnglish(sentences: readonly string[]): void {
  for (const sentence of sentences) {
    expect(sentence).toMatch(/^["\d.+−-]|^[A-Z]/);
    expect(sentence).toMatch(/[^.]\.$/);
    expect(sentence).not.toMatch(
      /Invalid|[Rr]eceived|undefined|NaN|object Object|Expected (Object|Array|string|number|unknown)|\s{2}| \.$/,
    );
  }
}

describe('files of every release open without a word', () => {
  const folder = new URL('./files/', import.meta.url);
  const names = readdirSync(folder).filter((name) => name.endsWith('.ratiowright'));

  test('there are some of each version', () => {
    const versions = new Set(names.map((name) => Number(/^v(\d+)-/.exec(name)?.[1])));
    expect([...versions].sort()).toEqual(Array.from({ length: VERSION }, (_, index) => index + 1));
  });
  test.each(names)('%s', (name) => {
    const read = readShopFile(readFileSync(new URL(name, folder), 'utf8'));
    expect(lines(read.findings)).toEqual([]);
    expect(read.ok && read.value.version).toBe(VERSION);
  });
});

describe('what is not a shop file', () => {
  test.each([
    ['empty text', '', ': The file is empty.'],
    ['spaces only', ' \n', ': The file is empty.'],
    ['plain words', 'ratio 2:1', ': This is not a shop file, or it is damaged: line 1, column 1 should have a value.'],
    ['a list', '[]', ': This is not a shop file: it should hold an object in braces.'],
    ['a number', '12', ': This is not a shop file: it should hold an object in braces.'],
    ['nothing', 'null', ': This is not a shop file: it should hold an object in braces.'],
    ['a text cut short', '{\n  "format": "rati', ': The file is damaged: line 2, column 13 should have a value.'],
    [
      'a text that ends too early',
      '{\n  "version": 1',
      ': The file is damaged: line 2, column 15 should have a comma or a closing bracket.',
    ],
    ['a comma too many', '{\n  "format": 1,\n}', ': The file is damaged: line 3, column 1 should have a name in quotation marks.'],
    ['no format', '{}', 'format: This is not a shop file: its format should read "ratiowright shop file".'],
    [
      'another format',
      '{"format": "spreadsheet", "version": 1}',
      'format: This is not a shop file: its format should read "ratiowright shop file".',
    ],
    ['no version', '{"format": "ratiowright shop file"}', 'version: The version must be a whole number, 1 or more.'],
    ['a version in words', demoWith([['version'], '1']), 'version: The version must be a whole number, 1 or more.'],
    ['version 0', demoWith([['version'], 0]), 'version: The version must be a whole number, 1 or more.'],
    [
      'a newer version',
      demoWith([['version'], 7], [['machines'], 'in some new form']),
      `version: The file is version 7, this program reads up to version ${VERSION}: open it with a newer Ratiowright.`,
    ],
  ])('%s', (_what, text, line) => {
    expect(refused(text)).toEqual([line]);
  });
  test('more than the largest file', () => {
    expect(refused(' '.repeat(LARGEST_FILE_BYTES + 1))).toEqual([': The file is larger than 32 MB and was not read.']);
  });
  test('a byte order mark is let through', () => {
    expect(readShopFile(`\uFEFF${demoText()}`)).toEqual(readShopFile(demoText()));
  });
});

describe('where a damaged text goes wrong', () => {
  test('the example of its docstring', () => {
    expect(damageIn('{"teeth": 21,}')).toEqual({ line: 1, column: 14, expected: 'a name in quotation marks' });
  });
  test.each([
    ['{"a" 1}', 6, 'a colon'],
    ['{"a": }', 7, 'a value'],
    ['{"a": 01}', 7, 'a value'],
    ['{"a": .5}', 7, 'a value'],
    ['{"a": 1 "b": 2}', 9, 'a comma or a closing bracket'],
    ['{"a": [1, 2}', 12, 'a comma or a closing bracket'],
    ['{"a": [1,]}', 10, 'a value'],
    ['[', 2, 'a value or "]"'],
    ['{', 2, 'a name in quotation marks or "}"'],
    ["{'a': 1}", 2, 'a name in quotation marks or "}"'],
    ['{"a": "b}', 7, 'a value'],
    ['{"a": "\\x"}', 7, 'a value'],
    ['{"a": "\\u12G4"}', 7, 'a value'],
    ['{"a": tru}', 7, 'a value'],
    ['{} {}', 4, 'the end of the file'],
    ['{"a": {"b": [true, null, "c\\"d", -1.5e+3]}} x', 45, 'the end of the file'],
  ])('%s [ECMA-404]', (text, column, expected) => {
    expect(() => JSON.parse(text)).toThrow(SyntaxError);
    expect(damageIn(text)).toEqual({ line: 1, column, expected });
  });
  test('the line is the one that the engine names too, where it names a place', () => {
    const whole = JSON.stringify(JSON.parse(demoText()).machines[0], null, 1);
    let named = 0;
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.constantFrom('', '"', ',', '}', ']', ':', 'x', '0', '\n', '\\', '{'), (at, sign) => {
        const text = whole.slice(0, at) + sign + whole.slice(at + 1);
        const position = Number(/at position (\d+)/.exec(parseError(text))?.[1] ?? Number.NaN);
        fc.pre(!Number.isNaN(position));
        named += 1;
        expect(damageIn(text).line).toBe(text.slice(0, position).split('\n').length);
      }),
      { numRuns: 500 },
    );
    expect(named).toBeGreaterThan(100);
  });
  test('a text cut short is followed to its end, but for what it has only begun', () => {
    const whole = JSON.stringify(JSON.parse(demoText()).materials[0]);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: whole.length - 1 }), (end) => {
        const { line, column } = damageIn(whole.slice(0, end));
        const rest = whole.slice(column - 1, end);
        expect(line).toBe(1);
        expect(rest === '' || /^"/.test(rest) || /^[a-z]+$/.test(rest)).toBe(true);
      }),
    );
  });

  function parseError(text: string): string {
    try {
      JSON.parse(text);
      return '';
    } catch (error) {
      return error instanceof Error ? error.message : '';
    }
  }
});

const MACHINE: Place = ['machines', 0];
const STAGE: Place = [...MACHINE, 'stages', 0];
const MATERIAL: Place = ['materials', 0];
const SPEED: Place = [...MACHINE, 'motor', 'speed'];
const PIECE: Place = ['racks', 0, 'pieces', 4];

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
    ['ratio checks of a later program', ['ratioChecks'], [{ id: 'one' }], 'This version cannot read ratio checks yet.'],
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

describe('keys that this version does not know', () => {
  const warned = (...changes: readonly Change[]) => {
    const read = readShopFile(demoWith(...changes));
    expect(read.ok).toBe(true);
    for (const finding of read.findings) expect(finding).toMatchObject({ check: 'file.unknownKey', severity: 'warns' });
    return lines(read.findings);
  };
  const lost = (where: Place) =>
    `${where.join(' ')}: "${where.at(-1)}" is not known to this version; it will be lost when the file is saved.`;

  const UNKNOWN: readonly Place[] = [
    ['colour'],
    [...MACHINE, 'colour'],
    [...PIECE, 'bore', 'tolerance'],
    ['constructor'],
    [...MATERIAL, 'A', 'toString'],
  ];
  test.each(UNKNOWN.map((where) => [where.join(' '), where] as const))('open with a warning that names them: %s', (_what, where) => {
    expect(warned([where, 'green'])).toEqual([lost(where)]);
  });
  test('each is named where there are several', () => {
    const places: readonly Place[] = [
      ['shop', 'town'],
      [...SPEED, 'note'],
      [...STAGE, 'driver', 'hub'],
    ];
    expect([...warned(...places.map((where): Change => [where, 1]))].sort()).toEqual(places.map(lost).sort());
  });
  test('"__proto__" is a key like any other and changes nothing', () => {
    const text = demoText()
      .replace('{', '{ "__proto__": { "machines": [], "polluted": true },')
      .replace('"motor": {', '"motor": { "__proto__": 5,');
    const read = readShopFile(text);
    expect(lines(read.findings)).toEqual([lost(['__proto__']), lost([...MACHINE, 'motor', '__proto__'])]);
    expect(read.ok && read.value).toEqual(opened(demoText()));
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });
});

describe('laws', () => {
  test('a valid file opens as it is, without a word', () => {
    fc.assert(
      fc.property(shopFiles, (file) => {
        expect(readShopFile(JSON.stringify(file))).toEqual({ ok: true, value: file, findings: [] });
      }),
    );
  });
  const anything = fc.constantFrom<unknown>(null, true, -1, 0.5, 1e9, '', 'x', '0', '1 : 2', [], {}, [null], { id: 'x' }, { value: 1 });
  test('whatever is put wherever, it is never a crash, what is said is plain, and it points at something in the file', () => {
    fc.assert(
      fc.property(shopFiles, fc.nat(), anything, fc.nat(), anything, (file, one, value, other, more) => {
        const json: unknown = JSON.parse(writeShopFile(file, 'test'));
        const places = placesIn(json, []);
        const pick = (at: number) => places[at % places.length] ?? [];
        const first = changed(json, [pick(one), value]);
        const rest = placesIn(first, []);
        const wrong = changed(first, [rest[other % rest.length] ?? [], more]);
        const read = readShopFile(JSON.stringify(wrong));
        expectPlainEnglish(read.findings.map((finding) => finding.what));
        for (const { where } of read.findings)
          expect(isPlaceOrMissing(wrong, where), `${where.join(' ')} is no place in the file`).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  /** Every place in plain JSON but the whole. */
  function placesIn(json: unknown, at: Place): readonly Place[] {
    if (typeof json !== 'object' || json === null) return [];
    const keys = Array.isArray(json) ? [...json.keys()] : Object.keys(json);
    return keys.flatMap((key) => [[...at, key], ...placesIn(Reflect.get(json, key), [...at, key])]);
  }
  /** A field that a fault left out has no value, but the row it belongs to is there. */
  const isPlaceOrMissing = (json: unknown, where: Place) => where.length === 0 || isPlace(json, where);
});
