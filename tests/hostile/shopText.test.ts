import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { placeText } from '../../core/src/finding.ts';
import { expectPlainEnglish } from '../file/refusedFile.ts';
import { changed, demoText, demoWith, lines } from '../file/shop.ts';

// Texts that no shop wrote. Each of them is answered with findings, soon, and none throws.

/** What is said of a text; every sentence and place of it is fit to be shown. */
function said(text: string): readonly string[] {
  const { findings } = readShopFile(text);
  expectPlainEnglish(findings.map(({ what }) => what));
  for (const { where, what } of findings) {
    expect(what.length).toBeLessThan(1100);
    expect(placeText(where)).not.toMatch(/native code|\[object|[\p{Cc}\p{Bidi_Control}]/u);
    expect(what).not.toMatch(/[\p{Cc}\p{Bidi_Control}\p{Cs}]/u);
  }
  return lines(findings);
}

const demo: unknown = JSON.parse(demoText());
const many = <T>(count: number, one: (index: number) => T): readonly T[] => Array.from({ length: count }, (_, index) => one(index));

describe('a real file, damaged', () => {
  const bytes = new TextEncoder().encode(demoText());
  const decoded = (damaged: Uint8Array) => new TextDecoder('utf-8').decode(damaged);

  test('cut anywhere, it is refused with the place where it ends', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: bytes.length - 3 }), (end) => {
        const text = decoded(bytes.slice(0, end));
        expect(readShopFile(text).ok).toBe(false);
        expect(said(text).length).toBe(1);
      }),
      { numRuns: 300 },
    );
  });
  test('with bits turned over, it opens with the same shape or is refused', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 })), { minLength: 1, maxLength: 6 }),
        (flips) => {
          const damaged = bytes.slice();
          for (const [at, mask] of flips) damaged[at] = (damaged[at] ?? 0) ^ mask;
          const read = readShopFile(decoded(damaged));
          said(decoded(damaged));
          expect(read.ok || read.findings.length > 0).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });
  test('saved as UTF-16, with or without its mark, or with zero bytes in it, it is called damaged', () => {
    const wide = (text: string) => decoded(Uint8Array.from([...text].flatMap((letter) => [letter.charCodeAt(0) & 255, 0])));
    for (const text of [
      wide(demoText()),
      `\uFFFD\uFFFD${wide(demoText())}`,
      '\0'.repeat(4096),
      `${demoText().slice(0, 900)}${'\0'.repeat(900)}`,
    ]) {
      expect(said(text)).toEqual([expect.stringMatching(/damaged: line \d+, column \d+/)]);
    }
  });
  test('a byte order mark is no damage', () => {
    expect(readShopFile(`\uFEFF${demoText()}`)).toEqual(readShopFile(demoText()));
  });
  test('of a key that stands there twice the last counts, as in every reader of JSON [RFC 8259, section 4, from memory]', () => {
    const twice = demoText().replace('"version": 1', '"version": 7, "version": 1');
    expect(twice).not.toBe(demoText());
    expect(readShopFile(twice)).toEqual(readShopFile(demoText()));
  });
});

describe('depth', () => {
  const DEEP = 100_000;
  const nested = ['['.repeat(DEEP) + ']'.repeat(DEEP), `${'{"a":'.repeat(DEEP)}1${'}'.repeat(DEEP)}`, `[${'[],'.repeat(DEEP)}1]`];
  test('brackets without end are damage, or no shop file', () => {
    expect(said('['.repeat(DEEP))).toEqual([expect.stringContaining(`line 1, column ${DEEP + 1}`)]);
    for (const text of nested) expect(said(text)).toEqual([expect.stringMatching(/not a shop file/)]);
  });
  test.each([
    ['a key that is not known', ['extra']],
    ['a machine', ['machines', 0]],
    ['a name', ['machines', 0, 'name']],
    ['a stage', ['machines', 0, 'stages', 0, 'driver']],
    ['a quantity', ['machines', 0, 'motor', 'speed']],
    ['a centre distance', ['machines', 0, 'stages', 0, 'centre']],
    ['a kept page', ['quotePages']],
  ] as const)('in place of %s they are refused there, or lost with a word', (_, where) => {
    for (const text of nested) {
      const read = said(demoWith([where, 'here']).replace('"here"', text));
      expect(read[0]).toContain(where.join(' '));
    }
  });
});

describe('keys that every object has', () => {
  const NAMES = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf'] as const;
  const before = Object.getOwnPropertyNames(Object.prototype).length;

  test.each(NAMES)('"%s" is a key like any other: not known, lost with a word, and nothing else changes', (name) => {
    for (const where of [[], ['machines', 0], ['machines', 0, 'motor', 'speed'], ['materials', 0, 'A'], ['racks', 0, 'pieces', 0]]) {
      const mark = JSON.stringify(changed(demo, [[...where, 'markedHere'], { polluted: true, teeth: 7 }]));
      const read = readShopFile(mark.replace('"markedHere"', `"${name}"`));
      expect(lines(read.findings)).toEqual([
        `${[...where, name].join(' ')}: "${name}" is not known to this version; it will be lost when the file is saved.`,
      ]);
      expect(read.ok && read.value).toEqual(demo);
      expect(placeText([...where, name])).toMatch(new RegExp(`${name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)}$`));
    }
    expect(Object.getOwnPropertyNames(Object.prototype).length).toBe(before);
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
  });
  test.each(NAMES)('"%s" is no unit, no size, no kind, no basis and no measure', (name) => {
    const wrong = [
      [['machines', 0, 'motor', 'speed', 'unit'], name],
      [['machines', 0, 'stages', 0, 'size'], name],
      [['machines', 1, 'stages', 0, 'kind'], name],
      [['materials', 0, 'ratio', 'basis'], name],
      [['materials', 0, 'limits', 'definition'], name],
      [['racks', 0, 'pieces', 0, 'size'], name],
    ] as const;
    for (const change of wrong) expect(said(demoWith(change))[0]).toContain(`"${name}"`);
  });
});

describe('numbers', () => {
  const NUMBERS = ['1e308', '1e400', '-1e400', '-0', '1e-400', '9007199254740993', '9'.repeat(400)];
  test.each(NUMBERS)('%.9s in place of teeth, of a version, of a place on a rule or of text is refused or read', (number) => {
    for (const where of [
      ['version'],
      ['machines', 0, 'stages', 0, 'driver', 'teeth'],
      ['racks', 0, 'pieces', 0, 'quantity'],
      ['machines', 0, 'name'],
    ]) {
      const text = demoWith([where, 'here']).replace('"here"', number);
      const zero = Number(number) === 0;
      const read = said(text);
      if (!(zero && where[3] === 'pieces')) expect(read.length + Number(zero && where.includes('quantity'))).toBeGreaterThan(0);
    }
  });
  test.each([
    '1e308',
    '1/0',
    '0/0',
    '9'.repeat(400),
    '1e-31',
    '-',
    '',
    ' ',
    'Infinity',
    '0x10',
    '1_000',
    '٣',
    '１',
    '1e1000000000',
    '1/1/1',
  ])('%.12s is no speed', (value) => {
    expect(said(demoWith([['machines', 0, 'motor', 'speed', 'value'], value]))[0]).toMatch(/^machines 0 motor speed/);
  });
});

describe('very much of it', () => {
  const pieces = (rows: readonly unknown[]) => demoWith([['racks', 0, 'pieces'], rows]);
  const shafts = (rows: readonly unknown[]) => demoWith([['machines', 0, 'shafts'], rows]);

  test('faults are listed up to a thousand, and the last says how many more there are', () => {
    expect(said(pieces(many(15_000, () => ({}))))).toHaveLength(1001);
    expect(said(pieces(many(15_000, () => ({})))).at(-1)).toMatch(/^: \d+ more faults are not listed\.$/);
    expect(said(demoWith(...many(1500, (index) => [[`key${index}`], 1] as const))).at(-1)).toBe(
      ': 500 more keys are not known to this version; they will be lost too.',
    );
  });
  test('of what no shop wrote the first fault is said, or its size', () => {
    expect(said(pieces(many(300_000, () => ({}))))).toEqual([
      expect.stringMatching(/^racks 0 pieces 0 id: "id" is missing/),
      ': So much is written here that the other faults were not looked for.',
    ]);
    expect(said(pieces(many(2_000_000, () => 0)))).toEqual([': The file holds more than 1500000 values and was not read.']);
    expect(said(' '.repeat(LARGEST_FILE_BYTES + 1))).toEqual([': The file is larger than 32 MB and was not read.']);
  });
  test.each([
    ['in a row from the motor', (index: number, count: number) => (index === 0 ? null : (index - 1) % count)],
    ['in a row to the motor', (index: number, count: number) => (index === count - 1 ? null : index + 1)],
    ['in one ring', (index: number, count: number) => (index + 1) % count],
    ['each turning itself', (index: number) => index],
  ])('a hundred thousand shafts %s', (_, turnedBy) => {
    const COUNT = 100_000;
    const text = shafts(
      many(COUNT, (index) => {
        const by = turnedBy(index, COUNT);
        return { id: `s${index}`, ...(by !== null && { turnedBy: { shaft: `s${by}` } }) };
      }),
    );
    expect(said(text)[0]).toBe('machines 0 A shaft: There is no shaft with the id "motor".');
  });
  test('prices of one size, or of sizes that are none', () => {
    const prices = (size: (index: number) => string) =>
      demoWith([
        ['racks', 0, 'prices'],
        many(60_000, (index) => ({
          id: `p${index}`,
          kind: 'chain',
          size: size(index),
          from: 5 + (index % 396),
          to: 5 + (index % 396),
          price: '1',
        })),
      ]);
    expect(said(prices(() => '08B'))[0]).toBe('racks 0 prices 396 from: 08B, 5 to 5 teeth: some of these have a price already.');
    expect(said(prices((index) => `x${index}`))[0]).toMatch(/^racks 0 prices 0 size: "x0" is not a chain number known here/);
  });
  test('machines and racks that do not know one another', () => {
    const text = demoWith(
      [['machines'], many(1000, (index) => ({ ...(demo as { machines: object[] }).machines[0], id: `m${index}`, rack: 'none' }))],
      [['racks'], many(50_000, (index) => ({ id: `r${index}`, name: '', pieces: [] }))],
    );
    expect(said(text)).toHaveLength(1000);
  });
  test('a text of megabytes is quoted by its beginning', () => {
    const long = 'x'.repeat(5_000_000);
    for (const where of [
      ['machines', 0, 'id'],
      ['machines', 0, 'stages', 0, 'kind'],
      ['machines', 0, 'motor', 'speed', 'unit'],
      ['materials', 0, 'ratio', 'basis'],
      ['racks', 0, 'pieces', 0, 'teeth'],
    ])
      expect(said(demoWith([where, long]))[0]).toContain(`"${'x'.repeat(79)}…"`);
    expect(said(demoWith([[long], 1]))[0]).toContain(`"${'x'.repeat(79)}…" is not known`);
  });
});
