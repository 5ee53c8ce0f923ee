import { inUnit, printedUnit, quantity, type Say, significant } from './format.ts';
import { type Fraction, float } from './ratio.ts';
import { type Dimension, fromSI, toSI } from './units.ts';
import type { Amount } from './working.ts';

/** The unit people read a dimension in, and how many places are worth printing. */
type Shown = readonly [unit: string, places: number];

const BOTH = (unit: string, places: number): readonly [Shown, Shown] => [
  [unit, places],
  [unit, places],
];

/** Metric, then inch. */
const SHOWN: Readonly<Record<Dimension, readonly [Shown, Shown]>> = {
  length: [
    ['mm', 2],
    ['in', 4],
  ],
  temperature: [
    ['°C', 1],
    ['°F', 1],
  ],
  temperatureDifference: [
    ['K', 1],
    ['°F', 1],
  ],
  expansion: [
    ['1/K', 6],
    ['1/°F', 6],
  ],
  density: BOTH('g/cm3', 5),
  displacement: [
    ['cc/rev', 3],
    ['in3/rev', 4],
  ],
  volume: [
    ['L', 2],
    ['US gal', 3],
  ],
  mass: [
    ['kg', 3],
    ['lb', 3],
  ],
  speed: BOTH('rpm', 2),
  flow: [
    ['cc/min', 1],
    ['in3/min', 2],
  ],
  pressure: [
    ['bar', 1],
    ['psi', 0],
  ],
  torque: [
    ['N m', 2],
    ['lbf in', 1],
  ],
  force: [
    ['N', 0],
    ['lbf', 0],
  ],
  power: [
    ['W', 1],
    ['hp', 3],
  ],
  viscosity: BOTH('mPa s', 0),
  time: BOTH('min', 1),
  share: BOTH('%', 2),
  velocity: [
    ['m/s', 3],
    ['ft/min', 1],
  ],
  frequency: BOTH('1/s', 1),
  angle: BOTH('rad', 4),
  number: BOTH('', 4),
  pitches: BOTH('pitches', 2),
};

/** Less than a litre is read in cc, less than a kilogram in grams; an inch shop reads both in its own small units. */
const SMALL: Readonly<Partial<Record<Dimension, readonly [Shown, Shown]>>> = {
  volume: [
    ['cc', 1],
    ['in3', 2],
  ],
  mass: [
    ['g', 1],
    ['oz', 2],
  ],
};
const SMALL_BELOW_SI: Readonly<Partial<Record<Dimension, number>>> = { volume: 0.001, mass: 1 };

function shown(value: Amount, dimension: Dimension, { system }: Say): Shown {
  const small = Math.abs(Number(value)) < (SMALL_BELOW_SI[dimension] ?? 0) ? SMALL[dimension] : undefined;
  return (small ?? SHOWN[dimension])[system === 'metric' ? 0 : 1];
}

/**
 * A quantity in the unit in which the shop reads it.
 *
 * @param value  in the SI unit of the dimension
 * @param more   places beyond the usual ones
 * @source our choice of units and places
 * @example amountText(new Fraction('0.0006858').div(60), 'flow', { decimal: '.', system: 'metric' })  // '685.8 cc/min'
 */
export function amountText(value: Amount, dimension: Dimension, say: Say, more = 0): string {
  const [unit, places] = shown(value, dimension, say);
  return quantity(value, dimension, unit, places + more, say);
}

/**
 * The same rounded up, for an amount that must at least be there.
 *
 * @source our choice
 * @example atLeastText(new Fraction('0.0220234'), 'volume', { decimal: '.', system: 'metric' })  // '22.03 L'
 */
export function atLeastText(value: Fraction, dimension: Dimension, say: Say): string {
  const [unit, places] = shown(value, dimension, say);
  return quantity(toSI(dimension, fromSI(dimension, value, unit).ceil(places), unit), dimension, unit, places, say);
}

/** The same with six digits that count, so that it can be put into a formula by hand. */
export function preciseText(value: Amount, dimension: Dimension, say: Say): string {
  const [unit] = shown(value, dimension, say);
  return significant(inUnit(value, dimension, unit), DIGITS, say) + printedUnit(unit);
}

/** Digits that show what a working does: the result of any formula here then comes out to the places printed. */
const DIGITS = 6;

const SI_UNIT: Readonly<Record<Dimension, string>> = {
  length: 'm',
  temperature: 'K',
  temperatureDifference: 'K',
  expansion: '1/K',
  density: 'kg/m3',
  displacement: 'm3/rev',
  volume: 'm3',
  mass: 'kg',
  speed: 'rev/s',
  flow: 'm3/s',
  pressure: 'Pa',
  torque: 'N m',
  force: 'N',
  power: 'W',
  viscosity: 'Pa s',
  time: 's',
  share: '',
  velocity: 'm/s',
  frequency: '1/s',
  angle: 'rad',
  number: '',
  pitches: 'pitches',
};

/** A quantity in SI with six digits, as the formulas take it; in powers of ten where it is very large or small. */
export function siText(value: Amount, dimension: Dimension, say: Say): string {
  const number = typeof value === 'number' ? value : float(value);
  return significant(number, DIGITS, say) + printedUnit(SI_UNIT[dimension]);
}

/**
 * A quantity as scripts get it: a number in the metric unit in which people read its dimension.
 *
 * @source our choice of units
 * @example metricAmount(new Fraction('0.0127'), 'length')  // { value: 12.7, unit: 'mm' }
 */
export function metricAmount(value: Amount, dimension: Dimension): { readonly value: number; readonly unit: string } {
  const [[unit]] = SHOWN[dimension];
  const shown = inUnit(value, dimension, unit);
  // the last digit of a float is only rounding: 28 bar came through 28.000000000000004
  return { value: typeof shown === 'number' ? Number(shown.toPrecision(15)) : float(shown), unit };
}
