import { apart, type Check, centreNotGiven, type PairSubject } from '../check.ts';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { fixed, lengthText } from '../format.ts';

/** The taut centre must lie within what the shafts allow, or the take-up must absorb the slack that is left. */
export const centre: Check<PairSubject> = {
  id: 'stage.centre',
  title: en`Centre distance`,
  worst: 'blocks',
  source: en`exact geometry of an open drive on its pitch circles; the window and the take-up are the machine’s own`,
  judge: ({ stage, fit }) => {
    const { loop } = fit;
    const where = [...stage.place, 'centre'];
    const limits = stage.centre;
    if (!limits.known || loop === null) {
      return [centreNotGiven(stage, en`the length of the ${driveKind(stage.kind).words.loop} was not checked`)];
    }
    if (loop.count?.kind === 'takeUpUnknown') {
      return [
        {
          severity: 'notes',
          where: [...stage.place, 'takeUp'],
          what: (say) =>
            en`${stage.name}: ${loop.pitches} pitches leave ${fixed(loop.slack_pitches, 2, say)} pitches of slack, and the take-up is not given; whether it takes that up was not checked.`,
          figure: { value: loop.slack_pitches, unit: 'pitches' },
          limit: null,
          missing: true,
        },
      ];
    }
    if (loop.count?.kind !== 'none')
      return slackNote(stage.name, where, loop.slack_pitches, stage.takeUp_pitches.known ? stage.takeUp_pitches.value : 0);
    const [least_m, most_m] =
      limits.value.kind === 'fixed' ? [limits.value.centre_m, limits.value.centre_m] : [limits.value.least_m, limits.value.most_m];
    const short = loop.centre_m < least_m;
    const end_m = short ? least_m : most_m;
    const fixedAt = limits.value.kind === 'fixed';
    const rest = !short && stage.takeUp_pitches.known;
    return [
      {
        severity: 'blocks',
        where,
        what: (say) => {
          const [taut, limit] = apart(loop.centre_m, end_m, 1, (length_m, places) => lengthText(length_m, say, places));
          const end = fixedAt ? en`the centre distance is fixed at ${limit}` : short ? en`the least is ${limit}` : en`the most is ${limit}`;
          return rest
            ? en`${stage.name}: no pitch count fits. ${loop.pitches} pitches want ${taut}; ${end}, and the take-up does not absorb the rest.`
            : en`${stage.name}: no pitch count fits. ${loop.pitches} pitches want ${taut}; ${end}.`;
        },
        figure: { value: loop.centre_m * 1000, unit: 'mm' },
        limit: { value: end_m * 1000, unit: 'mm' },
      },
    ];
  },
};

function slackNote(name: string, where: Judgement['where'], slack_pitches: number, takeUp_pitches: number): readonly Judgement[] {
  // Under a hundredth of a pitch nobody can see the slack.
  if (slack_pitches < 0.01) return [];
  return [
    {
      severity: 'notes',
      where,
      what: (say) => en`${name}: the take-up absorbs ${fixed(slack_pitches, 2, say)} of its ${fixed(takeUp_pitches, 2, say)} pitches.`,
      figure: { value: slack_pitches, unit: 'pitches' },
      limit: { value: takeUp_pitches, unit: 'pitches' },
    },
  ];
}
