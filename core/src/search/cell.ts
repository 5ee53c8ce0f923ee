import type { Sides } from './sides.ts';
import type { Space } from './space.ts';

/** One ratio from each factor, as the join finds it. */
export interface Cell {
  readonly table: number;
  readonly stream: number;
  /** ln y as computed */
  readonly log: number;
}

/** Reads the cells of one join. */
export interface CellReader {
  /** the ratio chosen from each factor, by index; good until the next call */
  readonly groups: (table: number, stream: number) => Int32Array;
  /** numerator and denominator of the product, not reduced, modulo 2^32 */
  readonly top: (table: number, stream: number) => number;
  readonly bottom: (table: number, stream: number) => number;
}

export function cellReader({ factors }: Space, { table, outer, inner, tableFactors, streamFactors }: Sides): CellReader {
  const sizes = Int32Array.from(factors, ({ log }) => log.length);
  const groups = new Int32Array(factors.length);
  const unpack = (product: number, side: readonly number[]): void => {
    let rest = product;
    for (let i = side.length - 1; i >= 0; i--) {
      const f = side[i] ?? 0;
      const size = sizes[f] ?? 1;
      const whole = Math.trunc(rest / size);
      groups[f] = rest - whole * size;
      rest = whole;
    }
  };
  const width = inner.log.length;
  const residue = (t: number, o: number, i: number): number => Math.imul(Math.imul(t, o), i);
  return {
    groups: (entry, stream) => {
      unpack(table.code[entry] ?? 0, tableFactors);
      unpack(stream, streamFactors);
      return groups;
    },
    top: (entry, stream) => residue(table.top[entry] ?? 0, outer.top[Math.trunc(stream / width)] ?? 0, inner.top[stream % width] ?? 0),
    bottom: (entry, stream) =>
      residue(table.bottom[entry] ?? 0, outer.bottom[Math.trunc(stream / width)] ?? 0, inner.bottom[stream % width] ?? 0),
  };
}

/** How many options a cell stands for, before any rule across stages. */
export function optionsIn({ factors }: Space, groups: Int32Array): number {
  let options = 1;
  for (let f = 0; f < factors.length; f++) {
    const first = factors[f]?.first;
    const group = groups[f] ?? 0;
    options *= (first?.[group + 1] ?? 0) - (first?.[group] ?? 0);
  }
  return options;
}
