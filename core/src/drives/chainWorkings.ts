import { type ChainSize, chainSize } from '../tables/chainSizes.ts';
import { type Input, inFloat, input, type Worked, work } from '../working.ts';
import {
  allowedPull,
  allowedPullWithOffset,
  beyondTeeth,
  chainLength,
  chainOnDiameter,
  chainSpeed,
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
import type { LoopWorkings, SlackEnd, WheelWorkings } from './driveKind.ts';

// The figures of a roller chain with how they came about, for screen and sheet. Sizes and teeth are those of a resolved plan.

/** @throws RangeError for a number that is not in the table (a resolved plan cannot hold it) */
export function tableRow(size: string): ChainSize {
  const row = chainSize(size);
  if (row === null) throw new RangeError(`chain: ${size} is not in the table`);
  return row;
}

export const pitchOf = (size: string): Input<number> => inFloat(input(`pitch of chain ${size}`, tableRow(size).pitch_m, 'length'));

const teethOf = (teeth: number): Input<number> => input('teeth', teeth, 'number');

export const pitchDiameterOf = (size: string, teeth: number): Worked<number> =>
  work(pitchDiameter, `pitch diameter of ${teeth} teeth`, { p: pitchOf(size), N: teethOf(teeth) });

export const rippleOf = (teeth: number): Worked<number> => work(chordalRipple, `speed ripple of ${teeth} teeth`, { N: teethOf(teeth) });

export function wheelWorkings(size: string, teeth: number): WheelWorkings {
  const p = pitchOf(size);
  const D = pitchDiameterOf(size, teeth);
  return {
    pitchDiameter: D,
    outsideDiameter: work(outsideDiameter, `outside diameter of ${teeth} teeth`, { p, N: teethOf(teeth) }),
    runningDiameter: work(chainOnDiameter, `diameter of ${teeth} teeth with the chain on`, { D, p }),
    ripple: rippleOf(teeth),
  };
}

export function loopWorkings(size: string, driverTeeth: number, drivenTeeth: number, centre_m: number): LoopWorkings {
  const p = pitchOf(size);
  const C = input('centre distance', centre_m, 'length');
  const b = work(halfDifference, 'half the difference of the pitch diameters', {
    'D₁': pitchDiameterOf(size, driverTeeth),
    'D₂': pitchDiameterOf(size, drivenTeeth),
  });
  const a = work(spanAngle, 'angle between a free span and the line of centres', { b, C });
  const S = work(freeSpan, 'free span', { b, C });
  const teeth = { 'N₁': input('teeth of the driver', driverTeeth, 'number'), 'N₂': input('teeth of the driven', drivenTeeth, 'number') };
  const X = work(beyondTeeth, 'chain beyond half of the teeth', { S, p, ...teeth, a });
  return {
    length: work(chainLength, 'length of the taut chain', { ...teeth, X }),
    wrap: work(wrapAngle, 'wrap on the smaller sprocket', { a }),
    span: S,
  };
}

export const loopSpeed = (size: string, teeth: number, speed: Input<number>): Worked<number> =>
  work(chainSpeed, 'chain speed', { p: pitchOf(size), N: teethOf(teeth), n: speed });

export function pullLimit(size: string, offsetLink: boolean): Worked<number> {
  const B = input(`least tensile strength of ${size}`, tableRow(size).leastTensileStrength_N, 'force');
  return offsetLink
    ? work(allowedPullWithOffset, 'a seventh of the least tensile strength, 0.65 of it for the offset link', { B })
    : work(allowedPull, 'a seventh of the least tensile strength', { B });
}

/** Movement and spare length for a slack of so much of the span. */
export function slackOf(S: Input<number>, ofSpan: number): SlackEnd {
  const M = work(midSpanMovement, 'movement at mid-span, in all', { q: input('share of the span', ofSpan, 'share'), S });
  return { movement: M, spare: work(spareLength, 'spare length that stands for it', { M, S }) };
}

export function wearOf(
  size: string,
  pitches: number,
  wornShare: number,
): { readonly asNew: Worked<number>; readonly limit: Worked<number> } {
  const l = work(newLength, `${pitches} pitches of a new chain`, { k: input('pitches', pitches, 'number'), p: pitchOf(size) });
  const w = input('longer by wear', wornShare, 'share');
  return { asNew: l, limit: work(wornLength, `${pitches} pitches of a worn-out chain`, { l, w }) };
}
