import { centreForPitches_m, lengthInPitches, pitchDiameter_m } from './chainGeometry.ts';

/** Where the driven shaft may stand: at one place, or anywhere in a window. */
export type CentreLimits =
  | { readonly kind: 'fixed'; readonly centre_m: number }
  | { readonly kind: 'window'; readonly least_m: number; readonly most_m: number };

export interface CountRequest {
  readonly pitch_m: number;
  readonly driverTeeth: number;
  readonly drivenTeeth: number;
  readonly centre: CentreLimits;
  /** Slack the tensioner absorbs; null where it is not given. */
  readonly takeUp_pitches: number | null;
  /** Pitches of the chain now fitted; null where unknown. */
  readonly presentPitches: number | null;
  readonly offsetLinkAllowed: boolean;
}

/** A pitch count, the centre distance to set for it, and the slack left there. */
export interface CountChoice {
  readonly pitches: number;
  readonly centre_m: number;
  readonly slack_pitches: number;
}

export type CountResult =
  | ({ readonly kind: 'fits'; readonly odd: boolean } & CountChoice)
  /** Only an odd count fits, and offset links are not accepted. */
  | ({ readonly kind: 'oddOnly' } & CountChoice)
  /** The even count with least slack; whether the tensioner absorbs it is not known. */
  | ({ readonly kind: 'takeUpUnknown' } & CountChoice)
  /**
   * Nothing fits. `nearest` is the even count that misses by least, `centre_m` where it would be taut, `slack_pitches`
   * what it has at the nearer end of the limits: more than the take-up, or below 0 where the chain is too short.
   */
  | { readonly kind: 'none'; readonly nearest: CountChoice };

/**
 * One nanometre of chain. It keeps a chain that is taut exactly at a typed limit from being refused by the last bit of a
 * float: the rounding of every length here is below 1e-12 m, and nothing that could be set or measured is as small as this.
 */
const ROUNDING_m = 1e-9;

/**
 * The pitch count to use. Of the even counts that fit: the present one, else the nearest to it, of two as near the smaller; with
 * no present count the smallest. An odd count only where no even one fits and offset links are accepted. A count fits where it
 * is taut within the limits of the centre distance, or where its slack at the far end is within the take-up. Limits are inclusive.
 *
 * @param request  as in `chainGeometry.ts`; limits of the centre distance > 0 (a window may start at 0) and in order, take-up 0 or more
 * @returns the count with its centre distance and slack, or why none will do
 * @throws RangeError  outside those limits (a resolved plan cannot get there)
 * @source our choice; even counts because an odd one needs an offset link (common practice)
 * @example choosePitchCount({ pitch_m: 0.0127, driverTeeth: 20, drivenTeeth: 63, centre: { kind: 'window', least_m: 0.45, most_m: 0.46 },
 *   takeUp_pitches: 0, presentPitches: null, offsetLinkAllowed: false })  // fits: 114 pitches, 0.451992 m, slack 0
 */
export function choosePitchCount(request: CountRequest): CountResult {
  const limits = lengthLimits(request);
  const { presentPitches, takeUp_pitches, offsetLinkAllowed } = request;
  if (presentPitches !== null && !(Number.isInteger(presentPitches) && presentPitches > 0)) {
    throw new RangeError(`presentPitches: ${presentPitches} is not a whole number above 0`);
  }
  const even = nearestCount(limits, 0, presentPitches);
  if (even !== null) return { kind: 'fits', odd: false, ...setting(request, limits, even) };
  const odd = nearestCount(limits, 1, presentPitches);
  if (odd !== null && offsetLinkAllowed) return { kind: 'fits', odd: true, ...setting(request, limits, odd) };
  if (takeUp_pitches === null && limits.reachable) {
    // No even count lies between fewest and most, so the next one up has the least slack.
    return { kind: 'takeUpUnknown', ...setting(request, limits, evenFrom(limits.fewest)) };
  }
  if (odd !== null) return { kind: 'oddOnly', ...setting(request, limits, odd) };
  return { kind: 'none', nearest: nearestMiss(request, limits) };
}

/** What the limits of the centre distance mean for the chain, in pitches. */
interface LengthLimits {
  readonly least_m: number;
  readonly most_m: number;
  readonly tautAtLeast_pitches: number;
  readonly tautAtMost_pitches: number;
  readonly rounding_pitches: number;
  /** Whether the far end is far enough for a chain round both. */
  readonly reachable: boolean;
  readonly larger: number;
  /** Counts that fit, even and odd; none where `most` is below `fewest`. */
  readonly fewest: number;
  readonly most: number;
}

function lengthLimits(request: CountRequest): LengthLimits {
  const { pitch_m, driverTeeth, drivenTeeth } = request;
  const { least_m, most_m } = centreLimits(request.centre);
  const takeUp_pitches = request.takeUp_pitches ?? 0;
  if (!(takeUp_pitches >= 0)) throw new RangeError(`takeUp_pitches: ${takeUp_pitches} is below 0`);
  const larger = Math.max(driverTeeth, drivenTeeth);
  const inside_m = Math.abs(pitchDiameter_m(pitch_m, driverTeeth) - pitchDiameter_m(pitch_m, drivenTeeth)) / 2 + ROUNDING_m;
  // Nearer than that, the smaller pitch circle lies inside the larger and the chain lies round the larger alone.
  const taut = (centre_m: number) => (centre_m <= inside_m ? larger : lengthInPitches(pitch_m, driverTeeth, drivenTeeth, centre_m));
  const tautAtLeast_pitches = taut(least_m);
  const tautAtMost_pitches = taut(most_m);
  const rounding_pitches = ROUNDING_m / pitch_m;
  const reachable = most_m > inside_m;
  return {
    least_m,
    most_m,
    tautAtLeast_pitches,
    tautAtMost_pitches,
    rounding_pitches,
    reachable,
    larger,
    fewest: Math.max(Math.ceil(tautAtLeast_pitches - rounding_pitches), larger + 1),
    most: reachable ? Math.floor(tautAtMost_pitches + takeUp_pitches + rounding_pitches) : 0,
  };
}

function centreLimits(centre: CentreLimits): { readonly least_m: number; readonly most_m: number } {
  const least_m = centre.kind === 'fixed' ? centre.centre_m : centre.least_m;
  const most_m = centre.kind === 'fixed' ? centre.centre_m : centre.most_m;
  if (!(least_m >= 0 && most_m > 0 && least_m <= most_m)) throw new RangeError(`centre: ${least_m} to ${most_m} m is no window`);
  return { least_m, most_m };
}

const evenFrom = (pitches: number): number => pitches + (pitches % 2);

function nearestCount(limits: LengthLimits, parity: 0 | 1, present: number | null): number | null {
  const fewest = limits.fewest + ((limits.fewest + parity) % 2);
  const most = limits.most - ((limits.most + parity) % 2);
  if (fewest > most) return null;
  if (present === null) return fewest;
  // Halfway between two of this parity the smaller is taken.
  const near = present - ((present + parity) % 2);
  return Math.min(Math.max(near, fewest), most);
}

/** Taut where the limits allow it, else at the far end with slack. */
function setting(request: CountRequest, limits: LengthLimits, pitches: number): CountChoice {
  const slack = pitches - limits.tautAtMost_pitches;
  if (slack > limits.rounding_pitches) {
    const absorbed = request.takeUp_pitches === null ? slack : Math.min(slack, request.takeUp_pitches);
    return { pitches, centre_m: limits.most_m, slack_pitches: absorbed };
  }
  const centre_m = Math.min(Math.max(tautCentre_m(request, pitches), limits.least_m), limits.most_m);
  return { pitches, centre_m, slack_pitches: 0 };
}

/** Neither an even nor an odd count fits, so the limits lie between two neighbouring counts: the even one of these misses by less. */
function nearestMiss(request: CountRequest, limits: LengthLimits): CountChoice {
  const short = limits.fewest - 1;
  const tooShort = short % 2 === 0 && short > limits.larger;
  const pitches = tooShort ? short : evenFrom(limits.fewest);
  const slack_pitches = pitches - (tooShort ? limits.tautAtLeast_pitches : limits.tautAtMost_pitches);
  return { pitches, centre_m: tautCentre_m(request, pitches), slack_pitches };
}

function tautCentre_m({ pitch_m, driverTeeth, drivenTeeth }: CountRequest, pitches: number): number {
  const centre_m = centreForPitches_m(pitch_m, driverTeeth, drivenTeeth, pitches);
  if (centre_m === null) throw new RangeError(`pitches: ${pitches} do not go round ${driverTeeth} and ${drivenTeeth} teeth`);
  return centre_m;
}
