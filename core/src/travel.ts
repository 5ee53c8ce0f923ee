import type { StageFit } from './drives/driveKind.ts';
import { ENDS, type Stage, type Teeth } from './plan.ts';

/** A centre within a twentieth of a millimetre of where it stands is left alone (our choice). */
const CENTRE_MOVED_m = 0.00005;
/** Keeps a step of just that, between two lengths as typed, from counting by the last bit of a float. */
const ROUNDING_m = 1e-9;

/** Whether a travel is one that somebody has to set. */
export const isMoved = (travel_m: number): boolean => Math.abs(travel_m) > CENTRE_MOVED_m + ROUNDING_m;

/** Whether nobody touches a stage: both wheels stay, and its loop keeps its length as far as that is known. */
export function isLeftAlone(stage: Stage, teeth: Teeth, fit: StageFit): boolean {
  if (ENDS.some((end) => teeth[end] !== stage[end].teeth)) return false;
  return fit.loop === null || !stage.presentPitches.known || fit.loop.pitches === stage.presentPitches.value;
}

/**
 * How far the shafts of a stage move for a pair of wheels.
 *
 * @returns metres, plus is apart; 0 where the stage is left alone or its centre is fixed; null where the centre now or to set is not given
 */
export function travel_m(stage: Stage, teeth: Teeth, fit: StageFit): number | null {
  if (isLeftAlone(stage, teeth, fit) || (stage.centre.known && stage.centre.value.kind === 'fixed')) return 0;
  if (fit.loop === null || !stage.presentCentre_m.known) return null;
  return fit.loop.centre_m - stage.presentCentre_m.value;
}
