import { restrictedTo } from './ratioLists.ts';
import type { Space } from './space.ts';

const BOUGHT = [0, 1, 2] as const;

/**
 * The parts of a space for which not too much has to be bought: each one class of pairs from each stage, by what has to be bought with
 * them. Together they hold every option that the rules may admit, once. Where few may be bought and most wheels would be, the rules would
 * else be asked of all the rest.
 */
export function affordable(space: Space): readonly Space[] {
  const { stages, mostBought } = space.problem;
  if (mostBought === undefined) return [space];
  const classes = space.factors.map((list, f) => {
    const pairs = stages[f]?.pairs;
    if (pairs === undefined) return [{ bought: 0, list }];
    return BOUGHT.map((bought) => ({ bought, list: restrictedTo(list, (index) => (pairs[index]?.bought ?? 0) === bought) }));
  });
  const most = classes.reduce(
    (sum, ofFactor) => sum + Math.max(...ofFactor.map(({ bought, list }) => (list.log.length > 0 ? bought : 0))),
    0,
  );
  if (most <= mostBought) return [space];
  const parts: Space[] = [];
  const extend = (factors: Space['factors'], sum: number): void => {
    const next = classes[factors.length];
    // slack and residues were proved for the whole space, so they hold for a part of it
    if (next === undefined) parts.push({ ...space, factors });
    else
      for (const { bought, list } of next) if (list.log.length > 0 && sum + bought <= mostBought) extend([...factors, list], sum + bought);
  };
  extend([], 0);
  return parts;
}
