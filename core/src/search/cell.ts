import { everyWay, firstWay } from './products.ts';
import type { Sides } from './sides.ts';
import type { Space } from './space.ts';

/** One product from the table and one from the stream, as the join finds them. */
export interface Cell {
  readonly table: number;
  readonly stream: number;
  /** ln y as computed */
  readonly log: number;
}

/** Reads the cells of one join. */
export interface CellReader {
  /** numerator and denominator of the product, not reduced, modulo 2^32 */
  readonly top: (table: number, stream: number) => number;
  readonly bottom: (table: number, stream: number) => number;
  /** how many options the cell stands for, before any rule across stages */
  readonly options: (table: number, stream: number) => number;
  /** the ratio chosen from each factor, by index, for one way to make the cell; good until the next call */
  readonly groups: (table: number, stream: number) => Int32Array;
  /** the same for every way */
  readonly every: (table: number, stream: number, take: (groups: Int32Array) => void) => void;
}

export function cellReader({ factors }: Space, { table, outer, inner }: Sides): CellReader {
  const groups = new Int32Array(factors.length);
  const { products: stored, product } = table;
  const width = inner.log.length;
  const storedAt = (entry: number): number => (product ? (product[entry] ?? 0) : entry);
  const outerAt = (stream: number): number => Math.trunc(stream / width);
  const residue = (t: number, o: number, i: number): number => Math.imul(Math.imul(t, o), i);
  return {
    top: (entry, stream) =>
      residue(stored.top[storedAt(entry)] ?? 0, outer.top[outerAt(stream)] ?? 0, inner.top[stream - outerAt(stream) * width] ?? 0),
    bottom: (entry, stream) =>
      residue(stored.bottom[storedAt(entry)] ?? 0, outer.bottom[outerAt(stream)] ?? 0, inner.bottom[stream - outerAt(stream) * width] ?? 0),
    options: (entry, stream) => {
      const o = outerAt(stream);
      return (stored.options[storedAt(entry)] ?? 0) * (outer.options[o] ?? 0) * (inner.options[stream - o * width] ?? 0);
    },
    groups: (entry, stream) => {
      const o = outerAt(stream);
      firstWay(stored.makeUp, storedAt(entry), groups);
      firstWay(outer.makeUp, o, groups);
      firstWay(inner.makeUp, stream - o * width, groups);
      return groups;
    },
    every: (entry, stream, take) => {
      const o = outerAt(stream);
      const i = stream - o * width;
      // outer products are never gathered: they have one way
      firstWay(outer.makeUp, o, groups);
      const ofInner = (): void => everyWay(inner.makeUp, i, groups, () => take(groups));
      everyWay(stored.makeUp, storedAt(entry), groups, ofInner);
    },
  };
}
