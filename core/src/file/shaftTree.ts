import * as v from 'valibot';
import { en } from '../en.ts';
import type { Place } from '../finding.ts';
import type { SideName } from '../plan.ts';
import { clip } from '../visible.ts';
import { id, list, row } from './fields.ts';
import type { Problems } from './problems.ts';

/** Of shafts named one after the other. */
const MOST_LETTERS = 400;

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
    if (!shafts.has(machine[side].shaft)) wrong([side, 'shaft'], en`there is no shaft with the id "${machine[side].shaft}"`);
  }
  machine.shafts.forEach(({ turnedBy }, index) => {
    if (turnedBy === undefined || shafts.has(turnedBy.shaft)) return;
    wrong(['shafts', index, 'turnedBy', 'shaft'], en`there is no shaft with the id "${turnedBy.shaft}"`);
  });
  checkRoot(machine, wrong);
  checkStages(machine, wrong);
  for (const { first, ring } of rings(machine)) {
    const names = clip(ring.join(', '), MOST_LETTERS);
    const said = ring.length === 1 ? en`the shaft ${names} turns itself` : en`the shafts ${names} turn each other in a ring`;
    wrong(['shafts', first, 'turnedBy', 'shaft'], en`${said}: every shaft must lead back to the motor shaft`);
  }
}

type Wrong = (where: Place, what: string) => void;

function checkRoot(machine: Rows, wrong: Wrong): void {
  // Where there is none, a ring or a missing shaft is the reason, and said as such.
  const roots = machine.shafts.filter((shaft) => shaft.turnedBy === undefined).map((shaft) => shaft.id);
  if (roots.length > 1)
    wrong(['shafts'], en`only the motor shaft is turned by no other; here are ${roots.length}: ${clip(roots.join(', '), MOST_LETTERS)}`);
}

function checkStages(machine: Rows, wrong: Wrong): void {
  const stages = new Set(machine.stages.map((stage) => stage.id));
  const turnedWith = new Map<string, string>();
  machine.shafts.forEach(({ id: shaft, turnedBy }, index) => {
    const stage = turnedBy?.stage;
    if (stage === undefined) return;
    const where = ['shafts', index, 'turnedBy', 'stage'];
    const other = turnedWith.get(stage);
    if (!stages.has(stage)) wrong(where, en`there is no stage with the id "${stage}"`);
    else if (other !== undefined) wrong(where, en`the stage "${stage}" already turns the shaft "${other}"`);
    else turnedWith.set(stage, shaft);
  });
  machine.stages.forEach((stage, index) => {
    if (!turnedWith.has(stage.id)) wrong(['stages', index], en`the stage "${stage.id}" turns no shaft`);
  });
}

type ShaftRow = Rows['shafts'][number];

const byId = ({ shafts }: Rows): ReadonlyMap<string, ShaftRow> => new Map(shafts.map((shaft) => [shaft.id, shaft]));

/** Shafts from this one on towards the motor, as far as no shaft comes twice. */
function upwards(shafts: ReadonlyMap<string, ShaftRow>, from: string, known: ReadonlySet<string> = new Set()): readonly ShaftRow[] {
  const passed = new Set<ShaftRow>();
  let shaft = shafts.get(from);
  while (shaft !== undefined && !passed.has(shaft) && !known.has(shaft.id)) {
    passed.add(shaft);
    shaft = shafts.get(shaft.turnedBy?.shaft ?? '');
  }
  return [...passed];
}

/** Each ring once, told from its first shaft in the order of the file, which is also given by its place. */
function rings(machine: Rows): readonly { readonly first: number; readonly ring: readonly string[] }[] {
  const shafts = byId(machine);
  // No shaft is followed twice, so that very many are no work.
  const followed = new Set<string>();
  const ringed = new Set<string>();
  for (const { id } of machine.shafts) {
    const chain = upwards(shafts, id, followed).map((shaft) => shaft.id);
    for (const shaft of chain) followed.add(shaft);
    const closes = chain.indexOf(shafts.get(chain.at(-1) ?? '')?.turnedBy?.shaft ?? '');
    if (closes >= 0) for (const shaft of chain.slice(closes)) ringed.add(shaft);
  }
  return machine.shafts.flatMap(({ id }, first) => {
    if (!ringed.has(id)) return [];
    const ring = upwards(shafts, id).map((shaft) => shaft.id);
    for (const shaft of ring) ringed.delete(shaft);
    return [{ first, ring }];
  });
}

/**
 * Follows the shafts from each pump back to the motor.
 *
 * @param machine  one that `checkShafts` finds nothing wrong with
 */
export function trainsOf(machine: Rows): Trains {
  const shafts = byId(machine);
  const stages = new Map(machine.stages.map(({ id }, index) => [id, index]));
  const train = (side: SideName) =>
    upwards(shafts, machine[side].shaft)
      .flatMap(({ turnedBy }) => stages.get(turnedBy?.stage ?? '') ?? [])
      .reverse();
  return { A: train('A'), B: train('B') };
}
