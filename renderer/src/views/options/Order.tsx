import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { type Order as Kind, ORDERS } from '../../../../core/src/optionList.ts';
import '../../style/optionOrder.css';
import type { OptionLines } from './optionLines.ts';

const ORDER: Readonly<Record<Kind, string>> = { closest: en`closest`, 'least work': en`least work`, 'trade-off': en`trade-off` };

/** How the list is ordered. */
export function Order(props: { readonly lines: OptionLines }) {
  return (
    <fieldset class="order">
      <legend>
        {en`Order`} <kbd>O</kbd>
      </legend>
      <For each={ORDERS}>
        {(order) => (
          <label class="choice">
            <input type="radio" name="option-order" checked={props.lines.order() === order} onChange={() => props.lines.orderBy(order)} />
            {ORDER[order]}
          </label>
        )}
      </For>
    </fieldset>
  );
}
