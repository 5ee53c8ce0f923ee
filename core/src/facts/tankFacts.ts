import { batchOf } from '../batch.ts';
import { en } from '../en.ts';
import { flowOf } from '../flow.ts';
import type { Say } from '../format.ts';
import { type Build, type Plan, SIDES } from '../plan.ts';
import { lastsFor, runsLow } from '../tanks.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** How long the tanks last, how to fill them so that both run low together, and what a batch takes. */
export function tankFacts(plan: Plan, build: Build, say: Say): FactGroup {
  return { id: 'tanks', title: en`Tanks and batch`, facts: [...levelFacts(plan, build, say), ...batchFacts(plan, build, say)] };
}

function levelFacts(plan: Plan, build: Build, say: Say): readonly Fact[] {
  const { setting } = flowOf(plan, build);
  const low = runsLow(plan, build);
  const first = low.known && !low.value.together ? low.value.first : null;
  const times = SIDES.flatMap((side) => {
    const lasts = setting === null ? null : lastsFor(plan, setting, side);
    return lasts?.known ? [fact(`lasts${side}`, lasts.value, say, { note: side === first ? en`runs low first` : '' })] : [];
  });
  if (!low.known || low.value.together) return times;
  return [...times, fact('fillTogether', low.value.fill, say, { note: en`tank ${low.value.first} as it is` })];
}

function batchFacts(plan: Plan, build: Build, say: Say): readonly Fact[] {
  const batch = batchOf(plan, build);
  if (!batch.known) return [];
  return SIDES.flatMap((side) => {
    const { mass, volume } = batch.value[side];
    return [
      ...(mass.known ? [fact(`batchMass${side}`, mass.value, say, { what: en`${side} for the batch, by mass` })] : []),
      ...(volume.known
        ? [
            fact(`batchVolume${side}`, volume.value, say, {
              what: en`${side} for the batch, by volume`,
              note: en`at the temperature as run`,
            }),
          ]
        : []),
    ];
  });
}
