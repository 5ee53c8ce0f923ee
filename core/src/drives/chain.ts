import { en } from '../en.ts';
import { type Fraction, ratioOf } from '../ratio.ts';
import { oilLimits } from '../tables/chainOil.ts';
import { powerConstants } from '../tables/chainPower.ts';
import { CHAIN_SIZES, chainSize, sameChain } from '../tables/chainSizes.ts';
import { centreForPitches_m, chainOnDiameter_m, freeSpan_m, outsideDiameter_m, pitchDiameter_m, wrapAngle_rad } from './chainGeometry.ts';
import { ratedPower } from './chainPower.ts';
import { loopSpeed, loopWorkings, pitchDiameterOf, pitchOf, pullLimit, rippleOf, slackOf, wearOf, wheelWorkings } from './chainWorkings.ts';
import type { DriveKind, LoopFit, LoopRequest, Oiling, StageFit, WheelSize } from './driveKind.ts';
import { type CountResult, choosePitchCount } from './pitchCount.ts';

/** A chain is worn out at 1.5 per cent over its new length where wheels stay under 60 teeth (handbook practice). */
const WORN_BY = 0.015;
/** Total mid-span movement of a level drive, as a share of the free span [machinerys-handbook, from memory; chain-maker-answers]. */
const SLACK = { from: 0.04, to: 0.06 } as const;

/** Roller chain on two sprockets. */
export const chain: DriveKind = {
  kind: 'chain',
  words: { wheel: en`sprocket`, wheels: en`sprockets`, loop: en`chain`, size: en`chain number` },
  sizeHead: 'chain number',
  sizes: CHAIN_SIZES.map((size) => size.number),
  size: (written) => chainSize(written)?.number ?? null,
  sameSize: sameChain,
  turns: (driverTeeth, drivenTeeth): Fraction => ratioOf(driverTeeth, drivenTeeth),
  smooth: { teeth: 17, source: en`handbook practice, from memory: 17 teeth or more for smooth running` },
  ripple: rippleOf,
  fit,
  wheelWorkings,
  loopWorkings,
  pitchDiameter: pitchDiameterOf,
  loopSpeed,
  allowedPull: pullLimit,
  needsOffsetLink: (pitches) => pitches % 2 === 1,
  ratedPower: (size, smallerTeeth, itsSpeed) => {
    const constants = powerConstants(size);
    return constants === null ? null : ratedPower(constants, pitchOf(size), smallerTeeth, itsSpeed);
  },
  oiling,
  slackShares: SLACK,
  slack: (span) => ({ from: slackOf(span, SLACK.from), to: slackOf(span, SLACK.to) }),
  wear: (size, pitches) => wearOf(size, pitches, WORN_BY),
};

function oiling(size: string): Oiling | null {
  const limits = oilLimits(size);
  if (limits === null) return null;
  return {
    ways: [
      { how: en`oiling by hand or drip`, to_m_per_s: limits.byHand_m_per_s },
      { how: en`an oil bath or slinger disc`, to_m_per_s: limits.bath_m_per_s },
      { how: en`an oil stream`, to_m_per_s: Number.POSITIVE_INFINITY },
    ],
    takenFrom: sameChain(limits.number, size) ? null : limits.number,
  };
}

function wheelSize(pitch_m: number, teeth: number): WheelSize {
  return {
    pitchDiameter_m: pitchDiameter_m(pitch_m, teeth),
    outsideDiameter_m: outsideDiameter_m(pitch_m, teeth),
    runningDiameter_m: chainOnDiameter_m(pitch_m, teeth),
  };
}

function fit(size: string, driverTeeth: number, drivenTeeth: number, request: LoopRequest): StageFit {
  const pitch_m = pitchOf(size).value;
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
