import { en } from '../../../../core/src/en.ts';
import { TextField } from '../../fields/index.tsx';
import { placeKey, useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { Choices } from './Choices.tsx';
import { editPart, editRatio, type MaterialForm } from './materialForm.ts';

/** Two pumps take two parts: the third stands in one of the tanks. */
export function ThirdPart(props: { readonly form: MaterialForm }) {
  const ratio = () => props.form.row().ratio;
  return (
    <div class="g3 gap">
      <Choices
        label={en`The third part is premixed into`}
        place={props.form.place('ratio', 'thirdInto')}
        options={[
          ['A', en`tank A`],
          ['B', en`tank B`],
        ]}
        value={ratio()?.thirdInto}
        pick={(side) =>
          editRatio(props.form, 'thirdInto', (changed) => {
            changed.thirdInto = side;
          })
        }
      />
      <TextField
        label={en`Name of the third part`}
        place={props.form.place('third', 'name')}
        value={props.form.row().third?.name}
        set={(name) => editPart(props.form, 'third', ['name'], (part) => put(part, 'name', name))}
      />
      <p class="hint">
        {ratio()?.thirdInto === undefined
          ? en`Three parts for two pumps: say into which tank the third goes.`
          : en`Its density, or that of the mixture, stands below.`}
      </p>
    </div>
  );
}

/** What is left of a third part once the ratio has two: it can be picked up again, or forgotten. */
export function LeftOverThird(props: { readonly form: MaterialForm }) {
  const app = useApp();
  const place = () => props.form.place(props.form.row().third === undefined ? 'premix' : 'third');
  const forget = () => {
    app.shop.pause();
    props.form.edit(['third'], (row) => {
      put(row, 'third', undefined);
      put(row, 'premix', undefined);
    });
    app.shop.pause();
  };
  return (
    <div class="bar-of gap">
      <span>{en`A third part is still described, but the ratio has two parts.`}</span>
      <button type="button" data-place={placeKey(place())} onClick={forget}>{en`Forget the third part`}</button>
    </div>
  );
}
