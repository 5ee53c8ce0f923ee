import { cellReader } from './cell.ts';
import { expander } from './expand.ts';
import { join } from './join.ts';
import { paceOf } from './pace.ts';
import { type Candidate, copyOf, type Hooks, type SearchProblem } from './problem.ts';
import { type RatioList, restrictedTo } from './ratioLists.ts';
import { splitSides } from './sides.ts';
import { exactY, factorsOf, layOut, type Space } from './space.ts';
import { DEFAULT_TUNING } from './tuning.ts';
import { holds } from './window.ts';

/** Sets of more checks than this are no advice. */
const MOST_RELAXED = 3;

/** How much is looked at before the rest is left: what a person would wait for, not what a search could do in an hour. */
export interface ReasonEffort {
  /** options asked what they fail across the stages */
  readonly asked: number;
  /** options looked at in all */
  readonly looked: number;
}

const EFFORT: ReasonEffort = { asked: 2 ** 15, looked: 2 ** 25 };

/** Told of each set of checks as it is found, the smallest first. */
export interface ReasonHooks extends Hooks {
  readonly reason?: (mask: number) => void;
}

export interface Relaxations {
  /** bit masks of up to 3 checks, none holding another; [0] where something fits as it is */
  readonly masks: readonly number[];
  /** options were left that might show further sets, or smaller ones than these */
  readonly more: boolean;
}

/**
 * Why nothing fits: the smallest sets of checks whose relaxing would let some option inside the limits be built.
 *
 * Every option is asked once at most, whatever the number of sets: what it fails says of all sets whether they let it through.
 *
 * @param problem  each `failed` a bit field of checks
 * @param failures bits of the checks that a candidate fails across the stages
 * @param bits     number of checks, those across stages included, 0 to 31
 * @param hooks    progress, cancelling, and each set as soon as it is known
 * @param effort   where all of it is spent, what was seen by then is answered, and that there may be more
 * @returns no masks where all checks relaxed still find nothing (the teeth do not reach), where only sets of more than 3 do, and without
 *   limits
 * @throws RangeError on `bits`, and as `findOptions`; Cancelled when asked to stop
 * @source our choice: three checks at once are the most a person would look at
 * @example fewestRelaxations(problem, () => 0, 2).masks  // [0]
 */
export function fewestRelaxations(
  problem: SearchProblem,
  failures: (candidate: Candidate) => number,
  bits: number,
  hooks: ReasonHooks = {},
  effort: ReasonEffort = EFFORT,
): Relaxations {
  if (!Number.isInteger(bits) || bits < 0 || bits > 31) throw new RangeError(`fewestRelaxations: ${bits} bits`);
  const nothing: Relaxations = { masks: [], more: false };
  if (problem.limits === null) return nothing;
  const everything = layOut(
    problem,
    factorsOf(problem).map((list) => list(() => true)),
    DEFAULT_TUNING,
  );
  if (everything === null) return nothing;
  const { check } = paceOf(hooks);
  // where the teeth do not reach, every mask would fail one by one
  if (!eachInside(everything, () => true, check)) return nothing;
  const relaxed = relaxedBy(everything);
  const failedBy = failuresOf(problem);
  const together = unionsOf(problem);
  const left = { ...effort };
  /** what the options looked at fail, up to 3 checks each */
  const seen = new Set<number>();
  let more = false;
  /** Looks at the options whose choices fail just these checks: those that fail fewer were seen with fewer. */
  const look = (mask: number): boolean => {
    const space = together.has(mask) ? relaxed(mask) : null;
    if (space === null) return false;
    const take = (candidate: Candidate): boolean => {
      left.looked -= 1;
      if (left.looked < 0) more = true;
      else if (failedBy(candidate) === mask) {
        left.asked -= 1;
        if (left.asked < 0) more = true;
        else {
          if (left.asked % 1024 === 0) check();
          const failed = mask | failures(copyOf(candidate));
          if (failed === mask) return true;
          if (countOf(failed) <= MOST_RELAXED) seen.add(failed);
        }
      }
      return more;
    };
    return eachInside(space, take, check) && !more;
  };
  const masks = [...masksUpTo(MOST_RELAXED, bits)];
  const minimal: number[] = [];
  for (const [i, mask] of masks.entries()) {
    hooks.progress?.(i / masks.length);
    if (minimal.some((set) => (set & mask) === set)) continue;
    if (!seen.has(mask) && (more || !look(mask))) continue;
    minimal.push(mask);
    hooks.reason?.(mask);
  }
  hooks.progress?.(1);
  return { masks: minimal, more };
}

const countOf = (mask: number): number => {
  let ones = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) ones += 1;
  return ones;
};

/** Whatever one choice from each factor may fail together, up to 3 checks. */
function unionsOf({ stages, pumps }: SearchProblem): ReadonlySet<number> {
  const factors: readonly (readonly { readonly failed: number }[])[] = [...stages.map(({ pairs }) => pairs), pumps];
  let unions = new Set([0]);
  for (const choices of factors) {
    const fields = [...new Set(choices.map(({ failed }) => failed))].filter((failed) => countOf(failed) <= MOST_RELAXED);
    unions = new Set(
      [...unions].flatMap((union) => fields.map((failed) => union | failed)).filter((union) => countOf(union) <= MOST_RELAXED),
    );
  }
  return unions;
}

/** Bits of the checks that the choices of a candidate fail, each by itself. */
function failuresOf({ stages, pumps }: SearchProblem): (candidate: Candidate) => number {
  const ofPumps = Int32Array.from(pumps, ({ failed }) => failed);
  const ofPairs = stages.map(({ pairs }) => Int32Array.from(pairs, ({ failed }) => failed));
  return ({ pump, pairs }) => {
    let failed = ofPumps[pump] ?? 0;
    for (let s = 0; s < pairs.length; s++) failed |= ofPairs[s]?.[pairs[s] ?? -1] ?? 0;
    return failed;
  };
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

/** Runs through the options inside the limits until one is taken; whether one was. */
function eachInside(space: Space, takes: (candidate: Candidate) => boolean, check: () => void): boolean {
  const sides = splitSides(space);
  const reader = cellReader(space, sides);
  let found = false;
  const take = (candidate: Candidate): void => {
    found ||= takes(candidate);
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
