import type { LoopFit } from '../drives/driveKind.ts';
import { driveKind } from '../drives/index.ts';
import type { CentreLimits } from '../drives/pitchCount.ts';
import { fixed, lengthUnit, type Say } from '../format.ts';
import { orNull } from '../given.ts';
import type { StageOption } from '../option.ts';
import type { ENDS, Plan, Pump, SideName } from '../plan.ts';
import type { Origin } from '../rack.ts';
import { movesCentre } from '../work.ts';
import { clip, displacementNumber, displacementUnit, lengthNumber, NONE, shortName, slotName, typedLength } from './paperText.ts';

/** One place of the machine: what comes off, what goes on, and where that comes from. */
export interface ChangeRow {
  readonly place: string;
  /** What a piece must suit, as bore and keyway. */
  readonly detail: string;
  readonly off: string;
  readonly on: string;
  readonly from: string;
  readonly isNew: boolean;
}

/** Part numbers and rack places longer than this are cut. */
const PART_LENGTH = 32;

export function wheelRow(plan: Plan, { stage, teeth, origins }: StageOption, end: (typeof ENDS)[number], say: Say): ChangeRow {
  const slot = stage[end];
  const isNew = slot.teeth !== teeth[end];
  const fits = [
    ...(slot.bore_m.known ? [`bore ${typedLength(slot.bore_m.value, say)}`] : []),
    ...(slot.keyway_m.known ? [`key ${typedLength(slot.keyway_m.value, say)}`] : []),
  ];
  return {
    place: `${end}, teeth`,
    detail: isNew ? fits.join(', ') : '',
    off: isNew ? String(slot.teeth) : NONE,
    on: String(teeth[end]),
    from: originText(plan, origins[end]),
    isNew,
  };
}

function originText(plan: Plan, origin: Origin): string {
  switch (origin.from) {
    case 'stays':
      return 'stays';
    case 'rack': {
      const { part, place } = origin.piece;
      const words = [clip(part, PART_LENGTH), ...(place === '' ? [] : [`rack ${clip(place, PART_LENGTH)}`])].filter((word) => word !== '');
      return words.length === 0 ? 'rack' : words.join(', ');
    }
    case 'machine':
      return `from ${slotName(plan, origin.slot)}`;
    case 'bought':
      return 'to be bought';
    case 'nowhere':
      return 'none left';
  }
}

/** What the length of a loop asks for, in words: pitches to add or to take out. */
export function pitchesToChange(present: number | null, pitches: number): string {
  const odd = pitches % 2 === 1 ? ', with offset link' : '';
  if (present === null) return `count the old one${odd}`;
  const more = pitches - present;
  if (more === 0) return `stays${odd}`;
  return `${more > 0 ? `add ${more}` : `take out ${-more}`}${odd}`;
}

export function loopRow({ stage, fit }: StageOption): ChangeRow {
  const place = `${driveKind(stage.kind).words.loop}, pitches`;
  const present = orNull(stage.presentPitches);
  if (fit.loop === null) return { place, detail: '', off: NONE, on: NONE, from: 'centres not given: measure it', isNew: false };
  const { pitches } = fit.loop;
  const isNew = pitches !== present;
  return {
    place,
    detail: '',
    off: isNew && present !== null ? String(present) : NONE,
    on: String(pitches),
    from: pitchesToChange(present, pitches),
    isNew,
  };
}

export function centreRow(option: StageOption, say: Say): readonly ChangeRow[] {
  const { stage, fit } = option;
  const limits = orNull(stage.centre);
  if (fit.loop === null) return [];
  const moves = movesCentre(option);
  const now = stage.presentCentre_m.known ? lengthNumber(stage.presentCentre_m.value, say) : NONE;
  return [
    {
      place: `centres, ${lengthUnit(say)}`,
      detail: '',
      off: moves ? now : NONE,
      on: lengthNumber(moves || !stage.presentCentre_m.known ? fit.loop.centre_m : stage.presentCentre_m.value, say),
      from: [centreLimits(limits, moves, say), ...slackWords(fit.loop, say)].join(', '),
      isNew: moves,
    },
  ];
}

function centreLimits(limits: CentreLimits | null, moves: boolean, say: Say): string {
  if (limits === null) return 'limits not given';
  if (limits.kind === 'fixed') return 'fixed';
  const window = `${lengthNumber(limits.least_m, say)} to ${lengthNumber(limits.most_m, say)}`;
  return moves ? window : `stays, ${window}`;
}

function slackWords({ count, slack_pitches }: LoopFit, say: Say): readonly string[] {
  if (count?.kind === 'none') return ['does not fit'];
  // Under a hundredth of a pitch nobody can see the slack.
  if (slack_pitches < 0.01) return [];
  const slack = fixed(slack_pitches, 2, say);
  return [count?.kind === 'takeUpUnknown' ? `${slack} pitches slack, take-up not given` : `take-up takes ${slack} pitches`];
}

export function pumpRow(side: SideName, off: Pump, on: Pump, say: Say): ChangeRow {
  return {
    place: `pump ${side}, ${displacementUnit(say)}`,
    detail: '',
    off: displacementNumber(off.displacement_m3_per_rev, say),
    on: displacementNumber(on.displacement_m3_per_rev, say),
    from: `${shortName(on.name)} for ${shortName(off.name)}`,
    isNew: true,
  };
}
