import * as v from 'valibot';
import type { Finding, Place } from '../finding.ts';
import type { Fraction } from '../ratio.ts';
import type { Reading, TypedQuantity } from '../reading.ts';
import { type Dimension, readQuantity } from '../units.ts';
import { clip } from '../visible.ts';

/** Said one by one; a file with more was not written by hand, and nobody reads them. */
export const MOST_PROBLEMS = 1000;
const LONGEST_SENTENCE = 1000;
/** Of values: what holds more is not gone through to its end once a fault is found, since each fault takes a kilobyte while it is. */
const MOST_GONE_THROUGH = 100_000;

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
    return { ok: false, findings: [first, ...rest, ...(more > 0 ? [problem([], `${more} more faults are not listed`)] : [])] };
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
    source: 'form of the shop file',
    missing: false,
  };
}

/**
 * A part of the file as its schema reads it; null where anything is wrong with it, all of which is added to the problems.
 * Of a part so large that no shop wrote it only the first fault is said.
 */
export function checked<T>(schema: v.GenericSchema<unknown, T>, json: unknown, place: Place, problems: Problems): T | null {
  const quick = v.safeParse(schema, json, { abortEarly: true });
  if (quick.success) return quick.output;
  const large = valueCount(json, MOST_GONE_THROUGH) > MOST_GONE_THROUGH;
  const { issues } = large ? quick : v.safeParse(schema, json);
  for (const { path, message } of issues ?? []) {
    problems.add([...place, ...(path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)))], message);
  }
  if (large) problems.add(place, 'so much is written here that the other faults were not looked for');
  return null;
}

/** How many values JSON holds, however deep it is; counting ends beyond the most. */
export function valueCount(json: unknown, most: number): number {
  const open: unknown[] = [json];
  let values = 1;
  while (open.length > 0 && values <= most) {
    const one = open.pop();
    if (typeof one !== 'object' || one === null) continue;
    const inside: readonly unknown[] = Object.values(one);
    values += inside.length;
    if (values <= most) for (const value of inside) open.push(value);
  }
  return values;
}

/** A value the schema has already read once. */
export function reading<T>(read: Reading<T>): T {
  if (!read.ok) throw new RangeError(`a checked file held: ${read.expected}`);
  return read.value;
}

/** A quantity of a checked file, exact and in SI. */
export const si = (dimension: Dimension, typed: TypedQuantity): Fraction => reading(readQuantity(dimension, typed));
