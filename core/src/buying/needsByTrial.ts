import type { Plan, Teeth } from '../plan.ts';
import { assignPieces, changedPlaces, sameSize, sameWheelWanted } from '../rack.ts';
import type { Need } from './need.ts';
import { type Wheel, withWheels } from './wheels.ts';

/**
 * Every choice of as many wheels as are missing is laid on the rack and tried. One too few never does, and one too many is never needed:
 * each piece serves one slot, so that every set that does is made of what is missing and more.
 */
export function byTrial(plan: Plan, wheels: readonly Wheel[], teeth: readonly Teeth[]): readonly Need[] {
  const { purchases } = assignPieces(plan, teeth);
  const places = changedPlaces(plan, teeth);
  const first = places.filter((place, index) => places.findIndex((other) => sameWheelWanted(place, other)) === index);
  const useful = [...wheels.keys()].filter((index) => {
    const wheel = wheels[index];
    return wheel !== undefined && first.some(({ stage, teeth: wanted }) => wanted === wheel.teeth && sameSize(wheel, stage));
  });
  return multisets(useful, purchases).filter((need) => {
    const bought = withWheels(
      plan,
      need.flatMap((index) => wheels[index] ?? []),
    );
    return assignPieces(bought, teeth).origins.every(({ driver, driven }) => driver.from !== 'nowhere' && driven.from !== 'nowhere');
  });
}

function multisets(from: readonly number[], size: number): readonly Need[] {
  if (size === 0) return [[]];
  return from.flatMap((one, index) => multisets(from.slice(index), size - 1).map((rest) => [one, ...rest]));
}
