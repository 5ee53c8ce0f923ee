import { For, Show } from 'solid-js';
import type { Mark } from '../../../../core/src/band.ts';
import { fixed } from '../../../../core/src/index.ts';
import type { ReachRule, RuleFlag } from '../../../../core/src/reachRule.ts';
import { useApp } from '../../state/app.ts';

// Places across in per cent, down in px: the text on it does not scale.

const LANE = 18;
const HILL = 56;
const STROKES = 16;
const SCALE = 22;
const GAPS = 14;
const TOUCH = 10;

/** Flags on top, then how many ratios, each ratio, the scale by volume, the gaps, the scale by weight. */
export function RuleDrawing(props: { readonly rule: ReachRule; readonly sentence: string; readonly chosen: number | null }) {
  const hill = () => props.rule.lanes * LANE + 6;
  const strokes = () => hill() + HILL;
  const axis = () => strokes() + STROKES;
  const gaps = () => axis() + SCALE;
  const foot = () => gaps() + GAPS;
  const weighed = () => props.rule.below.length > 0;
  return (
    <svg class="reachsvg" width="100%" height={foot() + (weighed() ? SCALE : 4)} role="img" aria-label={props.sentence}>
      <For each={props.rule.gaps.filter(({ index }) => index === props.chosen)}>
        {(gap) => <rect class="chosengap" x={`${gap.from}%`} width={`${gap.to - gap.from}%`} y={hill()} height={foot() - hill() - 1} />}
      </For>
      <Box y={hill()} height={HILL} path={props.rule.hill} class="hill" />
      <Box y={strokes()} height={STROKES} path={props.rule.strokes} class="strokes" />
      <line class="sl" x1="0" x2="100%" y1={axis()} y2={axis()} />
      <Marks marks={props.rule.above} y={axis()} />
      <For each={props.rule.gaps}>
        {(gap) => (
          <>
            <rect class="gap" x={`${gap.from}%`} width={`${gap.to - gap.from}%`} y={gaps()} height={GAPS - 4} data-gap={gap.index} />
            {/* What a finger finds. */}
            <rect
              class="gaptouch"
              x={`${gap.from}%`}
              width={`${gap.to - gap.from}%`}
              y={gaps() - TOUCH}
              height={GAPS - 4 + 2 * TOUCH}
              data-touch={gap.index}
            />
          </>
        )}
      </For>
      <Show when={weighed()}>
        <line class="sl" x1="0" x2="100%" y1={foot()} y2={foot()} />
        <Marks marks={props.rule.below} y={foot()} />
      </Show>
      <For each={props.rule.flags}>{(flag) => <Pole flag={flag} top={hill()} foot={axis()} />}</For>
      <For each={props.rule.flags}>{(flag) => <FlagText flag={flag} />}</For>
    </svg>
  );
}

/** A path whose box is 100 by 100, stretched over the width. */
function Box(props: { readonly y: number; readonly height: number; readonly path: string; readonly class: string }) {
  return (
    <svg x="0" y={props.y} width="100%" height={props.height} viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
      <path class={props.class} d={props.path} vector-effect="non-scaling-stroke" />
    </svg>
  );
}

function Marks(props: { readonly marks: readonly Mark[]; readonly y: number }) {
  const app = useApp();
  /** At the ends of the scale the figures stand inside it. */
  const anchor = (at: number) => (at < 1 ? '' : at > 99 ? 'e' : 'm');
  return (
    <For each={props.marks}>
      {(mark) => (
        <>
          <line class="sf" x1={`${mark.at}%`} x2={`${mark.at}%`} y1={props.y} y2={props.y + 4} />
          <text class={`f ${anchor(mark.at)}`} x={`${mark.at}%`} y={props.y + 16}>
            {fixed(mark.value, mark.places, app.say())}
          </text>
        </>
      )}
    </For>
  );
}

function Pole(props: { readonly flag: RuleFlag; readonly top: number; readonly foot: number }) {
  const lane = () => (props.flag.row === null ? props.top : props.flag.row * LANE + 4);
  const middle = () => props.foot - STROKES / 2;
  return (
    <g class="flag" data-flag={props.flag.id}>
      <line class="pole" x1={`${props.flag.at}%`} x2={`${props.flag.at}%`} y1={lane()} y2={props.foot} />
      <Show when={props.flag.limits}>
        {(limits) => (
          <For each={[limits().from, limits().to]}>
            {(at) => <line class="limit" x1={`${at}%`} x2={`${at}%`} y1={props.top + HILL - 12} y2={props.foot} />}
          </For>
        )}
      </Show>
      <Show when={props.flag.best !== null}>
        <rect class="best" x={`${props.flag.best}%`} y={middle() - 8} width="4" height="16" transform="translate(-2 0)" />
      </Show>
    </g>
  );
}

/** Over the poles, with a rim that keeps it readable where one passes behind it. */
function FlagText(props: { readonly flag: RuleFlag }) {
  return (
    <Show when={props.flag.row !== null}>
      <text
        class={`words ${props.flag.toLeft ? 'e' : ''}`}
        x={`${props.flag.at}%`}
        dx={props.flag.toLeft ? -5 : 5}
        y={(props.flag.row ?? 0) * LANE + 14}
        data-words={props.flag.id}
      >
        {props.flag.words}
      </text>
    </Show>
  );
}
