import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { accepts } from '../../../core/src/file/accepts.ts';
import { type SchemaLeaf, schemaLeaves } from '../../../core/src/file/schemaLeaves.ts';
import { limitsOf, lineAt, placesOf } from '../../../core/src/help/fieldHelp.ts';
import { FIELD_PAGES } from '../../../core/src/help/fields/index.ts';
import { begins, matches } from '../../../core/src/help/match.ts';
import { PRICE, readPrice } from '../../../core/src/price.ts';
import { Fraction } from '../../../core/src/ratio.ts';
import { readTolerance, readWindowEnd, TOLERANCE, WINDOW_END } from '../../../core/src/reachWindow.ts';
import { readTeethRange, TEETH_RANGE } from '../../../core/src/teethRange.ts';
import { say } from '../planFixture.ts';

const lines = FIELD_PAGES.flatMap((page) => page.lines);
const leaves = schemaLeaves();
const plain = (text: string | null | undefined) => text?.replaceAll('\u00A0', ' ') ?? null;
const lineNamed = (place: string) => {
  const found = lineAt(place);
  if (found === null) throw new Error(`no box is ${place}`);
  return found;
};
const leafAt = (place: string): SchemaLeaf => {
  const found = leaves.find(({ steps }) => steps.join('.') === place);
  if (found === undefined) throw new Error(`the schema has no ${place}`);
  return found;
};

/** What nobody types: the envelope, ids by which rows name each other, and what is kept as it was printed or judged. */
const NOT_TYPED = [
  /^(format|version|writtenBy)$/,
  /\.id$/,
  /\.turnedBy\.(shaft|stage)$/,
  /^unfinishedChecks\.\*\.machine$/,
  /^(changeSheets|quotePages|ratioChecks)\./,
];
/** Steps that one box holds together, as a range or a figure with its uncertainty. */
const TOGETHER = ['from', 'to', 'fixed', 'value', 'uncertainty', 'amount', 'time'];

const linesOf = ({ steps }: SchemaLeaf) =>
  lines.filter((line) =>
    placesOf(line).some(
      (pattern) => matches(pattern, steps) || (TOGETHER.includes(steps.at(-1) ?? '') && matches(pattern, steps.slice(0, -1))),
    ),
  );

describe('every field of the shop file', () => {
  const typed = leaves.filter(({ steps }) => !NOT_TYPED.some((pattern) => pattern.test(steps.join('.'))));

  test('the walk of the schema finds them all [fields of each kind]', () => {
    const places = leaves.map(({ steps }) => steps.join('.'));
    for (const place of [
      'shop.currency',
      'machines.*.stages.*.centre.to',
      'machines.*.B.pumps.*.gear.gapLength',
      'materials.*.premix.density.at',
    ])
      expect(places).toContain(place);
    expect(new Set(places).size).toBe(places.length);
    expect(typed.length).toBeGreaterThan(150);
  });
  test('has exactly one line of help', () => {
    const wrong = typed.map((leaf) => [leaf.steps.join('.'), linesOf(leaf).length] as const).filter(([, count]) => count !== 1);
    expect(wrong).toEqual([]);
  });
  test('and what is left out of it is there', () => {
    for (const pattern of NOT_TYPED) expect(leaves.some(({ steps }) => pattern.test(steps.join('.')))).toBe(true);
  });
});

describe('every line of help', () => {
  test('has a name, one sentence or two, and where the value is found', () => {
    for (const { place, name, means, found } of lines) {
      expect(name, place).toMatch(/^\S.{2,60}$/);
      for (const text of [means, found]) {
        expect(text, place).toMatch(/^[A-Z].*[.?]$/);
        expect(text.length, place).toBeLessThan(140);
      }
      expect(`${name}${means}${found}`, place).not.toMatch(/!|\bplease\b/i);
    }
  });
  test('has a place of its own', () => {
    const places = lines.flatMap(placesOf);
    expect(new Set(places).size).toBe(places.length);
  });
  test('that takes its limits from elsewhere in the file finds them', () => {
    const borrowed = lines.flatMap(({ limitsOf: from }) => from ?? []);
    expect(borrowed.length).toBeGreaterThan(8);
    for (const from of borrowed) expect(leaves.filter(({ steps }) => begins(from, steps)).length, from).toBeGreaterThan(0);
  });
});

describe('limits are those of the schema', () => {
  const bounded = leaves.map((leaf) => ({ leaf, of: accepts(leaf) })).filter(({ of }) => of.what === 'quantity' && of.limits.length > 0);

  test('at a limit and just beyond it the schema answers as help says', () => {
    expect(bounded.length).toBeGreaterThan(60);
    for (const { leaf, of } of bounded) {
      for (const limit of of.limits) {
        const [, word = '', number = '', unit = ''] = /^(above|at least|at most|below) (\S+?)(?:\u00A0| |$)(.*)$/.exec(limit) ?? [];
        const takes = (value: Fraction) =>
          v.safeParse(leaf.schema, { value: value.toFraction(), unit: unit || (of.units[0] ?? '') }).success;
        const step = new Fraction('1/1000000');
        const at = new Fraction(number);
        expect([takes(at.sub(step)), takes(at), takes(at.add(step))], `${leaf.steps.join('.')}: ${limit}`).toEqual(
          { above: [false, false, true], 'at least': [false, true, true], 'at most': [true, true, false], below: [true, false, false] }[
            word
          ],
        );
      }
    }
  });
  test('every quantity names its units', () => {
    for (const leaf of leaves) if (accepts(leaf).what === 'quantity') expect(accepts(leaf).units.length).toBeGreaterThan(0);
  });
  test.each([
    ['machines.0.stages.0.takeUp', 'at least 0 pitches, at most 100 pitches'],
    ['machines.0.stages.1.driven.guard', 'above 0 mm, at most 20 m, in m, mm, cm, in, ft'],
    ['machines.1.motor.usable', 'from: at least 0 %, at most 100 %; to: above 0 %, at most 100 %'],
    ['machines.0.A.pumps.0.gear.teeth', 'whole number, at least 4, at most 200'],
    ['materials.0.B.expansion', 'at least −0.01 1/K, at most 0.01 1/K, in 1/K, 1/°C, 1/°F'],
    ['materials.0.A.density.value', 'above 0 g/cm³, at most 25 g/cm³, in kg/m³, g/cm³, g/mL, kg/L, lb/ft³, lb/gal (US), lb/in³'],
    ['materials.0.chemistry.index', 'number, the index is in per cent, 20 to 1000'],
    ['unfinishedChecks.0.catches.2.B.gross', 'at least 0 g, at most 10000 kg, in kg, g, lb, oz'],
    ['reach.tolerance', 'per cent above 0 and at most 50, like 2'],
    ['racks.0.prices.0.price', 'a number from 0 to 1000000 with at most two places, as 18.50'],
    ['option-order', null],
  ])('%s', (place, limits) => {
    const line = lineAt(place);
    expect(line).not.toBeNull();
    expect(line && plain(limitsOf(line, say))).toBe(limits);
  });
  test('a shop that writes a comma reads one', () => {
    const line = lineAt('materials.0.B.expansion');
    expect(line && plain(limitsOf(line, { ...say, decimal: ',' }))).toContain('−0,01 1/K');
  });
});

describe('examples of the docstrings', () => {
  test('a line by its place, and none where there is no box', () => {
    expect(lineAt('racks.0.pieces.3.bore')?.name).toBe('Bore');
    expect(lineAt('racks.0.pieces.3')).toBeNull();
    expect(lineAt('')).toBeNull();
  });
  test('patterns', () => {
    expect(begins('machines.*.A|B.pressure', ['machines', '0', 'B', 'pressure'])).toBe(true);
    expect(matches('machines.*.A|B', ['machines', '0', 'B', 'pressure'])).toBe(false);
  });
  test('help says what the reader of the box expects', () => {
    expect(plain(limitsOf(lineNamed('reach.price.price'), say))).toBe(PRICE);
    expect(readPrice('-1')).toEqual({ ok: false, expected: `"-1" is no price. Expected ${PRICE}.` });
    expect(readWindowEnd('0')).toEqual({ ok: false, expected: `"0" is out of reach. Expected ${WINDOW_END}.` });
    expect(readTolerance('0')).toEqual({ ok: false, expected: `"0" is no tolerance. Expected ${TOLERANCE}.` });
    expect(readTeethRange('1 to 400')).toEqual({ ok: false, expected: `"1 to 400": ${TEETH_RANGE}.` });
  });
  test('what a field takes', () => {
    expect(accepts(leafAt('machines.*.stages.*.takeUp'))).toEqual({
      what: 'quantity',
      units: ['pitches'],
      limits: ['at least 0\u00A0pitches', 'at most 100\u00A0pitches'],
    });
    expect(accepts(leafAt('machines.*.name'))).toEqual({ what: 'text', units: [], limits: ['at most 200 characters'] });
    expect(accepts(leafAt('machines.*.rack')).what).toBe('choice');
    expect(accepts(leafAt('materials.*.ratio.parts')).what).toBe('ratio');
    expect(accepts(leafAt('materials.*.limits.low')).what).toBe('number');
    expect(accepts(leafAt('shop.invented')).what).toBe('yes or no');
  });
  test('every field of the file is walked to', () => {
    expect(leaves.map(({ steps }) => steps.join('.')).includes('machines.*.motor.speed')).toBe(true);
  });
});
