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

  get none(): boolean {
    return this.#found.length === 0;
  }

  get list(): readonly Finding[] {
    return this.#found;
  }

  /** All of it as a failed outcome. */
  failure(): { readonly ok: false; readonly findings: readonly [Finding, ...Finding[]] } {
    const [first, ...rest] = this.#found;
    if (first === undefined) throw new RangeError('Problems.failure: nothing is wrong');
    return { ok: false, findings: [first, ...rest] };
  }
}

/** A value the schema has already read once. */
export function reading<T>(read: Reading<T>): T {
  if (!read.ok) throw new RangeError(`a checked file held: ${read.expected}`);
  return read.value;
}

/** A quantity of a checked file, exact and in SI. */
export const si = (dimension: Dimension, typed: TypedQuantity): Fraction => reading(readQuantity(dimension, typed));
