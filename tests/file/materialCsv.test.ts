import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MaterialRow } from '../../core/src/file/material.ts';
import {
  LIMIT_DEFINITIONS,
  listedWords,
  type MaterialList,
  PLAIN_ORDER,
  readMaterials,
  writeMaterials,
} from '../../core/src/file/materialCsv/index.ts';
import { mixOf } from '../../core/src/file/mixOf.ts';
import { readShopFile } from '../../core/src/index.ts';

const say = { decimal: '.', system: 'metric' } as const;
const wish = { say, limitsMean: '% of B per A', taken: [] } as const;
const read = (text: string): MaterialList => readMaterials(text, wish);
const faultsOf = (text: string): readonly string[] =>
  read(text).faults.map(({ line, column, what }) => `${line}, ${column ?? '-'}: ${what}`);
const only = (text: string): MaterialRow => {
  const { materials, faults } = read(text);
  const [first] = materials;
  if (first === undefined || faults.length > 0) throw new Error(faults.map(({ what }) => what).join(' '));
  return first.material;
};
const demo = readShopFile(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
if (!demo.ok) throw new Error('the demo does not open');
const { materials } = demo.value;

describe('the shortest paste: name, ratio, basis, limits, with or without a head', () => {
  test('readMaterials example, tabs as spreadsheets copy them', () => {
    expect(only('E12\t100:38.9\tweight\t±2 %')).toEqual({
      id: 'material-1',
      name: 'E12',
      ratio: { basis: 'weight', parts: '100:38.9' },
      limits: { definition: '% of B per A', low: '-2', high: '2' },
      A: {},
      B: {},
    });
  });
  test.each(['\t', ';', ','])('the same with a head, in another order, between %j', (mark) => {
    const text = [
      ['Limits', 'Material', 'BASIS', 'Mix ratio'],
      ['±2 %', 'E12', 'by weight', '100:38.9'],
    ]
      .map((row) => row.join(mark))
      .join('\n');
    expect(only(text)).toEqual(only('E12\t100:38.9\tweight\t±2 %'));
  });
  test('decimal commas between semicolons or tabs, and blank lines', () => {
    const text = '\nname;ratio;basis;limits\n\nE12;100:38,9;weight;±1,5\n';
    expect(only(text).ratio?.parts).toBe('100:38,9');
    expect(only(text).limits).toEqual({ definition: '% of B per A', low: '-1,5', high: '1,5' });
  });
  test('densities, temperatures and expansions behind it, in the order that is said', () => {
    expect(PLAIN_ORDER.join(', ')).toBe(
      'name, ratio, basis, limits, density A, density B, density at, run A, run B, expansion A, expansion B',
    );
    const [e12] = materials;
    const row = 'E12\t100 : 38.9\tweight\t±2 %\t1.16 g/cm3\t0.97 g/cm3\t25 °C\t42 °C\t25 °C\t0.00062 1/K\t0.0008 1/K';
    const [listed] = read(row).materials;
    // E12 of the demo: 2.17229 A per B by volume, worked out apart from the program [the invented example]
    expect(listed && listedWords(listed, say)).toEqual({
      ratio: '100 : 38.9 by weight',
      byVolume: '2.1723 : 1',
      limits: '−2 to 2 % of B per A',
    });
    expect(listed?.material.A.density).toEqual(e12?.A.density);
  });
});

describe('heads', () => {
  const a = (head: string, cell: string) => only(`name;ratio;basis;${head}\nX;5:1;volume;${cell}`).A;
  test('a unit stands in the head or in the cell, the cell goes before', () => {
    expect(a('density A (g/cm3)', '1,16').density).toEqual({ value: { value: '1,16', unit: 'g/cm3' } });
    expect(a('Density_A g/cm³', '1.16').density).toEqual({ value: { value: '1.16', unit: 'g/cm3' } });
    expect(a('density A kg/m3', '1.16 g/cm3').density).toEqual({ value: { value: '1.16', unit: 'g/cm3' } });
    expect(a('run A °C', '42').runAt).toEqual({ value: '42', unit: '°C' });
    expect(a('expansion A 1/K', '6.2e-4').expansion).toEqual({ value: '6.2e-4', unit: '1/K' });
  });
  test('the temperature of a density: in its cell, its head, its own column, or one for both', () => {
    const at25 = { value: { value: '1.16', unit: 'g/cm3' }, at: { value: '25', unit: '°C' } };
    expect(a('density A', '1.16 g/cm3 at 25 °C').density).toEqual(at25);
    expect(a('density A g/cm3 at 25 °C', '1.16').density).toEqual(at25);
    expect(a('density A g/cm3;density A at °C', '1.16;25').density).toEqual(at25);
    expect(a('density A g/cm3;density at', '1.16;25 °C').density).toEqual(at25);
  });
  test('a ratio by weight and one by volume, each in a column that says so', () => {
    const text = 'name,ratio by weight,ratio by volume\nX,100:38.9,\nY,,5:1\nZ,100:38.9,2.2:1';
    expect(read(text).materials.map(({ material }) => [material.ratio, material.otherRatio])).toEqual([
      [{ basis: 'weight', parts: '100:38.9' }, undefined],
      [{ basis: 'volume', parts: '5:1' }, undefined],
      [
        { basis: 'weight', parts: '100:38.9' },
        { basis: 'volume', parts: '2.2:1' },
      ],
    ]);
  });
  test('B per 100 A, in a column of its own or said in the cell', () => {
    const wanted = { basis: 'weight', perHundredA: '38.9' };
    expect(only('name;B per 100 A;basis\nX;38.9;weight').ratio).toEqual(wanted);
    expect(only('X\t38.9 per 100 A\tweight').ratio).toEqual(wanted);
  });
  test('what is not known is named, and a missing or doubled column refuses the list', () => {
    expect(read('name;ratio;basis;colour\nX;5:1;volume;grey').notes).toEqual(['Columns not read: colour.']);
    expect(faultsOf('name;ratio\nX;5:1')[0]).toMatch(/^1, -: The head lacks: basis \(weight or volume; it is never guessed\)/);
    expect(faultsOf('name;ratio;ratio;basis\nX;5:1;5:1;volume')[0]).toContain('twice');
    expect(faultsOf('product sheet;mixture\nX;5:1')[0]).toContain('The head lacks: name, ratio, basis');
  });
});

describe('limits', () => {
  const of = (limits: string, head = 'limits') => only(`name\tratio\tbasis\t${head}\nX\t100:40\tweight\t${limits}`).limits;
  test.each([
    ['±2', '-2', '2', '% of B per A'],
    ['± 1,5 %', '-1,5', '1,5', '% of B per A'],
    ['+/-2%', '-2', '2', '% of B per A'],
    ['+2/-1 %', '-1', '2', '% of B per A'],
    ['-1 % / +2 %', '-1', '2', '% of B per A'],
    ['−1 to 2 % of A per B', '−1', '2', '% of A per B'],
    ['±0.5 points of B in the total', '-0.5', '0.5', 'points of B in the total'],
    ['39 to 42 parts of B', '39', '42', 'parts of B'],
  ])('%s', (text, low, high, definition) => {
    expect(of(text)).toEqual({ definition, low, high });
  });
  test('one number is both limits where the head says ±', () => {
    expect(of('2', '± %')).toEqual({ definition: '% of B per A', low: '-2', high: '2' });
    expect(of('2', '± % of A per B')).toEqual({ definition: '% of A per B', low: '-2', high: '2' });
    expect(faultsOf('X\t100:40\tweight\t2')[0]).toMatch(/^1, limits: "2" does not say both limits/);
  });
  test.each([
    ['2 to x', '"2 to x" are no limits.'],
    ['±x', '"±x" are no limits.'],
    ['+1/-x', '"+1/-x" are no limits.'],
    ['+1/+2', '"+1/+2" has the same sign twice.'],
    ['−1 −2', '"−1 −2" has the same sign twice.'],
    ['2', '"2" does not say both limits.'],
    ['about 2 %', '"about 2 %" does not say both limits.'],
  ])('%s is refused, with what is wrong and what is expected', (typed, wrong) => {
    expect(faultsOf(`X\t100:40\tweight\t${typed}`)).toEqual([
      `1, limits: ${wrong} Expected ±2 %, +2/-1 % or -1 to 2 %, with their definition behind if need be: -1 to 2 % of B per A.`,
    ]);
  });
  test('low and high apart, with their definition', () => {
    const text = 'name\tratio\tbasis\tlimit low\tlimit high\tlimits definition\nX\t100:40\tweight\t-1\t2\tpoints of B in the total';
    expect(only(text).limits).toEqual({ definition: 'points of B in the total', low: '-1', high: '2' });
    expect(read(text).notes).toEqual([]);
  });
  test('a definition that nobody says is the one asked for, and that is told', () => {
    const list = readMaterials('X\t100:40\tweight\t±2\nY\t100:40\tweight\t±2 % of B per A', { ...wish, limitsMean: '% of A per B' });
    expect(list.materials.map(({ material }) => material.limits?.definition)).toEqual(['% of A per B', '% of B per A']);
    expect(list.notes).toEqual(['Limits of 1 material say no definition: taken as % of A per B.']);
  });
});

describe('faults', () => {
  test('every one of every row is told with its line and column, and the good rows are read', () => {
    const text =
      'name;ratio;basis;limits;density A\nGood;5:1;volume;±2;\n;100;mass;2..1;1.16\nBad;4:1:1;volume;3 to 5;-1 g/cm3\nFine;3:1;volume;;';
    expect(faultsOf(text).map((one) => one.slice(0, one.indexOf(':')))).toEqual([
      '3, name',
      '3, ratio',
      '3, basis',
      '3, density A',
      '4, ratio',
    ]);
    expect(faultsOf(text)[1]).toContain('Expected A to B, like 100:100, or 100 per 100 A.');
    expect(faultsOf(text)[3]).toContain('write 1.16 g/cm3');
    expect(read(text).materials.map(({ line, material }) => [line, material.name])).toEqual([
      [2, 'Good'],
      [5, 'Fine'],
    ]);
  });
  test('the rows with faults are left as they were, under their head', () => {
    const { left } = read('name;ratio;basis\nGood;5:1;volume\n"Bad; indeed";5;volume\nFine;3:1;volume');
    expect(left).toBe('name;ratio;basis\r\n"Bad; indeed";5;volume');
    expect(read('Good\t5:1\tvolume\nBad\t5\tvolume').left).toBe('name\tratio\tbasis\r\nBad\t5\tvolume');
    expect(read(left).faults[0]).toMatchObject({ line: 2, column: 'ratio' });
  });
  test('what the shop file itself would refuse', () => {
    const row = (limits: string, more = '') => faultsOf(`X\t100:40\tvolume\t${limits}${more}`)[0];
    expect(row('1 to 2 %')).toMatch(/^1, limits: The low limit 1 lies above the target/);
    expect(row('45 to 50 parts of B')).toMatch(/^1, limits: The low limit 45 lies above the target, which is 40/);
    expect(row('±2', '\t99 g/cm3')).toMatch(/^1, density A: 99 g\/cm3 is out of range: it must be at most 25 g\/cm3/);
    expect(row('±2', '\t\t\t\t900 °C')).toMatch(/^1, run A: 900 °C is out of range/);
  });
  test('a time of day, a number alone, three parts, a cell too many', () => {
    expect(faultsOf('X\t100:45:00\tweight')[0]).toContain('a spreadsheet made of 100:45');
    expect(faultsOf('X,100:38,9,weight')[0]).toMatch(/^1, basis: "9" is neither/);
    expect(faultsOf(`X\t5:1\tvolume${'\t'.repeat(9)}last`)[0]).toContain('"last" stands in cell 12, and there are 11 columns');
  });
  test('a density that a ratio by weight needs may be missing, which is noted', () => {
    const [listed] = read('X\t100:40\tweight').materials;
    expect(listed?.mix).toBeNull();
    expect(listed?.notes).toHaveLength(2);
    expect(listed?.notes[0]).toContain('density of A is missing');
  });
  test('two of one name are noted; ids are never taken twice', () => {
    const text = 'name;ratio;basis;id\nX;5:1;volume;e12\nX;5:1;volume;e12\nY;5:1;volume;new';
    const list = readMaterials(text, { ...wish, taken: [{ id: 'e12' }, { id: 'material-1' }] });
    expect(list.materials.map(({ material }) => material.id)).toEqual(['material-2', 'material-3', 'new']);
    expect(list.materials[1]?.notes).toEqual(['Line 2 has a material of the same name.']);
  });
  test('500 are read, and the rest is left', () => {
    const list = read('X\t5:1\tvolume\n'.repeat(503));
    expect([list.materials.length, list.faults.length, list.left.split('\r\n').length]).toEqual([500, 1, 4]);
    expect(list.faults[0]).toMatchObject({ line: 501 });
  });
  test('an empty text is no list and no fault; one that is not UTF-8, or has an open quotation mark, is a fault', () => {
    expect(read(' \n\n')).toEqual({ materials: [], faults: [], left: '', notes: [] });
    expect(faultsOf('X\uFFFD\t5:1\tvolume')[0]).toContain('UTF-8');
    expect(faultsOf('X,"5:1,volume')[0]).toContain('uot');
  });
});

describe('a mix ratio that is not to be read says so of its own column', () => {
  const head = 'name;ratio;B per 100 A;ratio by weight;ratio by volume;other ratio;basis';
  const EXPECTED = 'Expected A to B, like 100:38.9 or 5:1, or 38.9 per 100 A.';
  test.each<[string, readonly string[]]>([
    [';;;;;weight', [`2, ratio: Nothing is given. ${EXPECTED}`]],
    ['100:40;40;;;;weight', ['2, ratio: The ratio is given twice: keep one of its columns.']],
    ['100:40;;100:40;;;weight', ['2, ratio: The ratio is given twice: keep one of its columns.']],
    [';40;;100:40;;weight', ['2, ratio: The ratio is given twice: keep one of its columns.']],
    ['40;;;;;weight', ['2, ratio: "40" is one number. Expected A to B, like 100:40, or 40 per 100 A.']],
    ['4:1:1;;;;;weight', ['2, ratio: "4:1:1" has three parts. A list takes two; a third part is given on the Material page.']],
    ['5:45:00;;;;;volume', ['2, ratio: "5:45:00" looks like a time that a spreadsheet made of 5:45: make its cell text.']],
    ['100:40;;;;;', ['2, basis: Nothing is given. Expected weight or volume, as the data sheet says; it is never guessed.']],
    ['100:40;;;;;mass', ['2, basis: "mass" is neither. Expected weight or volume, as the data sheet says; it is never guessed.']],
    ['5:1;;;;40 per 100 A;volume', ['2, other ratio: Expected A to B, like 100:45.']],
    ['5:1;;;;40;volume', ['2, other ratio: "40" is one number. Expected A to B, like 100:40, or 40 per 100 A.']],
    [';;4:1:1;;;', ['2, ratio: "4:1:1" has three parts. A list takes two; a third part is given on the Material page.']],
  ])('%s', (cells, faults) => expect(faultsOf(`${head}\nX;${cells}`)).toEqual(faults));
  test('nor is a count of B that is no number', () => {
    expect(faultsOf(`${head}\nX;;many;;;;weight`)).toEqual([expect.stringMatching(/^2, B per 100 A: "many" is not a number/)]);
    expect(faultsOf('X\tmany per 100 A\tweight')).toEqual([expect.stringMatching(/^1, B per 100 A: "many" is not a number/)]);
  });
});

test('what was understood of a row, in words, and what of it is not known', () => {
  const words = (text: string) => {
    const [listed] = read(text).materials;
    return listed && listedWords(listed, say);
  };
  expect(words('X\t100:40\tweight')).toEqual({ ratio: '100:40 by weight', byVolume: 'densities missing', limits: 'not given' });
  expect(words('X\t40 per 100 A\tvolume\t-1 to 2 % of A per B')).toEqual({
    ratio: '40 per 100 A by volume',
    byVolume: '2.5000 : 1',
    limits: '\u22121 to 2 % of A per B',
  });
});

test.each([
  ["' =1+1", '=1+1'],
  ['  Resin  ', 'Resin'],
  ["  '0055", '0055'],
])('the cell %j is the name %s, without blanks on either side of an apostrophe', (cell, name) =>
  expect(only(`${cell}\t5:1\tvolume`).name).toBe(name),
);

describe('there and back', () => {
  test('writeMaterials example: the demo comes back as it is, but for what comes from chemistry, which is named', () => {
    for (const decimal of ['.', ','] as const) {
      const { text, leftOut } = writeMaterials(materials, decimal);
      expect(leftOut).toEqual([{ name: 'U40 elastomer', why: 'its ratio comes from chemistry' }]);
      const list = read(text);
      expect(list.faults).toEqual([]);
      expect(list.materials.map(({ material }) => material)).toEqual(materials.filter(({ id }) => id !== 'u40'));
    }
  });
  test('a third part is left out too; a formula and a leading zero stay text', () => {
    const L5 = materials.find(({ id }) => id === 'l5');
    if (L5 === undefined) throw new Error('the demo has no L5');
    const odd: MaterialRow = { ...L5, name: '=A1', note: '0055', cautions: ['one', 'two; "three"'] };
    const { text, leftOut } = writeMaterials([odd, { ...L5, third: {} }], '.');
    expect(leftOut.map(({ why }) => why)).toEqual(['it has a third part']);
    expect(text).toContain("\r\n'=A1,5 : 1,volume");
    expect(text).toContain(",'0055,");
    expect(only(text)).toEqual(odd);
  });
  test('any complete material of two parts comes back, and its target with it [law]', () => {
    const number = fc.constantFrom('1.16', '0,97', '1 1/8', '7/8');
    const density = fc.record(
      { value: number.map((value) => ({ value, unit: 'g/cm3' })), at: fc.constant({ value: '25', unit: '°C' }) },
      { requiredKeys: ['value'] },
    );
    const part = fc.record(
      {
        name: fc
          .string({ minLength: 1, maxLength: 12, unit: fc.constantFrom('a', ',', ';', '"', '=', '-', '0', "'", '\t') })
          .filter((text) => text.trim() === text),
        density,
        expansion: fc.constantFrom({ value: '0.0007', unit: '1/K' }, { value: '4e-4', unit: '1/°F' }),
        runAt: fc.constantFrom({ value: '-5', unit: '°C' }, { value: '104', unit: '°F' }),
        densityUncertainty: fc.constant({ value: '0.2', unit: '%' }),
      },
      { requiredKeys: ['density'] },
    );
    const material = fc.record({
      ratio: fc.constantFrom(
        { basis: 'weight', parts: '100 : 38,9' } as const,
        { basis: 'volume', parts: '5:1', at: { value: '20', unit: '°C' } } as const,
        { basis: 'weight', perHundredA: '38.9' } as const,
      ),
      limits: fc.constantFrom(
        { definition: '% of A per B', low: '-2', high: '1,5' } as const,
        { definition: '% of B per A', low: '-0.5', high: '+2' } as const,
      ),
      A: part,
      B: part,
    });
    fc.assert(
      fc.property(fc.array(material, { maxLength: 5 }), fc.constantFrom('.' as const, ',' as const), (some, decimal) => {
        const rows = some.map((one, index): MaterialRow => ({ ...one, id: `m${index}`, name: `Material ${index}` }));
        const list = read(writeMaterials(rows, decimal).text);
        expect(list.faults).toEqual([]);
        expect(list.materials.map((one) => one.material)).toEqual(rows);
        const file = { ...demo.value, materials: rows };
        list.materials.forEach(({ mix }, index) => {
          const own = mixOf(file, index, say);
          expect(own.ok && mix?.wantedBPerA.equals(own.value.wantedBPerA)).toBe(true);
        });
      }),
      { numRuns: 60 },
    );
  });
  test('whatever is pasted, it is read or refused; what is left reads to the same faults [law]', () => {
    const word = fc.constantFrom(
      'name',
      'ratio',
      'basis',
      'limits',
      '±',
      'density A',
      'g/cm3',
      '100:38.9',
      '5:1',
      'weight',
      'volume',
      '±2 %',
      '-1 to 2',
      '1.16',
      '25 °C',
      'at',
      '"',
      "'",
      '=1+1',
      ...LIMIT_DEFINITIONS,
    );
    const text = fc.array(fc.oneof(word, fc.constantFrom('\t', ';', ',', '\n', '\r\n', ' '), fc.string({ maxLength: 4 })), {
      maxLength: 40,
    });
    fc.assert(
      fc.property(text, (pieces) => {
        const list = read(pieces.join(''));
        expect(list.left === '').toBe(list.faults.length === 0);
        const again = read(list.left);
        expect(again.faults.map(({ column, what }) => [column, what])).toEqual(list.faults.map(({ column, what }) => [column, what]));
        expect(again.materials).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });
});
