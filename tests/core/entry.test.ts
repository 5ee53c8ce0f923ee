import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  amountEntryText,
  quantityText,
  readAmountEntry,
  readCount,
  readNumberEntry,
  readQuantityEntry,
  readRatioEntry,
  stepNumber,
  withErrorText,
} from '../../core/src/entry.ts';
import { readQuantity } from '../../core/src/units.ts';

const say = { decimal: '.', system: 'metric' } as const;

test('an empty box is not given, never a zero', () => {
  for (const empty of ['', ' ', '\u00A0']) {
    expect(readQuantityEntry('length', empty, 'mm', say)).toEqual({ ok: true, value: undefined });
    expect(readRatioEntry(empty)).toEqual({ ok: true, value: undefined });
    expect(readCount(empty, 5, 400)).toEqual({ ok: true, value: undefined });
    expect(readNumberEntry(empty, say)).toEqual({ ok: true, value: undefined });
  }
});

test('what is typed is kept as typed; a reading stands beside it where it could be read in two ways', () => {
  expect(readQuantityEntry('length', '12.70', 'mm', say)).toEqual({ ok: true, value: { value: '12.70', unit: 'mm' } });
  expect(readQuantityEntry('length', '10,5', 'mm', say)).toEqual({ ok: true, value: { value: '10,5', unit: 'mm' }, reading: '= 10.5 mm' });
  expect(readQuantityEntry('length', '1 1/2 in', 'mm', say)).toEqual({
    ok: true,
    value: { value: '1 1/2', unit: 'in' },
    reading: '= 1.5 in',
  });
  expect(readRatioEntry('38B:100A')).toEqual({ ok: true, value: '38B:100A', reading: 'A 100, B 38' });
  expect(readRatioEntry('2,5:1')).toMatchObject({ reading: 'A 2.5, B 1' });
});

test('an unreadable entry says what was typed', () => {
  for (const read of [
    readQuantityEntry('length', '12_5', 'mm', say),
    readRatioEntry('45'),
    readCount('4.5', 5, 400),
    readNumberEntry('x', say),
  ]) {
    expect(read.ok).toBe(false);
  }
  expect(readCount('401', 5, 400)).toEqual({ ok: false, expected: '"401" is not a whole number from 5 to 400.' });
});

test.each([
  ['3.14', -1, '2.14'],
  ['3.14', 1, '4.14'],
  ['3,10', 1, '4,10'],
  ['0.5', -1, null],
  ['12', 1, '13'],
  ['1 1/2', 1, null],
] as const)('an arrow key on %s by %i keeps the decimals as typed: %s', (text, by, stepped) => {
  expect(stepNumber(text, by)).toBe(stepped);
});

describe('an amount, by its unit a mass or a volume [our choice]', () => {
  test.each([
    ['400 g', '400', 'g'],
    ['2.5 L', '2.5', 'L'],
    ['3 lbs', '3', 'lb'],
    ['5 fl oz (US)', '5', 'US fl oz'],
    ['1 1/2 oz', '1 1/2', 'oz'],
  ])('%s', (text, value, unit) => {
    const read = readAmountEntry(text, say);
    expect(read).toMatchObject({ ok: true, value: { value, unit } });
    if (!read.ok || read.value === undefined) return expect.unreachable();
    expect(readAmountEntry(amountEntryText(read.value), say)).toMatchObject({ ok: true, value: { value, unit } });
  });

  test('a decimal comma is read back beside the box', () => {
    expect(readAmountEntry('2,5 kg', say)).toEqual({ ok: true, value: { value: '2,5', unit: 'kg' }, reading: '= 2.5 kg' });
  });

  test('blank is not given; a bare number, a bare gallon and another dimension are refused with what was expected', () => {
    expect(readAmountEntry(' ', say)).toEqual({ ok: true, value: undefined });
    for (const text of ['400', '2 gal', '3 bar', 'some kg']) {
      const read = readAmountEntry(text, say);
      if (read.ok) return expect.unreachable();
      expect(read.expected).toMatch(new RegExp(`^"${text}" is no mass or volume. Expected .* as 400 g: kg, g, .* US gal, .* UK fl oz\\.$`));
    }
  });
});

describe('a quantity as it stands in its box [inverse of the reading]', () => {
  test('the unit of the box is left out, any other is written', () => {
    expect(quantityText('pressure', { value: '28', unit: 'bar' }, 'bar')).toBe('28');
    expect(quantityText('pressure', { value: '28', unit: 'bar' }, 'psi')).toBe('28 bar');
  });
  test('quantityText example: a share without a unit is brought to the per cent of its box', () => {
    expect(quantityText('share', { value: '0.88', unit: '' }, '%')).toBe('88');
    expect(quantityText('share', { value: '1/3', unit: '' }, '%')).toBe('100/3');
    expect(quantityText('share', { value: '0.88', unit: '' }, '')).toBe('0.88');
  });
  test('any share that a file holds is read back from its box as the same share', () => {
    const share = fc.record({
      value: fc.tuple(fc.nat(200), fc.integer({ min: 1, max: 99 })).map(([over, under]) => `${over}/${under}`),
      unit: fc.constantFrom('', '%'),
    });
    fc.assert(
      fc.property(share, fc.constantFrom('', '%'), (typed, box) => {
        const read = readQuantityEntry('share', quantityText('share', typed, box), box, say);
        if (!read.ok || read.value === undefined) return false;
        const [before, after] = [readQuantity('share', typed), readQuantity('share', read.value)];
        return before.ok && after.ok && before.value.equals(after.value);
      }),
    );
  });
});

test('a figure stands in its box with its error where it has one, and alone where it has none', () => {
  const value = { value: '98.5', unit: '%' };
  expect(withErrorText('share', { value, uncertainty: { value: '0.4', unit: '%' } }, '%')).toBe('98.5 ± 0.4');
  expect(withErrorText('share', { value }, '%')).toBe('98.5');
});
