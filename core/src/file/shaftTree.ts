import * as v from 'valibot';
import type { Place } from '../finding.ts';
import type { SideName } from '../plan.ts';
import { id, list, row } from './fields.ts';
import type { Problems } from './problems.ts';

const turnedShaft = row({ id, turnedBy: v.exactOptional(row({ shaft: id, stage: v.exactOptional(id) })) });

/** What of a machine says how its shafts hang together. */
export const shaftRows = row({
  shafts: v.pipe(list(turnedShaft), v.minLength(1)),
  stages: list(row({ id })),
  A: row({ shaft: id }),
  B: row({ shaft: id }),
});

type Rows = v.InferOutput<typeof shaftRows>;

/** Stages between the motor and each pump, motor first, as indexes into the machine's stages. */
export type Trains = Readonly<Record<SideName, readonly number[]>>;

/** What keeps the shafts from being one tree with the motor at its root, each stage turning one shaft. All ids differ. */
export function checkShafts(machine: Rows, place: Place, problems: Problems): void {
  const wrong = (where: Place, what: string) => problems.add([...place, ...where], what);
  const shafts = new Set(machine.shafts.map((shaft) => shaft.id));
  for (const side of ['A', 'B'] as const) {
    if (!shafts.has(machine[side].shaft)) wrong([side, 'shaft'], `there is no shaft with the id "${machine[side].shaft}"`);
  }
  machine.shafts.forEach(({ turnedBy }, index) => {
    if (turnedBy === undefined || shafts.has(turnedBy.shaft)) return;
    wrong(['shafts', index, 'turnedBy', 'shaft'], `there is no shaft with the id "${turnedBy.shaft}"`);
  });
  checkRoot(machine, wrong);
  checkStages(machine, wrong);
  for (const ring of rings(machine)) {
    const index = machine.shafts.findIndex((shaft) => shaft.id === ring[0]);
    const said = ring.length === 1 ? `the shaft ${ring[0]} turns itself` : `the shafts ${ring.join(', ')} turn each other in a ring`;
    wrong(['shafts', index, 'turnedBy', 'shaft'], `${said}: every shaft must lead back to the motor shaft`);
  }
}

type Wrong = (where: Place, what: string) => void;

function checkRoot(machine: Rows, wrong: Wrong): void {
  // Where there is none, a ring or a missing shaft is the reason, and said as such.
  const roots = machine.shafts.filter((shaft) => shaft.turnedBy === undefined).map((shaft) => shaft.id);
  if (roots.length > 1) wrong(['shafts'], `only the motor shaft is turned by no other; here are ${roots.length}: ${roots.join(', ')}`);
}

function checkStages(machine: Rows, wrong: Wrong): void {
  const stages = new Set(machine.stages.map((stage) => stage.id));
  const turnedWith = new Map<string, string>();
  machine.shafts.forEach(({ id: shaft, turnedBy }, index) => {
    const stage = turnedBy?.stage;
    if (stage === undefined) return;
    const where = ['shafts', index, 'turnedBy', 'stage'];
    const other = turnedWith.get(stage);
    if (!stages.has(stage)) wrong(where, `there is no stage with the id "${stage}"`);
    else if (other !== undefined) wrong(where, `the stage "${stage}" already turns the shaft "${other}"`);
    else turnedWith.set(stage, shaft);
  });
  machine.stages.forEach((stage, index) => {
    if (!turnedWith.has(stage.id)) wrong(['stages', index], `the stage "${stage.id}" turns no shaft`);
  });
}

/** Shafts from this one on towards the motor, as far as no shaft comes twice. */
function upwards(machine: Rows, from: string): readonly Rows['shafts'][number][] {
  const passed = new Set<Rows['shafts'][number]>();
  let shaft = machine.shafts.find((one) => one.id === from);
  while (shaft !== undefined && !passed.has(shaft)) {
    passed.add(shaft);
    const by = shaft.turnedBy?.shaft;
    shaft = machine.shafts.find((one) => one.id === by);
  }
  return [...passed];
}

/** Each ring once, told from its first shaft in the order of the file. */
function rings(machine: Rows): readonly (readonly string[])[] {
  const seen = new Set<string>();
  return machine.shafts.flatMap(({ id: from }) => {
    const chain = upwards(machine, from);
    if (seen.has(from) || chain.at(-1)?.turnedBy?.shaft !== from) return [];
    const ring = chain.map((shaft) => shaft.id);
    for (const shaft of ring) seen.add(shaft);
    return [ring];
  });
}

/**
 * Follows the shafts from each pump back to the motor.
 *
 * @param machine  one that `checkShafts` finds nothing wrong with
 */
export function trainsOf(machine: Rows): Trains {
  const train = (side: SideName) =>
    upwards(machine, machine[side].shaft)
      .flatMap(({ turnedBy }) => turnedBy?.stage ?? [])
      .map((id) => machine.stages.findIndex((stage) => stage.id === id))
      .reverse();
  return { A: train('A'), B: train('B') };
}
