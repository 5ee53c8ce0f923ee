import { en } from '../en.ts';
import { fixed, type Say } from '../format.ts';
import type { MaterialReach } from '../materialReach.ts';
import { type Plan, SIDES, type Stage } from '../plan.ts';
import { whole } from '../ratio.ts';
import { displacementText, shortName } from '../sheet/paperText.ts';
import { fittedPumps } from '../train.ts';
import { clip } from '../visible.ts';

/** What is not given is named as often as this; of more, how many there are. */
const NAMED = 5;
const WHAT_LENGTH = 60;
const NAME_LENGTH = 28;

const WHEELS: Readonly<Record<Plan['choice']['wheels'], string>> = {
  rack: en`those on the rack and on the machine`,
  'rack and purchases': en`those on the rack and on the machine, and some to buy`,
  any: en`any in a range, whatever is on the rack`,
};

/**
 * What a quote rests on, in sentences: pumps, wheels, what may change, and what is not known.
 *
 * @param incomplete  names of the materials that lack something
 * @source our choice of words
 */
export function assumptions(plan: Plan, materials: readonly MaterialReach[], incomplete: readonly string[], say: Say): readonly string[] {
  const { choice } = plan;
  const measured = SIDES.some((side) => fittedPumps(plan)[side].asMeasured);
  const open = plan.stages.filter((stage) => stage.open);
  const wheels = [
    WHEELS[choice.wheels],
    ...(choice.wheels === 'rack and purchases' ? [en`at most ${choice.purchases}`] : []),
    ...(choice.teeth === null ? [] : [en`${choice.teeth.from} to ${choice.teeth.to} teeth`]),
  ];
  return [
    choice.anyPump
      ? en`Pumps fitted or any a side may carry; fitted: ${pumpsText(plan, say)}.`
      : en`Pumps as fitted: ${pumpsText(plan, say)}.`,
    measured
      ? en`Delivery as measured: wear and slip are not counted in the ratios.`
      : en`Delivery as new: wear and slip are not counted in the ratios.`,
    en`Wheels: ${wheels.join(', ')}.`,
    open.length === 0 ? en`No stage may change.` : en`Stages that may change: ${open.map(stageText).join('; ')}.`,
    en`A ratio counts only where it can be built: chain length and centre, guard, bores, teeth of each slot, quantities.`,
    ...notInTheWorstCase(materials),
    ...notOnThePage(incomplete),
    en`Holds for the machine, the rack and the materials as they stand in the shop file on the date above.`,
  ];
}

function pumpsText(plan: Plan, say: Say): string {
  const pumps = fittedPumps(plan);
  const pumpText = (side: 'A' | 'B') => {
    const { displacement_m3_per_rev, tolerance } = pumps[side];
    const size = `${side} ${displacementText(displacement_m3_per_rev, say)}`;
    return tolerance.known ? `${size} ± ${fixed(tolerance.value.mul(whole(100)), 2, say)}\u00A0%` : en`${size}, tolerance not given`;
  };
  return SIDES.map(pumpText).join('; ');
}

const stageText = ({ name, size }: Stage): string => `${shortName(name)}, ${size}`;

function notOnThePage(incomplete: readonly string[]): readonly string[] {
  if (incomplete.length === 0) return [];
  const names = incomplete.map((name) => clip(name, NAME_LENGTH));
  return [en`Not complete in the shop file, and so not on this page: ${firstFew(names)}.`];
}

/** What is not given for all of them stands without a count. */
function notInTheWorstCase(materials: readonly MaterialReach[]): readonly string[] {
  const best = materials.flatMap((one) => one.best ?? []);
  const counts = new Map<string, number>();
  for (const { notGiven } of best)
    for (const what of notGiven.map((one) => clip(one, WHAT_LENGTH))) counts.set(what, (counts.get(what) ?? 0) + 1);
  if (counts.size === 0) return [];
  const words = [...counts].map(([what, count]) => (count === best.length ? what : en`${what} (${count} of ${best.length} materials)`));
  return [en`Not given or not estimated, and so not in the worst case: ${firstFew(words)}.`];
}

function firstFew(words: readonly string[]): string {
  const rest = words.length - NAMED;
  return [...words.slice(0, NAMED), ...(rest > 0 ? [en`and ${rest} more`] : [])].join(', ');
}
