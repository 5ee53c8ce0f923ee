import { type Contribution, densityParts, pumpPart, slipOf, temperaturePart } from './contributions.ts';
import { en } from './en.ts';
import { WAY_WORDS } from './format.ts';
import { madeOffRatio } from './madeRatio.ts';
import { liesInside, type OffRatioLimits } from './mixRatio.ts';
import { type Build, type Plan, type Pump, SIDES, type SideName } from './plan.ts';
import { type Fraction, ONE } from './ratio.ts';
import { rootSumSquareOf, sumOf } from './sums.ts';
import type { Lacking } from './tankExpansion.ts';
import { formula, input, type Worked, work } from './working.ts';

/** The verdict by the worst case; both ends of the limits count as inside. */
export type Verdict = 'inside with margin' | 'inside, margin not known' | 'inside only nominally' | 'outside';

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  'inside with margin': en`inside with margin`,
  'inside, margin not known': en`inside, margin not known`,
  'inside only nominally': en`inside only nominally`,
  outside: en`outside`,
};

/** How far off a build may be, beside what its teeth and displacements say. */
export interface Budget {
  readonly contributions: readonly Contribution[];
  /** Contributions of which something is not given; slip is none of them. */
  readonly lacking: readonly Lacking[];
  /** Sides whose slip is neither estimated nor part of a measured delivery. */
  readonly slipNotEstimated: readonly SideName[];
  /** By teeth and displacements, and by the deliveries where the ratio counts them. */
  readonly offRatio: Worked<Fraction>;
  /** The same with every delivery that was measured: the middle of what is to be expected. */
  readonly expected: Worked<Fraction>;
  /** Of what is known, without slip: all of it the same way. */
  readonly worst: Worked<Fraction>;
  /** The same as it is likely to add up. */
  readonly likely: Worked<number>;
  /** Off-ratio at both ends of the worst case, slip included. */
  readonly from: Worked<Fraction>;
  readonly to: Worked<Fraction>;
  /** Null where the material has no limits. */
  readonly verdict: Verdict | null;
}

const asDelivered = formula({
  letter: 'e',
  written: '(1 + n) · b / a - 1',
  dimension: 'share',
  source: en`definition of volumetric efficiency: a pump makes that share of its displacement`,
  of: ({ n, a, b }: Record<'n' | 'a' | 'b', Fraction>) => ONE.add(n).mul(b).div(a).sub(ONE),
});

const leastOff = formula({
  letter: 'e₁',
  written: 'e - U',
  dimension: 'share',
  source: en`contributions are small and relative, so they add`,
  of: ({ e, U }: Record<'e' | 'U', Fraction>) => e.sub(U),
});

const mostOff = formula({
  letter: 'e₂',
  written: 'e + U',
  dimension: 'share',
  source: en`contributions are small and relative, so they add`,
  of: ({ e, U }: Record<'e' | 'U', Fraction>) => e.add(U),
});

/**
 * Off-ratio budget of a build: what may be off beside the teeth, the worst case (all the same way), the likely case (root of the sum of
 * squares, each ± taken with the same confidence), and the verdict by the worst case against the limits.
 *
 * A delivery is measured against the nominal displacement, so it holds the pump's tolerance and its slip already: its own uncertainty
 * takes the place of both, and a delivery that the ratio leaves out moves the middle of the range. Densities count only where the ratio is
 * by weight and rests on them; the temperature of a tank counts on either basis. Slip widens only the worst case, from no leak to the most
 * that is estimated, each side by itself.
 *
 * @returns exact but for the likely case
 * @source arithmetic for the worst case; gum 5.1.2 for the likely one, 5.2.2 note 1 for liquids that stand at one temperature
 * @example budgetOf(E12 on Bench 1 of the demo, 23 driving 25)  // worst ±1.68 %, likely ±0.79 %, −1.76 to +1.61 %, inside with margin
 */
export function budgetOf(plan: Plan, build: Build): Budget {
  const parts = SIDES.flatMap((side) => [
    pumpPart(side, build.pumps[side]),
    ...densityParts(plan.mix, side),
    temperaturePart(plan.mix, side),
  ]);
  const slips = SIDES.map((side) => slipOf(plan, build, side));
  const either = parts.flatMap(({ contributions }) => contributions);
  const slip = slips.flatMap(({ contribution }) => (contribution === null ? [] : [contribution]));
  const lacking = parts.flatMap((part) => part.lacking);
  const offRatio = madeOffRatio(plan, build);
  const expected = expectedOf(offRatio, build);
  const { from, to } = rangeAbout(expected, either, slip);
  return {
    contributions: [...either, ...slip],
    lacking,
    slipNotEstimated: slips.flatMap(({ side, isLacking }) => (isLacking ? [side] : [])),
    offRatio,
    expected,
    worst: allTheSameWay(en`worst case`, either),
    likely: likelyOf(either),
    from,
    to,
    verdict: verdictOf(offRatio.value, from.value, to.value, plan.mix.limits, lacking.length > 0),
  };
}

/** A delivery that the ratio does not count yet moves what is to be expected. */
function expectedOf(n: Worked<Fraction>, { pumps }: Build): Worked<Fraction> {
  const uncounted = ({ delivery, asMeasured }: Pump): Fraction => (delivery.known && !asMeasured ? delivery.value.share : ONE);
  const [a, b] = [uncounted(pumps.A), uncounted(pumps.B)];
  if (a.equals(ONE) && b.equals(ONE)) return n;
  const delivery = (side: SideName, share: Fraction) => input(en`delivery of pump ${side} that the ratio leaves out`, share, 'share');
  return work(asDelivered, en`off-ratio with the deliveries as measured`, { n, a: delivery('A', a), b: delivery('B', b) });
}

const SUMS = { of: 'u', dimension: 'share' } as const;

function allTheSameWay(what: string, contributions: readonly Contribution[]): Worked<Fraction> {
  return sumOf({ ...SUMS, what, letter: 'U', source: en`arithmetic: all the same way`, terms: contributions.map(({ share }) => share) });
}

function likelyOf(contributions: readonly Contribution[]): Worked<number> {
  const source = en`gum 5.1.2, equation 10`;
  return rootSumSquareOf({ ...SUMS, what: en`likely`, letter: 'u', source, terms: contributions.map(({ share }) => share) });
}

/** Both ends of the worst case about what is expected: slip widens only the end towards which it moves the mix. */
function rangeAbout(e: Worked<Fraction>, either: readonly Contribution[], slip: readonly Contribution[]): Pick<Budget, 'from' | 'to'> {
  const towards = (way: 'B-lean' | 'B-rich') =>
    allTheSameWay(en`worst case to ${WAY_WORDS[way]}`, [...either, ...slip.filter((one) => one.way === way)]);
  return {
    from: work(leastOff, en`off-ratio, most B-lean`, { e, U: towards('B-lean') }),
    to: work(mostOff, en`off-ratio, most B-rich`, { e, U: towards('B-rich') }),
  };
}

function verdictOf(e: Fraction, from: Fraction, to: Fraction, limits: OffRatioLimits | null, isLacking: boolean): Verdict | null {
  if (limits === null) return null;
  if (!liesInside(e, limits)) return 'outside';
  if (!liesInside(from, limits) || !liesInside(to, limits)) return 'inside only nominally';
  return isLacking ? 'inside, margin not known' : 'inside with margin';
}
