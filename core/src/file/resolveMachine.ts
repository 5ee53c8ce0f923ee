import { driveKind } from '../drives/index.ts';
import type { CentreLimits } from '../drives/pitchCount.ts';
import type { Place } from '../finding.ts';
import { given } from '../given.ts';
import type { Gear, Piece, Price, Pump, Side, SideName, Slot, Stage, Turns } from '../plan.ts';
import { readPrice } from '../price.ts';
import { float } from '../ratio.ts';
import type { TypedQuantity } from '../reading.ts';
import type { MachineRow, SideRow, SlotRow, StageRow } from './machine.ts';
import type { PartRow } from './material.ts';
import { reading, si } from './problems.ts';
import type { RackRow } from './rack.ts';
import type { Trains } from './shaftTree.ts';

/** A plan is made only once `checkPresent` has found nothing missing. */
export function present<T>(value: T | undefined): T {
  if (value === undefined) throw new RangeError('present: a plan was made with something missing');
  return value;
}

function turns(stage: number, trains: Trains): Turns {
  const a = trains.A.includes(stage);
  const b = trains.B.includes(stage);
  if (a && b) return 'both';
  if (a) return 'A';
  return b ? 'B' : 'neither';
}

const mayChange = (slot: SlotRow): boolean => slot.mayChange !== false;

/** Whether a search may change wheels of a stage. What both pumps share does not change the ratio and is opened only on request. */
export function isOpen(machine: MachineRow, index: number, trains: Trains): boolean {
  const turned = turns(index, trains);
  const moves = turned === 'A' || turned === 'B' || (turned === 'both' && machine.search?.openShared === true);
  const stage = machine.stages[index];
  return moves && stage !== undefined && (mayChange(stage.driver) || mayChange(stage.driven));
}

/** The stages of a machine, exact and in SI. */
export function resolveStages(machine: MachineRow, trains: Trains, place: Place): readonly Stage[] {
  return machine.stages.map((row, index) => {
    const at = [...place, 'stages', index];
    return {
      id: row.id,
      name: row.name ?? row.id,
      place: at,
      kind: row.kind,
      size: driveKind(row.kind).size(row.size) ?? row.size,
      turns: turns(index, trains),
      driver: resolveSlot(row.driver, [...at, 'driver']),
      driven: resolveSlot(row.driven, [...at, 'driven']),
      open: isOpen(machine, index, trains),
      presentPitches: given(row.pitches, (pitches) => pitches),
      presentCentre_m: given(row.centreNow, (length) => float(si('length', length))),
      centre: given(row.centre, resolveCentre),
      takeUp_pitches: given(row.takeUp, (takeUp) => float(si('pitches', takeUp))),
      offsetLinkAllowed: row.offsetLink === true,
    };
  });
}

function resolveCentre(row: NonNullable<StageRow['centre']>): CentreLimits {
  if ('fixed' in row) return { kind: 'fixed', centre_m: float(si('length', row.fixed)) };
  return { kind: 'window', least_m: float(si('length', row.from)), most_m: float(si('length', row.to)) };
}

function resolveSlot(row: SlotRow, place: Place): Slot {
  return {
    place,
    teeth: present(row.teeth),
    mayChange: mayChange(row),
    bore_m: given(row.bore, (bore) => si('length', bore)),
    keyway_m: given(row.keyway, (keyway) => si('length', keyway)),
    teethFrom: given(row.teethFrom, (teeth) => teeth),
    teethTo: given(row.teethTo, (teeth) => teeth),
    guard_m: given(row.guard, (guard) => float(si('length', guard))),
  };
}

/** One side with its pumps; one that it may carry joins in once its displacement is known, the fitted one always is. */
export function resolveSide(machine: MachineRow, name: SideName, part: PartRow, trains: Trains, place: Place): Side {
  const row = machine[name];
  const pumps = row.pumps.flatMap((pump, index): Pump[] => {
    if (pump.displacement === undefined) return [];
    return [
      {
        id: pump.id,
        name: pump.name ?? pump.id,
        place: [...place, name, 'pumps', index],
        displacement_m3_per_rev: si('displacement', pump.displacement),
        tolerance: given(pump.tolerance, (share) => si('share', share)),
        speedFrom_rev_per_s: given(pump.speedFrom, (speed) => si('speed', speed)),
        speedTo_rev_per_s: given(pump.speedTo, (speed) => si('speed', speed)),
        pressureLimit_Pa: given(pump.pressureLimit, (pressure) => si('pressure', pressure)),
        gear: given(pump.gear, (gear) => resolveGear(gear, [...place, name, 'pumps', index, 'gear'])),
        delivery: given(pump.measuredDelivery, ({ value, uncertainty }) => ({
          share: si('share', value),
          uncertainty: given(uncertainty, (share) => si('share', share)),
        })),
        newDelivery: given(pump.newDelivery, (share) => si('share', share)),
        leastDelivery: given(pump.leastDelivery, (share) => si('share', share)),
        asMeasured: machine.search?.asMeasured === true,
      },
    ];
  });
  const [first, ...rest] = pumps;
  return {
    name,
    place: [...place, name],
    component: part.name ?? name,
    pumps: [present(first), ...rest],
    fitted: pumps.findIndex((pump) => pump.id === row.fitted),
    train: trains[name],
    pressure_Pa: given(row.pressure, (pressure) => si('pressure', pressure)),
    mechanicalEfficiency: given(row.mechanicalEfficiency, (share) => si('share', share)),
    fill_m3: given(row.tank?.fill, (volume) => si('volume', volume)),
    lowMark_m3: given(row.tank?.lowMark, (volume) => si('volume', volume)),
    viscosity_Pa_s: given(part.viscosity, (viscosity) => si('viscosity', viscosity)),
  };
}

function resolveGear(row: NonNullable<SideRow['pumps'][number]['gear']>, place: Place): Gear {
  const length = (typed: TypedQuantity | undefined) => given(typed, (value) => si('length', value));
  return {
    place,
    teeth: row.teeth,
    module_m: length(row.module),
    faceWidth_m: length(row.faceWidth),
    outsideDiameter_m: length(row.outsideDiameter),
    insideDiameter_m: length(row.insideDiameter),
    centreDistance_m: length(row.centreDistance),
    gapWidth_m: length(row.gapWidth),
    gapLength_m: length(row.gapLength),
  };
}

export function resolvePieces(rack: RackRow | undefined): readonly Piece[] {
  return (rack?.pieces ?? []).map((row) => ({
    id: row.id,
    kind: row.kind,
    size: driveKind(row.kind).size(row.size) ?? row.size,
    teeth: row.teeth,
    bore_m: given(row.bore, (bore) => si('length', bore)),
    quantity: row.quantity,
    part: row.part ?? '',
    place: row.place ?? '',
  }));
}

export function resolvePrices(rack: RackRow | undefined): readonly Price[] {
  return (rack?.prices ?? []).map(({ kind, size, from, to, price }) => ({
    kind,
    size: driveKind(kind).size(size) ?? size,
    from,
    to,
    price: reading(readPrice(price)),
  }));
}
