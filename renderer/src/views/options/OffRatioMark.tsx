import { Show } from 'solid-js';
import type { Band, Spot } from '../../../../core/src/band.ts';
import type { PlannedOption } from '../../../../core/src/index.ts';

const HEIGHT = 16;

/** An off-ratio on the rule of the band: the limits as a window, the wanted ratio as a line, the option as a bar; more B to the left. */
export function OffRatioMark(props: { readonly rule: Band; readonly option: PlannedOption }) {
  const percent = (spot: Spot) => `${spot.at}%`;
  const spot = () => props.rule.spotOf(props.option);
  const from = () => Math.min(spot().at, props.rule.wanted.at);
  return (
    <svg class="mark" width="100%" height={HEIGHT} aria-hidden="true">
      <Show when={props.rule.limits}>
        {(limits) => (
          <rect class="win" x={percent(limits().from)} width={`${limits().to.at - limits().from.at}%`} y="1" height={HEIGHT - 2} />
        )}
      </Show>
      <line class="sf" x1={percent(props.rule.wanted)} x2={percent(props.rule.wanted)} y1="0" y2={HEIGHT} />
      <rect class="way" x={`${from()}%`} width={`${Math.abs(spot().at - props.rule.wanted.at)}%`} y="7" height="2" />
      <Show
        when={spot().beyond}
        fallback={<rect class="at" x={percent(spot())} y="2" width="4" height={HEIGHT - 4} transform="translate(-2 0)" />}
      >
        {(side) => (
          <svg x={percent(spot())} overflow="visible" aria-hidden="true">
            <path class="beyond" d={side() === 'left' ? 'M5 3L0 8L5 13' : 'M-5 3L0 8L-5 13'} />
          </svg>
        )}
      </Show>
    </svg>
  );
}
