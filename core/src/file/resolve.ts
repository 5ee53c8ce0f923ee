import { driveKind } from '../drives/index.ts';
import type { CentreLimits } from '../drives/pitchCount.ts';
import type { Finding, Outcome, Place } from '../finding.ts';
import type { Say } from '../format.ts';
import { given } from '../given.ts';
import {
  type Choice,
  ENDS,
  type Named,
  type Piece,
  type Plan,
  type Pump,
  type Side,
  type SideName,
  type Slot,
  type Stage,
  type Turns,
} from '../plan.ts';
import { float } from '../ratio.ts';
import type { TypedQuantity } from '../reading.ts';
import type { MachineRow, SlotRow, StageRow } from './machine.ts';
import { Problems, si } from './problems.ts';
import type { RackRow } from './rack.ts';
import { resolveMix } from './resolveMix.ts';
import { shaftTree, type Trains } from './shaftTree.ts';
import type { ShopFile } from './shopFile.ts';

/** Which machine, material and rack of a file a plan is made of; what is left out is the only one there is, or the machine's own rack. */
export interface Selection {
  readonly machine?: string;
  readonly material?: string;
  readonly rack?: string;
  /** Overrides of the machine's search settings. */
  readonly purchases?: number;
  readonly teeth?: { readonly from: number; readonly to: number };
  readonly anyPump?: boolean;
}

/** Most open stages a search takes on. */
const MOST_OPEN_STAGES = 3;

/** Makes a complete plan out of a checked file, or says all that stands against it. */
export function resolve(file: ShopFile, selection: Selection, say: Say): Outcome<Plan> {
  const problems = new Problems();
  const machineIndex = pick(file.machines, selection.machine, 'machine', ['machines'], problems);
  const materialIndex = pick(file.materials, selection.material, 'material', ['materials'], problems);
  const machine = file.machines[machineIndex];
  const material = file.materials[materialIndex];
  if (machine === undefined || material === undefined) return problems.failure();
  const rack = pickRack(file.racks, selection.rack ?? machine.rack, problems);

  const place: Place = ['machines', machineIndex];
  const trains = shaftTree(machine, place, problems);
  const choice = resolveChoice(machine, selection, place, problems);
  const mix = resolveMix(material, ['materials', materialIndex], say, problems);
  checkPresent(machine, place, problems);
  checkRanges(machine, place, problems);
  if (!problems.none || trains === null || mix === null) return problems.failure();

  const stages = machine.stages.map((row, index) =>
    resolveStage(row, turns(index, trains), machine.search?.openShared === true, [...place, 'stages', index]),
  );
  const open = stages.filter((stage) => stage.open).length;
  if (open > MOST_OPEN_STAGES) {
    problems.add(
      [...place, 'stages'],
      `${open} stages may change, and ${MOST_OPEN_STAGES} are the most a search takes on: close some of their slots`,
    );
    return problems.failure();
  }
  const findings = [
    ...mix.findings,
    ...limitsNote(mix.mix.limits === null, ['materials', materialIndex, 'limits']),
    ...rackNote(rack, choice, place),
  ];
  return {
    ok: true,
    findings,
    value: {
      shop: file.shop.name,
      invented: file.shop.invented === true,
      machine: named(machine),
      material: named(material),
      rack: rack === undefined ? null : named(rack),
      motor: {
        place: [...place, 'motor'],
        speed_rev_per_s: si('speed', present(machine.motor.speed)),
        usable: given(machine.motor.usable, ({ from, to }) => ({ from: si('share', from), to: si('share', to) })),
      },
      stages,
      sides: {
        A: resolveSide(machine, 'A', material.A.name, trains, place),
        B: resolveSide(machine, 'B', material.B.name, trains, place),
      },
      pieces: resolvePieces(rack),
      choice,
      mix: mix.mix,
      minutes: {
        sprocket_s: seconds(machine.minutes?.sprocket, 12),
        chainLength_s: seconds(machine.minutes?.chainLength, 10),
        centre_s: seconds(machine.minutes?.centre, 3),
        pump_s: seconds(machine.minutes?.pump, 90),
      },
      catchTurns: machine.catchTurns ?? 20,
      checklist: machine.checklist ?? [],
      cautions: material.cautions ?? [],
      findings,
    },
  };
}

const named = ({ id, name }: Named): Named => ({ id, name });

/** The starting value is the shop's to change. */
const seconds = (typed: TypedQuantity | undefined, startingMinutes: number): number =>
  typed === undefined ? 60 * startingMinutes : float(si('time', typed));

function pick(rows: readonly Named[], wanted: string | undefined, word: string, place: Place, problems: Problems): number {
  if (wanted === undefined && rows.length === 1) return 0;
  const index = rows.findIndex((row) => row.id === wanted);
  if (index >= 0) return index;
  const there = rows.length === 0 ? 'the file holds none' : `there are: ${rows.map((row) => row.id).join(', ')}`;
  problems.add(
    place,
    wanted === undefined ? `say which ${word} is meant; ${there}` : `there is no ${word} with the id "${wanted}"; ${there}`,
  );
  return -1;
}

function pickRack(racks: readonly RackRow[], wanted: string | undefined, problems: Problems): RackRow | undefined {
  if (wanted === undefined) return racks.length === 1 ? racks[0] : undefined;
  return racks[pick(racks, wanted, 'rack', ['racks'], problems)];
}

function turns(stage: number, trains: Trains): Turns {
  const a = trains.A.includes(stage);
  const b = trains.B.includes(stage);
  if (a && b) return 'both';
  if (a) return 'A';
  return b ? 'B' : 'neither';
}

function resolveChoice(machine: MachineRow, selection: Selection, place: Place, problems: Problems): Choice {
  const setting = machine.search ?? {};
  const teeth = selection.teeth ?? setting.teeth ?? null;
  if (teeth !== null && teeth.from > teeth.to)
    problems.add([...place, 'search', 'teeth'], `the teeth run from ${teeth.from} to ${teeth.to}: the first must not be larger`);
  const anyPump = selection.anyPump ?? setting.anyPump ?? false;
  if (selection.purchases !== undefined) return { wheels: 'rack and purchases', purchases: selection.purchases, teeth, anyPump };
  // A range of teeth by itself asks what any wheels could do.
  if (selection.teeth !== undefined || setting.wheels === 'any')
    return { wheels: 'any', purchases: Number.POSITIVE_INFINITY, teeth, anyPump };
  if (setting.wheels === 'rack and purchases') return { wheels: 'rack and purchases', purchases: setting.purchases ?? 1, teeth, anyPump };
  return { wheels: 'rack', purchases: 0, teeth: null, anyPump };
}

/** What no plan can do without. Everything else may stay empty. */
function checkPresent(machine: MachineRow, place: Place, problems: Problems): void {
  if (machine.motor.speed === undefined)
    problems.add([...place, 'motor', 'speed'], 'the speed of the motor shaft at 100 % is missing: the name plate or the drive says it');
  machine.stages.forEach((stage, index) => {
    for (const end of ENDS) {
      if (stage[end].teeth !== undefined) continue;
      problems.add(
        [...place, 'stages', index, end, 'teeth'],
        `the teeth fitted on ${stage.name ?? stage.id} ${end} are missing: stamped on the hub, or counted`,
      );
    }
  });
  for (const side of ['A', 'B'] as const) {
    const fitted = machine[side].pumps.findIndex((pump) => pump.id === machine[side].fitted);
    if (machine[side].pumps[fitted]?.displacement !== undefined) continue;
    problems.add(
      [...place, side, 'pumps', fitted, 'displacement'],
      `the displacement of pump ${side} is missing: its plate or its data sheet says it`,
    );
  }
}

/** A plan is made only once `checkPresent` has found nothing missing. */
function present<T>(value: T | undefined): T {
  if (value === undefined) throw new RangeError('present: a plan was made with something missing');
  return value;
}

function checkRanges(machine: MachineRow, place: Place, problems: Problems): void {
  const usable = machine.motor.usable;
  if (usable !== undefined && si('share', usable.from).compare(si('share', usable.to)) > 0) {
    problems.add(
      [...place, 'motor', 'usable'],
      `the usable range runs from ${usable.from.value} to ${usable.to.value} ${usable.to.unit}: the first must not be larger`,
    );
  }
  machine.stages.forEach((stage, index) => {
    const at = [...place, 'stages', index];
    if (
      stage.centre !== undefined &&
      'from' in stage.centre &&
      si('length', stage.centre.from).compare(si('length', stage.centre.to)) > 0
    ) {
      problems.add(
        [...at, 'centre'],
        `the centre distance runs from ${stage.centre.from.value} to ${stage.centre.to.value}: the first must not be larger`,
      );
    }
    for (const end of ['driver', 'driven'] as const) {
      const { teethFrom, teethTo } = stage[end];
      if (teethFrom !== undefined && teethTo !== undefined && teethFrom > teethTo) {
        problems.add([...at, end, 'teethFrom'], `the teeth run from ${teethFrom} to ${teethTo}: the first must not be larger`);
      }
    }
  });
  for (const side of ['A', 'B'] as const) {
    machine[side].pumps.forEach((pump, index) => {
      if (
        pump.speedFrom !== undefined &&
        pump.speedTo !== undefined &&
        si('speed', pump.speedFrom).compare(si('speed', pump.speedTo)) > 0
      ) {
        problems.add(
          [...place, side, 'pumps', index, 'speedFrom'],
          `the pump speed runs from ${pump.speedFrom.value} to ${pump.speedTo.value}: the first must not be larger`,
        );
      }
    });
  }
}

function resolveStage(row: StageRow, turned: Turns, openShared: boolean, place: Place): Stage {
  const driver = resolveSlot(row.driver, [...place, 'driver']);
  const driven = resolveSlot(row.driven, [...place, 'driven']);
  const moves = turned === 'A' || turned === 'B' || (turned === 'both' && openShared);
  return {
    id: row.id,
    name: row.name ?? row.id,
    place,
    kind: row.kind,
    size: driveKind(row.kind).size(row.size) ?? row.size,
    turns: turned,
    driver,
    driven,
    open: moves && (driver.mayChange || driven.mayChange),
    presentPitches: given(row.pitches, (pitches) => pitches),
    presentCentre_m: given(row.centreNow, (length) => float(si('length', length))),
    centre: given(row.centre, resolveCentre),
    takeUp_pitches: given(row.takeUp, (takeUp) => float(si('pitches', takeUp))),
    offsetLinkAllowed: row.offsetLink === true,
  };
}

function resolveCentre(row: NonNullable<StageRow['centre']>): CentreLimits {
  if ('fixed' in row) return { kind: 'fixed', centre_m: float(si('length', row.fixed)) };
  return { kind: 'window', least_m: float(si('length', row.from)), most_m: float(si('length', row.to)) };
}

function resolveSlot(row: SlotRow, place: Place): Slot {
  return {
    place,
    teeth: present(row.teeth),
    mayChange: row.mayChange !== false,
    bore_m: given(row.bore, (bore) => si('length', bore)),
    keyway_m: given(row.keyway, (keyway) => si('length', keyway)),
    teethFrom: given(row.teethFrom, (teeth) => teeth),
    teethTo: given(row.teethTo, (teeth) => teeth),
    guard_m: given(row.guard, (guard) => float(si('length', guard))),
  };
}

function resolveSide(machine: MachineRow, name: SideName, component: string | undefined, trains: Trains, place: Place): Side {
  const row = machine[name];
  // A pump that a side may carry joins in once its displacement is known; the fitted one always is (checkPresent).
  const pumps = row.pumps.flatMap((pump, index): Pump[] => {
    if (pump.displacement === undefined) return [];
    return [
      {
        id: pump.id,
        name: pump.name ?? pump.id,
        place: [...place, name, 'pumps', index],
        displacement_m3_per_rev: si('displacement', pump.displacement),
        speedFrom_rev_per_s: given(pump.speedFrom, (speed) => si('speed', speed)),
        speedTo_rev_per_s: given(pump.speedTo, (speed) => si('speed', speed)),
      },
    ];
  });
  const [first, ...rest] = pumps;
  return {
    name,
    component: component ?? name,
    pumps: [present(first), ...rest],
    fitted: pumps.findIndex((pump) => pump.id === row.fitted),
    train: trains[name],
  };
}

function resolvePieces(rack: RackRow | undefined): readonly Piece[] {
  return (rack?.pieces ?? []).map((row) => ({
    id: row.id,
    kind: row.kind,
    size: driveKind(row.kind).size(row.size) ?? row.size,
    teeth: present(row.teeth),
    bore_m: given(row.bore, (bore) => si('length', bore)),
    quantity: row.quantity,
    part: row.part ?? '',
    place: row.place ?? '',
  }));
}

function note(check: string, where: Place, what: string): readonly Finding[] {
  return [{ check, severity: 'notes', where, what, figure: null, limit: null, source: 'a plan needs it to judge', missing: true }];
}

const limitsNote = (missing: boolean, where: Place): readonly Finding[] =>
  missing
    ? note(
        'material.limits',
        where,
        'The limits of the material are not given: no option is called inside or outside. The data sheet states them.',
      )
    : [];

const rackNote = (rack: RackRow | undefined, choice: Choice, place: Place): readonly Finding[] =>
  rack === undefined && choice.wheels !== 'any'
    ? note('machine.rack', [...place, 'rack'], 'No rack is named: only the fitted wheels are at hand.')
    : [];
