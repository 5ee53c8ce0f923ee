import type { Place } from '../../../../core/src/index.ts';
import { placeKey, useApp } from '../../state/app.ts';

/** A question of yes or no. */
export function CheckField(props: {
  readonly label: string;
  readonly place: Place;
  readonly value: boolean;
  readonly set: (value: boolean) => void;
}) {
  const app = useApp();
  return (
    <label class="choice">
      <input
        type="checkbox"
        data-place={placeKey(props.place)}
        checked={props.value}
        onChange={(event) => {
          app.shop.pause();
          props.set(event.currentTarget.checked);
          app.shop.pause();
        }}
      />
      {props.label}
    </label>
  );
}
