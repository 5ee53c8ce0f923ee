import * as v from 'valibot';
import type { Finding, Place } from '../finding.ts';
import type { Fraction } from '../ratio.ts';
import type { Reading, TypedQuantity } from '../reading.ts';
import { type Dimension, readQuantity } from '../units.ts';

/** What is wrong with a file or a plan, gathered so that all of it is said at once. */
export class Problems {
  readonly #found: Finding[] = [];

  add(where: Place, what: string): void {
    const sentence = `${what.charAt(0).toUpperCase()}${what.slice(1)}${what.endsWith('.') ? '' : '.'}`;
    this.#found.push({
      check: 'file.content',
      severity: 'blocks',
      where,
      what: sentence,
      figure: null,
      limit: null,
      source: 'form of the shop file',
      missing: false,
    });
  }

  get count(): number {
    return this.#found.length;
  }

  get none(): boolean {
    return this.count === 0;
  }

  /** All of it as a failed outcome. */
  failure(): { readonly ok: false; readonly findings: readonly [Finding, ...Finding[]] } {
    const [first, ...rest] = this.#found;
    if (first === undefined) throw new RangeError('Problems.failure: nothing is wrong');
    return { ok: false, findings: [first, ...rest] };
  }
}

/** A part of the file as its schema reads it; null where anything is wrong with it, all of which is added to the problems. */
export function checked<T>(schema: v.GenericSchema<unknown, T>, json: unknown, place: Place, problems: Problems): T | null {
  const result = v.safeParse(schema, json);
  if (result.success) return result.output;
  for (const { path, message } of result.issues) {
    problems.add([...place, ...(path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)))], message);
  }
  return null;
}

/** A value the schema has already read once. */
export function reading<T>(read: Reading<T>): T {
  if (!read.ok) throw new RangeError(`a checked file held: ${read.expected}`);
  return read.value;
}

/** A quantity of a checked file, exact and in SI. */
export const si = (dimension: Dimension, typed: TypedQuantity): Fraction => reading(readQuantity(dimension, typed));
