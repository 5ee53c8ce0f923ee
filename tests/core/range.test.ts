import { describe, expect, test } from 'vitest';
import {
  type CountRange,
  countRangeText,
  type RangeEntry,
  rangeText,
  readCountRange,
  readOpenRangeEntry,
  readWindowEntry,
} from '../../core/src/range.ts';

const say = { decimal: '.', system: 'metric' } as const;
const centre: RangeEntry = { dimension: 'length', unit: 'mm', example: '250 to 263' };
const speed: RangeEntry = { dimension: 'speed', unit: 'rpm', example: '10 to 100' };
const mm = (value: string) => ({ value, unit: 'mm' });

describe('a range in one box [our choice]', () => {
  test.each([
    ['250-263', mm('250'), mm('263')],
    ['250 to 263 mm', mm('250'), mm('263')],
    ['250,5 – 263', mm('250,5'), mm('263')],
    ['250..263', mm('250'), mm('263')],
    ['256.5', mm('256.5'), mm('256.5')],
    ['9 3/4 - 10 1/4 in', { value: '9 3/4', unit: 'in' }, { value: '10 1/4', unit: 'in' }],
    ['25 cm - 263 mm', { value: '25', unit: 'cm' }, mm('263')],
    ['7e-4 m - 1 m', { value: '7e-4', unit: 'm' }, { value: '1', unit: 'm' }],
  ])('%s', (text, from, to) => {
    const read = readWindowEntry(centre, text, say);
    expect(read).toMatchObject({ ok: true, value: { from, to } });
    if (!read.ok || read.value === undefined) return expect.unreachable();
    expect(readWindowEntry(centre, rangeText('length', read.value, 'mm'), say)).toMatchObject({ ok: true, value: { from, to } });
  });

  test('an open end is absent, where ends may be open', () => {
    expect(readOpenRangeEntry(speed, '10 to', say)).toEqual({ ok: true, value: { from: { value: '10', unit: 'rpm' } } });
    expect(readOpenRangeEntry(speed, '- 100', say)).toEqual({ ok: true, value: { to: { value: '100', unit: 'rpm' } } });
    expect(readOpenRangeEntry(speed, '10', say)).toMatchObject({ ok: false });
    expect(readWindowEntry(centre, '250 -', say)).toMatchObject({ ok: false });
    expect(rangeText('speed', { from: { value: '10', unit: 'rpm' } }, 'rpm')).toBe('10 to');
    expect(rangeText('speed', { to: { value: '100', unit: 'rpm' } }, 'rpm')).toBe('to 100');
  });

  test('a decimal comma is read back beside the box, once for both ends', () => {
    expect(readWindowEntry(centre, '250,5-263', say)).toMatchObject({ reading: '= 250.5 mm to 263' });
  });

  test.each(['263-250', '9-1/2 in', 'wide', '1-2-3', '-', '10 in - 250 mm'])('%s is refused', (text) => {
    expect(readWindowEntry(centre, text, say).ok).toBe(false);
  });

  test('units that differ are both written', () => {
    expect(rangeText('length', { from: { value: '9', unit: 'in' }, to: mm('263') }, 'mm')).toBe('9 in to 263 mm');
    expect(rangeText('length', { from: mm('250'), to: { value: '11', unit: 'in' } }, 'mm')).toBe('250 mm to 11 in');
    expect(rangeText('length', { from: mm('250'), to: mm('263') }, 'in')).toBe('250 to 263 mm');
  });
});

describe('a bare share in a box of per cent [per cent: a hundredth]', () => {
  const usable: RangeEntry = { dimension: 'share', unit: '%', example: '20 to 100' };
  const bare = (value: string) => ({ value, unit: '' });
  const percent = (value: string) => ({ value, unit: '%' });

  test.each([
    ['both bare', bare('0.2'), bare('1'), '20 to 100 %', '20', '100'],
    ['one of them', bare('0.2'), percent('100'), '20 to 100 %', '20', '100'],
    ['one figure', bare('0,5'), bare('0,5'), '50 %', '50', '50'],
    ['thirds', bare('1/3'), bare('2/3'), '100/3 to 200/3 %', '100/3', '200/3'],
    ['as it is meant', percent('20'), percent('100'), '20 to 100', '20', '100'],
  ])('%s', (_, from, to, text, low, high) => {
    expect(rangeText('share', { from, to }, '%')).toBe(text);
    expect(readWindowEntry(usable, text, say)).toMatchObject({ ok: true, value: { from: percent(low), to: percent(high) } });
  });

  test('an open end', () => {
    expect(rangeText('share', { from: bare('0.2') }, '%')).toBe('20 % to');
    expect(rangeText('share', { to: bare('0.9') }, '%')).toBe('to 90 %');
  });

  test('a box without a unit keeps it bare', () => {
    expect(rangeText('share', { from: bare('0.2'), to: bare('1') }, '')).toBe('0.2 to 1');
  });
});

describe('a range of teeth [our choice]', () => {
  test.each<[string, CountRange]>([
    ['13-40', { from: 13, to: 40 }],
    ['13 to', { from: 13 }],
    ['– 40', { to: 40 }],
  ])('%s', (text, value) => {
    expect(readCountRange(text, 5, 400)).toEqual({ ok: true, value });
    expect(readCountRange(countRangeText(value), 5, 400)).toEqual({ ok: true, value });
  });

  test.each(['13', '40-13', '4-40', '13-401', 'a-b', '13-20-40', '-', ' to '])('%s is refused', (text) => {
    expect(readCountRange(text, 5, 400).ok).toBe(false);
  });
  test('blank is not given, in every box that takes a range', () => {
    for (const blank of ['', ' ']) {
      expect(readCountRange(blank, 5, 400)).toEqual({ ok: true, value: undefined });
      expect(readWindowEntry(centre, blank, say)).toEqual({ ok: true, value: undefined });
      expect(readOpenRangeEntry(speed, blank, say)).toEqual({ ok: true, value: undefined });
    }
  });
});
