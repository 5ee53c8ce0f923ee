import { createMemo, Show } from 'solid-js';
import { beforeWeighing } from '../../../../core/src/beforeWeighing.ts';
import { teethText, wantedText } from '../../../../core/src/checkPageWords.ts';
import { en } from '../../../../core/src/en.ts';
import { visible } from '../../../../core/src/visible.ts';
import { SelectField } from '../../fields/SelectField.tsx';
import { useApp } from '../../state/app.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';
import { pickMaterialOf } from '../../state/useDeliveries.ts';
import { HeadBoxes } from './HeadBoxes.tsx';

const NOW = '';

/** What is proved, how it is weighed, and what to expect before the first catch. */
export function Before(props: { readonly state: RatioCheckState }) {
  const app = useApp();
  const nameOf = (id: string) => visible(app.shop.file?.materials.find((one) => one.id === id)?.name ?? id);
  const proved = () => {
    const of = props.state.proved();
    return of?.ok === true ? of.value : null;
  };
  const options = () => {
    const { machine } = props.state;
    const now = en`What is fitted now: ${teethText((machine()?.stages ?? []).map((stage) => ({ driver: stage.driver.teeth, driven: stage.driven.teeth })))}`;
    return [
      ...props.state
        .sheets()
        .map(
          (sheet) => [sheet.id, en`Sheet ${visible(sheet.number)}: ${teethText(sheet.mounted.teeth)}, ${nameOf(sheet.material)}`] as const,
        ),
      [NOW, now] as const,
    ];
  };
  return (
    <section class="before" aria-labelledby="before">
      <div class="head">
        <h2 id="before">{en`Before the first catch`}</h2>
        <span class="faint">{en`${visible(props.state.machine()?.name ?? '')}: both sides unmixed, weighed apart`}</span>
      </div>
      <SelectField
        label={en`What is proved`}
        place={props.state.place('changeSheet')}
        value={props.state.check()?.changeSheet ?? NOW}
        options={options()}
        pick={(id) => props.state.prove(props.state.sheets().find((one) => one.id === id) ?? null)}
      />
      <Show when={proved()}>
        {(of) => (
          <>
            <p class="provedline">
              {of().plan.material.name}: {wantedText({ written: of().plan.mix.sheet.written, limitsWritten: of().plan.mix.limitsWritten })}
            </p>
            <Show when={of().plan.material.id !== app.selection().material}>
              <p class="hint">
                {en`The band above shows another material.`}{' '}
                <button type="button" class="plain" onClick={() => pickMaterialOf(app, of().plan.material.id)}>
                  {en`Show ${of().plan.material.name}`}
                </button>
              </p>
            </Show>
          </>
        )}
      </Show>
      <HeadBoxes state={props.state} />
      <ToExpect state={props.state} />
    </section>
  );
}

/** Expected weights, the smallest worth weighing, and how many. */
function ToExpect(props: { readonly state: RatioCheckState }) {
  const app = useApp();
  const figures = createMemo(() => {
    const [of, check] = [props.state.proved(), props.state.check()];
    const kept = props.state.kept().flatMap(({ row, evaluation }) => (evaluation ? [{ row, evaluation }] : []));
    return of?.ok === true && check !== null ? beforeWeighing(check, of.value.plan, kept, app.say()) : null;
  });
  return (
    <Show when={figures()}>
      {(of) => (
        <>
          <dl class="facts">
            <Fact word={en`Expected of A`} value={of().expected.A} />
            <Fact word={en`Expected of B`} value={of().expected.B} />
            <Fact word={en`Limits allow of B`} value={of().expected.allowedB} />
            <Fact word={en`Smallest catch worth making`} value={of().smallest} />
            <Fact word={en`Catches worth making`} value={of().count} />
          </dl>
          <Show when={of().small}>{(small) => <p class="hint warn">{small()}</p>}</Show>
        </>
      )}
    </Show>
  );
}

function Fact(props: { readonly word: string; readonly value: string | null | undefined }) {
  return (
    <Show when={props.value}>
      {(value) => (
        <div>
          <dt>{props.word}</dt>
          <dd>{value()}</dd>
        </div>
      )}
    </Show>
  );
}
