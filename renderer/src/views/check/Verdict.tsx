import { Show } from 'solid-js';
import { measuredRatioText, spreadText, unstableText, verdictSoFar, waitingText } from '../../../../core/src/checkPageWords.ts';
import { en } from '../../../../core/src/en.ts';
import { offRatioText, signedRangeText } from '../../../../core/src/index.ts';
import type { CheckVerdict } from '../../../../core/src/ratioCheck/verdict.ts';
import { DECISION_RULE, furtherText, intervalBasis, verdictReason } from '../../../../core/src/ratioCheckWords.ts';
import { useApp } from '../../state/app.ts';
import type { Shown } from '../../state/ratioCheck.ts';
import { VerdictDrawing } from './VerdictDrawing.tsx';

const COLOURS: Readonly<Record<CheckVerdict, string>> = { pass: 'good', fail: 'bad', 'not proven': 'warn', 'no limits': '' };

/** The verdict with its reason, its rule and its figures; it follows what is typed at once. */
export function Verdict(props: { readonly shown: Shown | null; readonly waiting: readonly number[] }) {
  const app = useApp();
  return (
    <section class="verdict" aria-labelledby="verdict">
      <h2 id="verdict">{en`Verdict`}</h2>
      <div role="status">
        <Show when={props.shown} fallback={<p class="v faint">{en`The first whole catch shows the ratio, the second its verdict.`}</p>}>
          {(shown) => (
            <p class="v">
              <b class={COLOURS[shown().evaluation.verdict]}>{verdictSoFar(shown().evaluation.verdict, props.waiting)}</b>{' '}
              {offRatioText(shown().evaluation.offRatio.value, app.say())}
            </p>
          )}
        </Show>
      </div>
      <Show when={waitingText(props.waiting)}>{(waiting) => <p class="warn">{waiting()}</p>}</Show>
      <Show when={props.shown}>{(shown) => <Reasons shown={shown()} />}</Show>
    </section>
  );
}

function Reasons(props: { readonly shown: Shown }) {
  const app = useApp();
  const of = () => props.shown.evaluation;
  return (
    <>
      <p>{verdictReason(of(), app.say())}</p>
      <Show when={unstableText(of())}>{(text) => <p class="warn">{text()}</p>}</Show>
      <Show when={of().further}>{(further) => <p>{furtherText(further(), of().weighed, app.say())}</p>}</Show>
      <VerdictDrawing evaluation={of()} />
      <p class="hint">{en`Off-ratio in %, + is B-rich, more B to the left as on the band. Rings: catches. Bar: interval of the mean.`}</p>
      <dl class="figures">
        <dt>{en`Ratio`}</dt>
        <dd>{measuredRatioText(of(), app.say())}</dd>
        <dt>{en`Off-ratio`}</dt>
        <dd>
          {offRatioText(of().offRatio.value, app.say())} <small>{en`= (B per A caught) / (B per A wanted) − 1`}</small>
        </dd>
        <Show when={of().interval}>
          {(interval) => (
            <>
              <dt>{en`Interval`}</dt>
              <dd>
                {signedRangeText(interval().from.value, interval().to.value, app.say())} <small>{en`+ is B-rich`}</small>
              </dd>
            </>
          )}
        </Show>
        <dt>{en`Spread`}</dt>
        <dd>{spreadText(of(), app.say())}</dd>
      </dl>
      <p class="hint">
        {DECISION_RULE} {intervalBasis(of(), app.say())}
      </p>
    </>
  );
}
