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
  const purchases = choice.wheels === 'rack and purchases' ? en`, at most ${choice.purchases}` : '';
  const teeth = choice.teeth === null ? '' : en`, ${choice.teeth.from} to ${choice.teeth.to} teeth`;
  return [
    en`Pumps ${choice.anyPump ? en`fitted or any a side may carry; fitted` : en`as fitted`}: ${pumpsText(plan, say)}.`,
    en`Delivery ${measured ? en`as measured` : en`as new`}: wear and slip are not counted in the ratios.`,
    en`Wheels: ${WHEELS[choice.wheels]}${purchases}${teeth}.`,
    open.length === 0 ? en`No stage may change.` : en`Stages that may change: ${open.map(stageText).join('; ')}.`,
    en`A ratio counts only where it can be built: chain length and centre, guard, bores, teeth of each slot, quantities.`,
    ...notInTheWorstCase(materials),
    ...notOnThePage(incomplete),
    en`Holds for the machine, the rack and the materials as they stand in the shop file on the date above.`,
  ];
}

function pumpsText(plan: Plan, say: Say): string {
  const pumps = fittedPumps(plan);
  const tolerance = (side: 'A' | 'B') =>
    pumps[side].tolerance.known ? ` ± ${fixed(pumps[side].tolerance.value.mul(whole(100)), 2, say)}\u00A0%` : en`, tolerance not given`;
  return SIDES.map((side) => `${side} ${displacementText(pumps[side].displacement_m3_per_rev, say)}${tolerance(side)}`).join('; ');
}

const stageText = ({ name, size }: Stage): string => `${shortName(name)}, ${size}`;

function notOnThePage(incomplete: readonly string[]): readonly string[] {
  if (incomplete.length === 0) return [];
  const rest = incomplete.length > NAMED ? en`, and ${incomplete.length - NAMED} more` : '';
  const names = incomplete.slice(0, NAMED).map((name) => clip(name, NAME_LENGTH));
  return [en`Not complete in the shop file, and so not on this page: ${names.join(', ')}${rest}.`];
}

/** What is not given for all of them stands without a count. */
function notInTheWorstCase(materials: readonly MaterialReach[]): readonly string[] {
  const best = materials.flatMap((one) => one.best ?? []);
  const counts = new Map<string, number>();
  for (const { notGiven } of best)
    for (const what of notGiven.map((one) => clip(one, WHAT_LENGTH))) counts.set(what, (counts.get(what) ?? 0) + 1);
  if (counts.size === 0) return [];
  const words = [...counts].map(([what, count]) => (count === best.length ? what : en`${what} (${count} of ${best.length} materials)`));
  const rest = words.length > NAMED ? en`, and ${words.length - NAMED} more` : '';
  return [en`Not given or not estimated, and so not in the worst case: ${words.slice(0, NAMED).join(', ')}${rest}.`];
}
