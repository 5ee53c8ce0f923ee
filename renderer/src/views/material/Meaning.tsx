import { createMemo, For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { limitsTrouble } from '../../../../core/src/file/limitsDraft.ts';
import { worstFirst } from '../../../../core/src/finding.ts';
import type { Finding, Place } from '../../../../core/src/index.ts';
import { chemistrySentences, formRows, formText, type KnownRatio, ratioSentence, wrongBasisText } from '../../../../core/src/sheetForms.ts';
import { SAID_SEVERITY } from '../../saidSeverity.ts';
import { useApp } from '../../state/app.ts';
import type { MaterialForm } from './materialForm.ts';

/** What the sheet's figures mean at the pumps, and what they still lack. */
export function Meaning(props: { readonly form: MaterialForm }) {
  const app = useApp();
  return (
    <section class="side" tabindex="0" aria-label={en`What it means`}>
      <h2>{en`In one sentence`}</h2>
      <Show
        when={props.form.ratio()}
        fallback={<p class="faint gap">{en`Once the ratio is complete, this says what it means by volume.`}</p>}
      >
        {(ratio) => (
          <>
            <p class="say">{ratioSentence(ratio(), app.say())}</p>
            <Show when={ratio().chemistry}>
              {(chemistry) => (
                <div class="block">
                  <h2>{en`What reacts`}</h2>
                  <For each={chemistrySentences(chemistry(), app.say())}>{(sentence) => <p>{sentence}</p>}</For>
                </div>
              )}
            </Show>
            <Forms ratio={ratio()} />
            <Show when={wrongBasisText(ratio(), app.say())}>
              {(mistake) => (
                <div class="block">
                  <h2>{en`On the other basis by mistake`}</h2>
                  <p>{mistake()}</p>
                </div>
              )}
            </Show>
          </>
        )}
      </Show>
      <Lacking form={props.form} />
    </section>
  );
}

function Forms(props: { readonly ratio: KnownRatio }) {
  const app = useApp();
  const limited = () => props.ratio.limits !== null;
  return (
    <section class="block scrollx" tabindex="0" aria-label={en`The same ratio in the other forms`}>
      <table class="forms">
        <caption>{en`The same ratio in the other forms`}</caption>
        <thead>
          <tr>
            <th scope="col">{en`Form`}</th>
            <Show when={limited()}>
              <th scope="col" class="num">{en`Most B`}</th>
            </Show>
            <th scope="col" class="num">{en`Wanted`}</th>
            <Show when={limited()}>
              <th scope="col" class="num">{en`Least B`}</th>
            </Show>
          </tr>
        </thead>
        <tbody>
          <For each={formRows(props.ratio)}>
            {(row) => (
              <tr>
                <td>{row.label}</td>
                <Show when={limited()}>
                  <td class="num nw faint">{formText(row, row.mostB, app.say())}</td>
                </Show>
                <td class="num nw">{formText(row, row.wanted, app.say())}</td>
                <Show when={limited()}>
                  <td class="num nw faint">{formText(row, row.leastB, app.say())}</td>
                </Show>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </section>
  );
}

interface Lack {
  readonly word: 'blocks' | 'warns' | 'notes' | 'missing';
  readonly what: string;
  readonly where: Place;
}

/** `missing` is how a check that lacks its input is shown. */
const lackOf = ({ severity, missing, what, where }: Finding): Lack => ({ word: missing ? 'missing' : severity, what, where });

function Lacking(props: { readonly form: MaterialForm }) {
  const app = useApp();
  const lacks = createMemo((): readonly Lack[] => {
    const found = worstFirst(props.form.mix()?.findings ?? []).map(lackOf);
    const limits = limitsTrouble(props.form.limits());
    return limits === null ? found : [...found, { word: 'missing', what: limits, where: props.form.place('limits') }];
  });
  return (
    <div class="block">
      <h2>{en`Still to settle`}</h2>
      <Show when={lacks().length > 0} fallback={<p class="good">{en`Nothing: the sheet says all that a plan needs of it.`}</p>}>
        <dl class="find">
          <For each={lacks()}>
            {(lack) => (
              <>
                <dt
                  classList={{
                    bad: lack.word === 'blocks',
                    warn: lack.word === 'warns' || lack.word === 'missing',
                    faint: lack.word === 'notes',
                  }}
                >
                  {SAID_SEVERITY[lack.word]}
                </dt>
                <dd>
                  <button type="button" class="plain" onClick={() => app.goTo(lack.where)}>
                    {lack.what}
                  </button>
                </dd>
              </>
            )}
          </For>
        </dl>
      </Show>
    </div>
  );
}
