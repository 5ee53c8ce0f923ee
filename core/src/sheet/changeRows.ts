import type { LoopFit } from '../drives/driveKind.ts';
import { driveKind } from '../drives/index.ts';
import type { CentreLimits } from '../drives/pitchCount.ts';
import { en } from '../en.ts';
import { fixed, lengthUnit, type Say } from '../format.ts';
import { orNull } from '../given.ts';
import type { StageOption } from '../option.ts';
import { END_WORDS, type ENDS, type Plan, type Pump, type SideName } from '../plan.ts';
import type { Origin } from '../rack.ts';
import { clip } from '../visible.ts';
import { movesCentre } from '../work.ts';
import { displacementNumber, displacementUnit, lengthNumber, NONE, shortName, slotName, typedLength } from './paperText.ts';

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
    ...(slot.bore_m.known ? [en`bore ${typedLength(slot.bore_m.value, say)}`] : []),
    ...(slot.keyway_m.known ? [en`key ${typedLength(slot.keyway_m.value, say)}`] : []),
  ];
  return {
    place: en`${END_WORDS[end]}, teeth`,
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
      return en`stays`;
    case 'rack': {
      const { part, place } = origin.piece;
      const words = [clip(part, PART_LENGTH), ...(place === '' ? [] : [en`rack ${clip(place, PART_LENGTH)}`])].filter(
        (word) => word !== '',
      );
      return words.length === 0 ? en`rack` : words.join(', ');
    }
    case 'machine':
      return en`from ${slotName(plan, origin.slot)}`;
    case 'bought':
      return en`to be bought`;
    case 'nowhere':
      return en`none left`;
  }
}

/** What the length of a loop asks for, in words: pitches to add or to take out. */
export function pitchesToChange(present: number | null, pitches: number): string {
  const odd = pitches % 2 === 1 ? [en`with offset link`] : [];
  return [lengthChange(present, pitches), ...odd].join(', ');
}

function lengthChange(present: number | null, pitches: number): string {
  if (present === null) return en`count the old one`;
  const more = pitches - present;
  if (more === 0) return en`stays`;
  return more > 0 ? en`add ${more}` : en`take out ${-more}`;
}

export function loopRow({ stage, fit }: StageOption): ChangeRow {
  const place = en`${driveKind(stage.kind).words.loop}, pitches`;
  const present = orNull(stage.presentPitches);
  if (fit.loop === null) return { place, detail: '', off: NONE, on: NONE, from: en`centres not given: measure it`, isNew: false };
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
      place: en`centres, ${lengthUnit(say)}`,
      detail: '',
      off: moves ? now : NONE,
      on: lengthNumber(moves || !stage.presentCentre_m.known ? fit.loop.centre_m : stage.presentCentre_m.value, say),
      from: [centreLimits(limits, moves, say), ...slackWords(fit.loop, say)].join(', '),
      isNew: moves,
    },
  ];
}

function centreLimits(limits: CentreLimits | null, moves: boolean, say: Say): string {
  if (limits === null) return en`limits not given`;
  if (limits.kind === 'fixed') return en`fixed`;
  const window = en`${lengthNumber(limits.least_m, say)} to ${lengthNumber(limits.most_m, say)}`;
  return moves ? window : en`stays, ${window}`;
}

function slackWords({ count, slack_pitches }: LoopFit, say: Say): readonly string[] {
  if (count?.kind === 'none') return [en`does not fit`];
  // Under a hundredth of a pitch nobody can see the slack.
  if (slack_pitches < 0.01) return [];
  const slack = fixed(slack_pitches, 2, say);
  return [count?.kind === 'takeUpUnknown' ? en`${slack} pitches slack, take-up not given` : en`take-up takes ${slack} pitches`];
}

export function pumpRow(side: SideName, off: Pump, on: Pump, say: Say): ChangeRow {
  return {
    place: en`pump ${side}, ${displacementUnit(say)}`,
    detail: '',
    off: displacementNumber(off.displacement_m3_per_rev, say),
    on: displacementNumber(on.displacement_m3_per_rev, say),
    from: en`${shortName(on.name)} for ${shortName(off.name)}`,
    isNew: true,
  };
}
