import { en } from '../en.ts';
import type { Place } from '../finding.ts';
import { type Choice, END_WORDS, ENDS } from '../plan.ts';
import type { TypedQuantity } from '../reading.ts';
import type { Dimension } from '../units.ts';
import { spoken } from './fields.ts';
import type { MachineRow } from './machine.ts';
import { type Problems, si } from './problems.ts';
import { isOpen } from './resolveMachine.ts';
import type { Trains } from './shaftTree.ts';

/** Most open stages a search takes on. */
const MOST_OPEN_STAGES = 3;

/** What no plan can do without. Everything else may stay empty. */
export function checkPresent(machine: MachineRow, place: Place, problems: Problems): void {
  if (machine.motor.speed === undefined)
    problems.add([...place, 'motor', 'speed'], en`the speed of the motor shaft at 100 % is missing: the name plate or the drive says it`);
  machine.stages.forEach((stage, index) => {
    for (const end of ENDS) {
      if (stage[end].teeth !== undefined) continue;
      problems.add(
        [...place, 'stages', index, end, 'teeth'],
        en`the teeth fitted on ${stage.name ?? stage.id} ${END_WORDS[end]} are missing: stamped on the hub, or counted`,
      );
    }
  });
  for (const side of ['A', 'B'] as const) {
    const fitted = machine[side].pumps.findIndex((pump) => pump.id === machine[side].fitted);
    // That the fitted pump is not listed at all is said with the references.
    if (fitted < 0 || machine[side].pumps[fitted]?.displacement !== undefined) continue;
    problems.add(
      [...place, side, 'pumps', fitted, 'displacement'],
      en`the displacement of pump ${side} is missing: its plate or its data sheet says it`,
    );
  }
}

type Range = readonly [from: TypedQuantity, to: TypedQuantity];

/** Ranges run from the smaller to the larger value. */
export function checkRanges(machine: MachineRow, place: Place, problems: Problems): void {
  const inOrder = (dimension: Dimension, [from, to]: Range, name: string, where: Place) => {
    if (si(dimension, from).compare(si(dimension, to)) <= 0) return;
    problems.add([...place, ...where], en`${name} runs from ${spoken(from)} to ${spoken(to)}: the first must not be larger`);
  };
  const usable = machine.motor.usable;
  if (usable !== undefined) inOrder('share', [usable.from, usable.to], en`the usable range of the motor`, ['motor', 'usable']);
  machine.stages.forEach((stage, index) => {
    const at = ['stages', index];
    const { centre } = stage;
    if (centre !== undefined && 'from' in centre) inOrder('length', [centre.from, centre.to], en`the centre distance`, [...at, 'centre']);
    for (const end of ENDS) {
      const { teethFrom, teethTo } = stage[end];
      if (teethFrom === undefined || teethTo === undefined || teethFrom <= teethTo) continue;
      problems.add([...place, ...at, end, 'teethFrom'], en`the teeth run from ${teethFrom} to ${teethTo}: the first must not be larger`);
    }
  });
  for (const side of ['A', 'B'] as const) {
    machine[side].pumps.forEach(({ speedFrom, speedTo }, index) => {
      if (speedFrom === undefined || speedTo === undefined) return;
      inOrder('speed', [speedFrom, speedTo], en`the pump speed`, [side, 'pumps', index, 'speedFrom']);
    });
  }
}

/** More open stages than a search takes on. */
export function checkOpenStages(machine: MachineRow, trains: Trains, place: Place, problems: Problems): void {
  const open = machine.stages.filter((_, index) => isOpen(machine, index, trains)).length;
  if (open <= MOST_OPEN_STAGES) return;
  problems.add(
    [...place, 'stages'],
    en`${open} stages may change, and ${MOST_OPEN_STAGES} are the most a search takes on: close some of their slots`,
  );
}

/** Where wheels may be bought, something must say with which teeth; otherwise none would be, in silence. */
export function checkBuying(machine: MachineRow, choice: Choice, trains: Trains, place: Place, problems: Problems): void {
  if (choice.purchases === 0 || choice.teeth !== null) return;
  const endless = machine.stages.flatMap((stage, index) =>
    ENDS.flatMap((end) => {
      const { mayChange, teethFrom, teethTo } = stage[end];
      if (mayChange === false || !isOpen(machine, index, trains) || (teethFrom !== undefined && teethTo !== undefined)) return [];
      const field = teethFrom === undefined ? 'teethFrom' : 'teethTo';
      return [{ name: `${stage.name ?? stage.id} ${END_WORDS[end]}`, where: ['stages', index, end, field] }];
    }),
  );
  const [first] = endless;
  if (first === undefined) return;
  problems.add(
    [...place, ...first.where],
    en`say which teeth may be bought: give the search a range of teeth, or give teeth from and to for ${endless.map(({ name }) => name).join(', ')}`,
  );
}
