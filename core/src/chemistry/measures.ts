import { en } from '../en.ts';
import { capital } from '../format.ts';
import { Fraction, whole } from '../ratio.ts';
import { type Formula, formula, type Input, input, work } from '../working.ts';

/** What reacts in an ingredient. Amines and anhydrides cure epoxides; hydroxyl, amine and water cure isocyanates. */
export type Group = 'epoxide' | 'hardener' | 'isocyanate' | 'active hydrogen';

/** The figures an ingredient may be described with; the file keeps each under its key. */
export const FIGURES = ['value', 'hydrogens', 'factor'] as const;
export type FigureKey = (typeof FIGURES)[number];

/** A figure that is typed: what it may be, and what is usually typed in its stead. */
export interface FigureRule {
  readonly key: FigureKey;
  readonly label: string;
  readonly unit: string;
  /** What stands beside its field. */
  readonly hint?: string;
  readonly letter: string;
  /** Both inclusive, as people write them. */
  readonly least: string;
  readonly most: string;
  /** Outside the limits, the first that fits says what was meant. */
  readonly mixUps: readonly MixUp[];
}

/** Figures within which another measure, or another unit, was probably typed. */
interface MixUp {
  readonly from: string;
  readonly to: string;
  /** Completes "looks like". */
  readonly looks: string;
}

/** One way in which a data sheet says how much of an ingredient reacts. */
export interface Measure {
  /** As a list of choices names it. */
  readonly words: string;
  /** Null where nothing in it reacts. */
  readonly group: Group | null;
  readonly figures: readonly FigureRule[];
  /** Null where the figure is the equivalent weight itself, or nothing reacts. */
  readonly formula: Formula<string, Fraction> | null;
  /** In a line of the sheet, as `OH 165`, of its figures in their turn. */
  readonly short: (...figures: readonly string[]) => string;
}

type Letters = Readonly<Record<string, Fraction>>;
const at = (put: Letters, letter: string): Fraction => {
  const value = put[letter];
  if (value === undefined) throw new RangeError(`no number was put in for ${letter}`);
  return value;
};

/** NCO has 42.017 g/mol and KOH 56.1056; tables print 4200 or 4202, and 56100 or 56110. */
const NCO_PER_CENT = new Fraction('4201.7');
const KOH_mg = new Fraction('56105.6');

const weightOf = (written: string, source: string, of: (put: Letters) => Fraction): Formula<string, Fraction> =>
  formula({ letter: 'E', written, dimension: 'number', source, of });

const G_PER_EQ = 'g/eq';
const equivalentWeight = (label: string, least: string, most: string, mixUps: readonly MixUp[]): FigureRule => ({
  key: 'value',
  label,
  unit: G_PER_EQ,
  letter: 'E',
  least,
  most,
  mixUps,
});
const molarMass = (least: string, most: string): FigureRule => ({
  key: 'value',
  label: en`molar mass`,
  unit: 'g/mol',
  letter: 'M',
  least,
  most,
  mixUps: [],
});

/** Every measure there is: schema, form, formula and working are drawn from this table. Limits are our choice, around what is sold. */
const MEASURES = {
  EEW: {
    words: en`EEW, epoxy equivalent weight`,
    group: 'epoxide',
    figures: [
      equivalentWeight('EEW', '50', '10000', [
        { from: '0', to: '2', looks: en`an epoxy value in mol/100 g` },
        { from: '2', to: '49.9', looks: en`equivalents in 1 kg, or a percentage` },
      ]),
    ],
    formula: null,
    short: (figure) => `EEW ${figure}`,
  },
  'epoxy value': {
    words: en`epoxy value`,
    group: 'epoxide',
    figures: [
      {
        key: 'value',
        label: en`epoxy value`,
        unit: 'mol/100 g',
        letter: 'x',
        least: '0.01',
        most: '2',
        mixUps: [
          { from: '50', to: '10000', looks: en`an EEW in g/eq` },
          { from: '2', to: '50', looks: en`equivalents in 1 kg; mol/100 g are a tenth of that` },
        ],
      },
    ],
    formula: weightOf('100 / x', en`definition of the epoxy value, mol in 100 g`, (put) => whole(100).div(at(put, 'x'))),
    short: (figure) => en`epoxy value ${figure}`,
  },
  AHEW: {
    words: en`AHEW, amine hydrogen equivalent weight`,
    group: 'hardener',
    figures: [equivalentWeight('AHEW', '10', '2000', [{ from: '0', to: '9.9', looks: en`a number of hydrogens` }])],
    formula: null,
    short: (figure) => `AHEW ${figure}`,
  },
  'amine molar mass': {
    words: en`molar mass, of an amine`,
    group: 'hardener',
    figures: [
      molarMass('30', '5000'),
      {
        key: 'hydrogens',
        label: en`active hydrogens`,
        unit: '',
        letter: 'h',
        least: '1',
        most: '20',
        mixUps: [{ from: '20', to: '5000', looks: en`a molar mass or an AHEW` }],
      },
    ],
    formula: weightOf('M / h', en`definition of the amine hydrogen equivalent weight`, (put) => at(put, 'M').div(at(put, 'h'))),
    short: (mass, hydrogens) => en`amine ${mass} / ${hydrogens}`,
  },
  'anhydride molar mass': {
    words: en`molar mass, of an anhydride`,
    group: 'hardener',
    figures: [
      molarMass('80', '1000'),
      {
        key: 'factor',
        label: en`factor`,
        unit: '',
        hint: en`usually 0.85 to 0.9`,
        letter: 'c',
        least: '0.5',
        most: '1',
        mixUps: [{ from: '50', to: '100', looks: en`a percentage; 85 % is 0.85` }],
      },
    ],
    formula: weightOf('M · c', en`one anhydride an epoxide, less than all of it by the factor; common practice, no source`, (put) =>
      at(put, 'M').mul(at(put, 'c')),
    ),
    short: (mass, factor) => en`anhydride ${mass} × ${factor}`,
  },
  '% NCO': {
    words: '% NCO',
    group: 'isocyanate',
    figures: [
      {
        key: 'value',
        label: '% NCO',
        unit: '',
        letter: 'p',
        least: '1',
        most: '50',
        mixUps: [
          { from: '0', to: '0.999', looks: en`a fraction; 0.231 is 23.1 %` },
          { from: '50', to: '5000', looks: en`an equivalent weight in g/eq` },
        ],
      },
    ],
    formula: weightOf('4201.7 / p', en`definition of % NCO, with 42.017 g/mol for NCO`, (put) => NCO_PER_CENT.div(at(put, 'p'))),
    short: (figure) => `${figure} % NCO`,
  },
  'NCO equivalent weight': {
    words: en`equivalent weight`,
    group: 'isocyanate',
    figures: [
      equivalentWeight(en`equivalent weight`, '80', '5000', [
        { from: '0', to: '0.999', looks: en`a fraction` },
        { from: '1', to: '50', looks: '% NCO' },
      ]),
    ],
    formula: null,
    short: (figure) => en`NCO EW ${figure}`,
  },
  'OH number': {
    words: en`OH number`,
    group: 'active hydrogen',
    figures: [
      {
        key: 'value',
        label: en`OH number`,
        unit: 'mg KOH/g',
        letter: 'k',
        least: '10',
        most: '2000',
        mixUps: [
          { from: '0', to: '9.99', looks: en`a percentage of OH; 1 % is an OH number of 33` },
          { from: '2000', to: '20000', looks: en`an equivalent weight or a molar mass` },
        ],
      },
    ],
    formula: weightOf('56105.6 / k', en`definition of the OH number, with 56.1056 g/mol for KOH`, (put) => KOH_mg.div(at(put, 'k'))),
    short: (figure) => `OH ${figure}`,
  },
  'OH equivalent weight': {
    words: en`equivalent weight`,
    group: 'active hydrogen',
    figures: [equivalentWeight(en`equivalent weight`, '20', '10000', [{ from: '0', to: '19.9', looks: en`a percentage of OH` }])],
    formula: null,
    short: (figure) => en`OH EW ${figure}`,
  },
  water: {
    words: en`being water`,
    group: 'active hydrogen',
    figures: [],
    formula: weightOf('18 / 2', en`pma-library, index form: water takes two NCO, so it counts 9`, () => whole(9)),
    short: () => en`water`,
  },
  inert: { words: en`being inert: filler`, group: null, figures: [], formula: null, short: () => en`inert` },
} satisfies Readonly<Record<string, Measure>>;

export type MeasureName = keyof typeof MEASURES;

const isMeasureName = (name: string): name is MeasureName => Object.hasOwn(MEASURES, name);
/** In the order in which they are offered. */
export const MEASURE_NAMES: readonly MeasureName[] = Object.keys(MEASURES).filter(isMeasureName);

export const measureOf = (by: MeasureName): Measure => MEASURES[by];

/**
 * What is wrong with a figure that can be read; null where nothing is.
 *
 * @param typed  as it was typed
 * @source our choice of limits: what is sold lies well within them, the usual mix-ups outside
 * @example figureTrouble(rule of EEW, new Fraction('0.51'), '0.51')  // '0.51 looks like an epoxy value in mol/100 g. EEW: 50 to 10000 g/eq'
 */
export function figureTrouble(rule: FigureRule, value: Fraction, typed: string): string | null {
  const within = (least: string, most: string) => value.compare(least) >= 0 && value.compare(most) <= 0;
  if (within(rule.least, rule.most)) return null;
  const allowed = en`${capital(rule.label)}: ${rule.least} to ${rule.most} ${rule.unit}`.trim();
  const mixUp = value.equals('0') ? undefined : rule.mixUps.find(({ from, to }) => within(from, to));
  return mixUp === undefined ? en`${typed} is out of range. ${allowed}` : en`${typed} looks like ${mixUp.looks}. ${allowed}`;
}

/**
 * Equivalent weight of an ingredient in g/eq, with how it follows from what its sheet says; null where nothing in it reacts.
 *
 * @param figures  exact, one for each figure of the measure, within its limits
 * @throws RangeError  where a figure is missing
 * @source the definition of each measure, as its row of the table says
 * @example equivalentWeightOf('% NCO', 'B', { value: 31 }).value  // 4201.7/31 = 135.539
 */
export function equivalentWeightOf(
  by: MeasureName,
  name: string,
  figures: Readonly<Partial<Record<FigureKey, Fraction>>>,
): Input<Fraction> | null {
  const { group, figures: rules, formula: weight } = measureOf(by);
  if (group === null) return null;
  const what = en`equivalent weight of ${name}, ${G_PER_EQ}`;
  const put = rules.map(({ key, letter, label, unit }) => {
    const value = figures[key];
    if (value === undefined) throw new RangeError(`equivalentWeightOf: ${by} lacks its ${key}`);
    return [letter, input(unit === '' ? en`${label} of ${name}` : en`${label} of ${name}, ${unit}`, value, 'number')] as const;
  });
  if (weight !== null) return work(weight, what, Object.fromEntries(put));
  const [direct] = put;
  if (direct === undefined) throw new RangeError(`equivalentWeightOf: ${by} has no figure`);
  return direct[1];
}

/** A measure with its figures in a few characters, as typed. */
export function shortText(by: MeasureName, figures: Readonly<Partial<Record<FigureKey, string>>>): string {
  const { figures: rules, short } = measureOf(by);
  return short(...rules.map(({ key }) => figures[key] ?? '?'));
}
