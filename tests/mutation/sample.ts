import { uniformOf } from '../core/ratioCheck/simulated.ts';

/** What is mutated: core without its search, whose own tests are measured by comparison with listing every option. */
export const isMutated = (place: string): boolean =>
  place.startsWith('core/src/') && !place.startsWith('core/src/search/') && place.endsWith('.ts') && !place.endsWith('.d.ts');

/** `count` of a list, every choice of so many equally likely, the same for the same seed. */
export function sampled<T>(list: readonly T[], count: number, seed: number): readonly T[] {
  const uniform = uniformOf(seed);
  const left = [...list];
  const taken: T[] = [];
  while (taken.length < count && left.length > 0) taken.push(...left.splice(Math.floor(uniform() * left.length), 1));
  return taken;
}
