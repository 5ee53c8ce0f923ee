import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { limitsTrouble } from '../../../../core/src/file/limitsDraft.ts';
import type { LimitDefinition } from '../../../../core/src/mixRatio.ts';
import { DEFINITION_WORDS } from '../../../../core/src/mixRatio.ts';
import { limitsText } from '../../../../core/src/sheetForms.ts';
import { placeKey, useApp } from '../../state/app.ts';
import type { MaterialForm } from './materialForm.ts';
import { NumberField } from './NumberField.tsx';

const MEANING: Readonly<Record<LimitDefinition, string>> = {
  '% of B per A': en`How much more or less B may come for the same amount of A, in per cent of what is wanted. Type −2 and 2 for ± 2 %.`,
  '% of A per B': en`How much more or less A may come for the same amount of B, in per cent of what is wanted. Too much A is too little B. Type −2 and 2 for ± 2 %.`,
  'points of B in the total': en`How far B’s share of the whole mixture may move, in percentage points: with B at 50 %, −5 and 5 allow 45 to 55 % of B.`,
  'parts of B': en`The least and the most parts of B, counted as the ratio above counts them: 30 and 40 for 100 : 33.`,
  'index points': en`The least and the most index, or per cent of stoichiometry, counted as above: 102 and 108 for 105. Which way more B moves it follows from the tank that it counts.`,
};
const DEFINITIONS: readonly LimitDefinition[] = ['% of B per A', '% of A per B', 'points of B in the total', 'parts of B', 'index points'];

/** What the sheet allows: two numbers and what they mean. They count only together. */
export function LimitsFields(props: { readonly form: MaterialForm }) {
  const app = useApp();
  const draft = () => props.form.limits();
  const definition = () => draft().definition;
  const offered = () => DEFINITIONS.filter((one) => one !== 'index points' || props.form.fromChemistry() || one === definition());
  const pick = (value: string) => {
    app.shop.pause();
    props.form.setLimit(
      'definition',
      DEFINITIONS.find((one) => one === value),
    );
    app.shop.pause();
  };
  return (
    <fieldset class="block ruled">
      <legend>{en`Limits as the sheet gives them`}</legend>
      <div class="g3">
        <NumberField
          label={en`Low`}
          place={props.form.place('limits', 'low')}
          value={draft().low}
          set={(low) => props.form.setLimit('low', low)}
        />
        <NumberField
          label={en`High`}
          place={props.form.place('limits', 'high')}
          value={draft().high}
          set={(high) => props.form.setLimit('high', high)}
        />
        <label class="field">
          <span class="k">{en`These limits are`}</span>
          <select
            class="whole"
            data-place={placeKey(props.form.place('limits', 'definition'))}
            onChange={(event) => pick(event.currentTarget.value)}
          >
            <option value="" selected={definition() === undefined}>{en`definition missing`}</option>
            <For each={offered()}>
              {(one) => (
                <option value={one} selected={definition() === one}>
                  {DEFINITION_WORDS[one]}
                </option>
              )}
            </For>
          </select>
        </label>
      </div>
      <Show when={definition()}>{(one) => <p class="hint">{MEANING[one()]}</p>}</Show>
      <Show when={limitsTrouble(draft())}>{(trouble) => <p class="hint warn">{trouble()}</p>}</Show>
      <Show when={props.form.ratio()?.limits}>{(limits) => <p class="hint">{limitsText(limits(), app.say())}</p>}</Show>
    </fieldset>
  );
}
