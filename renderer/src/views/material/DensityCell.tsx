import { createSignal } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { TypedQuantity } from '../../../../core/src/entry.ts';
import { partTrouble } from '../../../../core/src/file/partTrouble.ts';
import { entryUnits } from '../../fields/entryUnits.ts';
import { QuantityField } from '../../fields/index.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { editPart, type MaterialForm, type PartKey } from './materialForm.ts';

interface DensityProps {
  readonly form: MaterialForm;
  readonly part: PartKey;
  readonly which: 'density' | 'secondDensity';
  /** Whose density it is, for the ear: `A`, `the mixture`. */
  readonly whose: string;
}

/** A density and the temperature it holds at: the file keeps the two together. */
export function DensityCell(props: DensityProps) {
  const app = useApp();
  const stated = () => props.form.row()[props.part]?.[props.which];
  // A temperature typed before its density, or left over while that is typed anew, waits here.
  const [waiting, setWaiting] = createSignal<TypedQuantity>();
  const at = () => stated()?.at ?? waiting();
  const word = () => (props.which === 'density' ? en`Density` : en`Second density`);
  const place = (key: 'value' | 'at') => props.form.place(props.part, props.which, key);
  const edit = (change: (part: { density?: Density; secondDensity?: Density }) => void) =>
    editPart(props.form, props.part, [props.which], change);
  const setValue = (value: TypedQuantity | undefined) => {
    const kept = at();
    setWaiting(value === undefined ? kept : undefined);
    edit((part) => put(part, props.which, value && (kept === undefined ? { value } : { value, at: { ...kept } })));
  };
  const setAt = (next: TypedQuantity | undefined) => {
    if (stated() === undefined) {
      setWaiting(next);
      return;
    }
    edit((part) => {
      const density = part[props.which];
      if (density !== undefined) put(density, 'at', next);
    });
  };
  return (
    <div class="pair">
      <QuantityField
        label={en`${word()} of ${props.whose}`}
        bare
        place={place('value')}
        dimension="density"
        unit={entryUnits(app.say()).density}
        value={stated()?.value}
        check={(value) => partTrouble({ density: { value } })}
        set={setValue}
      />
      <span class="faint">{en`at`}</span>
      <QuantityField
        label={en`${word()} of ${props.whose} holds at`}
        bare
        place={place('at')}
        dimension="temperature"
        unit={entryUnits(app.say()).temperature}
        value={at()}
        hint={waiting() === undefined ? undefined : en`waits for its density`}
        check={(value) => partTrouble({ runAt: value })}
        set={setAt}
      />
    </div>
  );
}

type Density = NonNullable<ReturnType<MaterialForm['row']>['A']['density']>;
