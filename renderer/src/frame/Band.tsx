import { createMemo, For, Show } from 'solid-js';
import { type Band as BandScale, bandOf, type Spot } from '../../../core/src/band.ts';
import { budgetOf } from '../../../core/src/budget.ts';
import { asSheetCounts, fixed, offRatioText, type PlannedOption, ratioText, type Say, signed } from '../../../core/src/index.ts';
import { worstRangeText } from '../../../core/src/optionWords.ts';
import { ONE, whole } from '../../../core/src/ratio.ts';
import { useApp } from '../state/app.ts';

const RULE_TOP = 34;
const RULE_FOOT = 62;
const RULE_MIDDLE = 48;

/** The ratio, always in sight: what is wanted, the limits, what is fitted and chosen, and every option as a tick on one rule. */
export function Band() {
  const app = useApp();
  const plan = () => app.solution.answered()?.plan ?? null;
  const listed = createMemo(() => {
    const of = app.solution.answered();
    return of === null ? [] : of.ranked.options.slice(0, 60).map((mounted) => app.solution.lay(mounted));
  });
  const scale = createMemo(() => {
    const of = plan();
    return of === null ? null : bandOf(of, listed());
  });
  return (
    <Show when={plan()} fallback={<p class="faint bandempty">No ratio yet: the machine and the material say what is missing.</p>}>
      {(of) => (
        <>
          <dl class="facts">
            <Fact word="Wanted" value={of().mix.sheet.written} />
            <Fact word="by volume, as run" value={ratioText(ONE.div(of().mix.wantedBPerA), app.say())} />
            <Fact word="Limits" value={of().mix.limitsWritten ?? 'not given'} />
            <OptionFact word="Fitted" option={app.solution.fitted()} say={app.say()} />
            <OptionFact word="Chosen" option={app.solution.chosen()} say={app.say()} />
          </dl>
          <Show when={scale()}>{(rule) => <Rule scale={rule()} listed={listed()} />}</Show>
        </>
      )}
    </Show>
  );
}

function Fact(props: { readonly word: string; readonly value: string }) {
  return (
    <div>
      <dt>{props.word}</dt>
      <dd>{props.value}</dd>
    </div>
  );
}

function OptionFact(props: { readonly word: string; readonly option: PlannedOption | null; readonly say: Say }) {
  const place = (option: PlannedOption) => (option.inside === null ? '' : option.inside ? ', inside' : ', outside');
  return (
    <Show when={props.option}>
      {(option) => (
        <div>
          <dt>{props.word}</dt>
          <dd>
            {ratioText(ONE.div(option().bPerA), props.say)}{' '}
            <small classList={{ good: option().inside === true, bad: option().inside === false }}>
              {offRatioText(option().offRatio, props.say)}
              {place(option())}
            </small>
          </dd>
        </div>
      )}
    </Show>
  );
}

function Rule(props: { readonly scale: BandScale; readonly listed: readonly PlannedOption[] }) {
  const app = useApp();
  const percent = (spot: Spot) => `${spot.at}%`;
  const sentence = () => {
    const of = app.solution.answered();
    const chosen = app.solution.chosen();
    if (of === null || chosen === null) return 'Ratio rule';
    return `Ratio rule, more B to the left: wanted ${ratioText(ONE.div(of.plan.mix.wantedBPerA), app.say())}, chosen ${offRatioText(chosen.offRatio, app.say())}, that is ${fixed(asSheetCounts(of.plan, chosen.bPerA), 2, app.say())} parts of B per 100 A by ${of.plan.mix.sheet.basis}; worst case ${worstRangeText(budgetOf(of.plan, chosen), app.say())}, + is B-rich.`;
  };
  const limitText = (which: 'low' | 'high') => {
    const limits = app.solution.answered()?.plan.mix.limits;
    return limits === null || limits === undefined ? '' : `${signed(limits[which].mul(whole(100)), 2, app.say())} %`;
  };
  return (
    <svg class="rule" width="100%" height="92" role="img" aria-label={sentence()}>
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
      <text class="m" x={percent(props.scale.wanted)} y="12">
        wanted
      </text>
      <Show when={worst()}>
        {(ends) => (
          <>
            <line class="worst" x1={percent(ends().rich)} x2={percent(ends().lean)} y1={RULE_MIDDLE} y2={RULE_MIDDLE} />
            <For each={[ends().rich, ends().lean]}>
              {(end) => <line class="worst" x1={percent(end)} x2={percent(end)} y1={RULE_MIDDLE - 4} y2={RULE_MIDDLE + 4} />}
            </For>
          </>
        )}
      </Show>
      <Pointer spot={fittedSpot()} />
      <Pointer spot={chosenSpot()} solid />
      <text class="f" x="0" y="90">
        above: A : B by volume · below: B per 100 A by {app.solution.answered()?.plan.mix.sheet.basis} · more B to the left · solid: chosen,
        hollow: fitted, line: its worst case
      </text>
      <text class="e" x="100%" y="90">
        {beyond()}
      </text>
    </svg>
  );
  function beyond(): string {
    const spots = [['fitted', fittedSpot()] as const, ['chosen', chosenSpot()] as const];
    return spots.flatMap(([word, spot]) => (spot?.beyond ? [`${word} lies further ${spot.beyond}`] : [])).join(', ');
  }
  function fittedSpot(): Spot | null {
    const fitted = app.solution.fitted();
    return fitted === null ? null : props.scale.spotOf(fitted);
  }
  /** How far the chosen option may wander by the worst case of its budget; nothing where that is not known. */
  function worst(): { readonly rich: Spot; readonly lean: Spot } | null {
    const chosen = app.solution.chosen();
    const of = app.solution.answered();
    if (chosen === null || of === null) return null;
    const { from, to, contributions } = budgetOf(of.plan, chosen);
    return contributions.length === 0 ? null : { rich: props.scale.spotAt(to.value), lean: props.scale.spotAt(from.value) };
  }
  function chosenSpot(): Spot | null {
    const chosen = app.solution.chosen();
    return chosen === null ? null : props.scale.spotOf(chosen);
  }
}

/** Chosen: a solid bar; fitted: a hollow one. What lies beyond the rule is said in words beneath it. */
function Pointer(props: { readonly spot: Spot | null; readonly solid?: boolean }) {
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
