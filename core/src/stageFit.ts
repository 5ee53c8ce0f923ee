import type { StageFit } from './drives/driveKind.ts';
import { driveKind } from './drives/index.ts';
import { orNull } from './given.ts';
import type { Stage, Teeth } from './plan.ts';

/** Lays out a stage of a plan with two wheels on it. */
export function fitOf(stage: Stage, teeth: Teeth): StageFit {
  return driveKind(stage.kind).fit(stage.size, teeth.driver, teeth.driven, {
    centre: orNull(stage.centre),
    takeUp_pitches: orNull(stage.takeUp_pitches),
    presentPitches: orNull(stage.presentPitches),
    offsetLinkAllowed: stage.offsetLinkAllowed,
  });
}
