import { apart, type Check, notMadeWithout, type OptionSubject } from '../check.ts';
import { dialText } from '../dial.ts';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { flowOf } from '../flow.ts';
import { lackingServiceFactor } from '../load/missing.ts';
import { countedPower, powerIn, ratedPowerOf, stageSpeeds } from '../load/power.ts';
import { serviceFactorOf } from '../load/pull.ts';
import { type StageTorque, torquesOf } from '../load/torque.ts';
import type { Plan } from '../plan.ts';
import type { Fraction } from '../ratio.ts';
import { amountText } from '../shown.ts';
import type { Worked } from '../working.ts';

/** Power grows faster with speed than the rating does, so the fastest setting of the dial is the one that counts. */
export const powerRating: Check<OptionSubject> = {
  id: 'option.powerRating',
  title: en`Power above the rating`,
  worst: 'warns',
  source: en`mechanical-engineering-design, eq. 17-32 and 17-33, the smaller limit; American chain numbers and their ISO names only`,
  judge: ({ plan, pumps, teeth }) => {
    const fastest = flowOf(plan, { pumps, teeth }).ends?.to;
    if (fastest === undefined) return [];
    const stages = torquesOf(plan, { pumps, teeth }).stages.flatMap((one) => {
      const speeds = stageSpeeds(plan, teeth, one.stage, fastest.motorSpeed);
      return speeds === null ? [] : [{ ...one, speeds, rated: ratedPowerOf(one.stage, one.teeth, speeds) }];
    });
    const factor = serviceFactorOf(plan);
    const judged = stages.flatMap((one) => {
      const { stage, speeds, rated, torque } = one;
      if (rated === null || factor === null || !torque.known) return [];
      return overRated(one, countedPower(powerIn(stage, speeds, torque.value), factor), rated, fastest.dial.value);
    });
    const open = stages.filter(({ rated, torque }) => rated !== null && !(factor !== null && torque.known));
    return [...judged, ...unrated(stages.filter(({ rated }) => rated === null)), ...unjudged(plan, open)];
  },
};

function overRated({ stage, teeth }: StageTorque, counted: Worked<number>, rated: Worked<number>, dial: Fraction): readonly Judgement[] {
  if (counted.value <= rated.value) return [];
  const { loop, wheels } = driveKind(stage.kind).words;
  return [
    {
      severity: 'warns',
      where: [...stage.place, 'size'],
      what: (say) => {
        const [found, most] = apart(counted.value, rated.value, 0, (power, more) => amountText(power, 'power', say, more));
        const smaller = Math.min(teeth.driver, teeth.driven);
        return en`${stage.name}: with the dial at ${dialText(dial, say)} the ${loop} passes on ${found} with the service factor; it is rated for ${most} on ${smaller} teeth. Keep the dial lower, take ${wheels} with more teeth, or a stronger ${loop}.`;
      },
      figure: { value: counted.value, unit: 'W' },
      limit: { value: rated.value, unit: 'W' },
    },
  ];
}

/** One note for all stages for which no rating is published. */
function unrated(stages: readonly StageTorque[]): readonly Judgement[] {
  const [first] = stages;
  if (first === undefined) return [];
  const names = stages.map(({ stage }) => stage.name).join(', ');
  const sizes = [...new Set(stages.map(({ stage }) => stage.size))].join(', ');
  return [
    {
      severity: 'notes',
      where: [...first.stage.place, 'size'],
      what: () =>
        en`${names}: no power rating is published for ${driveKind(first.stage.kind).words.loop} ${sizes}; only its strength is held against the load.`,
      figure: null,
      limit: null,
    },
  ];
}

function unjudged(plan: Plan, stages: readonly StageTorque[]): readonly Judgement[] {
  if (stages.length === 0) return [];
  const missing = [...stages.flatMap(({ torque }) => (torque.known ? [] : torque.missing)), ...lackingServiceFactor(plan)];
  return notMadeWithout(missing, en`the power in ${stages.map(({ stage }) => stage.name).join(', ')} was not checked`);
}
