import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  exactRatioText,
  fixed,
  lengthText,
  offRatioText,
  percentText,
  quantity,
  ratioText,
  type Say,
  signed,
  temperatureText,
  withTrueMinus,
} from '../../core/src/format.ts';
import { exactText, Fraction, float } from '../../core/src/ratio.ts';
import { readNumber, readRatio } from '../../core/src/reading.ts';
import { type Dimension, readEntry, toSI } from '../../core/src/units.ts';

const metric: Say = { decimal: '.', system: 'metric' };
const inch: Say = { decimal: '.', system: 'inch' };
const comma: Say = { decimal: ',', system: 'metric' };
const fraction = (text: string) => new Fraction(text);

describe('rounding of a fraction is exact, halves away from zero', () => {
  it.each([
    ['0.125', 2, '0.13'],
    ['-0.125', 2, '\u22120.13'],
    ['-2.555', 2, '\u22122.56'],
    ['1.005', 2, '1.01'],
    ['1.00499999999999999999', 2, '1.00'],
    ['2.5', 0, '3'],
    ['-0.5', 0, '\u22121'],
    ['9.995', 2, '10.00'],
    ['-0.004', 2, '0.00'],
    ['0', 2, '0.00'],
    ['2/3', 4, '0.6667'],
    ['0.07', 2, '0.07'],
    ['12345678901234567890.5', 0, '12345678901234567891'],
  ])('%s with %i places is %s [arithmetic]', (text, places, wanted) => expect(fixed(fraction(text), places, metric)).toBe(wanted));

  it('agrees with ICU rounding half away from zero, on decimals that often end in 5 [oracle: ICU number formats, which read a decimal text exactly]', () => {
    const isDecimal = (text: string): text is `${number}` => /^-?\d+\.\d+$/.test(text);
    const decimals = fc
      .tuple(fc.constantFrom('', '-'), fc.bigInt(0n, 10n ** 12n), fc.stringMatching(/^\d{1,8}5?$/))
      .map(([sign, before, after]) => `${sign}${before}.${after}`)
      .filter(isDecimal);
    fc.assert(
      fc.property(decimals, fc.integer({ min: 0, max: 9 }), (decimal, places) => {
        const icu = new Intl.NumberFormat('en-US', {
          minimumFractionDigits: places,
          maximumFractionDigits: places,
          useGrouping: false,
          signDisplay: 'negative',
        });
        expect(fixed(fraction(decimal), places, metric)).toBe(icu.format(decimal).replace('-', '\u2212'));
      }),
    );
  });
});

describe('rounding of a float', () => {
  it.each([
    [0.125, 2, '0.13'],
    [-0.125, 2, '\u22120.13'],
    [2.5, 0, '3'],
    [-2.5, 0, '\u22123'],
    [-0, 2, '0.00'],
    [-0.004, 2, '0.00'],
    [253.97, 2, '253.97'],
    [1e20, 1, '100000000000000000000.0'],
  ])('%d with %i places is %s [arithmetic: these halves are exact in binary]', (value, places, wanted) => {
    expect(fixed(value, places, metric)).toBe(wanted);
  });

  it('goes by the double as it is: 1.005 is stored a little below itself [IEEE 754]', () => expect(fixed(1.005, 2, metric)).toBe('1.00'));

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e21])('%d is refused', (value) => {
    expect(() => fixed(value, 2, metric)).toThrow(RangeError);
    expect(() => quantity(value, 'length', 'mm', 2, metric)).toThrow(RangeError);
  });

  it('a float and the same number as a fraction print alike where no half is near', () => {
    fc.assert(
      fc.property(fc.integer({ min: -(10 ** 9), max: 10 ** 9 }), fc.integer({ min: 0, max: 3 }), (thousandths, places) => {
        const value = new Fraction(BigInt(thousandths) * 10n + 1n, 10_000n);
        expect(fixed(float(value), places, metric)).toBe(fixed(value, places, metric));
      }),
    );
  });
});

describe('signs and the decimal comma', () => {
  it.each([
    ['1.25', '+1.3'],
    ['-1.35', '\u22121.4'],
    ['0', '0.0'],
    ['0.04', '0.0'],
    ['-0.04', '0.0'],
  ])('%s signed with one place is %s [arithmetic]', (text, wanted) => {
    expect(signed(fraction(text), 1, metric)).toBe(wanted);
    expect(signed(fraction(text), 1, comma)).toBe(wanted.replace('.', ','));
  });

  it('a float is signed alike', () =>
    expect([signed(1.3, 1, metric), signed(-1.4, 1, comma), signed(-0, 1, metric)]).toEqual(['+1.3', '\u22121,4', '0.0']));
});

describe('a typed text beside figures [typography: minus is U+2212]', () => {
  it.each([
    ['-2 to 2 % of B per A', '\u22122 to 2 % of B per A'],
    ['-1,5 to -.5 parts of B', '\u22121,5 to \u2212.5 parts of B'],
    ['index 102 to 108', 'index 102 to 108'],
    ['batch 2-3, A-4', 'batch 2-3, A-4'],
    ['1e-3 to 2', '1e-3 to 2'],
  ])('%s', (typed, shown) => {
    expect(withTrueMinus(typed)).toBe(shown);
  });
});

describe('quantities', () => {
  it.each([
    ['0.25397', 'length', 'mm', 2, '253.97\u00A0mm'],
    ['0.0254', 'length', 'in', 3, '1.000\u00A0in'],
    ['0.00002', 'displacement', 'cc/rev', 2, '20.00\u00A0cc/rev'],
    ['1130', 'density', 'g/cm3', 3, '1.130\u00A0g/cm\u00B3'],
    ['1', 'torque', 'N m', 1, '1.0\u00A0N\u00A0m'],
    ['298.15', 'temperature', '°F', 1, '77.0\u00A0°F'],
    ['0.985', 'share', '%', 1, '98.5\u00A0%'],
    ['5', 'share', '', 0, '5'],
  ] as const)('%s in SI of %s, in %s with %i places, is %s [arithmetic on the definitions]', (value, dimension, unit, places, wanted) => {
    expect(quantity(fraction(value), dimension, unit, places, metric)).toBe(wanted);
    expect(quantity(Number(value), dimension, unit, places, metric)).toBe(wanted);
    expect(quantity(fraction(value), dimension, unit, places, comma)).toBe(wanted.replace('.', ','));
  });

  it('a unit of another dimension is our mistake', () => expect(() => quantity(1, 'length', 'bar', 1, metric)).toThrow(RangeError));

  it.each([
    [metric, undefined, '38.9\u00A0mm'],
    [inch, undefined, '1.531\u00A0in'],
    [comma, 2, '38,90\u00A0mm'],
    [inch, 2, '1.5315\u00A0in'],
  ])('a length of 38.9 mm, %j, %s places: %s [arithmetic: 38.9/25.4 = 1.53150 in]', (say, places, wanted) => {
    expect(lengthText(0.0389, say, places)).toBe(wanted);
    expect(lengthText(fraction('0.0389'), say, places)).toBe(wanted);
  });

  it.each([
    ['298.15', '25\u00A0°C', '77\u00A0°F'],
    ['296.65', '23,5\u00A0°C', '74.3\u00A0°F'],
    ['263.15', '\u221210\u00A0°C', '14\u00A0°F'],
  ])('a temperature of %s K is %s or %s [NIST SP 811: t_C = (t_F - 32)/1.8]', (kelvins, celsius, fahrenheit) => {
    expect(temperatureText(fraction(kelvins), comma)).toBe(celsius);
    expect(temperatureText(fraction(kelvins), inch)).toBe(fahrenheit);
  });
});

describe('an off-ratio is said with its side, and reads as nothing only when it is nothing', () => {
  it.each([
    ['-0.0007', '0.07\u00A0% B-lean'],
    ['0.0135', '1.35\u00A0% B-rich'],
    ['0', 'exact'],
    ['0.000031', '0.0031\u00A0% B-rich'],
    ['-0.0000499', '0.0050\u00A0% B-lean'],
    ['0.00005', '0.01\u00A0% B-rich'],
    ['0.000006', '0.00060\u00A0% B-rich'],
    ['1/3000000000', '0.000000033\u00A0% B-rich'],
  ])('%s is %s [arithmetic]', (e, wanted) => {
    expect(offRatioText(fraction(e), metric)).toBe(wanted);
    expect(offRatioText(fraction(e), comma)).toBe(wanted.replace('.', ','));
  });

  it('with other places: 1.35 % and 0.4 % to none [arithmetic]', () => {
    expect(offRatioText(fraction('0.0135'), metric, 0)).toBe('1\u00A0% B-rich');
    expect(offRatioText(fraction('0.004'), metric, 0)).toBe('0.40\u00A0% B-rich');
  });

  it('whatever is not exact shows a digit and its side', () => {
    fc.assert(
      fc.property(fc.bigInt(-(10n ** 12n), 10n ** 12n), fc.bigInt(1n, 10n ** 15n), fc.integer({ min: 0, max: 4 }), (n, d, places) => {
        fc.pre(n !== 0n);
        const wanted = n > 0n ? /[1-9].* % B-rich$/ : /[1-9].* % B-lean$/;
        expect(offRatioText(new Fraction(n, d), metric, places).replace('\u00A0', ' ')).toMatch(wanted);
      }),
    );
  });
});

describe('a share in per cent', () => {
  it.each([
    ['0', '0.00\u00A0%'],
    ['0.0323', '3.23\u00A0%'],
    ['0.000049', '0.0049\u00A0%'],
    ['0.00000028', '0.000028\u00A0%'],
  ])('%s reads as %s, and as nothing only where it is nothing [arithmetic]', (share, wanted) => {
    expect(percentText(fraction(share), metric)).toBe(wanted);
  });
});

describe('ratios', () => {
  it('100 to 46 is 2.1739 : 1, exactly 50 : 23 [arithmetic]', () => {
    expect(ratioText(fraction('100/46'), metric)).toBe('2.1739 : 1');
    expect(ratioText(fraction('100/46'), comma)).toBe('2,1739 : 1');
    expect(exactRatioText(fraction('100/46'))).toBe('50 : 23');
  });

  it('an exact ratio printed reads back as itself', () => {
    fc.assert(
      fc.property(fc.bigInt(1n, 10n ** 20n), fc.bigInt(1n, 10n ** 20n), (n, d) => {
        const R = new Fraction(n, d);
        const reading = readRatio(exactRatioText(R));
        expect(reading.ok && exactText(reading.value[0].div(reading.value[1]))).toBe(exactText(R));
      }),
    );
  });
});

describe('what is printed reads back within half of the last place', () => {
  const anyFraction = fc.tuple(fc.bigInt(-(10n ** 15n), 10n ** 15n), fc.bigInt(1n, 10n ** 9n)).map(([n, d]) => new Fraction(n, d));
  const anyPlaces = fc.integer({ min: 0, max: 9 });
  const anySay = fc.constantFrom(metric, inch, comma);

  it('a number', () => {
    fc.assert(
      fc.property(anyFraction, anyPlaces, anySay, (value, places, say) => {
        for (const text of [fixed(value, places, say), signed(value, places, say)]) {
          const reading = readNumber(text);
          const halfPlace = new Fraction(1n, 2n * 10n ** BigInt(places));
          expect(reading.ok && reading.value.sub(value).abs().compare(halfPlace) <= 0).toBe(true);
        }
      }),
    );
  });

  it('a quantity, in any of these units', () => {
    const units: readonly (readonly [Dimension, string])[] = [
      ['length', 'mm'],
      ['density', 'lb/gal (US)'],
      ['displacement', 'in3/rev'],
      ['torque', 'lbf in'],
      ['temperature', '°F'],
      ['share', '%'],
      ['expansion', '1/°F'],
    ];
    fc.assert(
      fc.property(fc.constantFrom(...units), anyFraction, anyPlaces, anySay, ([dimension, unit], value, places, say) => {
        const entry = readEntry(dimension, quantity(toSI(dimension, value, unit), dimension, unit, places, say));
        const halfPlace = new Fraction(1n, 2n * 10n ** BigInt(places));
        expect(entry).toMatchObject({ ok: true, value: { unit } });
        expect(entry.ok && entry.value.number.sub(value).abs().compare(halfPlace) <= 0).toBe(true);
      }),
    );
  });
});
