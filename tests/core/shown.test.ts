import { describe, expect, test } from 'vitest';
import type { Say } from '../../core/src/format.ts';
import { Fraction, float, whole } from '../../core/src/ratio.ts';
import { amountText, atLeastText, metricAmount, preciseText, siText } from '../../core/src/shown.ts';
import { DIMENSIONS, type Dimension, toSI } from '../../core/src/units.ts';

const metric: Say = { decimal: '.', system: 'metric' };
const inch: Say = { decimal: '.', system: 'inch' };
const comma: Say = { decimal: ',', system: 'metric' };
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

type Row = readonly [dimension: Dimension, value: string, unit: string, metric: string, inch: string];

// Inch figures by the exact factors of NIST SP 811.
const ROWS: readonly Row[] = [
  ['length', '25.4', 'mm', '25.40 mm', '1.0000 in'],
  ['temperature', '25', '°C', '25.0 °C', '77.0 °F'],
  ['temperatureDifference', '2', 'K', '2.0 K', '3.6 °F'],
  ['density', '1.1479', 'g/cm3', '1.14790 g/cm³', '1.14790 g/cm³'],
  ['displacement', '16.387064', 'cc/rev', '16.387 cc/rev', '1.0000 in³/rev'],
  ['volume', '3.785411784', 'L', '3.79 L', '1.000 US gal'],
  ['volume', '35', 'cc', '35.0 cc', '2.14 in³'],
  ['volume', '999.99', 'cc', '1000.0 cc', '61.02 in³'],
  ['volume', '1', 'L', '1.00 L', '0.264 US gal'],
  ['mass', '45.359237', 'kg', '45.359 kg', '100.000 lb'],
  ['mass', '275.5', 'g', '275.5 g', '9.72 oz'],
  ['speed', '57.15', 'rpm', '57.15 rpm', '57.15 rpm'],
  ['flow', '685.8', 'cc/min', '685.8 cc/min', '41.85 in³/min'],
  ['pressure', '28', 'bar', '28.0 bar', '406 psi'],
  ['torque', '6.08', 'N m', '6.08 N m', '53.8 lbf in'],
  ['force', '2543', 'N', '2543 N', '572 lbf'],
  ['power', '745.69987158227022', 'W', '745.7 W', '1.000 hp'],
  ['viscosity', '4000', 'cP', '4000 mPa s', '4000 mPa s'],
  ['time', '2976', 's', '49.6 min', '49.6 min'],
  ['share', '0.0013', '', '0.13 %', '0.13 %'],
  ['velocity', '0.278', 'm/s', '0.278 m/s', '54.7 ft/min'],
  ['frequency', '60', '1/s', '60.0 1/s', '60.0 1/s'],
  ['number', '23.97', '', '23.9700', '23.9700'],
];

describe('a quantity in the unit in which it is read [our choice of unit; NIST SP 811 for the factors]', () => {
  test.each(ROWS)('%s: %s %s is %s, or %s', (dimension, value, unit, inMetric, inInch) => {
    const exact = toSI(dimension, new Fraction(value), unit);
    expect([plain(amountText(exact, dimension, metric)), plain(amountText(exact, dimension, inch))]).toEqual([inMetric, inInch]);
    expect(plain(amountText(float(exact), dimension, metric))).toBe(inMetric);
  });
  test('further places, a decimal comma, and less than nothing', () => {
    const flow = toSI('flow', new Fraction('685.84'), 'cc/min');
    expect(plain(amountText(flow, 'flow', comma, 1))).toBe('685,84 cc/min');
    expect(plain(amountText(new Fraction('-0.0007'), 'share', metric))).toBe('−0.07 %');
    expect(plain(amountText(toSI('volume', whole(-5), 'cc'), 'volume', metric))).toBe('−5.0 cc');
  });
  test('every dimension has its unit and its places in both systems', () => {
    const isDimension = (name: string): name is Dimension => name in DIMENSIONS;
    for (const dimension of Object.keys(DIMENSIONS).filter(isDimension))
      for (const how of [metric, inch]) expect(amountText(whole(300), dimension, how), dimension).toMatch(/^\d+(\.\d+)?(\u00a0\S.*)?$/);
  });
});

describe('six digits that count [our choice]', () => {
  test('in the unit people read', () => {
    expect(plain(preciseText(toSI('speed', new Fraction('52.578'), 'rpm'), 'speed', metric))).toBe('52.578 rpm');
    expect(plain(preciseText(new Fraction('2/3'), 'share', metric))).toBe('66.6667 %');
  });
  test('in SI, with powers of ten where it is small or large', () => {
    expect(plain(siText(toSI('displacement', whole(12), 'cc/rev'), 'displacement', metric))).toBe('1.2 × 10⁻⁵ m³/rev');
    expect(plain(siText(toSI('pressure', whole(28), 'bar'), 'pressure', comma))).toBe('2800000 Pa');
    expect(plain(siText(0.9525, 'speed', comma))).toBe('0,9525 rev/s');
  });
});

test('a quantity for scripts, in metric [our choice]', () => {
  expect(metricAmount(new Fraction('0.0127'), 'length')).toEqual({ value: 12.7, unit: 'mm' });
  // 28 bar through floats is 28.000000000000004
  expect(metricAmount(2_800_000, 'pressure')).toEqual({ value: 28, unit: 'bar' });
});

test('what must at least be there is rounded up, in the unit it is read in [arithmetic]', () => {
  expect(plain(atLeastText(new Fraction('0.0220234'), 'volume', { decimal: '.', system: 'metric' }))).toBe('22.03 L');
  expect(plain(atLeastText(new Fraction('0.02202'), 'volume', { decimal: '.', system: 'metric' }))).toBe('22.02 L');
  // 231 cubic inches of 2.54 cm to the gallon: 22.0234 L are 5.817967 gal
  expect(plain(atLeastText(new Fraction('0.0220234'), 'volume', { decimal: '.', system: 'inch' }))).toBe('5.818 US gal');
});
