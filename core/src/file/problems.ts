import * as v from 'valibot';
import { en } from '../en.ts';
import type { Finding, Place } from '../finding.ts';
import type { Fraction } from '../ratio.ts';
import type { Reading, TypedQuantity } from '../reading.ts';
import { type Dimension, readQuantity } from '../units.ts';
import { clip } from '../visible.ts';

/** Said one by one; a file with more was not written by hand, and nobody reads them. */
export const MOST_PROBLEMS = 1000;
const LONGEST_SENTENCE = 1000;

/** What is wrong with a file or a plan, gathered so that all of it is said at once. */
export class Problems {
  readonly #found: Finding[] = [];
  #count = 0;

  add(where: Place, what: string): void {
    this.#count += 1;
    if (this.#count <= MOST_PROBLEMS) this.#found.push(problem(where, what));
  }

  get count(): number {
    return this.#count;
  }

  get none(): boolean {
    return this.count === 0;
  }

  /** All of it as a failed outcome. */
  failure(): { readonly ok: false; readonly findings: readonly [Finding, ...Finding[]] } {
    const [first, ...rest] = this.#found;
    if (first === undefined) throw new RangeError('Problems.failure: nothing is wrong');
    const more = this.#count - this.#found.length;
    return { ok: false, findings: [first, ...rest, ...(more > 0 ? [problem([], en`${more} more faults are not listed`)] : [])] };
  }
}

function problem(where: Place, what: string): Finding {
  const sentence = clip(`${what.charAt(0).toUpperCase()}${what.slice(1)}`, LONGEST_SENTENCE);
  return {
    check: 'file.content',
    severity: 'blocks',
    where,
    what: `${sentence}${sentence.endsWith('.') ? '' : '.'}`,
    figure: null,
    limit: null,
    source: en`form of the shop file`,
    missing: false,
  };
}

/**
 * A part of the file as its schema reads it; null where anything is wrong with it, all of which is added to the problems.
 *
 * @param abortEarly  whether the first fault is enough
 */
export function checked<T>(
  schema: v.GenericSchema<unknown, T>,
  json: unknown,
  place: Place,
  problems: Problems,
  abortEarly = false,
): T | null {
  const result = v.safeParse(schema, json, { abortEarly });
  if (result.success) return result.output;
  for (const { path, message } of result.issues) {
    problems.add([...place, ...(path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)))], message);
  }
  if (abortEarly) problems.add(place, en`so much is written here that the other faults were not looked for`);
  return null;
}

/** A value the schema has already read once. */
export function reading<T>(read: Reading<T>): T {
  if (!read.ok) throw new RangeError(`a checked file held: ${read.expected}`);
  return read.value;
}

/** A quantity of a checked file, exact and in SI. */
export const si = (dimension: Dimension, typed: TypedQuantity): Fraction => reading(readQuantity(dimension, typed));
