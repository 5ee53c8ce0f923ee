import { describe, expect, test } from 'vitest';
import { withErrorText } from '../../core/src/entry.ts';
import { readShotEntry, readWithErrorEntry, shotText } from '../../core/src/twoFigures.ts';

const say = { decimal: '.', system: 'metric' } as const;
const of = (value: string, unit: string) => ({ value, unit });

describe('a shot in one box [our choice]', () => {
  test.each([
    ['400 g in 6 s', of('400', 'g'), of('6', 's')],
    ['2.5 L IN 1 min', of('2.5', 'L'), of('1', 'min')],
    ['5 cu in in 4 s', of('5', 'in3'), of('4', 's')],
    ['400 g in 6', of('400', 'g'), of('6', 's')],
  ])('%s', (text, amount, time) => {
    const read = readShotEntry(text, say);
    expect(read).toMatchObject({ ok: true, value: { amount, time } });
    if (!read.ok || read.value === undefined) return expect.unreachable();
    expect(readShotEntry(shotText(read.value), say)).toMatchObject({ ok: true, value: { amount, time } });
  });

  test('readShotEntry example; blank is not given', () => {
    expect(readShotEntry('400 g in 6 s', say)).toEqual({ ok: true, value: { amount: of('400', 'g'), time: of('6', 's') } });
    expect(readShotEntry('', say)).toEqual({ ok: true, value: undefined });
  });

  test('a comma, and seconds that were not typed, are read back beside the box', () => {
    expect(readShotEntry('2,5 kg in 6 s', say)).toMatchObject({ reading: '= 2.5 kg in 6 s' });
    expect(readShotEntry('400 g in 6', say)).toMatchObject({ reading: '= 400 g in 6 s' });
  });

  test.each(['400 g', '400 in 6 s', '400 g in', '400 g in 6 bar', 'in 6 s', '5 cu in'])('%s is refused', (text) => {
    expect(readShotEntry(text, say).ok).toBe(false);
  });

  test('what is wrong is said of the figure that it is wrong with', () => {
    const said = (text: string) => {
      const read = readShotEntry(text, say);
      return read.ok ? '' : read.expected;
    };
    expect(said('400 in 6 s')).toMatch(/^"400" is no mass or volume\./);
    expect(said('400 g in many s')).toMatch(/^"many s" is not a number with a unit/);
    expect(said('400 g')).toBe('"400 g" is no shot. Expected an amount and its time, as 400 g in 6 s.');
  });
});

describe('a figure with its error in one box [our choice]', () => {
  const read = (text: string) => readWithErrorEntry('share', text, '%', say);

  test.each(['98.5 ± 0.4', '98.5 +- 0.4', '98.5+/-0.4 %', '98.5 % ± 0.4 %', '98.5 + \u2212 0.4'])('%s', (text) => {
    expect(read(text)).toEqual({ ok: true, value: { value: of('98.5', '%'), uncertainty: of('0.4', '%') } });
  });

  test('the error may be absent; blank is not given', () => {
    expect(read('98.5')).toEqual({ ok: true, value: { value: of('98.5', '%') } });
    expect(read(' ')).toEqual({ ok: true, value: undefined });
  });

  test('commas are read back beside the box', () => {
    expect(read('98,5 +- 0,4')).toMatchObject({ reading: '= 98.5 % ± 0.4 %' });
    expect(read('98,5')).toMatchObject({ reading: '= 98.5 %' });
  });

  test.each(['98.5 ±', '± 0.4', '98.5 ± 0.4 ± 1', '98.5 ± much', 'all ± 0.4'])('%s is refused', (text) => {
    expect(read(text).ok).toBe(false);
  });

  test('withErrorText example: the unit of the box is left out, a bare share is brought to it', () => {
    expect(withErrorText('share', { value: of('98.5', '%'), uncertainty: of('0.4', '%') }, '%')).toBe('98.5 ± 0.4');
    expect(withErrorText('share', { value: of('0.985', ''), uncertainty: of('0.004', '') }, '%')).toBe('98.5 ± 0.4');
    expect(withErrorText('share', { value: of('98.5', '%') }, '%')).toBe('98.5');
  });
});
