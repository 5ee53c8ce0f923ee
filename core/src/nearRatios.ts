import { choicesOf } from './choices.ts';
import type { Mounted } from './layOut.ts';
import type { Plan } from './plan.ts';
import type { Fraction } from './ratio.ts';
import { type SlidRatio, slideOf } from './search/index.ts';

/** A ratio that can be built near one that is tried. */
export interface NearRatio {
  /** By volume, made. */
  readonly bPerA: Fraction;
  /** Against the ratio that is tried. */
  readonly offRatio: Fraction;
  /** Held against the limits of the material, carried over as off-ratio; null where it has none. */
  readonly inside: boolean | null;
  /** Of all options that make this ratio the first, in the order of the search. */
  readonly first: Mounted;
  readonly partsChanged: number;
}

export interface TriedRatios {
  /** The first `keep` that can be built around B per A by volume, as run, in the order of the search; fewer where there are no more. */
  readonly near: (bPerA: Fraction, keep: number) => readonly NearRatio[];
}

/**
 * One machine for one wanted ratio after another: what its wheels and pumps can do is worked out once, and only the target moves.
 *
 * @returns every ratio once, with its first option; what the checks refuse is passed over, as the search does
 * @source the search, asked for another target
 * @example triedRatios(E12 on Bench 1 of the demo).near(ratioOf(1, 2), 1)[0]?.bPerA  // 1/2
 */
export function triedRatios(plan: Plan): TriedRatios {
  const choices = choicesOf(plan);
  const slide = slideOf(choices.problem);
  const rules = choices.rules;
  const lay = ({ ratio, offRatio, inside, options }: SlidRatio): readonly NearRatio[] =>
    options(rules, 1).map((option) => {
      const { A, B } = choices.pumpsOf(option);
      const first = { pumps: { A: A.id, B: B.id }, teeth: choices.teethOf(option) };
      return { bPerA: ratio, offRatio, inside, first, partsChanged: option.changed };
    });
  return {
    near(bPerA, keep) {
      // Rules across the stages may refuse every option of a ratio, so more are asked for until enough can be built or none is left.
      for (let ask = keep; ; ask *= 2) {
        const found = slide?.at(bPerA, ask) ?? [];
        const buildable = found.flatMap(lay);
        if (buildable.length >= keep || found.length < ask) return buildable.slice(0, keep);
      }
    },
  };
}
