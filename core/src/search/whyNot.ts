import { cellReader } from './cell.ts';
import { expander } from './expand.ts';
import { join } from './join.ts';
import { pacedAdmit, paceOf } from './pace.ts';
import { type Candidate, copyOf, type Hooks, type Rules, type SearchProblem } from './problem.ts';
import { splitSides } from './sides.ts';
import { exactY, factorsOf, layOut } from './space.ts';
import { DEFAULT_TUNING } from './tuning.ts';
import { holds } from './window.ts';

/** Sets of more checks than this are no advice. */
const MOST_RELAXED = 3;

/**
 * Why nothing fits: the smallest sets of checks whose relaxing would let some option inside the limits be built.
 *
 * @param problem   each `failed` a bit field of checks
 * @param admitWith the rules across stages with the checks in `mask` relaxed
 * @param bits      number of checks, those across stages included, 0 to 31
 * @param hooks     progress and cancelling
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
  hooks: Hooks = {},
): readonly number[] {
  if (!Number.isInteger(bits) || bits < 0 || bits > 31) throw new RangeError(`fewestRelaxations: ${bits} bits`);
  if (problem.limits === null) return [];
  const { check } = paceOf(hooks);
  const fits = (mask: number): boolean => somethingFits(problem, mask, admitWith(mask), check);
  // where the teeth do not reach, every mask would fail one by one
  const masks = fits(2 ** bits - 1) ? [...masksUpTo(MOST_RELAXED, bits)] : [];
  const minimal: number[] = [];
  for (const [i, mask] of masks.entries()) {
    hooks.progress?.(i / masks.length);
    if (!minimal.some((set) => (set & mask) === set) && fits(mask)) minimal.push(mask);
  }
  hooks.progress?.(1);
  return minimal;
}

/** All masks of at most `size` bits, fewest bits first. */
function* masksUpTo(size: number, bits: number): Generator<number> {
  for (let ones = 0; ones <= size; ones++) yield* masksOf(ones, bits);
}

function* masksOf(ones: number, bits: number): Generator<number> {
  if (ones === 0) yield 0;
  else for (let top = ones - 1; top < bits; top++) for (const rest of masksOf(ones - 1, top)) yield 2 ** top + rest;
}

/** Whether an option inside the limits exists that fails no check but those in `mask`: any will do, so the join ends at the first. */
function somethingFits(problem: SearchProblem, mask: number, rules: Rules, check: () => void): boolean {
  const lists = factorsOf(problem).map((list) => list((choice) => (choice.failed & ~mask) === 0));
  const space = layOut(problem, lists, DEFAULT_TUNING);
  if (space === null) return false;
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
