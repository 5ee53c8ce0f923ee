import * as v from 'valibot';
import { en } from '../en.ts';
import { DIMENSIONS } from '../units.ts';
import type { SchemaLeaf } from './schemaLeaves.ts';

/** What a field takes, as its own schema answers when it is tried. */
export interface Accepts {
  readonly what: 'quantity' | 'whole number' | 'number' | 'ratio' | 'yes or no' | 'text' | 'choice';
  /** By the names under which the program writes them; `''` where the plain number will do. */
  readonly units: readonly string[];
  /** As `above 0 mm` and `at most 20 m`. */
  readonly limits: readonly string[];
}

const TOO_LITTLE = '-1000000000000000';
const TOO_MUCH = '1000000000000000';
const NO_BREAK_SPACE = '\u00A0';
/** None of the file's own words. */
const WORDS = 'x y';

const UNITS: readonly string[] = [...new Set(Object.values(DIMENSIONS).flatMap((units) => units.map(({ name }) => name)))];

/**
 * What a field of the shop file takes. The schema itself is asked, by values that it must refuse: so no limit is said twice.
 *
 * @source our choice
 * @example accepts(leafOf('machines.*.stages.*.takeUp'))  // a quantity in pitches, at least 0 pitches, at most 100 pitches
 */
export function accepts({ schema }: Pick<SchemaLeaf, 'schema'>): Accepts {
  const trouble = (value: unknown) => v.safeParse(schema, value).issues?.[0] ?? null;
  /** The limit that a value misses; a check of the file's own says one only of what is out of range. */
  const missed = (value: unknown): string | null => {
    const issue = trouble(value);
    return issue?.type === 'raw_check' ? issue.expected : null;
  };
  const takes = (value: unknown): boolean => trouble(value) === null || missed(value) !== null;
  const bounds = (...values: readonly unknown[]): readonly string[] => [
    ...new Set(values.flatMap((value) => missed(value)?.replace(/(?<=\d) (?=\S+$)/, NO_BREAK_SPACE) ?? [])),
  ];
  const units = UNITS.filter((unit) => takes({ value: '1', unit }));
  const [unit] = units;
  if (unit !== undefined) {
    const limits = bounds({ value: TOO_LITTLE, unit }, { value: TOO_MUCH, unit });
    return { what: 'quantity', units, limits };
  }
  if (takes(1)) return { what: 'whole number', units: [], limits: bounds(-1, Number(TOO_MUCH)) };
  if (takes(true)) return { what: 'yes or no', units: [], limits: [] };
  if (takes(WORDS)) {
    const issue = trouble(WORDS.repeat(10_000));
    return { what: 'text', units: [], limits: issue?.type === 'max_length' ? [en`at most ${issue.requirement} characters`] : [] };
  }
  if (takes('x')) return { what: 'choice', units: [], limits: [] };
  if (takes('1')) return { what: 'number', units: [], limits: bounds(TOO_LITTLE, TOO_MUCH) };
  return { what: takes('1:1') ? 'ratio' : 'choice', units: [], limits: [] };
}
