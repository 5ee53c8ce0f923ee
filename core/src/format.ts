import { en } from './en.ts';
import { type Fraction, float, ONE, whole, ZERO } from './ratio.ts';
import { type Dimension, fromSI } from './units.ts';

/** How a shop reads numbers. */
export interface Say {
  readonly decimal: '.' | ',';
  readonly system: 'metric' | 'inch';
}

const MINUS = '\u2212';
const NO_BREAK_SPACE = '\u00A0';
const LARGEST_FLOAT = 1e21;
const HUNDRED = whole(100);

/** The digits of |value|, exactly rounded; halves go away from zero. */
function digits(value: Fraction, places: number): string {
  const scaled = (2n * value.n * 10n ** BigInt(places) + value.d) / (2n * value.d);
  const text = scaled.toString().padStart(places + 1, '0');
  return places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`;
}

/** The digits of |value|, rounded from the double as it is; a double that is exactly a half goes away from zero. */
function floatDigits(value: number, places: number): string {
  // From here on toFixed writes powers of ten.
  if (!(Math.abs(value) < LARGEST_FLOAT)) throw new RangeError(`${value} cannot be written with ${places} places`);
  return Math.abs(value).toFixed(places);
}

function written(value: Fraction | number, places: number, say: Say, plus: string): string {
  const isNumber = typeof value === 'number';
  const size = isNumber ? floatDigits(value, places) : digits(value, places);
  const negative = isNumber ? value < 0 : value.compare(ZERO) < 0;
  // What is rounded to nothing has no sign: never "−0.00".
  const sign = /[1-9]/.test(size) ? (negative ? MINUS : plus) : '';
  return sign + size.replace('.', say.decimal);
}

/**
 * A text as somebody typed it, with a true minus before its numbers.
 *
 * @source typography: a hyphen is shorter than the minus of the figures beside it
 * @example withTrueMinus('-2 to 2 % of B per A')  // '−2 to 2 % of B per A'
 */
export const withTrueMinus = (typed: string): string => typed.replace(/(?<![\w.,])-(?=[\d.,])/g, MINUS);

/**
 * Words as they begin a sentence or stand above a field.
 *
 * @source typography
 * @example capital('molar mass')  // 'Molar mass'
 */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/**
 * A number with a fixed count of decimal places, halves rounded away from zero; a fraction is rounded exactly.
 *
 * @param value   a fraction, or a finite float below 1e21 in size
 * @param places  whole number from 0, for a float at most 100
 * @throws RangeError  outside those limits
 * @source our choice: halves away from zero, as people round by hand
 * @example fixed(new Fraction('-2.555'), 2, { decimal: '.', system: 'metric' })  // '−2.56'
 */
export function fixed(value: Fraction | number, places: number, say: Say): string {
  return written(value, places, say, '');
}

/**
 * As `fixed`, with a plus before what is above zero; what is rounded to zero has no sign.
 *
 * @param value   a fraction, or a finite float below 1e21 in size
 * @param places  whole number from 0, for a float at most 100
 * @throws RangeError  outside those limits
 * @source our choice
 * @example signed(new Fraction('1.25'), 1, { decimal: '.', system: 'metric' })  // '+1.3'
 */
export function signed(value: Fraction | number, places: number, say: Say): string {
  return written(value, places, say, '+');
}

/**
 * A quantity in a unit: a fraction exactly, a float with the unit's exact slope and zero rounded to floats once each.
 *
 * @throws RangeError  if this is no unit of the dimension
 * @source NIST SP 811
 * @example inUnit(0.0254, 'length', 'in')  // 1
 */
export function inUnit(value: Fraction | number, dimension: Dimension, unit: string): Fraction | number {
  if (typeof value !== 'number') return fromSI(dimension, value, unit);
  const zero = fromSI(dimension, ZERO, unit);
  return value * float(fromSI(dimension, ONE, unit).sub(zero)) + float(zero);
}

/** Beyond these a number is written with a power of ten. */
const PLAIN_FROM = 1e-3;
const PLAIN_TO = 1e7;
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * A number with so many digits that count, without trailing zeros; very large and small ones with a power of ten.
 *
 * @param digits  1 to 15
 * @source our choice
 * @example significant(0.0000120, 6, { decimal: '.', system: 'metric' })  // '1.2 × 10⁻⁵'
 */
export function significant(value: Fraction | number, digits: number, say: Say): string {
  const number = typeof value === 'number' ? value : float(value);
  const size = Math.abs(number);
  const sign = number < 0 ? MINUS : '';
  const decimal = (text: string) => (text.includes('.') ? text.replace(/\.?0+$/, '') : text).replace('.', say.decimal);
  if (size === 0) return '0';
  const [mantissa = '', power = '0'] = size.toExponential(digits - 1).split('e');
  if (size >= PLAIN_FROM && size < PLAIN_TO) return sign + decimal(size.toFixed(Math.max(0, digits - 1 - Number(power))));
  const raised = [...power.replace('+', '')].map((sign) => (sign === '-' ? '⁻' : (RAISED[Number(sign)] ?? ''))).join('');
  return `${sign}${decimal(mantissa)}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}10${raised}`;
}

/** A unit as it is printed: cubes raised, never torn from its number or within itself. */
export function printedUnit(unit: string): string {
  return unit === '' ? '' : `${NO_BREAK_SPACE}${unit.replace(/ /g, NO_BREAK_SPACE).replace(/3(?=\/|$)/, '³')}`;
}

/**
 * A quantity in a unit people read, rounded once.
 *
 * @param value_SI   in the SI unit of the dimension
 * @param dimension  what is measured
 * @param unit       a unit of that dimension
 * @param places     whole number from 0, for a float at most 100
 * @throws RangeError  if this is no unit of the dimension
 * @source our choice: a no-break space before every unit
 * @example quantity(new Fraction('0.25397'), 'length', 'mm', 2, { decimal: '.', system: 'metric' })  // '253.97 mm'
 */
export function quantity(value_SI: Fraction | number, dimension: Dimension, unit: string, places: number, say: Say): string {
  return fixed(inUnit(value_SI, dimension, unit), places, say) + printedUnit(unit);
}

/** The unit of lengths in the shop's system. */
export const lengthUnit = (say: Say): string => (say.system === 'metric' ? 'mm' : 'in');

/**
 * A length in the shop's system: millimetres, or inches with two places more.
 *
 * @param value_m    metres
 * @param places_mm  places in millimetres, whole number from 0
 * @source our choice: a thousandth of an inch (0.025 mm) is the place that goes with a tenth of a millimetre
 * @example lengthText(0.0389, { decimal: '.', system: 'inch' })  // '1.531 in'
 */
export function lengthText(value_m: Fraction | number, say: Say, places_mm = 1): string {
  return say.system === 'metric'
    ? quantity(value_m, 'length', 'mm', places_mm, say)
    : quantity(value_m, 'length', 'in', places_mm + 2, say);
}

/**
 * A temperature in the shop's system: degrees Celsius or Fahrenheit, with one place unless that is a zero.
 *
 * @param value_K  kelvins
 * @source our choice
 * @example temperatureText(new Fraction('298.15'), { decimal: '.', system: 'inch' })  // '77 °F'
 */
export function temperatureText(value_K: Fraction, say: Say): string {
  const unit = say.system === 'metric' ? '°C' : '°F';
  const degrees = fixed(fromSI('temperature', value_K, unit), 1, say);
  return degrees.replace(/[.,]0$/, '') + printedUnit(unit);
}

/** The places given, or as many as show two digits of a size that they would round to nothing. */
function placesToShow(size: Fraction, places: number): number {
  if (size.n === 0n || /[1-9]/.test(digits(size, places))) return places;
  let first = places;
  while (size.n * 10n ** BigInt(first) < size.d) first++;
  return first + 1;
}

/**
 * An off-ratio as people say it: without sign, in percent, with the side B errs to; one that is not exact never reads as nothing.
 *
 * @param e       (B per A made) / (B per A wanted) - 1
 * @param places  places of the percentage, whole number from 0
 * @source our choice
 * @example offRatioText(new Fraction('-0.0007'), { decimal: '.', system: 'metric' })  // '0.07 % B-lean'
 */
export function offRatioText(e: Fraction, say: Say, places = 2): string {
  const order = e.compare(ZERO);
  if (order === 0) return en`exact`;
  const size = percentText(e.abs(), say, places);
  return order > 0 ? en`${size} B-rich` : en`${size} B-lean`;
}

/**
 * A share in per cent; one that is not zero never reads as nothing.
 *
 * @param share   0 or more; 1 % is 0.01
 * @param places  places of the percentage, whole number from 0
 * @source our choice
 * @example percentText(new Fraction('0.0323'), { decimal: '.', system: 'metric' })  // '3.23 %'
 */
export function percentText(share: Fraction, say: Say, places = 2): string {
  const percent = share.mul(HUNDRED);
  return `${fixed(percent, placesToShow(percent, places), say)}${NO_BREAK_SPACE}%`;
}

/** Which way a ratio is off. */
export const WAY_WORDS = { 'B-rich': en`B-rich`, 'B-lean': en`B-lean` } as const;

/** Stands beside an off-ratio that is shown with its sign. */
export const SENSE = en`+ is B-rich`;

/**
 * A share in per cent with its sign, as an off-ratio stands in a range or on an axis; what is rounded to nothing has no sign.
 *
 * @param share   1 % is 0.01
 * @param places  places of the percentage, whole number from 0
 * @source our choice
 * @example signedPercentText(new Fraction('0.0161'), { decimal: '.', system: 'metric' })  // '+1.61 %'
 */
export function signedPercentText(share: Fraction | number, say: Say, places = 2): string {
  return `${signed(percentOf(share), places, say)}${NO_BREAK_SPACE}%`;
}

const percentOf = (share: Fraction | number): Fraction | number => (typeof share === 'number' ? 100 * share : share.mul(HUNDRED));

/**
 * Both ends of a range of shares, the unit once.
 *
 * @source our choice
 * @example signedRangeText(new Fraction('-0.0176'), new Fraction('0.0161'), { decimal: '.', system: 'metric' })  // '−1.76 to +1.61 %'
 */
export function signedRangeText(from: Fraction | number, to: Fraction | number, say: Say): string {
  return en`${signed(percentOf(from), 2, say)} to ${signedPercentText(to, say)}`;
}

/**
 * A mix ratio as A to one of B, with four places.
 *
 * @param R  parts of A per part of B, > 0
 * @source our choice
 * @example ratioText(new Fraction('50/23'), { decimal: '.', system: 'metric' })  // '2.1739 : 1'
 */
export function ratioText(R: Fraction, say: Say): string {
  return `${fixed(R, 4, say)} : 1`;
}

/**
 * A mix ratio in the smallest whole numbers, exactly.
 *
 * @param R  parts of A per part of B, > 0
 * @source arithmetic
 * @example exactRatioText(new Fraction('100/46'))  // '50 : 23'
 */
export function exactRatioText(R: Fraction): string {
  return `${R.n} : ${R.d}`;
}
