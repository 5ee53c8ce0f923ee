import { everyWay, firstWay, type MakeUp, optionsIn } from './products.ts';
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
  /** the ratio chosen from each factor, by index, for one way to make the cell; good until the next call */
  readonly groups: (table: number, stream: number) => Int32Array;
  /** the same for every way */
  readonly every: (table: number, stream: number, take: (groups: Int32Array) => void) => void;
  /** how many options the cell stands for, before any rule across stages */
  readonly options: (table: number, stream: number) => number;
}

export function cellReader(space: Space, { table, outer, inner }: Sides): CellReader {
  const groups = new Int32Array(space.factors.length);
  const stored = table.products.makeUp;
  const { product } = table;
  const width = inner.log.length;
  const storedAt = (entry: number): number => (product ? (product[entry] ?? 0) : entry);
  const outerAt = (stream: number): number => Math.trunc(stream / width);
  const options = (makeUp: MakeUp, index: number): number => optionsIn(space, makeUp, index, groups);
  return {
    groups: (entry, stream) => {
      const o = outerAt(stream);
      firstWay(stored, storedAt(entry), groups);
      firstWay(outer.makeUp, o, groups);
      firstWay(inner.makeUp, stream - o * width, groups);
      return groups;
    },
    every: (entry, stream, take) => {
      const o = outerAt(stream);
      const ofInner = (): void => everyWay(inner.makeUp, stream - o * width, groups, () => take(groups));
      // outer products are never gathered: they have one way
      firstWay(outer.makeUp, o, groups);
      everyWay(stored, storedAt(entry), groups, ofInner);
    },
    options: (entry, stream) => {
      const o = outerAt(stream);
      return options(stored, storedAt(entry)) * options(outer.makeUp, o) * options(inner.makeUp, stream - o * width);
    },
  };
}
