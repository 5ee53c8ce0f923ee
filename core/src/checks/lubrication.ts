import { apart, type Check, type OptionSubject } from '../check.ts';
import { dialText } from '../dial.ts';
import type { Oiling } from '../drives/driveKind.ts';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { flowOf } from '../flow.ts';
import { loopSpeedOf, stageSpeeds } from '../load/power.ts';
import type { Stage } from '../plan.ts';
import type { Fraction } from '../ratio.ts';
import { amountText } from '../shown.ts';

export const lubrication: Check<OptionSubject> = {
  id: 'option.lubrication',
  title: en`Oiling by hand is not enough`,
  worst: 'warns',
  source: en`asme-b29.1, supplementary information, from memory: chain speed by type of lubrication; the B series is taken as the A series chain of the same pitch (our choice)`,
  judge: ({ plan, pumps, teeth }) => {
    const fastest = flowOf(plan, { pumps, teeth }).ends?.to;
    if (fastest === undefined) return [];
    const stages = plan.stages.flatMap((stage, index) => {
      const pair = teeth[index];
      const speeds = pair === undefined ? null : stageSpeeds(plan, teeth, stage, fastest.motorSpeed);
      if (pair === undefined || speeds === null) return [];
      return [{ stage, speed_m_per_s: loopSpeedOf(stage, pair, speeds).value, oiling: driveKind(stage.kind).oiling(stage.size) }];
    });
    const judged = stages.flatMap(({ stage, speed_m_per_s, oiling }) =>
      oiling === null ? [] : tooFast(stage, speed_m_per_s, oiling, fastest.dial.value),
    );
    return [...judged, ...unknown(stages.flatMap(({ stage, oiling }) => (oiling === null ? [stage] : [])))];
  },
};

function tooFast(stage: Stage, speed_m_per_s: number, { ways, takenFrom }: Oiling, dial: Fraction): readonly Judgement[] {
  const needed = ways.findIndex(({ to_m_per_s }) => speed_m_per_s <= to_m_per_s);
  const way = ways[needed];
  const slower = ways[needed - 1];
  if (way === undefined || slower === undefined) return [];
  const { loop } = driveKind(stage.kind).words;
  return [
    {
      severity: 'warns',
      where: [...stage.place, 'size'],
      what: (say) => {
        const write = (speed_m_per_s: number, more: number) => amountText(speed_m_per_s, 'velocity', say, more);
        const [found, most] = apart(speed_m_per_s, slower.to_m_per_s, 0, write);
        const taken = takenFrom === null ? '' : en` (the limit of ${loop} ${takenFrom}, of the same pitch)`;
        return en`${stage.name}: with the dial at ${dialText(dial, say)} the ${loop} runs at ${found}; ${slower.how} will do up to ${most}${taken}. Give it ${way.how}, or keep the dial lower.`;
      },
      figure: { value: speed_m_per_s, unit: 'm/s' },
      limit: { value: slower.to_m_per_s, unit: 'm/s' },
    },
  ];
}

/** One note for all stages of a size that has no limits. */
function unknown(stages: readonly Stage[]): readonly Judgement[] {
  const [first] = stages;
  if (first === undefined) return [];
  const sizes = [...new Set(stages.map(({ size }) => size))].join(', ');
  const names = stages.map(({ name }) => name).join(', ');
  return [
    {
      severity: 'notes',
      where: [...first.place, 'size'],
      what: () =>
        en`${names}: how fast ${driveKind(first.kind).words.loop} ${sizes} may run when oiled by hand is not known here; ask its maker.`,
      figure: null,
      limit: null,
    },
  ];
}
