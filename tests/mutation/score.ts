import type { Operator } from './mutants.ts';

export type Fate = 'killed' | 'timed out' | 'survived' | 'not covered';

export interface Result {
  readonly operator: Operator;
  readonly place: string;
  readonly line: number;
  readonly before: string;
  readonly after: string;
  readonly fate: Fate;
  /** The test that fails with it; null where none does. */
  readonly killedBy: string | null;
  /** Tests that enter its function and were not run, as the budget was used up. */
  readonly testsLeft: number;
}

export interface Score {
  readonly of: number;
  readonly caught: number;
  readonly share: number;
  readonly from: number;
  readonly to: number;
}

/** Two-sided 95 %. */
const Z = 1.959964;

/** Caught are killed and timed out ones; the interval is Wilson's [Journal of the American Statistical Association 22 (1927), from memory]. */
export function scoreOf(results: readonly Pick<Result, 'fate'>[]): Score {
  const of = results.length;
  const caught = results.filter(({ fate }) => fate === 'killed' || fate === 'timed out').length;
  if (of === 0) return { of, caught, share: 0, from: 0, to: 1 };
  const share = caught / of;
  const middle = share + Z ** 2 / (2 * of);
  const half = Z * Math.sqrt((share * (1 - share)) / of + Z ** 2 / (4 * of ** 2));
  const under = 1 + Z ** 2 / of;
  return { of, caught, share, from: Math.max(0, (middle - half) / under), to: Math.min(1, (middle + half) / under) };
}

const percent = (share: number): string => (100 * share).toFixed(1);

const scoreLine = (what: string, results: readonly Result[]): string => {
  const { of, caught, share, from, to } = scoreOf(results);
  return `${what.padEnd(16)}${caught} of ${of} = ${percent(share)} % (95 %: ${percent(from)} to ${percent(to)} %)`;
};

const short = (text: string): string => {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > 100 ? `${line.slice(0, 60)} ... ${line.slice(-35)}` : line;
};

function groupsOf(results: readonly Result[], nameOf: (result: Result) => string): readonly (readonly [string, readonly Result[]])[] {
  const names = [...new Set(results.map(nameOf))].sort();
  return names.map((name) => [name, results.filter((result) => nameOf(result) === name)]);
}

/** What got through, by place, then the figures. */
export function reportOf(results: readonly Result[]): string {
  const through = results
    .filter(({ killedBy, fate }) => killedBy === null && fate !== 'timed out')
    .toSorted((one, other) => (one.place === other.place ? one.line - other.line : one.place < other.place ? -1 : 1));
  const lines = through.map(({ operator, place, line, before, after, fate, testsLeft }) => {
    const left = testsLeft > 0 ? `, ${testsLeft} slow tests not run` : '';
    return `${place}:${line} (${operator}, ${fate}${left})\n  - ${short(before)}\n  + ${short(after) || '(nothing)'}`;
  });
  const counted = (fate: Fate) => `${results.filter((one) => one.fate === fate).length} ${fate}`;
  return [
    ...lines,
    '',
    [counted('killed'), counted('timed out'), counted('survived'), counted('not covered')].join(', '),
    scoreLine('all', results),
    scoreLine(
      'without strings',
      results.filter(({ operator }) => operator !== 'string'),
    ),
    '',
    ...groupsOf(results, ({ operator }) => operator).map(([name, some]) => scoreLine(name, some)),
    '',
    ...groupsOf(results, ({ place }) => place.replace(/^core\/src\//, '').replace(/\/?[^/]*$/, '') || 'core/src').map(([name, some]) =>
      scoreLine(name, some),
    ),
  ].join('\n');
}
