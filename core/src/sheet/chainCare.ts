import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { MEASURED_PITCHES } from '../facts/chainFacts.ts';
import { capital, fixed, lengthText, type Say } from '../format.ts';
import type { PlannedOption, StageOption } from '../option.ts';
import { input } from '../working.ts';
import { lengthNumber, shortName } from './paperText.ts';

/** How a loop must lie and how long it may be, one row for each stage. */
export interface Care {
  readonly definition: string;
  readonly heads: readonly [string, string, string];
  readonly rows: readonly (readonly [string, string, string])[];
}

export function careOf(option: PlannedOption, say: Say): Care {
  const kinds = [...new Set(option.stages.map(({ stage }) => driveKind(stage.kind)))];
  const words = kinds.map((kind) => kind.words.loop);
  const shares = kinds.map(({ slackShares: { from, to } }) => en`${fixed(from * 100, 0, say)} to ${fixed(to * 100, 0, say)} %`);
  return {
    definition: [en`total movement at mid-span`, ...new Set(shares)].join(', '),
    heads: [words.length === 1 ? capital(words[0] ?? '') : en`Stage`, en`Slack, of the span`, en`${MEASURED_PITCHES} pitches, at most`],
    rows: option.stages.map((stage) => [`${shortName(stage.stage.name)}, ${stage.stage.size}`, slack(stage, say), wear(stage, say)]),
  };
}

function slack({ stage, fit }: StageOption, say: Say): string {
  if (fit.loop === null) return en`span not given`;
  const { span_m } = fit.loop;
  const { from, to } = driveKind(stage.kind).slack(input(en`free span`, span_m, 'length'));
  const movement = (end: typeof from) => lengthNumber(end.movement.value, say);
  return en`${movement(from)} to ${movement(to)} of ${lengthText(span_m, say)}`;
}

function wear({ stage: { kind, size } }: StageOption, say: Say): string {
  const { asNew, limit } = driveKind(kind).wear(size, MEASURED_PITCHES);
  return `${lengthText(limit.value, say)}, +${fixed((limit.value / asNew.value - 1) * 100, 1, say)}\u00A0%`;
}
