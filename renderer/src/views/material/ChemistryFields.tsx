import { For, Show } from 'solid-js';
import { SYSTEM_NAMES, type SystemName, systemOf, TANKS } from '../../../../core/src/chemistry/systems.ts';
import { en } from '../../../../core/src/en.ts';
import { chemistryNumberTrouble } from '../../../../core/src/file/chemistryRow.ts';
import { put } from '../../state/put.ts';
import { Choices } from './Choices.tsx';
import { askedTank, chemistryOf, editChemistry, pickSystem } from './chemistryForm.ts';
import { Ingredients } from './Ingredients.tsx';
import type { MaterialForm } from './materialForm.ts';
import { NumberField } from './NumberField.tsx';

const CHOICES = SYSTEM_NAMES.map((name) => [name, systemOf(name).words] as const);
const IN_TANKS = TANKS.map((tank) => [tank, en`tank ${tank}`] as const);

/** The mix ratio out of what reacts in the two tanks. */
export function ChemistryFields(props: { readonly form: MaterialForm }) {
  const row = () => chemistryOf(props.form);
  return (
    <fieldset class="block">
      <legend>{en`Mix ratio from what reacts, by weight`}</legend>
      <div class="asked">
        <Choices
          label={en`The material is`}
          place={props.form.place('chemistry', 'system')}
          options={CHOICES}
          value={row().system}
          pick={(system) => pickSystem(props.form, system)}
        />
        <Show when={row().system}>
          {(system) => (
            <>
              <Tanks form={props.form} system={system()} />
              <IndexField form={props.form} system={system()} />
            </>
          )}
        </Show>
      </div>
      <Show when={row().system !== undefined}>
        <For each={TANKS}>{(tank) => <Ingredients form={props.form} tank={tank} />}</For>
      </Show>
    </fieldset>
  );
}

/** Which tank holds what differs between shops and countries, so it is asked. */
function Tanks(props: { readonly form: MaterialForm; readonly system: SystemName }) {
  const key = () => systemOf(props.system).askedAs;
  return (
    <Choices
      label={en`The ${systemOf(props.system).asked.words} is in`}
      place={props.form.place('chemistry', key())}
      options={IN_TANKS}
      value={askedTank(chemistryOf(props.form))}
      pick={(tank) =>
        editChemistry(props.form, key(), (chemistry) => {
          chemistry[key()] = tank;
        })
      }
    />
  );
}

function IndexField(props: { readonly form: MaterialForm; readonly system: SystemName }) {
  return (
    <NumberField
      label={systemOf(props.system).index.label}
      place={props.form.place('chemistry', 'index')}
      value={chemistryOf(props.form).index}
      check={(typed) => chemistryNumberTrouble('index', typed)}
      set={(index) => editChemistry(props.form, 'index', (chemistry) => put(chemistry, 'index', index))}
    />
  );
}
