import { describe, expect, test } from 'vitest';
import {
  equivalentWeightOf,
  FIGURES,
  type FigureKey,
  figureTrouble,
  MEASURE_NAMES,
  type MeasureName,
  measureOf,
  shortText,
} from '../../../core/src/chemistry/measures.ts';
import { SYSTEM_NAMES, systemOf } from '../../../core/src/chemistry/systems.ts';
import { exactText, Fraction, float } from '../../../core/src/ratio.ts';
import { isWorked } from '../../../core/src/working.ts';
import { expectPrinted } from '../printedFormula.ts';

type Figures = Readonly<Partial<Record<FigureKey, string>>>;

const read = (figures: Figures) => Object.fromEntries(Object.entries(figures).map(([key, typed]) => [key, new Fraction(typed)]));
const weight = (by: MeasureName, figures: Figures): Fraction => {
  const found = equivalentWeightOf(by, 'it', read(figures));
  if (found === null) throw new Error(`${by} does not react`);
  if (isWorked(found)) expectPrinted(found);
  return found.value;
};

/** What stands against a figure of a measure. */
function trouble(by: MeasureName, typed: string, key: FigureKey = 'value'): string | null {
  const rule = measureOf(by).figures.find((figure) => figure.key === key);
  if (rule === undefined) throw new Error(`${by} has no ${key}`);
  return figureTrouble(rule, new Fraction(typed), typed);
}

describe('equivalent weights out of what a data sheet says', () => {
  test.each<[string, MeasureName, Figures, number, number]>([
    [
      'diethylenetriamine, 103 g/mol, 5 hydrogens: AHEW 20.6 [text on adhesives in civil engineering]',
      'amine molar mass',
      { value: '103', hydrogens: '5' },
      20.6,
      0.01,
    ],
    [
      'triethylenetetramine, 146.23 g/mol, 6 hydrogens: 24.4 [epoxy handbook, from memory]',
      'amine molar mass',
      { value: '146.23', hydrogens: '6' },
      24.4,
      0.05,
    ],
    ['epoxy value 0.51 mol/100 g: EEW 196.08 [definition]', 'epoxy value', { value: '0.51' }, 196.07843, 0.00001],
    // The guide takes 4200 and rounds 135.48 up.
    ['31.0 % NCO: 136 [industry guide to urethane calculations]', '% NCO', { value: '31.0' }, 136, 0.6],
    ['OH number 1810: 31.0, a diol of 62.0 g/mol [industry guide to urethane calculations]', 'OH number', { value: '1810' }, 31.0, 0.05],
    [
      'pure MDI, 33.6 % NCO: 125 of its 250.25 g/mol [article on the analysis of aromatic polyisocyanates]',
      '% NCO',
      { value: '33.6' },
      125,
      0.1,
    ],
    ['water: 9 [Polyurethane Manufacturers Association, index form]', 'water', {}, 9, 0],
    [
      'anhydride of 168 g/mol at 0.9: 151.2 [maker of anhydride hardeners; arithmetic]',
      'anhydride molar mass',
      { value: '168', factor: '0.9' },
      151.2,
      1e-9,
    ],
  ])('%s', (_title, by, figures, expected, within) => {
    expect(Math.abs(float(weight(by, figures)) - expected)).toBeLessThanOrEqual(within);
  });
  test('the other way round: 460 g/eq is OH number 122, 183 g/eq is 23 % NCO [sample calculations for polyurethane formulations]', () => {
    expect(Math.abs(float(weight('OH number', { value: '122' })) - 460)).toBeLessThanOrEqual(0.2);
    // 22.95 %, printed as 23.
    expect(Math.abs(float(weight('% NCO', { value: '22.95' })) - 183)).toBeLessThanOrEqual(0.1);
  });
  test('molar masses of NCO and KOH are 42.017 and 56.1056 g/mol, exactly [standard atomic weights, from memory]', () => {
    expect(exactText(weight('% NCO', { value: '1' }))).toBe(exactText(new Fraction('4201.7')));
    expect(exactText(weight('OH number', { value: '10' }))).toBe(exactText(new Fraction('5610.56')));
    expect(14.0067 + 12.0107 + 15.9994).toBeCloseTo(42.017, 3);
    expect(39.0983 + 15.9994 + 1.00794).toBeCloseTo(56.1056, 4);
  });
  test('what is stated as an equivalent weight stays as it is, and what is inert has none', () => {
    for (const by of ['EEW', 'AHEW', 'NCO equivalent weight', 'OH equivalent weight'] as const)
      expect(exactText(weight(by, { value: '190' }))).toBe('190/1');
    expect(equivalentWeightOf('inert', 'chalk', {})).toBeNull();
    expect(() => equivalentWeightOf('% NCO', 'it', {})).toThrow(RangeError);
  });
});

describe('the usual slips are refused, and the sentence says what the figure looks like', () => {
  test.each<[MeasureName, string, FigureKey, string]>([
    ['EEW', '0.51', 'value', '0.51 looks like an epoxy value in mol/100 g. EEW: 50 to 10000 g/eq'],
    ['EEW', '5.1', 'value', '5.1 looks like equivalents in 1 kg, or a percentage. EEW: 50 to 10000 g/eq'],
    ['epoxy value', '196', 'value', '196 looks like an EEW in g/eq. Epoxy value: 0.01 to 2 mol/100 g'],
    ['epoxy value', '5.1', 'value', '5.1 looks like equivalents in 1 kg; mol/100 g are a tenth of that. Epoxy value: 0.01 to 2 mol/100 g'],
    ['AHEW', '5', 'value', '5 looks like a number of hydrogens. AHEW: 10 to 2000 g/eq'],
    ['amine molar mass', '103', 'hydrogens', '103 looks like a molar mass or an AHEW. Active hydrogens: 1 to 20'],
    ['anhydride molar mass', '85', 'factor', '85 looks like a percentage; 85 % is 0.85. Factor: 0.5 to 1'],
    ['% NCO', '0.231', 'value', '0.231 looks like a fraction; 0.231 is 23.1 %. % NCO: 1 to 50'],
    ['% NCO', '135.5', 'value', '135.5 looks like an equivalent weight in g/eq. % NCO: 1 to 50'],
    ['NCO equivalent weight', '31.0', 'value', '31.0 looks like % NCO. Equivalent weight: 80 to 5000 g/eq'],
    ['OH number', '5', 'value', '5 looks like a percentage of OH; 1 % is an OH number of 33. OH number: 10 to 2000 mg KOH/g'],
    ['OH number', '3400', 'value', '3400 looks like an equivalent weight or a molar mass. OH number: 10 to 2000 mg KOH/g'],
    ['OH number', '-1', 'value', '-1 is out of range. OH number: 10 to 2000 mg KOH/g'],
  ])('%s of %s', (by, typed, key, said) => {
    expect(trouble(by, typed, key)).toBe(said);
  });
  test('both ends of every range are taken, and a hair beyond is not', () => {
    const hair = new Fraction('1/1000000');
    for (const by of MEASURE_NAMES) {
      for (const rule of measureOf(by).figures) {
        const [least, most] = [new Fraction(rule.least), new Fraction(rule.most)];
        for (const end of [least, most]) expect(figureTrouble(rule, end, 'it'), `${by} ${rule.key}`).toBeNull();
        for (const beyond of [least.sub(hair), most.add(hair)])
          expect(figureTrouble(rule, beyond, 'it'), `${by} ${rule.key}`).not.toBeNull();
      }
    }
  });
  test('ordinary materials are taken: bisphenol A resin 190, butanediol diglycidyl ether 101, HDI 49.97 % NCO, glycerol OH 1828 [common practice, no source]', () => {
    expect([trouble('EEW', '190'), trouble('EEW', '101'), trouble('% NCO', '49.97'), trouble('OH number', '1828')]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});

describe('the table', () => {
  test('each measure has its figures under different keys, and a place for each in its short text', () => {
    for (const by of MEASURE_NAMES) {
      const { figures, short } = measureOf(by);
      expect(new Set(figures.map(({ key }) => key)).size).toBe(figures.length);
      const typed = figures.map((_, index) => `<${index}>`);
      expect(short(...typed).match(/<\d>/g) ?? []).toEqual(typed);
      for (const { key } of figures) expect(FIGURES).toContain(key);
    }
  });
  test('every group is wanted by just one side of one system', () => {
    const wanted = SYSTEM_NAMES.flatMap((name) => [systemOf(name).asked.group, systemOf(name).other.group]);
    expect(new Set(wanted).size).toBe(wanted.length);
    for (const by of MEASURE_NAMES) if (by !== 'inert') expect(wanted).toContain(measureOf(by).group);
  });
  test('in short, as typed', () => {
    expect(shortText('% NCO', { value: '31.0' })).toBe('31.0 % NCO');
    expect(shortText('amine molar mass', { value: '103', hydrogens: '5' })).toBe('amine 103 / 5');
  });
});
