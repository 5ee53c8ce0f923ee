import { createMemo, For, Show } from 'solid-js';
import { verdictRuleText } from '../../../../core/src/checkPageWords.ts';
import { en } from '../../../../core/src/en.ts';
import { signed } from '../../../../core/src/index.ts';
import type { Evaluation } from '../../../../core/src/ratioCheck/evaluate.ts';
import { type RuleSpan, verdictRule } from '../../../../core/src/ratioCheck/verdictRule.ts';
import { useApp } from '../../state/app.ts';

const TOP = 18;
const BAR = 32;
const RINGS = 48;
const AXIS = 60;
/** In per cent: limits nearer to each other have no room for their words beside that of what is wanted. */
const LABELLED_FROM = 40;

/** The interval against the limits, small rings for the catches: places across in per cent, down in px. */
export function VerdictDrawing(props: { readonly evaluation: Evaluation }) {
  const app = useApp();
  const rule = createMemo(() => verdictRule(props.evaluation));
  return (
    <svg class="verdictrule" width="100%" height="82" role="img" aria-label={verdictRuleText(props.evaluation, app.say())}>
      <Show when={rule().limits}>{(limits) => <Limits span={limits()} />}</Show>
      <line class="sl" x1="0" x2="100%" y1={AXIS} y2={AXIS} />
      <For each={rule().marks}>
        {(mark) => (
          <>
            <line class="sf" x1={`${mark.at}%`} x2={`${mark.at}%`} y1={AXIS} y2={AXIS + 5} />
            <text class="m f" x={`${mark.at}%`} y={AXIS + 18}>
              {signed(mark.value, mark.places, app.say())}
            </text>
          </>
        )}
      </For>
      <line class="wanted" x1={`${rule().wanted}%`} x2={`${rule().wanted}%`} y1={TOP - 2} y2={AXIS} />
      <text class="m" x={`${rule().wanted}%`} y="11">{en`wanted`}</text>
      <For each={rule().catches}>{({ at }) => <circle class="ring" cx={`${at}%`} cy={RINGS} r="3.5" />}</For>
      <Show when={rule().interval}>
        {(interval) => (
          <g class="bar">
            <line x1={`${interval().from}%`} x2={`${interval().to}%`} y1={BAR} y2={BAR} />
            <For each={[interval().from, interval().to]}>{(at) => <line x1={`${at}%`} x2={`${at}%`} y1={BAR - 6} y2={BAR + 6} />}</For>
          </g>
        )}
      </Show>
      <circle class="mean" cx={`${rule().mean}%`} cy={BAR} r="4.5" />
    </svg>
  );
}

function Limits(props: { readonly span: RuleSpan }) {
  return (
    <>
      <rect class="win" x={`${props.span.from}%`} width={`${props.span.to - props.span.from}%`} y={TOP} height={AXIS - TOP} />
      <For each={[props.span.from, props.span.to]}>
        {(at) => (
          <>
            <line class="limit" x1={`${at}%`} x2={`${at}%`} y1={TOP - 2} y2={AXIS} />
            <Show when={props.span.to - props.span.from > LABELLED_FROM}>
              <text class="m f" x={`${at}%`} y="11">{en`limit`}</text>
            </Show>
          </>
        )}
      </For>
    </>
  );
}
