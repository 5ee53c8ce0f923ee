import { cellReader } from './cell.ts';
import { expander } from './expand.ts';
import { join } from './join.ts';
import { pacedAdmit, paceOf } from './pace.ts';
import { type Candidate, copyOf, type Hooks, type Rules, type SearchProblem } from './problem.ts';
import { type RatioList, restrictedTo } from './ratioLists.ts';
import { splitSides } from './sides.ts';
import { exactY, factorsOf, layOut, type Space } from './space.ts';
import { DEFAULT_TUNING } from './tuning.ts';
import { holds } from './window.ts';

/** Sets of more checks than this are no advice. */
const MOST_RELAXED = 3;

/** Told of each set of checks as it is found, the smallest first. */
export interface ReasonHooks extends Hooks {
  readonly reason?: (mask: number) => void;
}

/**
 * Why nothing fits: the smallest sets of checks whose relaxing would let some option inside the limits be built.
 *
 * @param problem   each `failed` a bit field of checks
 * @param admitWith the rules across stages with the checks in `mask` relaxed
 * @param bits      number of checks, those across stages included, 0 to 31
 * @param hooks     progress, cancelling, and each set as soon as it is known
 * @returns bit masks of up to 3 checks, none holding another; [0] where something fits as it is; [] where all checks relaxed still
 *   find nothing (the teeth do not reach), where only sets of more than 3 do, and without limits
 * @throws RangeError on `bits`, and as `findOptions`; Cancelled when asked to stop
 * @source our choice: three checks at once are the most a person would look at
 * @example fewestRelaxations(problem, () => ({ admit: () => 0 }), 2)  // [0]
 */
export function fewestRelaxations(
  problem: SearchProblem,
  admitWith: (mask: number) => Rules,
  bits: number,
  hooks: ReasonHooks = {},
): readonly number[] {
  if (!Number.isInteger(bits) || bits < 0 || bits > 31) throw new RangeError(`fewestRelaxations: ${bits} bits`);
  if (problem.limits === null) return [];
  const everything = layOut(
    problem,
    factorsOf(problem).map((list) => list(() => true)),
    DEFAULT_TUNING,
  );
  if (everything === null) return [];
  const { check } = paceOf(hooks);
  const relaxed = relaxedBy(everything);
  const fits = (mask: number): boolean => {
    const space = relaxed(mask);
    return space !== null && somethingFits(space, admitWith(mask), check);
  };
  // where the teeth do not reach, every mask would fail one by one
  const masks = fits(2 ** bits - 1) ? [...masksUpTo(MOST_RELAXED, bits)] : [];
  const minimal: number[] = [];
  for (const [i, mask] of masks.entries()) {
    hooks.progress?.(i / masks.length);
    if (minimal.some((set) => (set & mask) === set) || !fits(mask)) continue;
    minimal.push(mask);
    hooks.reason?.(mask);
  }
  hooks.progress?.(1);
  return minimal;
}

/** The space of what fails no check but those in a mask, null where a factor has no such choice. */
function relaxedBy(everything: Space): (mask: number) => Space | null {
  const { stages, pumps } = everything.problem;
  const lists = everything.factors.map((list, f) => {
    const choices: readonly { readonly failed: number }[] = stages[f]?.pairs ?? pumps;
    const fields = Int32Array.from(choices, ({ failed }) => failed);
    const occurring = fields.reduce((all, failed) => all | failed, 0);
    // most masks differ in checks that nothing in this factor fails
    const known = new Map<number, RatioList>();
    return (mask: number): RatioList => {
      const key = mask & occurring;
      const taking = known.get(key) ?? restrictedTo(list, (index) => ((fields[index] ?? 0) & ~key) === 0);
      known.set(key, taking);
      return taking;
    };
  });
  return (mask) => {
    const factors = lists.map((list) => list(mask));
    // slack and residues were proved for all choices, so they hold for some of them
    return factors.some(({ log }) => log.length === 0) ? null : { ...everything, factors };
  };
}

/** All masks of at most `size` bits, fewest bits first. */
function* masksUpTo(size: number, bits: number): Generator<number> {
  for (let ones = 0; ones <= size; ones++) yield* masksOf(ones, bits);
}

function* masksOf(ones: number, bits: number): Generator<number> {
  if (ones === 0) yield 0;
  else for (let top = ones - 1; top < bits; top++) for (const rest of masksOf(ones - 1, top)) yield 2 ** top + rest;
}

/** Whether an option inside the limits exists: any will do, so the join ends at the first. */
function somethingFits(space: Space, rules: Rules, check: () => void): boolean {
  const sides = splitSides(space);
  const reader = cellReader(space, sides);
  const admit = pacedAdmit(rules, check);
  let found = false;
  const take = (candidate: Candidate): void => {
    found ||= admit(copyOf(candidate)) !== null;
  };
  // once found, nothing more is wanted of the cell
  const expand = expander(space, { mostChanged: () => (found ? -1 : Infinity), take });
  const { inside, slack } = space;
  const visit = (table: number, stream: number, log: number): boolean => {
    if (holds(inside, log, slack, () => exactY(space, reader.groups(table, stream)))) reader.every(table, stream, expand);
    return found;
  };
  join(space, sides, { low: inside.logLow, high: inside.logHigh }, visit, check);
  return found;
}
