import { ratioOf } from '../ratio.ts';
import {
  beyondTeeth,
  chainLength,
  chainOnDiameter,
  chordalRipple,
  freeSpan,
  halfDifference,
  midSpanMovement,
  newLength,
  outsideDiameter,
  pitchDiameter,
  spanAngle,
  spareLength,
  wornLength,
  wrapAngle,
} from './chainFormulas.ts';

// Roller chain round two sprockets in one plane, as a taut belt on the pitch circles that counts one pitch for every
// tooth angle it lies on. The formulas and their letters stand in `chainFormulas.ts`; here is what may be put into them, and the
// centre distance for a length, which no formula gives.

/**
 * Pitch diameter of a sprocket: the circle through the pin centres of a seated chain.
 *
 * @param pitch_m  pin to pin, > 0
 * @param teeth    whole number, 3 or more
 * @returns metres
 * @throws RangeError  outside those limits (a resolved plan cannot get there; the same holds for every function here)
 * @source plane geometry: chord p of a regular polygon, D = p / sin(π/N); iso-606 annex A
 * @example pitchDiameter_m(0.0127, 17)  // 0.069116
 */
export function pitchDiameter_m(pitch_m: number, teeth: number): number {
  return pitchDiameter.of({ p: positive('pitch_m', pitch_m), N: wholeTeeth(teeth) });
}

/**
 * Outside diameter of the bare sprocket, over the tips of its teeth.
 *
 * @param pitch_m  > 0
 * @param teeth    3 or more
 * @returns metres
 * @throws RangeError  outside those limits
 * @source asme-b29.1: p (0.6 + cot(π/N))
 * @example outsideDiameter_m(0.0127, 60)  // 0.24995
 */
export function outsideDiameter_m(pitch_m: number, teeth: number): number {
  return outsideDiameter.of({ p: positive('pitch_m', pitch_m), N: wholeTeeth(teeth) });
}

/**
 * Diameter that turns with the chain on: its plates stand above the teeth.
 *
 * @param pitch_m  > 0
 * @param teeth    3 or more
 * @returns metres
 * @throws RangeError  outside those limits
 * @source asme-b29.1: plates of the roller link are at most 0.95 p high, half of that on each side of the pitch circle
 * @example chainOnDiameter_m(0.0127, 60)  // 0.254728
 */
export function chainOnDiameter_m(pitch_m: number, teeth: number): number {
  return chainOnDiameter.of({ D: pitchDiameter_m(pitch_m, teeth), p: pitch_m });
}

/**
 * Length of a taut chain, in pitches and not rounded. It grows with the centre distance wherever the sprockets are clear of each other.
 *
 * @param pitch_m      > 0
 * @param driverTeeth  3 or more; the two may change places
 * @param drivenTeeth  3 or more
 * @param centre_m     > 0, and no less than (D2 - D1)/2, where the smaller pitch circle touches the larger from inside
 * @returns pitches
 * @throws RangeError  outside those limits
 * @source plane geometry: L/p = 2 (C/p) cos a + N2 (π + 2a)/2π + N1 (π - 2a)/2π
 * @example lengthInPitches(0.0127, 17, 34, 0.3175)  // 75.7931
 */
export function lengthInPitches(pitch_m: number, driverTeeth: number, drivenTeeth: number, centre_m: number): number {
  const pair = pairOf(driverTeeth, drivenTeeth);
  return chainLength.of({ 'N₁': driverTeeth, 'N₂': drivenTeeth, X: beyond(pair, centreInPitches(pair, pitch_m, centre_m)) });
}

/**
 * Centre distance at which a chain of so many pitches is taut.
 *
 * @param pitch_m      > 0
 * @param driverTeeth  3 or more; the two may change places
 * @param drivenTeeth  3 or more
 * @param pitches      > 0
 * @returns metres, to full double precision; null where the chain cannot go round both, that is with no more pitches than the larger has teeth
 * @throws RangeError  outside those limits
 * @source the length of `lengthInPitches`, solved for C
 * @example centreForPitches_m(0.0127, 17, 34, 76)  // 0.318822
 */
export function centreForPitches_m(pitch_m: number, driverTeeth: number, drivenTeeth: number, pitches: number): number | null {
  const pair = pairOf(driverTeeth, drivenTeeth);
  positive('pitch_m', pitch_m);
  if (positive('pitches', pitches) <= Math.max(driverTeeth, drivenTeeth)) return null;
  const wanted = pitches - (driverTeeth + drivenTeeth) / 2;
  // Newton, with no need of a bracket. The length is convex in C, as D2 - D1 is never more than p (N2 - N1)/π; and the start, the
  // answer for equal sprockets, is never short of the root, as C cos a + a (D2 - D1)/2 is at least C. So every step comes down
  // towards the root and none passes it; where rounding leaves no step down, it is reached.
  let centre = wanted / 2;
  for (;;) {
    const next = centre - (beyond(pair, centre) - wanted) / growth(pair, centre);
    if (!(next < centre)) return centre * pitch_m;
    centre = next;
  }
}

/**
 * Wrap: contact angle of the taut chain on the smaller sprocket.
 *
 * @param pitch_m      > 0
 * @param driverTeeth  3 or more; the two may change places
 * @param drivenTeeth  3 or more
 * @param centre_m     > 0, and no less than (D2 - D1)/2
 * @returns radians, π - 2a
 * @throws RangeError  outside those limits
 * @source plane geometry; machine-elements, chain drives
 * @example wrapAngle_rad(0.0127, 17, 51, 0.381)  // 2.77956, which is 159.26 degrees
 */
export function wrapAngle_rad(pitch_m: number, driverTeeth: number, drivenTeeth: number, centre_m: number): number {
  const pair = pairOf(driverTeeth, drivenTeeth);
  return wrapAngle.of({ a: spanAngle.of({ b: pair.offset, C: centreInPitches(pair, pitch_m, centre_m) }) });
}

/**
 * Free span: the straight run between the tangent points.
 *
 * @param pitch_m      > 0
 * @param driverTeeth  3 or more; the two may change places
 * @param drivenTeeth  3 or more
 * @param centre_m     > 0, and no less than (D2 - D1)/2
 * @returns metres, C cos a
 * @throws RangeError  outside those limits
 * @source plane geometry
 * @example freeSpan_m(0.0127, 17, 34, 0.3175)  // 0.315646
 */
export function freeSpan_m(pitch_m: number, driverTeeth: number, drivenTeeth: number, centre_m: number): number {
  const pair = pairOf(driverTeeth, drivenTeeth);
  return pitch_m * freeSpan.of({ b: pair.offset, C: centreInPitches(pair, pitch_m, centre_m) });
}

/**
 * Chordal speed ripple: how far the chain's speed drops between two teeth, as a fraction of its greatest.
 *
 * @param teeth  3 or more
 * @returns a fraction, 1 - cos(π/N); textbooks that divide by the mean speed print a little more (1.712 for 1.703 per cent at 17 teeth)
 * @throws RangeError  outside those limits
 * @source plane geometry: the chain's line lies between D/2 and D/2 cos(π/N) from the shaft
 * @example speedRipple(17)  // 0.017027
 */
export function speedRipple(teeth: number): number {
  return chordalRipple.of({ N: wholeTeeth(teeth) });
}

/**
 * Slack as it is felt by hand: how far the middle of the slack span moves in all, from one side to the other.
 *
 * @param span_m  free span, > 0
 * @param ofSpan  movement as a fraction of the span, > 0; 0.04 to 0.06 is usual for level drives
 * @returns metres; the sag each way is half of it
 * @throws RangeError  outside those limits
 * @source machinerys-handbook, from memory; chain-maker-answers
 * @example midSpanMovement_m(0.452, 0.04)  // 0.01808
 */
export function midSpanMovement_m(span_m: number, ofSpan: number): number {
  return midSpanMovement.of({ q: positive('ofSpan', ofSpan), S: positive('span_m', span_m) });
}

/**
 * Spare length of chain that a mid-span movement stands for, in the one span that sags.
 *
 * @param span_m      free span, > 0
 * @param movement_m  in all, > 0 and small beside the span
 * @returns metres, by the flat parabola 8 s²/(3 L) with the sag s half the movement; at a movement of 6 % of the span the terms left out are 0.2 % of it
 * @throws RangeError  outside those limits
 * @source arc length of a flat parabola
 * @example spareLength_m(0.452, 0.01808)  // 0.00048213
 */
export function spareLength_m(span_m: number, movement_m: number): number {
  return spareLength.of({ M: positive('movement_m', movement_m), S: positive('span_m', span_m) });
}

/**
 * What a number of pitches may measure, pin to pin, when the chain has worn longer by a given fraction.
 *
 * @param pitch_m     of the new chain, > 0
 * @param pitches     measured over, > 0
 * @param elongation  worn longer by this fraction, 0 or more
 * @returns metres
 * @throws RangeError  outside those limits
 * @source definition
 * @example wornLength_m(0.0127, 20, 0.015)  // 0.25781
 */
export function wornLength_m(pitch_m: number, pitches: number, elongation: number): number {
  if (!(elongation >= 0)) throw new RangeError(`elongation: ${elongation} is below none`);
  const new_m = newLength.of({ k: positive('pitches', pitches), p: positive('pitch_m', pitch_m) });
  return wornLength.of({ l: new_m, w: elongation });
}

/** When one tooth meets the same link again. */
export interface MeetingCycle {
  readonly sprocketTurns: number;
  readonly chainLoops: number;
}

/**
 * How often sprocket and chain go round until the same tooth meets the same link; the more, the more evenly they wear.
 *
 * @param pitches  whole number of the chain, 1 or more
 * @param teeth    3 or more
 * @returns turns of the sprocket and rounds of the chain: pitches and teeth, each over their greatest common factor
 * @throws RangeError  outside those limits
 * @source britannica-1911, hunting tooth
 * @example meetingCycle(96, 15)  // { sprocketTurns: 32, chainLoops: 5 }
 */
export function meetingCycle(pitches: number, teeth: number): MeetingCycle {
  const { n, d } = ratioOf(positive('pitches', pitches), wholeTeeth(teeth));
  return { sprocketTurns: Number(n), chainLoops: Number(d) };
}

/** Two sprockets measured in pitches. Only the difference of their sizes counts, so driver and driven may change places. */
interface Pair {
  readonly driverTeeth: number;
  readonly drivenTeeth: number;
  /** Half the difference of the pitch diameters. */
  readonly offset: number;
}

function pairOf(driverTeeth: number, drivenTeeth: number): Pair {
  return {
    driverTeeth,
    drivenTeeth,
    offset: halfDifference.of({ 'D₁': pitchDiameter_m(1, driverTeeth), 'D₂': pitchDiameter_m(1, drivenTeeth) }),
  };
}

/** Chain beyond the mean of the teeth: apart from that mean, so that it keeps its digits near the limit. */
function beyond({ driverTeeth, drivenTeeth, offset: b }: Pair, centre: number): number {
  const S = freeSpan.of({ b, C: centre });
  return beyondTeeth.of({ S, p: 1, 'N₁': driverTeeth, 'N₂': drivenTeeth, a: spanAngle.of({ b, C: centre }) });
}

/** Derivative of `beyond` with respect to the centre distance. */
function growth({ driverTeeth, drivenTeeth, offset: b }: Pair, centre: number): number {
  return (2 * centre - (Math.abs(driverTeeth - drivenTeeth) * b) / (Math.PI * centre)) / freeSpan.of({ b, C: centre });
}

function centreInPitches(pair: Pair, pitch_m: number, centre_m: number): number {
  const centre = positive('centre_m', centre_m) / positive('pitch_m', pitch_m);
  if (centre < pair.offset) throw new RangeError(`centre_m: ${centre_m} is less than half the difference of the pitch diameters`);
  return centre;
}

function wholeTeeth(teeth: number): number {
  if (!Number.isInteger(teeth) || teeth < 3) throw new RangeError(`teeth: ${teeth} is not a whole number of 3 or more`);
  return teeth;
}

function positive(name: string, value: number): number {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) throw new RangeError(`${name}: ${value} is not a number above 0`);
  return value;
}
