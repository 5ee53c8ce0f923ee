import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactText, Fraction } from '../../core/src/ratio.ts';
import { type Reading, readNumber, readQuantityText, readRatio, spokenReading } from '../../core/src/reading.ts';

const numberIn = (text: string) => exact(readNumber(text));
const exact = (reading: Reading<Fraction>) => (reading.ok ? exactText(reading.value) : reading.expected);
const ratioIn = (text: string) => {
  const reading = readRatio(text);
  return reading.ok ? reading.value.map(exactText).join(' : ') : reading.expected;
};

describe('a number is read exactly', () => {
  it.each([
    ['4,0', '4/1'],
    ['0,5', '1/2'],
    ['397,72', '39772/100'],
    ['1,5', '3/2'],
    ['2.804', '2804/1000'],
    ['1.234', '1234/1000'],
    ['1,234', '1234/1000'],
    ['10.000,5', '20001/2'],
  ])('decimal comma or point: %s is %s [our rule: a single separator is the decimal sign, of two the last is]', (text, wanted) => {
    expect(numberIn(text)).toBe(exactText(new Fraction(wanted)));
  });

  it.each([
    ['0.(3)', '1/3'],
    ['0,1(6)', '1/6'],
    ['1,234.(9)', '1235/1'],
    ['1 1/2', '3/2'],
    ['-1 1/2', '-3/2'],
    ['1 234 1/2', '2469/2'],
    ['1234 345/678', '278999/226'],
    ['3/4', '3/4'],
    ['1.5/2', '3/4'],
    ['3 / 4', '3/4'],
    ['1 234/5', '1234/5'],
    [' 2.5 ', '5/2'],
    ['\u00A0\u202F2.5\u2009\n', '5/2'],
    ['\u22122.5', '-5/2'],
    ['+.375', '3/8'],
    ['007', '7/1'],
    ['-0', '0/1'],
    ['1e-7', '1/10000000'],
    ['7e-4', '7/10000'],
    ['6,2E\u22124', '31/50000'],
    ['5e+30', '5000000000000000000000000000000/1'],
  ])('%j is %s [arithmetic]', (text, wanted) => {
    expect(numberIn(text)).toBe(wanted);
  });

  it.each(['1\u2009234\u2009567,5', '1\u00A0234\u00A0567.5', "1'234'567.5", '1\u2019234\u2019567.5', '1.234.567,5', '1,234,567.5'])(
    'thousands in groups of three: %j is 1234567.5 [arithmetic]',
    (text) => expect(numberIn(text)).toBe('2469135/2'),
  );

  it('a number comes from its text and never through a float, which would lose digits: 999999.99 and 10.234567 [arithmetic]', () => {
    expect([numberIn('999999.99'), numberIn('10.234567')]).toEqual(['99999999/100', '10234567/1000000']);
    expect([new Fraction(999999.99), new Fraction(10.234567)].map(exactText)).toEqual(['1000000/1', '99401400/9712321']);
  });

  it('one separator repeated groups thousands: 1.234.567 and 1,234,567 are whole numbers [our rule]', () => {
    expect([numberIn('1.234.567'), numberIn('1,234,567')]).toEqual(['1234567/1', '1234567/1']);
  });

  it('the old rule for a 3 mm lead, 90/127, stays the fraction it was typed as, and gives the lead back [arithmetic: 90/127 x 25.4 / 6 = 3]', () => {
    const reading = readNumber('90/127');
    expect(exact(reading)).toBe('90/127');
    expect(reading.ok && exactText(reading.value.mul(new Fraction('25.4')).div(6))).toBe('3/1');
    expect(exact(readNumber('0.7087'))).not.toBe('90/127');
  });

  it('a number kept in JSON as text comes back equal, as a fraction itself cannot be written [JSON has no big integers, ECMA-404]', () => {
    const value = new Fraction('20/9');
    expect(() => JSON.stringify({ value })).toThrow(TypeError);
    const kept: unknown = JSON.parse(JSON.stringify(exactText(value)));
    expect(numberIn(String(kept))).toBe('20/9');
  });
});

describe('what is no number is refused, with what was expected', () => {
  const like = 'Expected something like 38.9, 38,9, 1 1/2 or 7e-4.';
  it.each([
    ['12_5', '"12_5" is not a number.'],
    ['50%', '"50%" is not a number.'],
    ['1.2,3', '"1.2,3" is not a number.'],
    ['1/0', '"1/0" divides by zero.'],
    ['1 1/0,0', '"1 1/0,0" divides by zero.'],
    ['1e31', '"1e31" has a power of ten beyond 30.'],
    ['1e-999999999999', '"1e-999999999999" has a power of ten beyond 30.'],
    ['1 234/567', '"1 234/567" can be read in two ways.'],
    [' ', 'Nothing was typed.'],
    ['1'.repeat(65), 'The entry has 65 characters, more than 64.'],
  ])('%j: %s [our wording]', (text, said) => expect(numberIn(text)).toBe(`${said} ${like}`));

  it.each([
    ...['NaN', 'Infinity', '-Infinity', '0x10', '12a', '1,02o', 'e5', '1e', '1e2.5', '1e--5', '½', '٣', '1n'],
    ...[
      '.',
      ',',
      '-',
      '+',
      '--5',
      '- 5',
      '5-',
      '1+1',
      '2*3',
      '2^3',
      '(5)',
      '12(3)',
      '1.234.(567)',
      '1 (234)',
      '0.(3',
      '0.3)',
      '0.()',
      '0.(3)4',
      '1e(3)',
    ],
    ...['1.', '1,', '1.2.3', '1.23.456', '12.3456.789', '1.234.5', '1 23', '1  234', '1234 567', '0.000,5', '0 001', "1'23", '1.234 567'],
    ...[
      '1 234.567.890',
      "1.234'567,8",
      '1,23,456.7',
      '3.141 592',
      '/2',
      '1/',
      '1/2/3',
      '1 3/2',
      '1.5 1/2',
      '1/-2',
      '1 1/2.5',
      '1e3/2',
      '5\n6',
      '1:2',
    ],
  ])('%j is refused [our rule]', (text) => expect(numberIn(text)).toContain('Expected'));

  it('an endless entry is refused at once, without being quoted', () => {
    expect(numberIn(' '.repeat(100_000))).toContain('Nothing was typed.');
    expect(numberIn('1,'.repeat(100_000))).toContain('200000 characters');
  });
});

const digits = fc.stringMatching(/^\d{1,20}$/);

describe('laws of reading', () => {
  it('a decimal of any length survives exactly [oracle: whole-number arithmetic]', () => {
    fc.assert(
      fc.property(fc.constantFrom('', '-', '\u2212', '+'), digits, digits, fc.constantFrom('.', ','), (sign, before, after, decimal) => {
        const size = new Fraction(BigInt(before + after), 10n ** BigInt(after.length));
        const wanted = sign === '-' || sign === '\u2212' ? size.neg() : size;
        expect(numberIn(`${sign}${before}${decimal}${after}`)).toBe(exactText(wanted));
      }),
    );
  });

  it('a number grouped as people write it in several countries reads as the ungrouped one [oracle: ICU number formats]', () => {
    const countries = ['en-US', 'de-DE', 'de-CH', 'fr-FR', 'sv-SE', 'es-ES', 'pl-PL', 'pt-BR'];
    const isDecimal = (text: string): text is `${number}` => /^\d+\.\d\d$/.test(text);
    const decimal = fc
      .tuple(fc.bigInt(10_000n, 10n ** 18n), fc.integer({ min: 10, max: 99 }))
      .map(([before, after]) => `${before}.${after}`)
      .filter(isDecimal);
    fc.assert(
      fc.property(fc.constantFrom(...countries), decimal, (country, plain) => {
        const grouped = new Intl.NumberFormat(country, { minimumFractionDigits: 2 }).format(plain);
        expect(grouped.length).toBeGreaterThan(plain.length);
        expect(numberIn(grouped)).toBe(numberIn(plain));
      }),
    );
  });

  it('powers of ten move the decimal sign [oracle: whole-number arithmetic]', () => {
    fc.assert(
      fc.property(digits, fc.integer({ min: -30, max: 30 }), (number, power) => {
        const shifted = new Fraction(BigInt(number) * 10n ** BigInt(30 + power), 10n ** 30n);
        expect(numberIn(`${number}e${power}`)).toBe(exactText(shifted));
      }),
    );
  });

  it('no text makes it throw or read something that is not there', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[-+\d.,'/ e()ab:%]{0,12}$/), (text) => {
        const reading = readNumber(text);
        expect(reading.ok ? /\d/.test(text) : reading.expected.endsWith('.')).toBe(true);
        readRatio(text);
      }),
    );
  });
});

describe('a ratio is read in the order A, B, third', () => {
  it.each([
    ['100:45', '100/1 : 45/1'],
    ['2:1', '2/1 : 1/1'],
    ['1 : 2', '1/1 : 2/1'],
    ['2,5:1', '5/2 : 1/1'],
    ['100.0:33.5', '100/1 : 67/2'],
    ['1 1/2:1', '3/2 : 1/1'],
    ['100\u00A0\u2236\u00A045', '100/1 : 45/1'],
    ['100\uFF1A45', '100/1 : 45/1'],
  ])('%j is %s [arithmetic]', (text, wanted) => expect(ratioIn(text)).toBe(wanted));

  it.each(['100A:38B', '38B:100A', '100a:38b', '100 A : 38 B'])(
    'letters decide which side is which: %s is 100 of A to 38 of B, 50/19 [arithmetic]',
    (text) => {
      expect(ratioIn(text)).toBe('100/1 : 38/1');
      const reading = readRatio(text);
      expect(reading.ok && exactText(reading.value[0].div(reading.value[1]))).toBe('50/19');
    },
  );

  it('three parts stay three, so that the third can be put where it belongs: 4:1:1 is 5:1, 2:1 or 4:1 for two pumps [arithmetic]', () => {
    expect(ratioIn('4:1:1')).toBe('4/1 : 1/1 : 1/1');
    expect(ratioIn('1C:1B:4A')).toBe('4/1 : 1/1 : 1/1');
    const reading = readRatio('4:1:1');
    const [a, b, third = new Fraction(0)] = reading.ok ? reading.value : [];
    expect([a?.add(third).div(b ?? 0), a?.div(b?.add(third) ?? 0), a?.div(b ?? 0)].map(String)).toEqual(['5', '2', '4']);
  });

  it.each([
    ['2.5', '"2.5" has only one part.'],
    ['20/9', '"20/9" has only one part.'],
    ['1:2:3:4', '"1:2:3:4" has 4 parts.'],
    ['100:', '"100:" lacks a part.'],
    ['100:4x', '"100:4x" has a part "4x" that is not a number.'],
    ['50%:1', '"50%:1" has a part "50%" that is not a number.'],
    ['0:1', '"0:1" has a part "0" that is not above zero.'],
    ['-1:2', '"-1:2" has a part "-1" that is not above zero.'],
    ['100A:38', '"100A:38" does not name each part once by its letter.'],
    ['100A:38A', '"100A:38A" does not name each part once by its letter.'],
    ['100A:38C', '"100A:38C" does not name each part once by its letter.'],
    ['4A:1B:1', '"4A:1B:1" does not name each part once by its letter.'],
    ['', 'Nothing was typed.'],
  ])('%j is refused: %s [our wording]', (text, said) => {
    expect(ratioIn(text)).toBe(`${said} Expected A to B, like 100:45, 2.5 : 1, 100A:38B or 4:1:1.`);
  });
});

describe('a number with a unit is taken apart', () => {
  const entry = (text: string) => {
    const reading = readQuantityText(text, ['mm', 'in', '"', '%', '1/K', '/K']);
    return reading.ok ? [reading.value.value, exactText(reading.value.number), reading.value.unit] : reading.expected;
  };
  it.each([
    ['12,5 mm', '12,5', '25/2', 'mm'],
    ['2 in', '2', '2/1', 'in'],
    ['0.5"', '0.5', '1/2', '"'],
    ['1 1/2in', '1 1/2', '3/2', 'in'],
    ['\u22123\u00A0mm', '\u22123', '-3/1', 'mm'],
    ['50%', '50', '50/1', '%'],
    ['7e-4 1/K', '7e-4', '7/10000', '1/K'],
    ['7.1/K', '7.1', '71/10', '/K'],
    ['21/K', '21', '21/1', '/K'],
  ])('%j is %s, exactly %s, in %s [arithmetic]', (text, value, number, unit) => expect(entry(text)).toEqual([value, number, unit]));

  it('a number alone has no unit', () => expect(entry(' 1 234,5 ')).toEqual(['1 234,5', '2469/2', null]));

  it.each(['12.5 bar', '12_5 mm', 'mm', '5 mm mm', '5 .in', '5 MM'])('%j is refused, naming the units [our wording]', (text) => {
    expect(entry(text)).toBe(
      `"${text}" is not a number with a unit known here. Expected a number alone or with mm, in, ", %, 1/K or /K, like 12.5 mm.`,
    );
  });

  it('spellings may be left to the caller', () => {
    const reading = readQuantityText('5 MM', ['mm'], (spelling) => spelling.toLowerCase() === 'mm');
    expect(reading).toMatchObject({ ok: true, value: { value: '5', unit: 'MM' } });
  });
});

describe('the reading beside the box', () => {
  it.each([
    ['2,5', '2.5'],
    ['100', '100'],
    ['0', '0'],
    ['-1/8', '\u22120.125'],
    ['12345678901234567.00000000000000000001', '12345678901234567.00000000000000000001'],
    ['7e-30', '0.000000000000000000000000000007'],
    ['1/3', '1/3 (0.333333)'],
    ['-2/3', '\u22122/3 (\u22120.666667)'],
    ['1000000/7', '1000000/7 (142857)'],
    ['1/99999', '1/99999 (0.0000100001)'],
  ])('%s reads %s [arithmetic]', (text, wanted) => {
    const reading = readNumber(text);
    expect(reading.ok && spokenReading(reading.value)).toBe(wanted);
  });

  it('uses the decimal sign asked for', () => {
    expect(spokenReading(new Fraction('5/2'), ',')).toBe('2,5');
    expect(spokenReading(new Fraction('1/3'), ',')).toBe('1/3 (0,333333)');
  });
});

describe('a whole number and a fraction [our rule]', () => {
  const exactly = (text: string) => {
    const read = readNumber(text);
    return read.ok ? exactText(read.value) : read.expected.slice(0, read.expected.indexOf('.') + 1);
  };
  it.each([
    ['1 1/2', '3/2'],
    ['1 4/5', '9/5'],
    ['12 1/9', '109/9'],
    ['-1 4/5', '-9/5'],
  ])('%s is %s', (text, value) => expect(exactly(text)).toBe(value));
  it.each(['1 5/5', '1 6/5', '-1 5/5', '1 0/5', '1 1/1'])('%s: the fraction is not below one whole', (text) => {
    expect(exactly(text)).toBe(`"${text}" is not a number.`);
  });
  it.each([
    ['5e0', '5/1'],
    ['5e-0', '5/1'],
    ['5e1', '50/1'],
    ['5e-1', '1/2'],
    ['5e30', `5${'0'.repeat(30)}/1`],
    ['-2.5e-2', '-1/40'],
  ])('%s is %s', (text, value) => expect(exactly(text)).toBe(value));
});
