import { en } from './en.ts';
import { Fraction, ONE, whole, ZERO } from './ratio.ts';
import { type QuantityText, type Reading, readNumber, readQuantityText, type TypedQuantity } from './reading.ts';
import { quoted } from './visible.ts';

/** A unit: its size in the SI unit of its dimension, and the further ways it is written. */
interface Unit {
  readonly name: string;
  readonly size: Fraction;
  /** Added before multiplying by the size; zero but for the scales of temperature. */
  readonly shift: Fraction;
  readonly keys: ReadonlySet<string>;
}

const exact = (text: string): Fraction => new Fraction(text);

// Exact by definition [NIST SP 811, appendix B; 16 CFR 500.19 for the inch].
const MINUTE_s = whole(60);
const INCH_m = exact('0.0254');
const FOOT_m = INCH_m.mul(whole(12));
const POUND_kg = exact('0.45359237');
const OUNCE_kg = POUND_kg.div(whole(16));
const GRAVITY_m_per_s2 = exact('9.80665'); // standard gravity, general conference on weights and measures, 1901
const POUND_FORCE_N = POUND_kg.mul(GRAVITY_m_per_s2);
const CC_m3 = exact('0.000001');
const LITRE_m3 = exact('0.001');
const CUBIC_INCH_m3 = INCH_m.mul(INCH_m).mul(INCH_m);
const CUBIC_FOOT_m3 = FOOT_m.mul(FOOT_m).mul(FOOT_m);
const US_GALLON_m3 = CUBIC_INCH_m3.mul(whole(231));
const US_FLUID_OUNCE_m3 = US_GALLON_m3.div(whole(128));
const UK_GALLON_m3 = exact('0.00454609');
const UK_FLUID_OUNCE_m3 = UK_GALLON_m3.div(whole(160));
const HORSEPOWER_W = FOOT_m.mul(POUND_FORCE_N).mul(whole(550));
const FAHRENHEIT_DEGREE_K = exact('5/9');

/** What two spellings of one unit have in common: spaces, dots, hyphens, raised figures and capitals do not matter. */
function spellingKey(spelling: string): string {
  const plain = spelling
    .replace(/º/g, '°')
    .normalize('NFKC')
    .replace(/[\s.·⋅*^-]/g, '');
  // Capitals matter where mega and milli would be taken for each other.
  return /^m(?=pa)/i.test(plain) ? plain.charAt(0) + plain.slice(1).toLowerCase() : plain.toLowerCase();
}

const scale = (name: string, size: Fraction, shift: Fraction, ...spellings: readonly string[]): Unit => ({
  name,
  size,
  shift,
  keys: new Set([name, ...spellings].map(spellingKey)),
});
const unit = (name: string, size: Fraction, ...spellings: readonly string[]): Unit => scale(name, size, ZERO, ...spellings);

/** Every dimension with its units; the size of each is in the SI unit named beside the dimension (turns count as revolutions). */
export const DIMENSIONS = {
  // metres
  length: [
    unit('m', ONE, 'metre', 'meter'),
    unit('mm', exact('0.001')),
    unit('cm', exact('0.01')),
    unit('in', INCH_m, 'inch', 'inches', '"', '″', '”'),
    unit('ft', FOOT_m, 'foot', 'feet', "'", '′', '’'),
  ],
  // kelvins
  temperature: [
    scale('°C', ONE, exact('273.15'), 'C', 'degC', 'celsius'),
    scale('°F', FAHRENHEIT_DEGREE_K, exact('459.67'), 'F', 'degF', 'fahrenheit'),
    scale('K', ONE, ZERO, 'kelvin'),
  ],
  // kelvins
  temperatureDifference: [unit('K', ONE, 'kelvin'), unit('°C', ONE, 'C', 'degC'), unit('°F', FAHRENHEIT_DEGREE_K, 'F', 'degF')],
  // per kelvin
  expansion: [
    unit('1/K', ONE, '/K', 'per K', 'K^-1', 'K⁻¹'),
    unit('1/°C', ONE, '/°C', 'per °C', '1/C', '/C', 'per C', '°C^-1', '°C⁻¹'),
    unit('1/°F', ONE.div(FAHRENHEIT_DEGREE_K), '/°F', 'per °F', '1/F', '/F', 'per F', '°F^-1', '°F⁻¹'),
  ],
  // kilograms per cubic metre; the pound per gallon of data sheets is that of the US gallon (common practice, no source)
  density: [
    unit('kg/m3', ONE),
    unit('g/cm3', exact('1000'), 'g/cc', 'g/ccm'),
    unit('g/mL', exact('1000')),
    unit('kg/L', exact('1000'), 'kg/dm3'),
    unit('lb/ft3', POUND_kg.div(CUBIC_FOOT_m3), 'lb/cu ft', 'lbs/ft3', 'pcf'),
    unit('lb/gal (US)', POUND_kg.div(US_GALLON_m3), 'lb/gal', 'lbs/gal', 'lb/US gal'),
    unit('lb/in3', POUND_kg.div(CUBIC_INCH_m3), 'lb/cu in', 'lbs/in3'),
  ],
  // cubic metres per revolution
  displacement: [
    unit('m3/rev', ONE),
    unit('cc/rev', CC_m3, 'cm3/rev', 'ccm/rev', 'cc/r', 'cm3/r'),
    unit('mL/rev', CC_m3, 'mL/r'),
    unit('L/rev', LITRE_m3, 'dm3/rev', 'L/r'),
    unit('in3/rev', CUBIC_INCH_m3, 'cu in/rev', 'in3/r'),
  ],
  // cubic metres
  volume: [
    unit('m3', ONE),
    unit('L', LITRE_m3, 'dm3', 'litre', 'liter'),
    unit('mL', CC_m3),
    unit('cc', CC_m3, 'cm3', 'ccm'),
    unit('in3', CUBIC_INCH_m3, 'cu in'),
    unit('US gal', US_GALLON_m3, 'gal (US)'),
    unit('US fl oz', US_FLUID_OUNCE_m3, 'fl oz (US)'),
    unit('UK gal', UK_GALLON_m3, 'gal (UK)', 'imp gal'),
    unit('UK fl oz', UK_FLUID_OUNCE_m3, 'fl oz (UK)', 'imp fl oz'),
  ],
  // kilograms
  mass: [unit('kg', ONE), unit('g', exact('0.001')), unit('lb', POUND_kg, 'lbs'), unit('oz', OUNCE_kg)],
  // revolutions per second
  speed: [unit('rev/s', ONE, 'rps', 'r/s'), unit('rpm', ONE.div(MINUTE_s), 'rev/min', 'r/min', '1/min', 'min^-1', 'min⁻¹')],
  // cubic metres per second
  flow: [
    unit('m3/s', ONE),
    unit('cc/min', CC_m3.div(MINUTE_s), 'cm3/min', 'ccm/min'),
    unit('L/min', LITRE_m3.div(MINUTE_s), 'dm3/min', 'lpm'),
    unit('mL/min', CC_m3.div(MINUTE_s)),
    unit('cc/s', CC_m3, 'cm3/s', 'mL/s'),
    unit('in3/min', CUBIC_INCH_m3.div(MINUTE_s), 'cu in/min'),
    unit('US gal/min', US_GALLON_m3.div(MINUTE_s), 'gal/min (US)', 'US gpm'),
  ],
  // pascals
  pressure: [
    unit('Pa', ONE),
    unit('kPa', exact('1000')),
    unit('MPa', exact('1000000')),
    unit('bar', exact('100000')),
    unit('psi', POUND_FORCE_N.div(INCH_m).div(INCH_m), 'lbf/in2', 'lb/in2'),
  ],
  // newton metres
  torque: [
    unit('N m', ONE),
    unit('lbf in', POUND_FORCE_N.mul(INCH_m), 'lb in', 'in lb', 'in lbf'),
    unit('lbf ft', POUND_FORCE_N.mul(FOOT_m), 'lb ft', 'ft lb', 'ft lbf'),
  ],
  // newtons
  force: [unit('N', ONE), unit('kN', exact('1000')), unit('lbf', POUND_FORCE_N)],
  // watts
  power: [unit('W', ONE), unit('kW', exact('1000')), unit('hp', HORSEPOWER_W)],
  // pascal seconds
  viscosity: [unit('Pa s', ONE), unit('mPa s', exact('0.001')), unit('cP', exact('0.001'), 'cps', 'centipoise')],
  // seconds
  time: [unit('s', ONE, 'sec'), unit('min', MINUTE_s), unit('h', MINUTE_s.mul(MINUTE_s), 'hr')],
  // plain number
  share: [unit('', ONE), unit('%', exact('0.01'), 'percent', 'per cent')],
  // metres per second
  velocity: [unit('m/s', ONE), unit('m/min', ONE.div(MINUTE_s)), unit('ft/min', FOOT_m.div(MINUTE_s), 'fpm')],
  // per second
  frequency: [unit('1/s', ONE, 'Hz', 'per s', 's^-1', 's⁻¹')],
  // radians; a degree is π/180, which no fraction is, so angles of people stay numbers
  angle: [unit('rad', ONE)],
  // plain number that is never read as a percentage
  number: [unit('', ONE)],
  // chain pitches
  pitches: [unit('pitches', ONE, 'pitch')],
} satisfies Readonly<Record<string, readonly Unit[]>>;

export type Dimension = keyof typeof DIMENSIONS;

/**
 * The units a dimension is given in, by the names under which the program writes them.
 *
 * @param dimension  one of `DIMENSIONS`
 * @source our choice
 * @example unitsOf('length')  // ['m', 'mm', 'cm', 'in', 'ft']
 */
export function unitsOf(dimension: Dimension): readonly string[] {
  return DIMENSIONS[dimension].map((known) => known.name);
}

function find(dimension: Dimension, spelling: string): Unit | undefined {
  const key = spellingKey(spelling);
  return DIMENSIONS[dimension].find((known) => known.keys.has(key));
}

/**
 * The name of the unit that a spelling stands for.
 *
 * @param dimension  what is measured; `°C` is one unit as a temperature and another as a difference
 * @param spelling   as typed
 * @returns the name, or null if this is no unit of the dimension (a bare `gal` is none: the US and the UK gallon differ)
 * @source our choice
 * @example canonicalUnit('displacement', 'cm³/rev')  // 'cc/rev'
 */
export function canonicalUnit(dimension: Dimension, spelling: string): string | null {
  return find(dimension, spelling)?.name ?? null;
}

function unitCalled(dimension: Dimension, spelling: string): Unit {
  const found = find(dimension, spelling);
  if (!found) throw new RangeError(`"${spelling}" is not a unit of ${dimension}`);
  return found;
}

/**
 * A quantity in the SI unit of its dimension, exactly (revolutions and chain pitches are counted).
 *
 * @param dimension  what is measured
 * @param value      the number in the unit given
 * @param unit       a name from `unitsOf` or a further spelling of one
 * @throws RangeError  if this is no unit of the dimension
 * @source NIST SP 811
 * @example toSI('length', new Fraction('1'), 'in')  // 127/5000
 */
export function toSI(dimension: Dimension, value: Fraction, unit: string): Fraction {
  const { size, shift } = unitCalled(dimension, unit);
  return value.add(shift).mul(size);
}

/**
 * A quantity in SI brought back to a unit people read, exactly.
 *
 * @param dimension  what is measured
 * @param value      the number in the SI unit of the dimension
 * @param unit       a name from `unitsOf` or a further spelling of one
 * @throws RangeError  if this is no unit of the dimension
 * @source NIST SP 811
 * @example fromSI('temperature', new Fraction('298.15'), '°F')  // 77
 */
export function fromSI(dimension: Dimension, value: Fraction, unit: string): Fraction {
  const { size, shift } = unitCalled(dimension, unit);
  return value.div(size).sub(shift);
}

/**
 * The exact SI value of a quantity as the shop file keeps it.
 *
 * @param dimension  what is measured
 * @param typed      number and unit as typed
 * @returns the value in the SI unit of the dimension, or what was expected
 * @source NIST SP 811
 * @example readQuantity('displacement', { value: '20', unit: 'cm3/rev' })  // 1/50000
 */
export function readQuantity(dimension: Dimension, typed: TypedQuantity): Reading<Fraction> {
  const number = readNumber(typed.value);
  if (!number.ok) return number;
  const spelling = typed.unit.trim();
  if (find(dimension, spelling)) return { ok: true, value: toSI(dimension, number.value, spelling) };
  const said = spelling === '' ? en`${quoted(typed.value)} has no unit.` : en`${quoted(spelling)} is not a unit known here.`;
  const [first, ...others] = unitsOf(dimension).map((name) => name || en`no unit`);
  const choice = others.length > 0 ? en`one of ${[first, ...others].join(', ')}` : first;
  return { ok: false, expected: en`${said} Expected ${choice}.` };
}

/** A mass or a volume, told apart by its unit. */
export interface MassOrVolume {
  readonly dimension: 'mass' | 'volume';
  /** In the SI unit of the dimension. */
  readonly value: Fraction;
}

/**
 * An amount of material, which people weigh or measure.
 *
 * @param typed  number and unit as typed
 * @returns what was measured, with the exact SI value, or what was expected
 * @source NIST SP 811
 * @example readAmount({ value: '400', unit: 'L' })  // a volume of 2/5
 */
export function readAmount(typed: TypedQuantity): Reading<MassOrVolume> {
  const dimension = canonicalUnit('mass', typed.unit) === null ? 'volume' : 'mass';
  const known = canonicalUnit(dimension, typed.unit) !== null;
  const read = readQuantity(dimension, typed);
  if (read.ok) return { ok: true, value: { dimension, value: read.value } };
  const choice = [...unitsOf('mass'), ...unitsOf('volume')].join(', ');
  return known ? read : { ok: false, expected: en`${quoted(typed.unit.trim())} is no unit of mass or volume. Expected one of ${choice}.` };
}

/**
 * One entry taken apart into number and unit, as it is typed into a box or a table.
 *
 * @param dimension  what is measured
 * @param text       as typed, such as `12,5 mm`
 * @returns the number as typed and as read, and the name of the unit (null if none was typed), or what was expected
 * @source our choice
 * @example readEntry('displacement', '20 cm³/rev')  // value '20', number 20, unit 'cc/rev'
 */
export function readEntry(dimension: Dimension, text: string): Reading<QuantityText> {
  const entry = readQuantityText(text, unitsOf(dimension), (spelling) => canonicalUnit(dimension, spelling) !== null);
  if (!entry.ok || entry.value.unit === null) return entry;
  return { ok: true, value: { ...entry.value, unit: canonicalUnit(dimension, entry.value.unit) } };
}
