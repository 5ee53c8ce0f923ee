import { restrictedTo } from './ratioLists.ts';
import { distinctAscending } from './sorted.ts';
import type { Space } from './space.ts';

const CHANGES = [0, 1, 2] as const;

/**
 * A space cut by the number of changed parts: index c holds the parts of the space in which every option changes exactly c.
 * Each part is one combination of classes, the parts changed in each stage and at the pumps; together the parts hold every option once.
 */
export function levelsOf(space: Space): readonly (readonly Space[])[] {
  const levels: Space[][] = Array.from({ length: 2 * space.factors.length + 1 }, () => []);
  if (space.changed !== null) {
    levels[space.changed]?.push(space);
    return levels;
  }
  const classes = space.factors.map((list) =>
    CHANGES.map((changed) => restrictedTo(list, (index) => list.ranks.changed[index] === changed)),
  );
  const extend = (factors: Space['factors'], changed: number): void => {
    const next = classes[factors.length];
    // slack and residues were proved for the whole space, so they hold for a part of it
    if (!next) levels[changed]?.push({ ...space, factors, changed });
    else for (const [c, list] of next.entries()) if (list.log.length > 0) extend([...factors, list], changed + c);
  };
  extend([], 0);
  return levels;
}

/** So many times more pumps in each piece than in the one before: whether the first few are enough shows at little cost. */
const GROWTH = 8;

/** A part cut by the order of its pumps: a few of the first, more of the next, and the rest. */
export function* byPumps(part: Space): Generator<Space> {
  const pumps = part.factors.at(-1);
  if (!pumps) return;
  const orders = distinctAscending(Float64Array.from(pumps.member, (index) => pumps.ranks.order[index] ?? 0));
  for (let from = 0, size = 2; from < orders.length; from += size, size *= GROWTH) {
    const [low = 0, beyond = Infinity] = [orders[from], orders[from + size]];
    const list = restrictedTo(pumps, (index) => {
      const order = pumps.ranks.order[index] ?? 0;
      return order >= low && order < beyond;
    });
    yield { ...part, factors: [...part.factors.slice(0, -1), list] };
  }
}

/** Products of one ratio from each factor. */
export function cellsIn({ factors }: Space): number {
  return factors.reduce((product, { log }) => product * log.length, 1);
}
