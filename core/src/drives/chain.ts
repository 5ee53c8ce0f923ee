import { type Fraction, float, ratioOf } from '../ratio.ts';
import { CHAIN_SIZES, type ChainSize, chainSize, sameChain } from '../tables/chainSizes.ts';
import {
  centreForPitches_m,
  chainOnDiameter_m,
  freeSpan_m,
  outsideDiameter_m,
  pitchDiameter_m,
  wornLength_m,
  wrapAngle_rad,
} from './chainGeometry.ts';
import type { DriveKind, LoopFit, LoopRequest, StageFit, WheelSize } from './driveKind.ts';
import { type CountResult, choosePitchCount } from './pitchCount.ts';

/** A chain is worn out at 1.5 per cent over its new length where wheels stay under 60 teeth (handbook practice). */
const WORN_BY = 0.015;

/** Roller chain on two sprockets. */
export const chain: DriveKind = {
  kind: 'chain',
  words: { wheel: 'sprocket', loop: 'chain', size: 'chain number' },
  sizes: CHAIN_SIZES.map((size) => size.number),
  size: (written) => chainSize(written)?.number ?? null,
  sameSize: sameChain,
  turns: (driverTeeth, drivenTeeth): Fraction => ratioOf(driverTeeth, drivenTeeth),
  smooth: { teeth: 17, source: 'handbook practice, from memory: 17 teeth or more for smooth running' },
  fit,
  wear: (size, pitches) => {
    const pitch_m = pitchOf_m(size);
    return { new_m: pitch_m * pitches, limit_m: wornLength_m(pitch_m, pitches, WORN_BY) };
  },
};

function tableRow(size: string): ChainSize {
  const row = chainSize(size);
  if (row === null) throw new RangeError(`chain: ${size} is not in the table (a resolved plan cannot hold it)`);
  return row;
}

const pitchOf_m = (size: string): number => float(tableRow(size).pitch_m);

function wheelSize(pitch_m: number, teeth: number): WheelSize {
  return {
    pitchDiameter_m: pitchDiameter_m(pitch_m, teeth),
    outsideDiameter_m: outsideDiameter_m(pitch_m, teeth),
    runningDiameter_m: chainOnDiameter_m(pitch_m, teeth),
  };
}

function fit(size: string, driverTeeth: number, drivenTeeth: number, request: LoopRequest): StageFit {
  const pitch_m = pitchOf_m(size);
  return {
    driver: wheelSize(pitch_m, driverTeeth),
    driven: wheelSize(pitch_m, drivenTeeth),
    loop: loopFit(pitch_m, driverTeeth, drivenTeeth, request),
  };
}

function loopFit(pitch_m: number, driverTeeth: number, drivenTeeth: number, request: LoopRequest): LoopFit | null {
  const { centre, presentPitches } = request;
  const lay = (count: CountResult | null, pitches: number, centre_m: number, slack_pitches: number): LoopFit => ({
    count,
    pitches,
    centre_m,
    slack_pitches,
    wrap_rad: wrapAngle_rad(pitch_m, driverTeeth, drivenTeeth, centre_m),
    span_m: freeSpan_m(pitch_m, driverTeeth, drivenTeeth, centre_m),
  });
  if (centre === null) {
    if (presentPitches === null) return null;
    const taut_m = centreForPitches_m(pitch_m, driverTeeth, drivenTeeth, presentPitches);
    return taut_m === null ? null : lay(null, presentPitches, taut_m, 0);
  }
  const count = choosePitchCount({ ...request, centre, pitch_m, driverTeeth, drivenTeeth });
  const chosen = count.kind === 'none' ? count.nearest : count;
  return lay(count, chosen.pitches, chosen.centre_m, chosen.slack_pitches);
}
