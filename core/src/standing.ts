import type { Mounted } from './layOut.ts';
import { offRatio } from './mixRatio.ts';
import { insideLimits, layStage } from './option.ts';
import { ENDS, type Plan, type Pump, type SideName, stageAt } from './plan.ts';
import { assignPieces } from './rack.ts';
import type { Fraction } from './ratio.ts';
import { madeBPerA } from './train.ts';
import { changedWheelCount, changesOf, partCount, pumpChanges, workOf } from './work.ts';

/** What the order of the search looks at, in its order. */
export interface Standing {
  readonly inside: boolean | null;
  /** Without its sign. */
  readonly offRatio: Fraction;
  /** What decides among equal ones, each a count or a place in a list. */
  readonly places: readonly number[];
}

/** The same with the time an option takes, exact. */
export interface TimedStanding extends Standing {
  readonly work_s: Fraction;
}

/**
 * Where a mounted option stands in the order of the search.
 *
 * @throws RangeError where the plan has no such pump
 * @source the order of the search: inside first, then the smaller off-ratio, fewer parts, fewer purchases, pumps and teeth as in the file
 */
export function standingOf(plan: Plan, { pumps, teeth }: Mounted): Standing {
  const { A, B } = pumpsOf(plan, pumps);
  const e = offRatio(madeBPerA(plan, { A, B }, teeth), plan.mix.wantedBPerA);
  const wheels = teeth.reduce((count, pair, index) => count + changedWheelCount(stageAt(plan, index), pair), 0);
  return {
    inside: insideLimits(e, plan.mix.limits),
    offRatio: e.abs(),
    places: [
      wheels + partCount(pumpChanges(plan, { A, B })),
      assignPieces(plan, teeth).purchases,
      plan.sides.A.pumps.indexOf(A),
      plan.sides.B.pumps.indexOf(B),
      ...teeth.flatMap((pair) => ENDS.map((end) => pair[end])),
    ],
  };
}

export function timedStandingOf(plan: Plan, mounted: Mounted): TimedStanding {
  const stages = plan.stages.flatMap((stage, index) => {
    const teeth = mounted.teeth[index];
    return teeth === undefined ? [] : [layStage(stage, teeth)];
  });
  const changes = changesOf(plan, pumpsOf(plan, mounted.pumps), stages);
  return { ...standingOf(plan, mounted), work_s: workOf(plan.minutes, changes).total.value };
}

function pumpsOf(plan: Plan, ids: Mounted['pumps']): Readonly<Record<SideName, Pump>> {
  const pump = (side: SideName) => {
    const found = plan.sides[side].pumps.find(({ id }) => id === ids[side]);
    if (found === undefined) throw new RangeError(`standingOf: side ${side} has no pump ${ids[side]}`);
    return found;
  };
  return { A: pump('A'), B: pump('B') };
}

type Comparing<Of> = (a: Of, b: Of) => number;

/** The order of the search. */
export const byCloseness: Comparing<Standing> = (a, b) => {
  if (a.inside !== b.inside) return a.inside === true ? -1 : 1;
  const closer = a.offRatio.compare(b.offRatio);
  if (closer !== 0) return closer;
  const apart = a.places.findIndex((place, index) => place !== b.places[index]);
  return apart < 0 ? 0 : (a.places[apart] ?? 0) - (b.places[apart] ?? 0);
};

/** Inside before outside, then the less time; what takes the same time in the order of the search. */
export const byWork: Comparing<TimedStanding> = (a, b) => {
  if (a.inside !== b.inside) return a.inside === true ? -1 : 1;
  return a.work_s.compare(b.work_s) || byCloseness(a, b);
};
