import { describe, expect, it } from 'vitest';
import { Fraction } from '../../core/src/ratio.ts';
import { findOptions } from '../../core/src/search/index.ts';
import { anything } from '../core/search/racks.ts';
import { differences } from './compare.ts';
import { flagsOf } from './flags.ts';
import { instance, oneOfEach, problemOf } from './instances.ts';
import { type Claim, holds, type Row, timesFaster } from './report.ts';
import { withSearch, withWindow } from './results.ts';
import { figure, howMeasured, markdown } from './table.ts';
import { median } from './timing.ts';

const row: Row = { name: '9^2', raw: 81, median_ms: 4, max_ms: 5, loops: { ms: 10, how: 'rate' }, twin: null, memory_MB: 1, note: '' };
const claim: Claim = { what: 'faster', figure: 10, unit: 'x', note: '' };

describe('what the benchmark says [the definitions]', () => {
  it('a claim holds up to its bound, and never where nothing was measured', () => {
    expect([9, 10, 11].map((least) => holds({ ...claim, least }))).toEqual([true, true, false]);
    expect([9, 10, 11].map((most) => holds({ ...claim, most }))).toEqual([false, true, true]);
    expect(holds({ ...claim, figure: null, most: 10 })).toBe(false);
  });
  it('a claim between two bounds says both', () => {
    const between: Claim = { what: 'held', figure: 94.87, least: 94.5, most: 95.5, unit: '%', note: '' };
    expect([between, { ...between, figure: 94.4 }, { ...between, figure: 95.6 }].map(holds)).toEqual([true, false, false]);
    expect(markdown('', [], [between])).toMatch(/94\.9 % +\| 94\.5 to 95\.5 % +\| met/);
  });
  it('times faster is the baseline over the median, marked where the baseline did not run', () => {
    expect(timesFaster(row, row.loops)).toBe(2.5);
    expect(timesFaster({ ...row, median_ms: null }, row.loops)).toBe(null);
    expect(markdown('', [row], [])).toContain('| ~2.5');
    expect(markdown('', [{ ...row, loops: { ms: 10, how: 'ran' } }], [])).toContain('| 2.5');
    expect(howMeasured([row])[0]).toBe('Nested loops ran from beginning to end: none. Rate times combinations: 9^2.');
  });
  it('the median of an odd and an even list', () => expect([median([3, 1, 20]), median([4, 1, 2, 20])]).toEqual([3, 3]));
  it('figures are short and grouped', () =>
    expect([0.0123456, 12.345, 1234567.8, 6.7e12, null].map(figure)).toEqual(['0.0123', '12.3', '1 234 568', '6.7e12', '-']));
});

describe('lists of options', () => {
  const problem = problemOf(instance(5, 2), new Fraction('1.1'));
  const { options } = findOptions(problem, anything, 6);
  const apart = (found: typeof options) => differences('here', problem.wanted, found, options);

  it('that are the same differ nowhere', () => expect(apart([...options])).toEqual([]));
  it('that are in another order, shorter or longer are told apart [the definition]', () => {
    const [first, second, ...rest] = options;
    if (first === undefined || second === undefined) throw new Error('nothing was found');
    expect(apart([second, first, ...rest])[0]).toMatch(/^here, 11\/10, row 1: /);
    expect(apart(options.slice(0, 5))[0]).toMatch(/row 6: nothing instead of/);
    expect(apart([...options, first])[0]).toMatch(/row 7: .* instead of nothing/);
  });
});

it('one piece of each wheel lets no tooth count be used twice [counted wheel by wheel]', () => {
  const problem = problemOf(instance(4, 2), new Fraction(1));
  const { admit } = oneOfEach(problem);
  const [first, second] = problem.stages;
  for (const [i, a] of (first?.pairs ?? []).entries())
    for (const [j, b] of (second?.pairs ?? []).entries()) {
      const free = new Set([a.driver, a.driven, b.driver, b.driven]).size === 4;
      expect(admit({ pump: 0, pairs: [i, j] })).toBe(free ? 0 : null);
    }
});

it('each part of the results is renewed without touching the other', () => {
  const both = withWindow('search\n', 'window\n');
  expect(withSearch(both, 'again\n')).toBe(withWindow('again\n', 'window\n'));
  expect(withWindow(both, 'anew\n')).toBe(withWindow('search\n', 'anew\n'));
  expect(withSearch('', 'search\n')).toBe('search\n');
});

it('flags that are not known, or no number, are refused', () => {
  expect(flagsOf(['--quick', '--random', '12'])).toMatchObject({ quick: true, random: 12 });
  expect(() => flagsOf(['--random', 'many'])).toThrow(TypeError);
  expect(() => flagsOf(['--fast'])).toThrow(TypeError);
});
