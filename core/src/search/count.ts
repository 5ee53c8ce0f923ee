import { cellReader } from './cell.ts';
import { expander } from './expand.ts';
import { join } from './join.ts';
import { cellsIn } from './levels.ts';
import { pacedAdmit, paceOf, partOf } from './pace.ts';
import { copyOf, type Hooks, type Rules, type SearchProblem } from './problem.ts';
import { logarithm } from './ratioLists.ts';
import { splitSides } from './sides.ts';
import { buildableSpace, exactY, type Space } from './space.ts';
import { DEFAULT_TUNING } from './tuning.ts';
import { holds } from './window.ts';

export interface Counts {
  /** pairs of every stage times pumps, as given */
  readonly ways: number;
  /** options that fail no check and no rule across stages */
  readonly buildable: number;
  /** different ratios among them */
  readonly distinctRatios: number;
  /** how many of them lie inside the limits; null without limits */
  readonly inside: number | null;
}

/** Cells to a slice on average: what one slice finds must fit in one set. */
const CELLS_PER_SLICE = 2 ** 20;

/**
 * Counts every option, one by one: the time grows with their number, the memory does not.
 *
 * @param problem any
 * @param rules   asked once for every option that fails no check
 * @param hooks   progress and cancelling
 * @throws RangeError and Cancelled as `findOptions`
 * @source plain enumeration
 * @example countOptions(problem, { admit: () => 0 }).ways  // 8
 */
export function countOptions(problem: SearchProblem, rules: Rules, hooks: Hooks = {}, cellsPerSlice = CELLS_PER_SLICE): Counts {
  const ways = problem.stages.reduce((product, { pairs }) => product * pairs.length, problem.pumps.length);
  const space = buildableSpace(problem, DEFAULT_TUNING);
  let buildable = 0;
  let distinctRatios = 0;
  let inside = 0;
  if (space) {
    const slices = slicesOf(space, cellsPerSlice);
    for (const [i, slice] of slices.entries()) {
      const found = countSlice(space, rules, slice, partOf(hooks, i / slices.length, 1 / slices.length));
      buildable += found.buildable;
      distinctRatios += found.distinctRatios;
      inside += found.inside;
    }
  }
  hooks.progress?.(1);
  return { ways, buildable, distinctRatios, inside: problem.limits && inside };
}

/** Half-open: `low <= ln y < high`. */
interface Slice {
  readonly low: number;
  readonly high: number;
}

function slicesOf(space: Space, cellsPerSlice: number): readonly Slice[] {
  const { factors, logConstant } = space;
  const count = Math.ceil(cellsIn(space) / cellsPerSlice);
  const low = factors.reduce((sum, { log }) => sum + (log[0] ?? 0), logConstant);
  const high = factors.reduce((sum, { log }) => sum + (log.at(-1) ?? 0), logConstant);
  const bound = (i: number): number => (i === 0 ? -Infinity : i === count ? Infinity : low + ((high - low) * i) / count);
  return Array.from({ length: count }, (_, i) => ({ low: bound(i), high: bound(i + 1) }));
}

function countSlice(space: Space, rules: Rules, slice: Slice, hooks: Hooks): { buildable: number; distinctRatios: number; inside: number } {
  const sides = splitSides(space);
  const reader = cellReader(space, sides);
  const pace = paceOf(hooks);
  const admit = pacedAdmit(rules, pace.check);
  const identify = identifier(space);
  const ratios = new Set<number | string>();
  let buildable = 0;
  let inside = 0;
  let listed = 0;
  const expand = expander(space, {
    mostChanged: () => Infinity,
    take: (candidate) => {
      if (admit(copyOf(candidate)) !== null) listed += 1;
    },
  });
  const visit = (table: number, stream: number, log: number): boolean => {
    const { key, position } = identify(reader.groups(table, stream));
    // the same for every cell of one ratio, which the computed logarithm is not: so each ratio falls into one slice
    if (position < slice.low || position >= slice.high) return false;
    listed = 0;
    reader.every(table, stream, expand);
    if (listed === 0) return false;
    ratios.add(key);
    buildable += listed;
    if (holds(space.inside, log, space.slack, () => exactY(space, reader.groups(table, stream)))) inside += listed;
    return false;
  };
  join(space, sides, { ...slice }, visit, pace.pass());
  return { buildable, distinctRatios: ratios.size, inside };
}

/** What tells two ratios apart, and their place on the scale of ln y. */
interface Identity {
  readonly key: number | string;
  readonly position: number;
}

/**
 * While every product N * D' of a numerator and a denominator is under 2^52, two different ratios are more than 2^-52 of themselves apart,
 * so that the correctly rounded quotients N/D are equal only where the ratios are. Beyond that the reduced fraction is the key.
 */
function identifier(space: Space): (groups: Int32Array) => Identity {
  const numerators = space.factors.map(({ numerator }) => numerator);
  const denominators = space.factors.map(({ denominator }) => denominator);
  if (space.mostNumerator * space.mostDenominator < 2 ** 52) {
    const product = (values: readonly Float64Array[], groups: Int32Array): number =>
      values.reduce((n, list, f) => n * (list[groups[f] ?? 0] ?? 0), 1);
    return (groups) => {
      const key = product(numerators, groups) / product(denominators, groups);
      return { key, position: space.logConstant + Math.log(key) };
    };
  }
  return (groups) => {
    const y = exactY(space, groups);
    return { key: y.toFraction(), position: logarithm(y) };
  };
}
