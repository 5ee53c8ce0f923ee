import { createMemo, Show } from 'solid-js';
import { bandOf } from '../../../core/src/band.ts';
import { type Budget, budgetOf } from '../../../core/src/budget.ts';
import { en } from '../../../core/src/en.ts';
import { withTrueMinus } from '../../../core/src/format.ts';
import { offRatioText, type PlannedOption, ratioText, type Say } from '../../../core/src/index.ts';
import { worstRangeText } from '../../../core/src/optionWords.ts';
import { ONE } from '../../../core/src/ratio.ts';
import type { CheckVerdict } from '../../../core/src/ratioCheck/verdict.ts';
import { useApp } from '../state/app.ts';
import { Rule } from './Rule.tsx';

type Note = CheckVerdict | 'inside' | 'outside';

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
  const worst = createMemo(() => {
    const [of, chosen] = [plan(), app.solution.chosen()];
    return of === null || chosen === null ? null : budgetOf(of, chosen);
  });
  return (
    <Show when={plan()} fallback={<p class="faint bandempty">{en`No ratio yet: the machine and the material say what is missing.`}</p>}>
      {(of) => (
        <>
          <dl class="facts">
            <Fact word={en`Wanted`} value={of().mix.sheet.written} />
            <Fact word={en`by volume, as run`} value={ratioText(ONE.div(of().mix.wantedBPerA), app.say())} />
            <Fact word={en`Limits`} value={withTrueMinus(of().mix.limitsWritten ?? en`not given`)} />
            <OptionFact word={en`Fitted`} option={app.solution.fitted()} say={app.say()} />
            <OptionFact word={en`Chosen`} option={app.solution.chosen()} say={app.say()} />
            <Show when={app.measured()}>
              {(measured) => <RatioFact word={en`Measured ${measured().day}`} of={measured()} note={measured().verdict} say={app.say()} />}
            </Show>
            <WorstFact budget={worst()} say={app.say()} />
          </dl>
          <Show when={scale()}>{(rule) => <Rule scale={rule()} listed={listed()} worst={worst()} />}</Show>
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
  const place = ({ inside }: PlannedOption): Note | undefined => (inside === null ? undefined : inside ? 'inside' : 'outside');
  return (
    <Show when={props.option}>{(option) => <RatioFact word={props.word} of={option()} note={place(option())} say={props.say} />}</Show>
  );
}

/** A ratio and how far off it is; `note` says what that means. */
function RatioFact(props: {
  readonly word: string;
  readonly of: Pick<PlannedOption, 'bPerA' | 'offRatio'>;
  readonly note: Note | undefined;
  readonly say: Say;
}) {
  const note = () => (props.note === undefined ? undefined : NOTES[props.note]);
  return (
    <div>
      <dt>{props.word}</dt>
      <dd>
        {ratioText(ONE.div(props.of.bPerA), props.say)}{' '}
        <small class={note()?.colour}>
          {[offRatioText(props.of.offRatio, props.say), note()?.words].filter((word) => word !== undefined).join(', ')}
        </small>
      </dd>
    </div>
  );
}

const NOTES: Readonly<Record<Note, { readonly words: string; readonly colour: string }>> = {
  inside: { words: en`inside`, colour: 'good' },
  outside: { words: en`outside`, colour: 'bad' },
  pass: { words: en`pass`, colour: 'good' },
  fail: { words: en`fail`, colour: 'bad' },
  'not proven': { words: en`not proven`, colour: 'warn' },
  'no limits': { words: en`no verdict`, colour: '' },
};

/** What the chosen option may come to at worst; where something is not given, at least that. */
function WorstFact(props: { readonly budget: Budget | null; readonly say: Say }) {
  return (
    <Show when={props.budget}>
      {(budget) => (
        <div>
          <dt>{en`Worst case, + is B-rich`}</dt>
          <dd>
            <small>
              {worstRangeText(budget(), props.say)}
              {budget().lacking.length > 0 ? en`, or more` : ''}
            </small>
          </dd>
        </div>
      )}
    </Show>
  );
}
