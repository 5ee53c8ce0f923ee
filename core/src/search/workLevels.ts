import { type Fraction, ZERO } from '../ratio.ts';
import { type RatioList, restrictedTo } from './ratioLists.ts';
import type { Space } from './space.ts';

/** The choices of one factor that cost just so much work. */
interface WorkClass {
  readonly work: Fraction;
  readonly list: RatioList;
}

/**
 * A space cut by the work its options cost, least first: the parts of one level cost the same.
 * Each part is one combination of classes, the work in each stage and at the pumps; together the parts hold every option once.
 */
export function workLevels(space: Space): readonly (readonly Space[])[] {
  const { stages, pumps } = space.problem;
  const classes = space.factors.map((list, f) => classesOf(list, stages[f]?.pairs ?? pumps));
  const levels = new Map<string, { readonly work: Fraction; readonly parts: Space[] }>();
  const extend = (factors: Space['factors'], work: Fraction): void => {
    const next = classes[factors.length];
    if (next) {
      for (const one of next) extend([...factors, one.list], work.add(one.work));
      return;
    }
    const key = work.toFraction();
    const level = levels.get(key) ?? { work, parts: [] };
    // slack and residues were proved for the whole space, so they hold for a part of it
    level.parts.push({ ...space, factors });
    levels.set(key, level);
  };
  extend([], ZERO);
  return [...levels.values()].sort((a, b) => a.work.compare(b.work)).map(({ parts }) => parts);
}

function classesOf(list: RatioList, choices: readonly { readonly work: Fraction }[]): readonly WorkClass[] {
  const classes = new Map<string, { readonly work: Fraction; readonly members: Set<number> }>();
  for (const index of list.member) {
    const work = choices[index]?.work ?? ZERO;
    const key = work.toFraction();
    const one = classes.get(key) ?? { work, members: new Set() };
    one.members.add(index);
    classes.set(key, one);
  }
  return [...classes.values()].map(({ work, members }) => ({ work, list: restrictedTo(list, (index) => members.has(index)) }));
}
