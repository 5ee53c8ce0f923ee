import { parseSync } from 'vite';
import { describe, expect, it, test } from 'vitest';
import { filesUnder, textOf } from '../walls/sources.ts';
import { flagsOf } from './flags.ts';
import { regionAt, regionsOf, withMutants, withRegions } from './instrument.ts';
import { likelyFirst } from './likely.ts';
import { mutantsOf } from './mutants.ts';
import { callsFor, type Reach, withinBudget } from './reach.ts';
import { regexMutants } from './regexMutants.ts';
import { sampled } from './sample.ts';
import { type Fate, scoreOf } from './score.ts';

/** What stands in place of each mutated piece, in the order of the text. */
const afters = (source: string) => mutantsOf(source).map(({ start, end, after }) => `${source.slice(start, end)} => ${after}`);

describe('the mutants of a text [read off by eye]', () => {
  test.each<[string, readonly string[]]>([
    ['f = a + 1;', ['a + 1 => (a) - (1)']],
    ["f = a + 'x';", ["'x' => ''"]],
    ['f = a < b;', ['a < b => (a) <= (b)', 'a < b => (a) >= (b)', 'a < b => true', 'a < b => false']],
    ['f = a ?? b;', ['a ?? b => (a) && (b)']],
    [
      'f = p && q === r;',
      ['p && q === r => (p) || (q === r)', 'p && q === r => true', 'p && q === r => false', 'q === r => (q) !== (r)', 'q === r => true'],
    ],
    ['f = c ? x : y;', ['c => true', 'c => false']],
    ['f = !c;', ['!c => c']],
    ['f = list.some(g);', ['list.some(g) => list.every(g)']],
    ['f = a.trim();', ['a.trim() => a']],
    ['f = a?.b?.(c);', ['a?.b?.(c) => a.b?.(c)', 'a?.b?.(c) => a?.b(c)']],
    ['f = [1];', ['[1] => []']],
    ['f = () => g(1);', ['g(1) => undefined']],
    ['function f() { g(); }', [' g();  => ']],
    ['switch (a) { case 1: g(); break; }', ['g(); break; => ']],
    ['for (let i = 0; more; i++) g();', ['more => false', 'i++ => i--']],
    ['f = `a`;', ['`a` => ``']],
    ['f = en`a` + plural(n)`b|c`;', ['en`a` => ``', 'plural(n)`b|c` => ``']],
    ['f = -a;', ['-a => +a']],
    ['a += 2;', ['a += 2 => a -= (2)']],
    ["import { a } from 'b'; type T = 'c' | -1; const t = { 'd': a } as const satisfies Record<'d', unknown>;", ["{ 'd': a } => ({})"]],
    ['f = a.valueOf();', []],
  ])('%s', (source, wanted) => expect(afters(source)).toEqual(wanted));

  test.each<[string, readonly string[]]>([
    ['^\\d+$', ['\\d+$', '^\\D+$', '^\\d$', '^\\d+']],
    ['[^a]{1,6}', ['[a]{1,6}', '[^a]']],
    ['(?<!e)-?', ['(?<=e)-?', '(?<!e)-']],
    ['(?:a|b)*', ['(?:a|b)']],
    ['\\.[.+]', ['\\.[^.+]']],
  ])('of the pattern %s', (pattern, wanted) => expect(regexMutants(pattern)).toEqual(wanted));
});

describe('a text with its mutants built in', () => {
  it('reads as it did with all of them off, and as each with that one on', () => {
    const source = '(a, b) => { if (a > 2) return -a; return a + b > 3 ? [a, b] : []; }';
    const mutants = mutantsOf(source);
    const text = withMutants(
      source,
      mutants.map((mutant, id) => ({ ...mutant, id })),
    );
    const made = (body: string, active: number) => new Function('$mutants', `return ${body}`)({ on: (id: number) => id === active });
    const answers = (body: string, active = -1) => [made(body, active)(2, 3), made(body, active)(5, 1), made(body, active)(1, 1)];
    expect(answers(text)).toEqual([[2, 3], -5, []]);
    for (const [id, { start, end, after, form }] of mutants.entries()) {
      const other = form === 'expression' ? `(${after})` : after;
      expect(answers(text, id), after).toEqual(answers(source.slice(0, start) + other + source.slice(end)));
    }
  });

  it('and files of core can be read so', () => {
    for (const place of filesUnder('core/src/checks')) {
      const source = textOf(place);
      const mutants = mutantsOf(source).map((mutant, id) => ({ ...mutant, id }));
      expect(parseSync(place, withMutants(source, mutants)).errors, place).toEqual([]);
      expect(parseSync(place, withRegions(source, regionsOf(source), 1)).errors, place).toEqual([]);
    }
  });
});

describe('which tests a mutant concerns', () => {
  it('a piece stands in the innermost function around it, or in the module', () => {
    const source = 'const a = 1; function f() { return list.map((x) => x + 1); }';
    const regions = regionsOf(source);
    const regionOf = (piece: string) => {
      const at = regionAt(regions, { start: source.indexOf(piece), end: source.indexOf(piece) + piece.length });
      return at < 0 ? null : source.slice(regions[at]?.start, regions[at]?.end).trim();
    };
    expect(regionOf('1;')).toBe(null);
    expect(regionOf('x + 1')).toBe('x + 1');
    expect(regionOf('list.map')).toBe('return list.map((x) => x + 1);');
  });

  const reach: Reach = new Map([
    [
      'quick.test.ts',
      {
        kind: 'learnt',
        load_ms: 10,
        atLoad: { 'a.ts': [-1] },
        modules: [],
        tests: [
          { title: 'one', cpu_ms: 1, seen: { 'a.ts': [2] } },
          { title: 'two', cpu_ms: 2, seen: { 'b.ts': [2] } },
          { title: 'slow', cpu_ms: 900, seen: { 'a.ts': [2] } },
        ],
        failed: [],
      },
    ],
  ]);
  it('those that enter its function, or all of a file that runs it while it is loaded; slow ones for themselves', () => {
    const indexes = (region: number) => callsFor(reach, 'a.ts', region).map(({ call }) => call.tests.map(({ index }) => index));
    expect(indexes(2)).toEqual([[0], [2]]);
    expect(indexes(-1)).toEqual([[0, 1], [2]]);
    expect(indexes(3)).toEqual([]);
  });
  it('the quickest first and no more than the budget, but never none', () => {
    const calls = callsFor(reach, 'a.ts', 2);
    expect(withinBudget(calls, 100, () => 1)).toEqual({ taken: [{ file: 'quick.test.ts', tests: [{ index: 0, cpu_ms: 1 }] }], left: 1 });
    expect(withinBudget(calls, 2000, () => 1).left).toBe(0);
    expect(withinBudget(calls.slice(1), 100, () => 1).left).toBe(0);
  });
});

describe('which test file is asked first', () => {
  it('the one with the name of the source, and after a while the one that noticed more of what it was asked', () => {
    const { chance, note } = likelyFirst();
    expect(chance('core/src/a.ts', 'tests/core/a.test.ts')).toBeGreaterThan(chance('core/src/a.ts', 'tests/core/b.test.ts'));
    note('core/src/c.ts', ['x.test.ts', 'y.test.ts', 'z.test.ts'], 'y.test.ts');
    expect(chance('core/src/d.ts', 'y.test.ts')).toBeGreaterThan(chance('core/src/d.ts', 'z.test.ts'));
    // it was asked in vain, z was not asked at all
    expect(chance('core/src/d.ts', 'x.test.ts')).toBeLessThan(chance('core/src/d.ts', 'z.test.ts'));
    expect(chance('core/src/c.ts', 'y.test.ts')).toBeGreaterThan(chance('core/src/d.ts', 'y.test.ts'));
  });
});

describe('sample and score', () => {
  it('the same seed draws the same, no piece twice, and all of them where as many are asked for', () => {
    const list = Array.from({ length: 50 }, (_, index) => index);
    expect(sampled(list, 7, 3)).toEqual(sampled(list, 7, 3));
    expect(sampled(list, 7, 3)).not.toEqual(sampled(list, 7, 4));
    expect(sampled(list, 99, 3).toSorted((a, b) => a - b)).toEqual(list);
  });
  it('every piece is drawn equally often: 2000 draws of 5 from 50, each within 5 sigma of 200 [binomial]', () => {
    const list = Array.from({ length: 50 }, (_, index) => index);
    const times = list.map(() => 0);
    for (let seed = 0; seed < 2000; seed++) for (const one of sampled(list, 5, seed)) times[one] = (times[one] ?? 0) + 1;
    const sigma = Math.sqrt(2000 * 0.1 * 0.9);
    for (const count of times) expect(Math.abs(count - 200)).toBeLessThan(5 * sigma);
  });
  it('81 of 263: 0.3080, from 0.255 to 0.366 [Wilson’s interval, Newcombe, Statistics in Medicine 17 (1998), table I; from memory]', () => {
    const fates = (count: number, fate: Fate) => Array.from({ length: count }, () => ({ fate }));
    const { share, from, to } = scoreOf([
      ...fates(80, 'killed'),
      ...fates(1, 'timed out'),
      ...fates(100, 'survived'),
      ...fates(82, 'not covered'),
    ]);
    expect(share).toBeCloseTo(0.308, 4);
    expect(from).toBeCloseTo(0.2553, 4);
    expect(to).toBeCloseTo(0.3662, 4);
  });
  it('a flag that is not known, or no whole number, is refused', () => {
    expect(() => flagsOf(['--cout', '3'])).toThrow(TypeError);
    expect(() => flagsOf(['--count', '0'])).toThrow('--count 0: a whole number, 1 or more');
    expect(flagsOf(['--only', 'core/src/checks/', '--seed', '9'])).toMatchObject({ only: 'core/src/checks', seed: 9, count: 200 });
  });
});
