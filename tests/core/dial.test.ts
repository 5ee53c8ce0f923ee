import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DialRange, dialSetting, dialText } from '../../core/src/dial.ts';
import { exactText, Fraction, ratioOf, ZERO } from '../../core/src/ratio.ts';
import { input } from '../../core/src/working.ts';
import { say } from './planFixture.ts';

const exact = (text: string) => new Fraction(text);
const range = (from: string, to: string): DialRange => ({
  from: { share: exact(from), whose: 'pump A', where: [] },
  to: { share: exact(to), whose: 'the motor', where: [] },
});
const set = (wanted: string, between: DialRange, step: string | null) =>
  dialSetting(input('wanted', exact(wanted), 'share'), between, step === null ? null : exact(step));
const at = (...asked: Parameters<typeof set>): string => exactText(set(...asked).value);

describe('setting of the dial', () => {
  test('63.417 % in steps of 0.5 % is 63.5 %, between 20 and 100 % [arithmetic]', () => {
    expect(at('0.63417', range('0.2', '1'), '0.005')).toBe('127/200');
  });
  test('a half goes away from zero, a hair less does not [our choice]', () => {
    expect(at('0.6325', range('0.2', '1'), '0.005')).toBe('127/200');
    expect(at('0.63249999999999999999', range('0.2', '1'), '0.005')).toBe('63/100');
  });
  test('never out of the range: the nearest step of 7 % to 99 % lies inside at 98 %, of 21 % inside at 21 %', () => {
    expect(at('0.99', range('0.2', '1'), '0.07')).toBe('49/50');
    expect(at('0.22', range('0.215', '1'), '0.07')).toBe('7/25');
    expect(at('0.99', range('0.2', '0.99'), '0.04')).toBe('24/25');
  });
  test('below and above the range: the first and the last step inside, and who asks for it is said', () => {
    const between = range('0.213', '0.987');
    expect([at('0.1', between, '0.01'), at('1.5', between, '0.01')]).toEqual(['11/50', '49/50']);
    expect([at('0.1', between, null), at('1.5', between, null)]).toEqual(['213/1000', '987/1000']);
    expect(set('0.1', between, '0.01').what).toContain('pump A');
    expect(set('1.5', between, '0.01').what).toContain('the motor');
  });
  test('a range that holds no step: its nearer end', () => {
    const narrow = range('0.21', '0.24');
    expect([at('0.1', narrow, '0.25'), at('0.9', narrow, '0.25'), at('0.22', narrow, '0.25')]).toEqual(['21/100', '6/25', '6/25']);
  });
  test('where the range begins at nothing, the first step and not nothing', () => {
    expect(at('0.001', range('0', '1'), '0.01')).toBe('1/100');
    expect(at('0.001', range('0', '0.004'), '0.01')).toBe('1/250');
  });
  test('no step: as wanted', () => {
    expect(at('0.63417', range('0.2', '1'), null)).toBe('63417/100000');
  });
  test('inside the range, above nothing, and on a step wherever the range holds one [law]', () => {
    const thousandth = (least: number) => fc.integer({ min: least, max: 1000 }).map((count) => ratioOf(count, 1000));
    fc.assert(
      fc.property(thousandth(1), thousandth(0), thousandth(1), fc.integer({ min: 1, max: 300 }), (wanted, one, other, steps) => {
        const [from, to] = one.compare(other) <= 0 ? [one, other] : [other, one];
        const step = ratioOf(steps, 1000);
        const end = (share: Fraction) => ({ share, whose: '', where: [] });
        const { value } = dialSetting(input('wanted', wanted, 'share'), { from: end(from), to: end(to) }, step);
        expect([value.compare(from) >= 0, value.compare(to) <= 0, value.compare(ZERO) > 0]).toEqual([true, true, to.compare(ZERO) > 0]);
        const last = to.div(step).floor().mul(step);
        if (last.compare(from) >= 0 && last.compare(ZERO) > 0) expect(value.div(step).d).toBe(1n);
      }),
    );
  });
});

test('written as it is set: 63.5, 63.25 and 62.375 %, and 66.7 % where no step is [our choice]', () => {
  const text = (share: string) => dialText(exact(share), say).replace('\u00a0', ' ');
  expect(['0.635', '0.6325', '0.62375', '2/3', '1'].map(text)).toEqual(['63.5 %', '63.25 %', '62.375 %', '66.7 %', '100.0 %']);
});
