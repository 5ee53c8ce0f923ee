import { en } from '../en.ts';
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

export const pitchOf = (size: string): Input<number> => inFloat(input(en`pitch of chain ${size}`, tableRow(size).pitch_m, 'length'));

const teethOf = (teeth: number): Input<number> => input(en`teeth`, teeth, 'number');

export const pitchDiameterOf = (size: string, teeth: number): Worked<number> =>
  work(pitchDiameter, en`pitch diameter of ${teeth} teeth`, { p: pitchOf(size), N: teethOf(teeth) });

export const rippleOf = (teeth: number): Worked<number> => work(chordalRipple, en`speed ripple of ${teeth} teeth`, { N: teethOf(teeth) });

export function wheelWorkings(size: string, teeth: number): WheelWorkings {
  const p = pitchOf(size);
  const D = pitchDiameterOf(size, teeth);
  return {
    pitchDiameter: D,
    outsideDiameter: work(outsideDiameter, en`outside diameter of ${teeth} teeth`, { p, N: teethOf(teeth) }),
    runningDiameter: work(chainOnDiameter, en`diameter of ${teeth} teeth with the chain on`, { D, p }),
    ripple: rippleOf(teeth),
  };
}

export function loopWorkings(size: string, driverTeeth: number, drivenTeeth: number, centre_m: number): LoopWorkings {
  const p = pitchOf(size);
  const C = input(en`centre distance`, centre_m, 'length');
  const b = work(halfDifference, en`half the difference of the pitch diameters`, {
    'D₁': pitchDiameterOf(size, driverTeeth),
    'D₂': pitchDiameterOf(size, drivenTeeth),
  });
  const a = work(spanAngle, en`angle between a free span and the line of centres`, { b, C });
  const S = work(freeSpan, en`free span`, { b, C });
  const teeth = {
    'N₁': input(en`teeth of the driver`, driverTeeth, 'number'),
    'N₂': input(en`teeth of the driven`, drivenTeeth, 'number'),
  };
  const X = work(beyondTeeth, en`chain beyond half of the teeth`, { S, p, ...teeth, a });
  return {
    length: work(chainLength, en`length of the taut chain`, { ...teeth, X }),
    wrap: work(wrapAngle, en`wrap on the smaller sprocket`, { a }),
    span: S,
  };
}

export const loopSpeed = (size: string, teeth: number, speed: Input<number>): Worked<number> =>
  work(chainSpeed, en`chain speed`, { p: pitchOf(size), N: teethOf(teeth), n: speed });

export function pullLimit(size: string, offsetLink: boolean): Worked<number> {
  const B = input(en`least tensile strength of ${size}`, tableRow(size).leastTensileStrength_N, 'force');
  return offsetLink
    ? work(allowedPullWithOffset, en`a seventh of the least tensile strength, 0.65 of it for the offset link`, { B })
    : work(allowedPull, en`a seventh of the least tensile strength`, { B });
}

/** Movement and spare length for a slack of so much of the span. */
export function slackOf(S: Input<number>, ofSpan: number): SlackEnd {
  const M = work(midSpanMovement, en`movement at mid-span, in all`, { q: input(en`share of the span`, ofSpan, 'share'), S });
  return { movement: M, spare: work(spareLength, en`spare length that stands for it`, { M, S }) };
}

export function wearOf(
  size: string,
  pitches: number,
  wornShare: number,
): { readonly asNew: Worked<number>; readonly limit: Worked<number> } {
  const l = work(newLength, en`${pitches} pitches of a new chain`, { k: input(en`pitches`, pitches, 'number'), p: pitchOf(size) });
  const w = input(en`longer by wear`, wornShare, 'share');
  return { asNew: l, limit: work(wornLength, en`${pitches} pitches of a worn-out chain`, { l, w }) };
}
