import { midSpanMovement_m } from '../drives/chainGeometry.ts';
import { driveKind } from '../drives/index.ts';
import { fixed, lengthText, type Say } from '../format.ts';
import type { PlannedOption, StageOption } from '../option.ts';
import { lengthNumber, shortName } from './paperText.ts';

/** Total mid-span movement of a level drive, as a share of the free span [machinerys-handbook, from memory; chain-maker-answers]. */
const SLACK_FROM = 0.04;
const SLACK_TO = 0.06;
/** A rule is laid along so many pitches, to spread the error of reading it. */
const MEASURED_PITCHES = 20;

/** How a loop must lie and how long it may be, one row for each stage. */
export interface Care {
  readonly definition: string;
  readonly heads: readonly [string, string, string];
  readonly rows: readonly (readonly [string, string, string])[];
}

export function careOf(option: PlannedOption, say: Say): Care {
  const words = [...new Set(option.stages.map(({ stage }) => driveKind(stage.kind).words.loop))];
  return {
    definition: 'total movement at mid-span, 4 to 6 %',
    heads: [words.length === 1 ? sentenceCase(words[0] ?? '') : 'Stage', 'Slack, of the span', `${MEASURED_PITCHES} pitches, at most`],
    rows: option.stages.map((stage) => [`${shortName(stage.stage.name)}, ${stage.stage.size}`, slack(stage, say), wear(stage, say)]),
  };
}

const sentenceCase = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

function slack({ fit }: StageOption, say: Say): string {
  if (fit.loop === null) return 'span not given';
  const { span_m } = fit.loop;
  const from = lengthNumber(midSpanMovement_m(span_m, SLACK_FROM), say);
  const to = lengthNumber(midSpanMovement_m(span_m, SLACK_TO), say);
  return `${from} to ${to} of ${lengthText(span_m, say)}`;
}

function wear({ stage: { kind, size } }: StageOption, say: Say): string {
  const { new_m, limit_m } = driveKind(kind).wear(size, MEASURED_PITCHES);
  return `${lengthText(limit_m, say)}, +${fixed((limit_m / new_m - 1) * 100, 1, say)}\u00A0%`;
}
