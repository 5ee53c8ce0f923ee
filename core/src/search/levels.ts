import { restrictedTo } from './ratioLists.ts';
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

/** Products of one ratio from each factor. */
export function cellsIn({ factors }: Space): number {
  return factors.reduce((product, { log }) => product * log.length, 1);
}
