import { en } from '../en.ts';
import type { Finding, Outcome, Place } from '../finding.ts';
import type { Say } from '../format.ts';
import { given } from '../given.ts';
import type { Choice, Minutes, Named, Plan } from '../plan.ts';
import { whole } from '../ratio.ts';
import type { TypedQuantity } from '../reading.ts';
import { visible } from '../visible.ts';
import { type MachineRow, machine as machineSchema } from './machine.ts';
import { checkBuying, checkOpenStages, checkPresent, checkRanges } from './planProblems.ts';
import { checked, Problems, si } from './problems.ts';
import { type RackRow, rack as rackSchema } from './rack.ts';
import { idsOf, machineReferences, rackReferences } from './references.ts';
import { present, resolvePieces, resolvePrices, resolveSide, resolveStages } from './resolveMachine.ts';
import { resolveMix } from './resolveMix.ts';
import { trainsOf } from './shaftTree.ts';
import type { ShopFile } from './shopFile.ts';
import { STARTING_MINUTES } from './startingMinutes.ts';
import { checkWanted, resolveBatch, wantedFlow } from './wantedFlow.ts';

/** Which machine, material and rack of a file a plan is made of; what is left out is the only one there is, or the machine's own rack. */
export interface Selection {
  readonly machine?: string;
  readonly material?: string;
  readonly rack?: string;
  /** Overrides of the machine's search settings. */
  readonly purchases?: number;
  readonly teeth?: { readonly from: number; readonly to: number };
  readonly anyPump?: boolean;
  readonly asMeasured?: boolean;
}

/** Makes a complete plan out of a file, or says all that stands against it. The file may have been edited since it was read. */
export function resolve(file: ShopFile, selection: Selection, say: Say): Outcome<Plan> {
  const problems = new Problems();
  const machineAt = pick(file.machines, selection.machine, 'machines', problems);
  const materialAt = pick(file.materials, selection.material, 'materials', problems);
  const machine = file.machines[machineAt];
  const material = file.materials[materialAt];
  const rackAt = pickRack(file.racks, selection.rack, machine?.rack, problems);
  const rack = file.racks[rackAt];
  if (machine === undefined || material === undefined) return problems.failure();

  const place: Place = ['machines', machineAt];
  const ofMaterial: Place = ['materials', materialAt];
  const sound = [checked(machineSchema, machine, place, problems), rack && checked(rackSchema, rack, ['racks', rackAt], problems)];
  const linked = machineReferences(machine, idsOf(file.racks), place, problems);
  if (rack !== undefined) rackReferences(rack, ['racks', rackAt], problems);
  const mix = resolveMix(material, ofMaterial, say, problems);
  // The rest looks into quantities, which must be readable for that.
  if (sound.includes(null)) return problems.failure();

  checkPresent(machine, place, problems);
  checkRanges(machine, place, problems);
  checkWanted(machine, place, problems);
  const choice = resolveChoice(machine, selection, place, problems);
  const trains = linked ? trainsOf(machine) : null;
  if (trains !== null) {
    checkOpenStages(machine, trains, place, problems);
    checkBuying(machine, choice, trains, place, problems);
  }
  if (!problems.none || trains === null || mix === null) return problems.failure();

  const counted =
    selection.asMeasured === undefined ? machine : { ...machine, search: { ...machine.search, asMeasured: selection.asMeasured } };
  const findings = [
    ...mix.findings,
    ...limitsNote(mix.mix.limits === null, [...ofMaterial, 'limits']),
    ...rackNote(rack, file.racks, choice, place),
    ...purchasesNote(machine, choice, place),
  ];
  return {
    ok: true,
    findings,
    value: {
      shop: visible(file.shop.name),
      invented: file.shop.invented === true,
      machine: named(machine),
      material: named(material),
      rack: rack === undefined ? null : named(rack),
      motor: {
        place: [...place, 'motor'],
        speed_rev_per_s: si('speed', present(machine.motor.speed)),
        usable: given(machine.motor.usable, ({ from, to }) => ({ from: si('share', from), to: si('share', to) })),
        dialStep: given(machine.motor.dialStep, (step) => si('share', step)),
        ratedTorque_N_m: given(machine.motor.ratedTorque, (torque) => si('torque', torque)),
      },
      stages: resolveStages(machine, trains, place),
      sides: {
        A: resolveSide(counted, 'A', material.A, trains, place),
        B: resolveSide(counted, 'B', material.B, trains, place),
      },
      pieces: resolvePieces(rack),
      prices: resolvePrices(rack),
      currency: visible(file.shop.currency ?? '').trim() || null,
      choice,
      mix: mix.mix,
      minutes: minutes(machine),
      wantedFlow: wantedFlow(machine, mix.mix),
      mixerVolume_m3: given(machine.mixerVolume, (volume) => si('volume', volume)),
      serviceFactor: given(machine.serviceFactor, (factor) => si('share', factor)),
      batch: given(machine.batch, (batch) => resolveBatch(batch, [...place, 'batch'])),
      catchTurns: machine.catchTurns ?? 20,
      checklist: written(machine.checklist),
      cautions: written(material.cautions),
      findings,
    },
  };
}

const named = ({ id, name }: Named): Named => ({ id, name: visible(name) });

/** A line left blank is none: it would print a box with nothing to tick off. */
const written = (lines: readonly string[] = []): readonly string[] => lines.map(visible).filter((line) => line.trim() !== '');

function minutes({ minutes }: MachineRow): Minutes {
  const seconds = (typed: TypedQuantity | undefined, starting_min: number) =>
    typed === undefined ? whole(60 * starting_min) : si('time', typed);
  return {
    sprocket_s: seconds(minutes?.sprocket, STARTING_MINUTES.sprocket),
    chainLength_s: seconds(minutes?.chainLength, STARTING_MINUTES.chainLength),
    centre_s: seconds(minutes?.centre, STARTING_MINUTES.centre),
    pump_s: seconds(minutes?.pump, STARTING_MINUTES.pump),
  };
}

type List = 'machines' | 'materials' | 'racks';

/** What to say of rows of which none is meant, whichever list they are in. */
const NONE_MEANT: Readonly<
  Record<List, { readonly unsaid: (there: string) => string; readonly unknown: (id: string, there: string) => string }>
> = {
  machines: {
    unsaid: (there) => en`say which machine is meant; ${there}`,
    unknown: (id, there) => en`there is no machine with the id "${id}"; ${there}`,
  },
  materials: {
    unsaid: (there) => en`say which material is meant; ${there}`,
    unknown: (id, there) => en`there is no material with the id "${id}"; ${there}`,
  },
  racks: {
    unsaid: (there) => en`say which rack is meant; ${there}`,
    unknown: (id, there) => en`there is no rack with the id "${id}"; ${there}`,
  },
};

function pick(rows: readonly Named[], wanted: string | undefined, list: List, problems: Problems): number {
  if (wanted === undefined && rows.length === 1) return 0;
  const index = rows.findIndex((row) => row.id === wanted);
  if (index >= 0) return index;
  const there = rows.length === 0 ? en`the file holds none` : en`there are: ${ids(rows)}`;
  problems.add([list], wanted === undefined ? NONE_MEANT[list].unsaid(there) : NONE_MEANT[list].unknown(wanted, there));
  return -1;
}

const ids = (rows: readonly Named[]): string => rows.map((row) => row.id).join(', ');

/** The rack asked for, the machine's own, or the only one; a machine that names a rack which is not there says so itself. */
function pickRack(racks: readonly RackRow[], wanted: string | undefined, own: string | undefined, problems: Problems): number {
  if (wanted !== undefined) return pick(racks, wanted, 'racks', problems);
  if (own !== undefined) return racks.findIndex((rack) => rack.id === own);
  return racks.length === 1 ? 0 : -1;
}

function resolveChoice(machine: MachineRow, selection: Selection, place: Place, problems: Problems): Choice {
  const setting = machine.search ?? {};
  const teeth = selection.teeth ?? setting.teeth ?? null;
  if (teeth !== null && teeth.from > teeth.to) {
    const where = selection.teeth === undefined ? [...place, 'search', 'teeth'] : place;
    problems.add(where, en`the teeth run from ${teeth.from} to ${teeth.to}: the first must not be larger`);
  }
  const anyPump = selection.anyPump ?? setting.anyPump ?? false;
  if (selection.purchases !== undefined) return { wheels: 'rack and purchases', purchases: selection.purchases, teeth, anyPump };
  // A range of teeth by itself asks what any wheels could do.
  if (selection.teeth !== undefined || setting.wheels === 'any')
    return { wheels: 'any', purchases: Number.POSITIVE_INFINITY, teeth, anyPump };
  if (setting.wheels === 'rack and purchases') return { wheels: 'rack and purchases', purchases: setting.purchases ?? 1, teeth, anyPump };
  return { wheels: 'rack', purchases: 0, teeth: null, anyPump };
}

function note(check: string, where: Place, what: string, missing = true): readonly Finding[] {
  return [{ check, severity: 'notes', where, what, figure: null, limit: null, source: en`a plan needs it to judge`, missing }];
}

const limitsNote = (missing: boolean, where: Place): readonly Finding[] =>
  missing
    ? note(
        'material.limits',
        where,
        en`The limits of the material are not given: no option is called inside or outside. The data sheet states them.`,
      )
    : [];

function rackNote(rack: RackRow | undefined, racks: readonly RackRow[], choice: Choice, place: Place): readonly Finding[] {
  if (rack !== undefined || choice.wheels === 'any') return [];
  const what =
    racks.length === 0
      ? en`No rack is named: only the fitted wheels are at hand.`
      : en`No rack is named: only the fitted wheels are at hand. There are: ${ids(racks)}.`;
  return note('machine.rack', [...place, 'rack'], what);
}

function purchasesNote({ search }: MachineRow, choice: Choice, place: Place): readonly Finding[] {
  if (search?.purchases === undefined || choice.wheels !== 'rack') return [];
  return note(
    'machine.purchases',
    [...place, 'search', 'purchases'],
    en`A number of wheels to buy is given, but the search takes wheels from the rack only: nothing is bought.`,
    false,
  );
}
