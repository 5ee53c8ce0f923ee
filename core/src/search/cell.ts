import { everyWay, firstWay, type MakeUp, optionsIn, waysOf } from './products.ts';
import { type Alike, ordersOf, type Sides } from './sides.ts';
import type { Space } from './space.ts';

/** One product from the table and one from the stream, as the join finds them; it stands for every order of them that makes the same y. */
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
  /** the same for every way in every order */
  readonly every: (table: number, stream: number, take: (groups: Int32Array) => void) => void;
  /** in how many ways it is made, every order counted; sooner told than its options */
  readonly ways: (table: number, stream: number) => number;
  /** how many options the cell stands for, before any rule across stages */
  readonly options: (table: number, stream: number) => number;
}

export function cellReader(space: Space, { table, outer, inner, alike }: Sides): CellReader {
  const groups = new Int32Array(space.factors.length);
  const { makeUp: stored, product } = table;
  const width = inner.log.length;
  const storedAt = (entry: number): number => (product ? (product[entry] ?? 0) : entry);
  const outerAt = (stream: number): number => Math.trunc(stream / width);
  const orders = ordersOf(alike);
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
      everyOrder(alike, entry, o, stream - o * width, (k, a, b) => {
        const ofInner = (): void => everyWay(inner.makeUp, b, groups, () => take(groups));
        // outer products are never gathered: they have one way
        firstWay(outer.makeUp, a, groups);
        everyWay(stored, storedAt(k), groups, ofInner);
      });
    },
    ways: (entry, stream) => waysOf(stored, storedAt(entry)) * waysOf(inner.makeUp, stream % width) * orders,
    options: (entry, stream) => {
      const o = outerAt(stream);
      let sum = 0;
      everyOrder(alike, entry, o, stream - o * width, (k, a, b) => {
        sum += options(stored, storedAt(k)) * options(outer.makeUp, a) * options(inner.makeUp, b);
      });
      return sum;
    },
  };
}

type Place = (table: number, outer: number, inner: number) => void;

/** Every order of a cell's products that makes the same y; where two of them are equal, no order comes twice. */
function everyOrder({ outerInner, tableInner }: Alike, k: number, o: number, i: number, place: Place): void {
  place(k, o, i);
  if (outerInner && o !== i) place(k, i, o);
  if (!tableInner) return;
  if (k !== i) place(i, o, k);
  if (!outerInner) return;
  if (k !== i) place(i, k, o);
  if (o !== i) place(o, i, k);
  if (o !== i && k !== i) place(o, k, i);
}
