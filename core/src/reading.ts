import { en } from './en.ts';
import { Fraction, whole, ZERO } from './ratio.ts';
import { quoted } from './visible.ts';

/** What a text says, or a sentence telling what was typed and what was expected instead. */
export type Reading<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly expected: string };

/** A quantity as the shop file keeps it: the number and the unit as they were typed. */
export interface TypedQuantity {
  readonly value: string;
  readonly unit: string;
}

/** One entry taken apart: the number as typed, the same read exactly, and the unit as written (null if none was). */
export interface QuantityText {
  readonly value: string;
  readonly number: Fraction;
  readonly unit: string | null;
}

/** Says what is wrong with a text. */
type Trouble = (typed: string) => string;

const LONGEST = 64;
const LARGEST_POWER = 30;
const SHOWN_DIGITS = 6;
const NUMBER = en`something like 38.9, 38,9, 1 1/2 or 7e-4`;
const RATIO = en`A to B, like 100:45, 2.5 : 1, 100A:38B or 4:1:1`;

const noNumber: Trouble = (typed) => en`${typed} is not a number.`;
const byZero: Trouble = (typed) => en`${typed} divides by zero.`;
const endlessPower: Trouble = (typed) => en`${typed} has a power of ten beyond ${LARGEST_POWER}.`;
const twoWays: Trouble = (typed) => en`${typed} can be read in two ways.`;

const refused = (said: string, wanted: string) => ({ ok: false, expected: en`${said} Expected ${wanted}.` }) as const;

/** The text without the spaces around it, or the refusal of an empty or endless one. */
function trimmed(text: string, wanted: string): Reading<string> {
  const typed = text.trim();
  if (typed === '') return refused(en`Nothing was typed.`, wanted);
  if (typed.length > LONGEST) return refused(en`The entry has ${typed.length} characters, more than ${LONGEST}.`, wanted);
  return { ok: true, value: typed };
}

/** The digits of an unsigned decimal before and after its decimal sign, or null where the separators do not stand as they must. */
function decimalDigits(text: string): { readonly before: string; readonly after: string } | null {
  if (!/^[\d., ']+$/.test(text)) return null;
  const separators = text.replace(/\d/g, '');
  const last = separators.at(-1);
  // The last separator is the decimal sign, unless it is repeated or can only group.
  const hasDecimals = (last === '.' || last === ',') && separators.indexOf(last) === separators.length - 1;
  const end = hasDecimals ? text.lastIndexOf(last) : text.length;
  const [before, after] = [text.slice(0, end), text.slice(end + 1)];
  if (hasDecimals && after === '') return null;
  if (hasDecimals && before === '') return { before: '0', after };
  if (!/^(\d+|[1-9]\d{0,2}([., '])\d{3}(\2\d{3})*)$/.test(before)) return null;
  return { before: before.replace(/\D/g, ''), after };
}

function decimal(text: string): Fraction | null {
  const digits = decimalDigits(text);
  return digits && new Fraction(`${digits.before}.${digits.after || '0'}`);
}

/** `0.1(6)`: the digits in brackets repeat for ever. */
function repeatingDecimal(head: string, period: string): Fraction | null {
  const digits = decimalDigits(head + period);
  const [, once = ''] = /[.,](\d*)$/.exec(head) ?? [];
  // Without a decimal sign in front of the bracket there is nothing to repeat.
  if (digits?.after !== once + period) return null;
  return new Fraction(`${digits.before}.${once}(${period})`);
}

/** `1 1/2`: a whole number and a proper fraction. */
function mixedNumber(over: string, under: string): Fraction | null {
  const [, wholeText = '', numerator = ''] = /^(.+) ([1-9]\d*)$/.exec(over) ?? [];
  const digits = decimalDigits(wholeText);
  if (digits?.after !== '' || !/^\d+$/.test(under) || BigInt(numerator) >= BigInt(under)) return null;
  return new Fraction(`${digits.before} ${numerator}/${under}`);
}

function commonFraction(over: string, under: string): Fraction | Trouble {
  const divisor = decimal(under);
  if (!divisor) return noNumber;
  if (divisor.n === 0n) return byZero;
  const dividend = decimal(over);
  const mixed = mixedNumber(over, under);
  // "1 234/567" is 1234/567 to one reader and 1 and 234/567 to the next.
  if (dividend && mixed) return twoWays;
  return mixed ?? dividend?.div(divisor) ?? noNumber;
}

function powerOfTen(head: string, exponentText: string): Fraction | Trouble {
  const exponent = Number(exponentText);
  const number = decimal(head);
  if (!number) return noNumber;
  if (Math.abs(exponent) > LARGEST_POWER) return endlessPower;
  const power = whole(10n ** BigInt(Math.abs(exponent)));
  return exponent < 0 ? number.div(power) : number.mul(power);
}

function unsignedNumber(text: string): Fraction | Trouble {
  const [over, under, ...more] = text.split('/');
  if (over !== undefined && under !== undefined) return more.length > 0 ? noNumber : commonFraction(over, under);
  const [power, head = '', exponent = ''] = /^(.*)e([+-]?\d+)$/i.exec(text) ?? [];
  if (power !== undefined) return powerOfTen(head, exponent);
  const [repeating, first = '', period = ''] = /^(.*?)\((\d+)\)$/.exec(text) ?? [];
  return (repeating === undefined ? decimal(text) : repeatingDecimal(first, period)) ?? noNumber;
}

/**
 * The exact number a text stands for; nothing is rounded and nothing is worked out.
 *
 * Reads decimals with point or comma, thousands in groups of three, `3/4`, `1 1/2`, `0.(3)` and `7e-4`.
 *
 * @param text  as typed, at most 64 characters; spaces around it do not matter
 * @returns the number as a fraction, or what was expected
 * @source our choice: a single point or comma is the decimal sign, of two different separators the last is; one repeated groups thousands
 * @example readNumber('10.000,5')  // 20001/2
 */
export function readNumber(text: string): Reading<Fraction> {
  const typed = trimmed(text, NUMBER);
  if (!typed.ok) return typed;
  const plain = typed.value
    .replace(/[\u00A0\u2007\u2009\u202F]/g, ' ')
    .replace(/\u2019/g, "'")
    .replace(/\u2212/g, '-')
    .replace(/ ?\/ ?/g, '/');
  const number = unsignedNumber(plain.replace(/^[+-]/, ''));
  if (typeof number === 'function') return refused(number(quoted(typed.value)), NUMBER);
  return { ok: true, value: plain.startsWith('-') ? number.neg() : number };
}

const listed = (names: readonly string[]) =>
  names.length < 2 ? names.join() : en`${names.slice(0, -1).join(', ')} or ${names[names.length - 1]}`;

/** A unit starts with a letter or a sign of its own; one that starts with a digit (`1/K`) needs a space before it. */
const canStartUnit = (text: string, at: number) => /[^\d\s.,+\-\u2212()*·]/.test(text.charAt(at)) || /^\s\d/.test(text.slice(at - 1));

/**
 * A number with or without a unit behind it.
 *
 * @param text        as typed, at most 64 characters
 * @param units       the units to name where the entry is refused; the first stands in the example
 * @param recognised  whether a spelling is one of them; by default only the names themselves are
 * @returns the number as typed and as read, and the unit as written (null if there is none), or what was expected
 * @source our choice: a unit is kept as written, so that the entry can be shown again as it was typed
 * @example readQuantityText('12,5 mm', ['mm', 'in'])  // value '12,5', number 25/2, unit 'mm'
 */
export function readQuantityText(
  text: string,
  units: readonly string[],
  recognised: (spelling: string) => boolean = (spelling) => units.includes(spelling),
): Reading<QuantityText> {
  const named = units.filter((unit) => unit !== '');
  const wanted = en`a number alone or with ${listed(named)}, like ${`12.5 ${units[0] ?? ''}`.trim()}`;
  const typed = trimmed(text, wanted);
  if (!typed.ok) return typed;
  const bare = readNumber(typed.value);
  if (bare.ok) return { ok: true, value: { value: typed.value, number: bare.value, unit: null } };
  for (let at = 1; at < typed.value.length; at++) {
    const [value, unit] = [typed.value.slice(0, at).trim(), typed.value.slice(at).trim()];
    if (!canStartUnit(typed.value, at) || !recognised(unit)) continue;
    const number = readNumber(value);
    if (number.ok) return { ok: true, value: { value, number: number.value, unit } };
  }
  return refused(en`${quoted(typed.value)} is not a number with a unit known here.`, wanted);
}

interface RatioPart {
  readonly typed: string;
  readonly letter: string;
  readonly number: Reading<Fraction>;
}

function ratioPart(text: string): RatioPart {
  const typed = text.trim();
  const letter = /[ABC]?$/i.exec(typed)?.[0] ?? '';
  return { typed, letter: letter.toUpperCase(), number: readNumber(typed.slice(0, typed.length - letter.length)) };
}

const byLetter = (a: RatioPart, b: RatioPart) => Number(a.letter > b.letter) - Number(a.letter < b.letter);

/** True where there are no letters, or where they name each part once. */
function lettersAgree(parts: readonly RatioPart[]): boolean {
  const letters = parts.map((part) => part.letter).sort();
  return ['', 'ABC'.slice(0, parts.length)].includes(letters.join(''));
}

/**
 * A mix ratio of two or three parts, in the order A, B and the third.
 *
 * @param text  as typed, at most 64 characters: `100:45`, `2,5:1`, `4:1:1`; letters behind all parts (`38B:100A`) decide the order
 * @returns the parts as exact numbers above zero, or what was expected
 * @source our choice: without letters the parts stand in the order A, B, third; a number alone is no ratio
 * @example readRatio('38B:100A')  // 100, 38
 */
export function readRatio(text: string): Reading<readonly [Fraction, Fraction] | readonly [Fraction, Fraction, Fraction]> {
  const typed = trimmed(text, RATIO);
  if (!typed.ok) return typed;
  const said = (trouble: string) => refused(trouble, RATIO);
  const whole = quoted(typed.value);
  const parts = typed.value.split(/[:\u2236\uFF1A]/).map(ratioPart);
  if (parts.length > 3) return said(en`${whole} has ${parts.length} parts.`);
  const numbers: Fraction[] = [];
  for (const { typed: part, number } of parts.toSorted(byLetter)) {
    if (!number.ok) return said(part === '' ? en`${whole} lacks a part.` : en`${whole} has a part ${quoted(part)} that is not a number.`);
    if (number.value.compare(ZERO) <= 0) return said(en`${whole} has a part ${quoted(part)} that is not above zero.`);
    numbers.push(number.value);
  }
  const [a, b, third] = numbers;
  if (a === undefined || b === undefined) return said(en`${whole} has only one part.`);
  if (!lettersAgree(parts)) return said(en`${whole} does not name each part once by its letter.`);
  return { ok: true, value: third === undefined ? [a, b] : [a, b, third] };
}

/**
 * How an exact number is read back beside its box: a decimal that ends in full, any other as a fraction with six digits.
 *
 * @param value    the number read
 * @param decimal  the decimal sign to write
 * @source our choice: six digits are enough to recognise the number; the fraction beside them is exact
 * @example spokenReading(new Fraction('1/3'))  // '1/3 (0.333333)'
 */
export function spokenReading(value: Fraction, decimal: '.' | ',' = '.'): string {
  const sign = value.compare(ZERO) < 0 ? '\u2212' : '';
  const size = value.abs();
  const inDecimals = (number: Fraction, places: number) => `${sign}${number.toString(places).replace('.', decimal)}`;
  // A decimal that ends has no more places than its denominator has binary digits.
  const mostPlaces = size.d.toString(2).length;
  if (10n ** BigInt(mostPlaces) % size.d === 0n) return inDecimals(size, mostPlaces);
  let places = 0;
  while (size.n * 10n ** BigInt(places) < size.d * 10n ** BigInt(SHOWN_DIGITS - 1)) places++;
  return `${sign}${size.n}/${size.d} (${inDecimals(size.round(places), places)})`;
}
