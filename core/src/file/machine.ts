import * as v from 'valibot';
import { en } from '../en.ts';
import {
  amount,
  count,
  id,
  isObject,
  kind,
  length,
  line,
  list,
  oneOf,
  quantity,
  row,
  share,
  shareAboveZero,
  teeth,
  uncertainty,
  yesNo,
} from './fields.ts';

/** Lines of its own that a shop's change sheet has room for. */
export const MOST_CHECKLIST_LINES = 6;

const maybe = v.exactOptional;
const speed = quantity('speed', { above: ['0', 'rpm'], most: ['100000', 'rpm'] });
const pressure = quantity('pressure', { least: ['0', 'bar'], most: ['2000', 'bar'] });
const volume = quantity('volume', { above: ['0', 'L'], most: ['1000000', 'L'] });
/** A pump may measure a little more than its nameplate. */
const delivery = quantity('share', { above: ['0', '%'], most: ['120', '%'] });
const minutes = quantity('time', { least: ['0', 'min'], most: ['10000', 'min'] });

/** A place where a wheel sits. `guard` is the largest diameter, chain on, that the guard clears here. */
const slot = row({
  teeth: maybe(teeth),
  mayChange: maybe(yesNo),
  bore: maybe(length),
  keyway: maybe(length),
  teethFrom: maybe(teeth),
  teethTo: maybe(teeth),
  guard: maybe(length),
});

const fixedCentre = row({ fixed: length });
const centreWindow = row({ from: length, to: length });
type Centre = v.InferOutput<typeof fixedCentre> | v.InferOutput<typeof centreWindow>;

/** Which of the two is meant is settled first, so that what is wrong inside is named there. */
const centre = v.pipe(
  v.custom<Centre>(
    (json) => isObject(json) && 'fixed' in json !== ('from' in json || 'to' in json),
    en`the centre distance is either { "fixed": ... } or { "from": ..., "to": ... }`,
  ),
  v.lazy((json): typeof fixedCentre | typeof centreWindow => (isObject(json) && 'fixed' in json ? fixedCentre : centreWindow)),
);

const stage = row({
  id,
  name: maybe(line),
  kind,
  size: line,
  driver: slot,
  driven: slot,
  pitches: maybe(count(4, 10_000)),
  centreNow: maybe(length),
  centre: maybe(centre),
  takeUp: maybe(quantity('pitches', { least: ['0', 'pitches'], most: ['100', 'pitches'] })),
  offsetLink: maybe(yesNo),
});

const shaft = row({ id, name: maybe(line), turnedBy: maybe(row({ shaft: id, stage: maybe(id) })) });

const pump = row({
  id,
  name: maybe(line),
  displacement: maybe(quantity('displacement', { above: ['0', 'cc/rev'], most: ['100000', 'cc/rev'] })),
  tolerance: maybe(uncertainty),
  speedFrom: maybe(speed),
  speedTo: maybe(speed),
  pressureLimit: maybe(pressure),
  gear: maybe(
    row({
      teeth: count(4, 200),
      module: maybe(length),
      faceWidth: maybe(length),
      gapWidth: maybe(length),
      gapLength: maybe(length),
      outsideDiameter: maybe(length),
      insideDiameter: maybe(length),
      centreDistance: maybe(length),
    }),
  ),
  measuredDelivery: maybe(row({ value: delivery, uncertainty: maybe(uncertainty) })),
  /** What it delivered when it was new, and the least it may still deliver, as shares of its displacement. */
  newDelivery: maybe(delivery),
  leastDelivery: maybe(delivery),
});

const side = row({
  shaft: id,
  fitted: id,
  pumps: v.pipe(list(pump), v.minLength(1, en`at least the fitted pump must be listed`)),
  pressure: maybe(pressure),
  mechanicalEfficiency: maybe(shareAboveZero),
  tank: maybe(row({ fill: maybe(volume), lowMark: maybe(volume) })),
});

const teethRange = row({ from: teeth, to: teeth });

/** Which wheels a search may use: those on the rack, those and up to `purchases` bought ones, or any in a range. */
const search = row({
  wheels: maybe(oneOf(['rack', 'rack and purchases', 'any'], en`wheels are "rack", "rack and purchases" or "any"`)),
  purchases: maybe(count(1, 8)),
  teeth: maybe(teethRange),
  anyPump: maybe(yesNo),
  openShared: maybe(yesNo),
  /** Whether the ratio counts the deliveries that were measured. */
  asMeasured: maybe(yesNo),
});

export const machine = row({
  id,
  name: line,
  note: maybe(line),
  rack: maybe(id),
  motor: row({
    speed: maybe(speed),
    usable: maybe(row({ from: share, to: shareAboveZero })),
    dialStep: maybe(shareAboveZero),
    ratedTorque: maybe(quantity('torque', { above: ['0', 'N m'] })),
  }),
  shafts: v.pipe(list(shaft), v.minLength(1, en`at least the motor shaft must be listed`)),
  stages: list(stage),
  A: side,
  B: side,
  wantedFlow: maybe(quantity('flow', { above: ['0', 'cc/min'] })),
  /** Another way to say it: so much in so long. */
  wantedShot: maybe(row({ amount, time: quantity('time', { above: ['0', 's'] }) })),
  batch: maybe(row({ of: oneOf(['mix', 'A', 'B'], en`a batch is of the "mix", of "A" or of "B"`), amount })),
  mixerVolume: maybe(volume),
  serviceFactor: maybe(quantity('share', { least: ['1', ''], most: ['10', ''] })),
  catchTurns: maybe(count(1, 100_000)),
  minutes: maybe(row({ sprocket: maybe(minutes), chainLength: maybe(minutes), centre: maybe(minutes), pump: maybe(minutes) })),
  checklist: maybe(
    v.pipe(list(line), v.maxLength(MOST_CHECKLIST_LINES, en`the sheet has room for ${MOST_CHECKLIST_LINES} lines of your own`)),
  ),
  search: maybe(search),
});

export type MachineRow = v.InferOutput<typeof machine>;
export type StageRow = MachineRow['stages'][number];
export type SlotRow = StageRow['driver'];
export type SideRow = MachineRow['A'];
