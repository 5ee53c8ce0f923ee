import { For } from 'solid-js';
import { type FigureRule, MEASURE_NAMES, measureOf } from '../../../../core/src/chemistry/measures.ts';
import type { Tank } from '../../../../core/src/chemistry/systems.ts';
import { en } from '../../../../core/src/en.ts';
import { chemistryNumberTrouble, type IngredientRow, ingredientTrouble } from '../../../../core/src/file/chemistryRow.ts';
import { capital } from '../../../../core/src/format.ts';
import { visible } from '../../../../core/src/visible.ts';
import { TextField } from '../../fields/index.tsx';
import { SelectField } from '../../fields/SelectField.tsx';
import { useApp } from '../../state/app.ts';
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
  const measures = () => measuresFor(chemistryOf(props.form), props.tank, props.row.by).map((by) => [by, measureOf(by).words] as const);
  const pick = (chosen: string) =>
    pickMeasure(
      props.form,
      props.tank,
      props.row.id,
      MEASURE_NAMES.find((by) => by === chosen),
    );
  const remove = () => {
    app.shop.pause();
    removeIngredient(props.form, props.tank, props.row.id);
    app.shop.pause();
  };
  return (
    <div class="ingredient">
      <TextField
        label={en`Name`}
        place={place('name')}
        value={props.row.name}
        set={(name) => edit('name', (row) => put(row, 'name', name))}
      />
      <NumberField
        label={en`Parts by weight`}
        place={place('parts')}
        value={props.row.parts}
        hint={props.alone && props.row.parts === undefined ? en`may stay empty` : undefined}
        check={(typed) => chemistryNumberTrouble('parts', typed)}
        set={(parts) => edit('parts', (row) => put(row, 'parts', parts))}
      />
      <SelectField
        label={en`Described by its`}
        place={place('by')}
        value={props.row.by ?? ''}
        options={[['', en`not said yet`], ...measures()]}
        pick={pick}
      />
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
        aria-label={en`Remove ${visible(props.row.name ?? en`this ingredient`)} from ${props.tank}`}
        onClick={remove}
      >{en`Remove`}</button>
    </div>
  );
}

const headOf = ({ label, unit }: FigureRule): string => (unit === '' ? capital(label) : `${capital(label)}, ${unit}`);
