import { For } from 'solid-js';
import { type FigureRule, MEASURE_NAMES, measureOf } from '../../../../core/src/chemistry/measures.ts';
import type { Tank } from '../../../../core/src/chemistry/systems.ts';
import { chemistryNumberTrouble, type IngredientRow, ingredientTrouble } from '../../../../core/src/file/chemistryRow.ts';
import { capital } from '../../../../core/src/format.ts';
import { TextField } from '../../fields/index.tsx';
import { placeKey, useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { chemistryOf, editIngredient, measuresFor, pickMeasure, removeIngredient, setFigure } from './chemistryForm.ts';
import type { MaterialForm } from './materialForm.ts';
import { NumberField } from './NumberField.tsx';

interface LineProps {
  readonly form: MaterialForm;
  readonly tank: Tank;
  readonly row: IngredientRow;
  readonly index: number;
  /** Parts of what is alone in its tank cancel. */
  readonly alone: boolean;
}

/** One ingredient: its name and parts, and how its sheet says how much of it reacts. */
export function IngredientLine(props: LineProps) {
  const app = useApp();
  const place = (key: string) => props.form.place('chemistry', props.tank, 'ingredients', props.index, key);
  const edit = (key: string, change: (row: IngredientRow) => void) => editIngredient(props.form, props.tank, props.row.id, key, change);
  const figures = () => (props.row.by === undefined ? [] : measureOf(props.row.by).figures);
  const inOneStep = (change: () => void) => {
    app.shop.pause();
    change();
    app.shop.pause();
  };
  const pick = (chosen: string) =>
    inOneStep(() =>
      pickMeasure(
        props.form,
        props.tank,
        props.row.id,
        MEASURE_NAMES.find((by) => by === chosen),
      ),
    );
  return (
    <div class="ingredient">
      <TextField label="Name" place={place('name')} value={props.row.name} set={(name) => edit('name', (row) => put(row, 'name', name))} />
      <NumberField
        label="Parts by weight"
        place={place('parts')}
        value={props.row.parts}
        hint={props.alone && props.row.parts === undefined ? 'may stay empty' : undefined}
        check={(typed) => chemistryNumberTrouble('parts', typed)}
        set={(parts) => edit('parts', (row) => put(row, 'parts', parts))}
      />
      <label class="field">
        <span class="k">Described by its</span>
        <select class="whole" data-place={placeKey(place('by'))} onChange={(event) => pick(event.currentTarget.value)}>
          <option value="" selected={props.row.by === undefined}>
            not said yet
          </option>
          <For each={measuresFor(chemistryOf(props.form), props.tank, props.row.by)}>
            {(by) => (
              <option value={by} selected={props.row.by === by}>
                {measureOf(by).words}
              </option>
            )}
          </For>
        </select>
      </label>
      <div>
        <For each={figures()}>
          {(rule) => (
            <NumberField
              label={headOf(rule)}
              place={place(rule.key)}
              value={props.row[rule.key]}
              hint={rule.hint}
              check={(typed) => ingredientTrouble(props.row.by, rule.key, typed)}
              set={(value) => setFigure(props.form, props.tank, props.row.id, rule.key, value)}
            />
          )}
        </For>
      </div>
      <button
        type="button"
        class="plain"
        aria-label={`Remove ${props.row.name ?? 'this ingredient'} from ${props.tank}`}
        onClick={() => inOneStep(() => removeIngredient(props.form, props.tank, props.row.id))}
      >
        Remove
      </button>
    </div>
  );
}

const headOf = ({ label, unit }: FigureRule): string => (unit === '' ? capital(label) : `${capital(label)}, ${unit}`);
