import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { partTrouble } from '../../../../core/src/file/partTrouble.ts';
import type { Basis } from '../../../../core/src/file/sheetRatio.ts';
import { entryUnits } from '../../fields/entryUnits.ts';
import { QuantityField, RatioField } from '../../fields/index.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { editRatio, type MaterialForm } from './materialForm.ts';

/** Many sheets print the ratio on both bases; where volumes are counted, they hold at one temperature. */
export function SecondRatio(props: { readonly form: MaterialForm; readonly basis: Basis }) {
  const app = useApp();
  const row = () => props.form.row();
  return (
    <>
      <RatioField
        label={props.basis === 'weight' ? en`Also by weight, if printed` : en`Also by volume, if printed`}
        place={props.form.place('otherRatio', 'parts')}
        value={row().otherRatio?.parts}
        hint={en`It can stand in for the densities.`}
        set={(parts) =>
          props.form.edit(['otherRatio'], (changed) =>
            put(changed, 'otherRatio', parts === undefined ? undefined : { basis: props.basis, parts }),
          )
        }
      />
      <Show when={props.basis === 'weight' || row().otherRatio !== undefined}>
        <QuantityField
          label={en`Volumes counted at, ${entryUnits(app.say()).temperature}`}
          place={props.form.place('ratio', 'at')}
          dimension="temperature"
          unit={entryUnits(app.say()).temperature}
          value={row().ratio?.at}
          check={(at) => partTrouble({ runAt: at })}
          set={(at) => editRatio(props.form, 'at', (changed) => put(changed, 'at', at))}
        />
      </Show>
    </>
  );
}
