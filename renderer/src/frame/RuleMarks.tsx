import { For, Show } from 'solid-js';
import type { Span, Spot } from '../../../core/src/band.ts';

// The bars of the ratio rule, between its two scales.

export const RULE_TOP = 34;
export const RULE_FOOT = 62;
export const MIDDLE = (RULE_TOP + RULE_FOOT) / 2;

/** Chosen: a solid bar; fitted: a hollow one. What lies beyond the rule is said in words beneath it. */
export function Pointer(props: { readonly spot: Spot | null; readonly solid?: boolean }) {
  return (
    <Show when={props.spot?.beyond === null && props.spot}>
      {(spot) => (
        <rect
          class={props.solid ? 'bar solid' : 'bar hollow'}
          x={`${spot().at}%`}
          y={RULE_TOP + 2}
          width="5"
          height={RULE_FOOT - RULE_TOP - 4}
          transform="translate(-2.5 0)"
        />
      )}
    </Show>
  );
}

/** From one end of the worst case to the other, with a stop at each end that lies on the rule. */
export function Whisker(props: { readonly span: Span }) {
  return (
    <g class="whisker">
      <line x1={`${props.span.from.at}%`} x2={`${props.span.to.at}%`} y1={MIDDLE} y2={MIDDLE} />
      <For each={[props.span.from, props.span.to]}>
        {(spot) => (
          <Show when={spot.beyond === null}>
            <line x1={`${spot.at}%`} x2={`${spot.at}%`} y1={MIDDLE - 7} y2={MIDDLE + 7} />
          </Show>
        )}
      </For>
    </g>
  );
}
