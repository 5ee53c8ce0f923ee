import { For, Show } from 'solid-js';
import type { Band, Spot } from '../../../core/src/band.ts';
import { type Budget, VERDICT_WORDS } from '../../../core/src/budget.ts';
import { en } from '../../../core/src/en.ts';
import { asSheetCounts, fixed, offRatioText, type PlannedOption, ratioText, signed } from '../../../core/src/index.ts';
import { worstRangeText } from '../../../core/src/optionWords.ts';
import { BY_BASIS } from '../../../core/src/plan.ts';
import { ONE, whole } from '../../../core/src/ratio.ts';
import { useApp } from '../state/app.ts';
import { MIDDLE, Pointer, RULE_FOOT, RULE_TOP, Whisker } from './RuleMarks.tsx';

/** One log scale of the ratio by volume above, as the sheet counts beneath; every option a tick, the worst case of the chosen a whisker. */
export function Rule(props: { readonly scale: Band; readonly listed: readonly PlannedOption[]; readonly worst: Budget | null }) {
  const app = useApp();
  const percent = (spot: Spot) => `${spot.at}%`;
  const sentence = () => {
    const of = app.solution.answered();
    const chosen = app.solution.chosen();
    if (of === null || chosen === null) return en`Ratio rule`;
    const said = en`Ratio rule, more B to the left: wanted ${ratioText(ONE.div(of.plan.mix.wantedBPerA), app.say())}, chosen ${offRatioText(chosen.offRatio, app.say())}, that is ${fixed(asSheetCounts(of.plan, chosen.bPerA), 2, app.say())} parts of B per 100 A ${BY_BASIS[of.plan.mix.sheet.basis]}.`;
    return `${said} ${worst()}`.trim();
  };
  const worst = () => {
    if (props.worst === null) return '';
    const { verdict } = props.worst;
    return en`Worst case ${worstRangeText(props.worst, app.say())}, + is B-rich${verdict === null ? '' : `: ${VERDICT_WORDS[verdict]}`}.`;
  };
  const limitText = (which: 'low' | 'high') => {
    const limits = app.solution.answered()?.plan.mix.limits;
    return limits === null || limits === undefined ? '' : `${signed(limits[which].mul(whole(100)), 2, app.say())} %`;
  };
  return (
    <>
      <svg class="rule" width="100%" height="82" role="img" aria-label={sentence()}>
        <Show when={props.scale.limits}>
          {(limits) => (
            <>
              <rect
                class="win"
                x={percent(limits().from)}
                y={RULE_TOP}
                width={`${limits().to.at - limits().from.at}%`}
                height={RULE_FOOT - RULE_TOP}
              />
              <For each={[['high', limits().from] as const, ['low', limits().to] as const]}>
                {([which, spot]) => (
                  <>
                    <line class="limit" x1={percent(spot)} x2={percent(spot)} y1="16" y2={RULE_FOOT} />
                    <text class="m f" x={percent(spot)} y="12">
                      {limitText(which)}
                    </text>
                  </>
                )}
              </For>
            </>
          )}
        </Show>
        <line class="sl" x1="0" x2="100%" y1={RULE_TOP} y2={RULE_TOP} />
        <line class="sl" x1="0" x2="100%" y1={RULE_FOOT} y2={RULE_FOOT} />
        <For each={props.scale.above}>
          {(mark) => (
            <>
              <line class="sf" x1={`${mark.at}%`} x2={`${mark.at}%`} y1={RULE_TOP} y2={RULE_TOP - 5} />
              <text class="m f" x={`${mark.at}%`} y={RULE_TOP - 8}>
                {fixed(mark.value, mark.places, app.say())}
              </text>
            </>
          )}
        </For>
        <For each={props.scale.below}>
          {(mark) => (
            <>
              <line class="sf" x1={`${mark.at}%`} x2={`${mark.at}%`} y1={RULE_FOOT} y2={RULE_FOOT + 5} />
              <text class="m f" x={`${mark.at}%`} y={RULE_FOOT + 17}>
                {fixed(mark.value, mark.places, app.say())}
              </text>
            </>
          )}
        </For>
        <For each={props.listed}>
          {(option) => {
            const spot = props.scale.spotOf(option);
            return (
              <Show when={spot.beyond === null}>
                <line class="tick" x1={percent(spot)} x2={percent(spot)} y1={RULE_TOP + 6} y2={RULE_FOOT - 6} />
              </Show>
            );
          }}
        </For>
        <line class="wanted" x1={percent(props.scale.wanted)} x2={percent(props.scale.wanted)} y1="16" y2={RULE_FOOT} />
        <text class="m" x={percent(props.scale.wanted)} y="12">{en`wanted`}</text>
        <Show when={props.worst}>{(budget) => <Whisker span={props.scale.spanOf(budget().from.value, budget().to.value)} />}</Show>
        <Pointer spot={fittedSpot()} />
        <Pointer spot={chosenSpot()} solid />
        <Show when={measuredSpot()}>{(spot) => <circle class="measured" cx={percent(spot())} cy={MIDDLE} r="5" />}</Show>
      </svg>
      {/* Not drawn: on a narrow window it takes several lines. */}
      <p class="key">
        <span>{keyText()}</span>
        <span>{beyond()}</span>
      </p>
    </>
  );
  function keyText(): string {
    const basis = app.solution.answered()?.plan.mix.sheet.basis;
    const scales =
      basis === 'volume'
        ? en`above: A : B by volume · below: B per 100 A by volume`
        : en`above: A : B by volume · below: B per 100 A by weight`;
    const marks = en`more B to the left · solid: chosen, with its worst case; hollow: fitted`;
    return `${scales} · ${marks}${app.measured() === null ? '' : en`; ring: measured`}`;
  }
  function beyond(): string {
    const spots = [[en`fitted`, fittedSpot()] as const, [en`chosen`, chosenSpot()] as const, [en`measured`, measuredSpot()] as const];
    const lies = (word: string, way: 'left' | 'right') => (way === 'left' ? en`${word} lies further left` : en`${word} lies further right`);
    return spots.flatMap(([word, spot]) => (spot?.beyond ? [lies(word, spot.beyond)] : [])).join(', ');
  }
  function measuredSpot(): Spot | null {
    const measured = app.measured();
    return measured === null ? null : props.scale.spotOf(measured);
  }
  function fittedSpot(): Spot | null {
    const fitted = app.solution.fitted();
    return fitted === null ? null : props.scale.spotOf(fitted);
  }
  function chosenSpot(): Spot | null {
    const chosen = app.solution.chosen();
    return chosen === null ? null : props.scale.spotOf(chosen);
  }
}
