import { type Fraction, ONE, ratioOf } from '../ratio.ts';
import type { Run } from './collect.ts';
import { compareRatios, type Ratio } from './distinct.ts';
import { optionsOf } from './findOptions.ts';
import { pacedAdmit, paceOf } from './pace.ts';
import type { Option, Rules, SearchProblem } from './problem.ts';
import { reachNear, tiesInOrder } from './ranking.ts';
import { splitSides } from './sides.ts';
import { aimedAt, buildableSpace, type Space } from './space.ts';
import { tiedOptions } from './tiedOptions.ts';
import { DEFAULT_TUNING, type Tuning } from './tuning.ts';
import { holds, type Window, windowUpTo } from './window.ts';

/** One ratio near a target; its options are found when asked for. */
export interface SlidRatio {
  /** B per A made */
  readonly ratio: Fraction;
  readonly offRatio: Fraction;
  /** null where there are no limits */
  readonly inside: boolean | null;
  /** the first `keep` options that make it, in the order of the ranking; none where the rules refuse all */
  readonly options: (rules: Rules, keep: number) => readonly Option[];
}

export interface Slide {
  /**
   * The first `keep` ratios for another wanted one, in the order of the ranking, whatever the rules across stages say.
   *
   * @param wanted B per A, > 0; the limits go with it
   * @param keep   a whole number, 1 or more
   * @throws RangeError on either
   */
  readonly at: (wanted: Fraction, keep: number) => readonly SlidRatio[];
}

/** So many times the ratios that are asked for are kept around the last target: a small step finds its answer among them. */
const BAND = 1.25;
/** Looking once more takes little here, so a window that held too few grows by little. */
const WIDEN = ratioOf(3, 2);

/**
 * The same problem for one wanted ratio after another, quick enough to follow a hand: what depends on the rack alone is made once.
 *
 * @param problem only choices whose `failed` is 0 take part; its wanted ratio is where the slide begins
 * @returns null where a factor has no buildable choice
 * @throws RangeError as `findOptions`
 * @source our choice of method: the table of the search as large as pays, kept; and the ratios around the last target
 * @example slideOf(problem)?.at(ratioOf(1, 2), 1)[0]?.ratio.toFraction()  // '1/2'
 */
export function slideOf(problem: SearchProblem, tuning: Tuning = DEFAULT_TUNING): Slide | null {
  const start = buildableSpace(problem, tuning);
  if (start === null) return null;
  const sides = splitSides(start, Infinity);
  const pace = paceOf({});
  let band: Band | null = null;
  return {
    at: (wanted, keep) => {
      if (!Number.isSafeInteger(keep) || keep < 1) throw new RangeError(`slide: keep ${keep}`);
      const run: Run = { space: aimedAt(start, wanted), sides, pace };
      let nearest = band && nearestIn(band, run.space, keep);
      if (nearest === null) {
        band = bandAround(band ? { ...run, space: reachingAsFar(run.space, band) } : run, Math.ceil(BAND * keep));
        nearest = band.ratios.slice(0, keep);
      }
      return nearest.map((ratio) => slidRatio(run, ratio));
    },
  };
}

function slidRatio(run: Run, ratio: Ratio): SlidRatio {
  const { problem } = run.space;
  return {
    get ratio() {
      return ratio.y().mul(problem.wanted);
    },
    get offRatio() {
      return ratio.y().sub(ONE);
    },
    inside: problem.limits && ratio.inside,
    options: (rules, keep) => tiedOptions(run, [ratio], keep, pacedAdmit(rules, run.pace.check)).map(optionsOf(problem)),
  };
}

/** All ratios around one target, up to some place of its ranking. */
interface Band {
  readonly space: Space;
  readonly ratios: readonly Ratio[];
  /** of the y for that target; null: nothing lies outside */
  readonly window: Window | null;
}

/** As many ratios as around the last target will be found about as far around this one. */
function reachingAsFar(space: Space, { ratios }: Band): Space {
  const reach = 1.1 * (ratios.at(-1)?.off ?? 1);
  return { ...space, tuning: { ...space.tuning, firstReach: reach > 0 && reach < 1 ? reachNear(reach) : null } };
}

function bandAround(run: Run, wanted: number): Band {
  const ratios: Ratio[] = [];
  for (const tie of tiesInOrder(run, wanted, null, WIDEN)) {
    if (ratios.length >= wanted) {
      // the tie just begun shows that the last is complete
      const last = ratios.at(-1);
      return { space: run.space, ratios, window: last ? windowUpTo(last.place(), run.space.inside) : null };
    }
    ratios.push(...tie);
  }
  return { space: run.space, ratios, window: null };
}

/** The first `keep` for another target if all of them surely lie in the band, else null. */
function nearestIn({ space: before, ratios, window }: Band, space: Space, keep: number): readonly Ratio[] | null {
  const shift = space.logConstant - before.logConstant;
  const ranked = ratios.map((ratio) => shifted(ratio, before, space, shift)).sort((a, b) => compareRatios(space, a, b));
  const last = ranked[keep - 1];
  if (window === null) return ranked.slice(0, keep);
  if (last === undefined) return null;
  const { logLow, logHigh } = windowUpTo(last.place(), space.inside);
  const margin = 4 * space.slack;
  return logLow - shift > window.logLow + margin && logHigh - shift < window.logHigh - margin ? ranked.slice(0, keep) : null;
}

/** The same ratio as another target sees it. */
function shifted(ratio: Ratio, before: Space, space: Space, shift: number): Ratio {
  const log = ratio.log + shift;
  let exact: Fraction | null = null;
  const y = (): Fraction => {
    exact ??= ratio.y().mul(before.problem.wanted).div(space.problem.wanted);
    return exact;
  };
  const inside = holds(space.inside, log, space.slack, y);
  return { ...ratio, log, y, inside, off: Math.abs(Math.expm1(log)), place: () => ({ inside, off: y().sub(1).abs() }) };
}
