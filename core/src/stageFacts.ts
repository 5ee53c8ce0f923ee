import { driveKind } from './drives/index.ts';
import { en } from './en.ts';
import { fixed, lengthText, type Say, signed } from './format.ts';
import { orNull } from './given.ts';
import type { StageOption } from './option.ts';
import { END_WORDS, ENDS, type Plan } from './plan.ts';
import type { Origin } from './rack.ts';
import { pitchesToChange } from './sheet/changeRows.ts';
import { NONE, slotName, whomItTurns } from './sheet/paperText.ts';

/** One figure of a stage: as it is now, as the option has it, and what there is to say of the step between. */
export interface StageFact {
  readonly what: string;
  readonly now: string;
  readonly after: string;
  readonly note: string;
  readonly isNew: boolean;
}

/** Everything there is to set or fetch for one stage. */
export interface StageFacts {
  readonly title: string;
  readonly rows: readonly StageFact[];
}

/**
 * The figures of a stage of an option beside those of now.
 *
 * @param option, fitted  the same stage, as chosen and as on the machine
 * @returns teeth with where they come from, pitches, centre distance, wrap and slack
 * @source our choice of rows; figures as laid out
 */
export function stageFacts(plan: Plan, option: StageOption, fitted: StageOption, say: Say): StageFacts {
  const { stage } = option;
  const { loop } = driveKind(stage.kind).words;
  return {
    title: `${stage.name} ${whomItTurns(stage)}, ${loop} ${stage.size}`,
    rows: [
      ...ENDS.map((end) => ({
        what: en`${END_WORDS[end]}, teeth`,
        now: String(stage[end].teeth),
        after: String(option.teeth[end]),
        note: originText(plan, option.origins[end]),
        isNew: stage[end].teeth !== option.teeth[end],
      })),
      ...loopFacts(option, fitted, loop, say),
    ],
  };
}

/** Where a wheel comes from: its place and number, the machine itself, or the shop that sells it. */
export function originText(plan: Plan, origin: Origin): string {
  switch (origin.from) {
    case 'stays':
      return en`stays`;
    case 'rack':
      return [en`from the rack`, origin.piece.place, origin.piece.part].filter((word) => word !== '').join(', ');
    case 'machine':
      return en`from the machine, ${slotName(plan, origin.slot)}`;
    case 'bought':
      return en`to be bought`;
    case 'nowhere':
      return en`none left`;
  }
}

function loopFacts(option: StageOption, fitted: StageOption, word: string, say: Say): readonly StageFact[] {
  const { stage, fit } = option;
  const now = fitted.fit.loop;
  if (fit.loop === null)
    return [{ what: en`${word}, pitches`, now: NONE, after: NONE, note: en`centres not given: measure it`, isNew: false }];
  const present = orNull(stage.presentPitches);
  const wrap = (wrap_rad: number | undefined) => (wrap_rad === undefined ? NONE : fixed((wrap_rad * 180) / Math.PI, 1, say));
  const slack = (slack_pitches: number | undefined) => (slack_pitches === undefined ? NONE : fixed(slack_pitches, 2, say));
  return [
    {
      what: en`${word}, pitches`,
      now: present === null ? NONE : String(present),
      after: String(fit.loop.pitches),
      note: pitchesToChange(present, fit.loop.pitches),
      isNew: fit.loop.pitches !== present,
    },
    {
      what: en`centre to set`,
      now: stage.presentCentre_m.known ? lengthText(stage.presentCentre_m.value, say, 2) : NONE,
      after: lengthText(fit.loop.centre_m, say, 2),
      note: `${travelText(option, say)}, ${centreLimits(option, say)}`,
      isNew: option.travel_m !== 0,
    },
    { what: en`wrap, degrees`, now: wrap(now?.wrap_rad), after: wrap(fit.loop.wrap_rad), note: en`on the smaller wheel`, isNew: false },
    {
      what: en`slack, pitches`,
      now: slack(now?.slack_pitches),
      after: slack(fit.loop.slack_pitches),
      note: takeUp(option, say),
      isNew: false,
    },
  ];
}

/** Millimetres, or inches, as the option lists say them. */
function travelText({ travel_m }: StageOption, say: Say): string {
  if (travel_m === null) return en`travel not known`;
  if (travel_m === 0) return en`stays`;
  const travel =
    say.system === 'inch' ? `${signed(travel_m * (1000 / 25.4), 4, say)}\u00A0in` : `${signed(travel_m * 1000, 2, say)}\u00A0mm`;
  return en`travel ${travel}`;
}

function centreLimits({ stage }: StageOption, say: Say): string {
  if (!stage.centre.known) return en`limits not given`;
  const limits = stage.centre.value;
  return limits.kind === 'fixed' ? en`fixed` : en`${lengthText(limits.least_m, say, 2)} to ${lengthText(limits.most_m, say, 2)}`;
}

const takeUp = ({ stage }: StageOption, say: Say): string =>
  stage.takeUp_pitches.known ? en`the take-up takes ${fixed(stage.takeUp_pitches.value, 2, say)}` : en`take-up not given`;
