import { apart, type Check, notMade, notMadeWithout, type OptionSubject } from '../check.ts';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { lackingServiceFactor } from '../load/missing.ts';
import { countedPull, pullOf, serviceFactorOf } from '../load/pull.ts';
import { type StageTorque, torquesOf } from '../load/torque.ts';
import type { Plan } from '../plan.ts';
import { amountText } from '../shown.ts';
import { fitOf } from '../stageFit.ts';
import type { Worked } from '../working.ts';

export const loopPull: Check<OptionSubject> = {
  id: 'option.loopPull',
  title: en`Pull too strong`,
  worst: 'blocks',
  source: en`a seventh of the least tensile strength (common practice, no source); with an offset link 0.65 of it (handbook practice: offset link 65 to 80 %, the worst taken)`,
  judge: ({ plan, pumps, teeth }) => {
    const factor = serviceFactorOf(plan);
    const { stages } = torquesOf(plan, { pumps, teeth });
    const judged = stages.flatMap((one) => {
      const { torque } = one;
      return factor !== null && torque.known ? judgeStage(one, countedPull(pullOf(one, torque.value), factor)) : [];
    });
    return [...judged, ...unjudged(plan, stages)];
  },
};

/** The length is laid out only where an offset link would decide. */
function judgeStage({ stage, teeth }: StageTorque, counted: Worked<number>): readonly Judgement[] {
  const { allowedPull, needsOffsetLink, words } = driveKind(stage.kind);
  const withOffset = allowedPull(stage.size, true);
  if (counted.value <= withOffset.value) return [];
  const { loop } = fitOf(stage, teeth);
  const plain = allowedPull(stage.size, false);
  if (loop === null && counted.value <= plain.value) {
    const so = en`whether the pull in ${stage.name} is too strong for an offset link was not checked`;
    return [notMade([...stage.place, 'pitches'], en`${stage.name}: the length of the ${words.loop} is not given, so ${so}.`)];
  }
  const allowed = loop !== null && needsOffsetLink(loop.pitches) ? withOffset : plain;
  if (counted.value <= allowed.value) return [];
  return [
    {
      severity: 'blocks',
      where: [...stage.place, 'size'],
      what: (say) => {
        const [found, most] = apart(counted.value, allowed.value, 0, (force, more) => amountText(force, 'force', say, more));
        return en`${stage.name}: the ${words.loop} pulls ${found} with the service factor; allowed are ${most}, ${allowed.what}. Take a stronger ${words.loop}, a larger driven ${words.wheel}, or lower the pressure.`;
      },
      figure: { value: counted.value, unit: 'N' },
      limit: { value: allowed.value, unit: 'N' },
    },
  ];
}

/** One note for all stages whose pull is not known. */
function unjudged(plan: Plan, stages: readonly StageTorque[]): readonly Judgement[] {
  const left = stages.filter(({ torque }) => !torque.known || !plan.serviceFactor.known);
  if (left.length === 0) return [];
  const missing = [...left.flatMap(({ torque }) => (torque.known ? [] : torque.missing)), ...lackingServiceFactor(plan)];
  return notMadeWithout(missing, en`the pull in ${left.map(({ stage }) => stage.name).join(', ')} was not checked`);
}
