import { type Fraction, ONE } from '../ratio.ts';
import type { Run } from './collect.ts';
import { optionOf } from './findOptions.ts';
import { pacedAdmit, paceOf } from './pace.ts';
import type { Option, Rules, SearchProblem } from './problem.ts';
import { tiesInOrder } from './ranking.ts';
import { splitSides } from './sides.ts';
import { buildableSpace } from './space.ts';
import { tiedOptions } from './tiedOptions.ts';
import { DEFAULT_TUNING, type Tuning } from './tuning.ts';

/** One ratio near a target, without its options. */
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
  /** The first `keep` ratios around another wanted one, in the order of the ranking, whatever the rules across stages say. */
  readonly at: (wanted: Fraction, keep: number) => readonly SlidRatio[];
}

/**
 * The same problem for one wanted ratio after another; null where a factor has no buildable choice.
 *
 * @example slideOf(problem)?.at(ratioOf(1, 2), 1)[0]?.ratio.toFraction()  // '1/2'
 */
export function slideOf(problem: SearchProblem, tuning: Tuning = DEFAULT_TUNING): Slide | null {
  if (buildableSpace(problem, tuning) === null) return null;
  const pace = paceOf({});
  return {
    at: (wanted, keep) => {
      const aimed = { ...problem, wanted };
      const space = buildableSpace(aimed, tuning);
      if (space === null) return [];
      const run: Run = { space, sides: splitSides(space), pace };
      const found: SlidRatio[] = [];
      for (const tie of tiesInOrder(run, keep, null)) {
        for (const ratio of tie) {
          const y = ratio.y();
          found.push({
            ratio: y.mul(wanted),
            offRatio: y.sub(ONE),
            inside: problem.limits && ratio.inside,
            options: (rules, most) => tiedOptions(run, [ratio], most, pacedAdmit(rules, pace.check)).map((entry) => optionOf(aimed, entry)),
          });
        }
        if (found.length >= keep) break;
      }
      return found.slice(0, keep);
    },
  };
}
