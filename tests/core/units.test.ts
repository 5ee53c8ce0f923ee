import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactText, Fraction } from '../../core/src/ratio.ts';
import { canonicalUnit, DIMENSIONS, type Dimension, fromSI, readEntry, readQuantity, toSI, unitsOf } from '../../core/src/units.ts';

const isDimension = (name: string): name is Dimension => name in DIMENSIONS;
const dimensions = Object.keys(DIMENSIONS).filter(isDimension);
const everyUnit = dimensions.flatMap((dimension) => unitsOf(dimension).map((unit) => ({ dimension, unit })));
const converted = (dimension: Dimension, value: string, from: string, to: string) =>
  fromSI(dimension, toSI(dimension, new Fraction(value), from), to);

type Factor = readonly [dimension: Dimension, unit: string, value: string, to: string, source: string];
const INCH = '16 CFR 500.19';
const NIST = 'NIST SP 811, from memory';
const PREFIX = 'SI prefixes, from memory';
const PARTS = 'arithmetic on the definitions';

const exactFactors: readonly Factor[] = [
  ['length', 'in', '25.4', 'mm', INCH],
  ['length', 'in', '127/5', 'mm', INCH],
  ['length', 'ft', '0.3048', 'm', NIST],
  ['length', 'mm', '0.001', 'm', PREFIX],
  ['length', 'cm', '0.01', 'm', PREFIX],
  ['temperatureDifference', '°F', '5/9', 'K', NIST],
  ['temperatureDifference', '°C', '1', 'K', NIST],
  ['expansion', '1/°F', '9/5', '1/K', NIST],
  ['expansion', '1/°C', '1', '1/K', NIST],
  ['density', 'g/cm3', '1000', 'kg/m3', PREFIX],
  ['density', 'g/mL', '1000', 'kg/m3', NIST],
  ['density', 'kg/L', '1000', 'kg/m3', NIST],
  ['density', 'lb/in3', '1728', 'lb/ft3', PARTS],
  ['density', 'lb/in3', '231', 'lb/gal (US)', NIST],
  ['displacement', 'cc/rev', '0.000001', 'm3/rev', PREFIX],
  ['displacement', 'mL/rev', '1', 'cc/rev', NIST],
  ['displacement', 'L/rev', '1000', 'cc/rev', NIST],
  ['displacement', 'in3/rev', '16.387064', 'cc/rev', NIST],
  ['volume', 'US gal', '3.785411784', 'L', NIST],
  ['volume', 'US fl oz', '29.5735295625', 'mL', 'NIST SP 811; 16 CFR 500.19'],
  ['volume', 'in3', '16.387064', 'cc', NIST],
  ['volume', 'UK gal', '4.54609', 'L', NIST],
  ['volume', 'UK fl oz', '28.4130625', 'mL', NIST],
  ['volume', 'L', '0.001', 'm3', NIST],
  ['volume', 'mL', '0.000001', 'm3', NIST],
  ['volume', 'cc', '0.000001', 'm3', PREFIX],
  ['mass', 'lb', '0.45359237', 'kg', NIST],
  ['mass', 'oz', '28.349523125', 'g', NIST],
  ['mass', 'g', '0.001', 'kg', PREFIX],
  ['speed', 'rpm', '1/60', 'rev/s', PARTS],
  ['flow', 'cc/s', '0.000001', 'm3/s', PREFIX],
  ['flow', 'cc/s', '60', 'cc/min', PARTS],
  ['flow', 'mL/min', '1', 'cc/min', NIST],
  ['flow', 'L/min', '1000', 'cc/min', NIST],
  ['flow', 'in3/min', '16.387064', 'cc/min', NIST],
  ['flow', 'US gal/min', '3.785411784', 'L/min', NIST],
  ['pressure', 'kPa', '1000', 'Pa', PREFIX],
  ['pressure', 'MPa', '1000000', 'Pa', PREFIX],
  ['pressure', 'bar', '100000', 'Pa', NIST],
  ['torque', 'lbf ft', '12', 'lbf in', PARTS],
  ['force', 'lbf', '4.4482216152605', 'N', NIST],
  ['force', 'kN', '1000', 'N', PREFIX],
  ['power', 'kW', '1000', 'W', PREFIX],
  ['viscosity', 'cP', '0.001', 'Pa s', NIST],
  ['viscosity', 'mPa s', '0.001', 'Pa s', PREFIX],
  ['time', 'min', '60', 's', NIST],
  ['time', 'h', '3600', 's', NIST],
  ['velocity', 'ft/min', '0.00508', 'm/s', NIST],
  ['velocity', 'm/min', '1/60', 'm/s', 'arithmetic'],
  ['share', '%', '0.01', '', 'ISO 80000-1, from memory'],
];
const roundedFactors: readonly Factor[] = [
  ['pressure', 'psi', '6894.757293168', 'Pa', NIST],
  ['torque', 'lbf in', '0.1129848290276', 'N m', NIST],
  ['power', 'hp', '745.6998715823', 'W', NIST],
  ['density', 'lb/ft3', '16.01846', 'kg/m3', NIST],
];

describe('factors', () => {
  it.each(exactFactors)('%s: 1 %s is exactly %s %s [%s]', (dimension, from, value, to) => {
    expect(exactText(converted(dimension, '1', from, to))).toBe(exactText(new Fraction(value)));
  });

  it.each(roundedFactors)('%s: 1 %s is %s %s to half the last digit printed [%s]', (dimension, from, value, to) => {
    const halfLastDigit = new Fraction(1n, 2n * 10n ** BigInt(value.length - value.indexOf('.') - 1));
    expect(converted(dimension, '1', from, to).sub(new Fraction(value)).abs().compare(halfLastDigit)).toBeLessThanOrEqual(0);
  });

  it('77 °F is 25 °C and 68 °F is 20 °C, exactly [NIST SP 811: t_C = (t_F - 32)/1.8]', () => {
    expect(exactText(converted('temperature', '77', '°F', '°C'))).toBe('25/1');
    expect(exactText(converted('temperature', '68', '°F', '°C'))).toBe('20/1');
    expect(exactText(toSI('temperature', new Fraction('25'), '°C'))).toBe('5963/20');
  });

  it('25.4/20 is 127/100, so that an exact metric train needs a wheel of 127 [16 CFR 500.19: 1 in = 2.54 cm exactly]', () => {
    expect(exactText(converted('length', '1', 'in', 'mm').div(20))).toBe('127/100');
  });

  it('every unit stands in one of the checks above', () => {
    const rows = [...exactFactors, ...roundedFactors];
    const checked = new Set(rows.flatMap(([dimension, from, , to]) => [`${dimension} ${from}`, `${dimension} ${to}`]));
    const others = ['temperature °C', 'temperature °F', 'temperature K', 'frequency 1/s', 'angle rad', 'number ', 'pitches pitches'];
    const unchecked = everyUnit.map(({ dimension, unit }) => `${dimension} ${unit}`).filter((name) => !checked.has(name));
    expect(unchecked).toEqual(others);
  });
});

describe('laws of every unit', () => {
  it.each(everyUnit)('$dimension in $unit: to SI and back is the same number', ({ dimension, unit }) => {
    fc.assert(
      fc.property(fc.bigInt(), fc.bigInt({ min: 1n }), (numerator, denominator) => {
        const value = new Fraction(numerator, denominator);
        expect(fromSI(dimension, toSI(dimension, value, unit), unit).equals(value)).toBe(true);
      }),
      { numRuns: 20 },
    );
  });

  it.each(everyUnit)('$dimension in $unit: the name stands for itself', ({ dimension, unit }) => {
    expect(canonicalUnit(dimension, unit)).toBe(unit);
  });

  it.each(dimensions)('%s: no spelling stands for two units', (dimension) => {
    const keys = DIMENSIONS[dimension].flatMap((unit) => [...unit.keys]);
    expect(keys).toEqual([...new Set(keys)]);
  });
});

describe('spellings', () => {
  it.each([
    ['displacement', 'cm3/rev', 'cc/rev'],
    ['displacement', 'cm³/rev', 'cc/rev'],
    ['displacement', 'CC/REV', 'cc/rev'],
    ['displacement', 'cu. in./rev', 'in3/rev'],
    ['temperature', 'C', '°C'],
    ['temperature', 'degC', '°C'],
    ['temperature', 'deg F', '°F'],
    ['temperature', '\u2103', '°C'],
    ['temperature', 'º\u00A0C', '°C'],
    ['expansion', 'K\u207B\u00B9', '1/K'],
    ['expansion', '/\u00A0°C', '1/°C'],
    ['length', '"', 'in'],
    ['length', 'in.', 'in'],
    ['torque', 'N·m', 'N m'],
    ['torque', 'Nm', 'N m'],
    ['torque', 'in-lb', 'lbf in'],
    ['viscosity', 'mPa·s', 'mPa s'],
    ['pressure', 'PSI', 'psi'],
    ['pressure', 'MPA', 'MPa'],
    ['density', 'lb/gal', 'lb/gal (US)'],
    ['speed', '1/min', 'rpm'],
  ] as const)('%s: %j is %s [common practice, no source]', (dimension, spelling, unit) => {
    expect(canonicalUnit(dimension, spelling)).toBe(unit);
  });

  it.each([
    ['volume', 'gal'],
    ['volume', 'fl oz'],
    ['pressure', 'mPa'],
    ['pressure', 'mpa'],
    ['viscosity', 'MPa s'],
    ['length', 'kg'],
    ['length', ''],
    ['density', '°C'],
    ['length', 'constructor'],
  ] as const)('%s: %j is refused, as it is another unit or could be two [our rule]', (dimension, spelling) => {
    expect(canonicalUnit(dimension, spelling)).toBe(null);
    expect(() => toSI(dimension, new Fraction(1), spelling)).toThrow(RangeError);
    expect(() => fromSI(dimension, new Fraction(1), spelling)).toThrow(RangeError);
  });
});

describe('a quantity as the file keeps it', () => {
  const read = (dimension: Dimension, value: string, unit: string) => {
    const reading = readQuantity(dimension, { value, unit });
    return reading.ok ? exactText(reading.value) : reading.expected;
  };
  it.each([
    ['displacement', '20', 'cm3/rev', '1/50000'],
    ['length', '1 1/2', '"', '381/10000'],
    ['expansion', '6,2E-4', '1/K', '31/50000'],
    ['share', '0.5', ' % ', '1/200'],
  ] as const)('%s: %s %s is exactly %s in SI [arithmetic on the definitions]', (dimension, value, unit, wanted) => {
    expect(read(dimension, value, unit)).toBe(wanted);
  });

  it.each([
    ['length', '5', 'bar', '"bar" is not a unit known here. Expected one of m, mm, cm, in, ft.'],
    ['length', '5', ' ', '"5" has no unit. Expected one of m, mm, cm, in, ft.'],
    ['length', '5', '', '"5" has no unit. Expected one of m, mm, cm, in, ft.'],
    ['pitches', '5', 'mm', '"mm" is not a unit known here. Expected pitches.'],
    ['share', '5', 'mm', '"mm" is not a unit known here. Expected one of no unit, %.'],
    ['length', '5x', 'bar', '"5x" is not a number. Expected something like 38.9, 38,9, 1 1/2 or 7e-4.'],
  ] as const)('%s: %s %s is refused: %s [our wording]', (dimension, value, unit, said) => {
    expect(read(dimension, value, unit)).toBe(said);
  });

  it('one entry is split, and its unit named: 20 cm³/rev [common practice, no source]', () => {
    expect(readEntry('displacement', '20 cm³/rev')).toMatchObject({ ok: true, value: { value: '20', unit: 'cc/rev' } });
    expect(readEntry('expansion', '7.1/K')).toMatchObject({ ok: true, value: { value: '7.1', unit: '1/K' } });
    expect(readEntry('length', '12,5')).toMatchObject({ ok: true, value: { value: '12,5', unit: null } });
    expect(readEntry('length', '12 bar')).toEqual({
      ok: false,
      expected: '"12 bar" is not a number with a unit known here. Expected a number alone or with m, mm, cm, in or ft, like 12.5 m.',
    });
  });
});

it('worked examples of the docstrings', () => {
  expect(unitsOf('length')).toEqual(['m', 'mm', 'cm', 'in', 'ft']);
  expect(exactText(toSI('length', new Fraction('1'), 'in'))).toBe('127/5000');
  expect(exactText(fromSI('temperature', new Fraction('298.15'), '°F'))).toBe('77/1');
});
