import { For, Show } from 'solid-js';
import { componentIn, type Tank } from '../../../../core/src/chemistry/systems.ts';
import { en } from '../../../../core/src/en.ts';
import { placeKey, useApp } from '../../state/app.ts';
import { addIngredient, askedTank, chemistryOf } from './chemistryForm.ts';
import { IngredientLine } from './IngredientLine.tsx';
import type { MaterialForm } from './materialForm.ts';

/** What is weighed into one tank. */
export function Ingredients(props: { readonly form: MaterialForm; readonly tank: Tank }) {
  const app = useApp();
  const rows = () => chemistryOf(props.form)[props.tank]?.ingredients ?? [];
  const holds = () => {
    const { system } = chemistryOf(props.form);
    const asked = askedTank(chemistryOf(props.form));
    return system === undefined || asked === undefined ? '' : en`, the ${componentIn(system, asked, props.tank).words}`;
  };
  const add = () => {
    const next = rows().length;
    app.shop.pause();
    addIngredient(props.form, props.tank);
    app.shop.pause();
    app.goTo(props.form.place('chemistry', props.tank, 'ingredients', next, 'name'));
  };
  return (
    <section class="ingredients" aria-label={en`Ingredients of ${props.tank}`}>
      <h2 classList={{ ca: props.tank === 'A', cb: props.tank === 'B' }}>{en`In tank ${props.tank}${holds()}`}</h2>
      <For each={rows()}>
        {(row, index) => <IngredientLine form={props.form} tank={props.tank} row={row} index={index()} alone={rows().length === 1} />}
      </For>
      <Show when={rows().length === 0}>
        <p class="hint">{en`Nothing is in it yet.`}</p>
      </Show>
      <button type="button" data-place={placeKey(props.form.place('chemistry', props.tank, 'ingredients'))} onClick={add}>
        {en`Add an ingredient to ${props.tank}`}
      </button>
    </section>
  );
}
