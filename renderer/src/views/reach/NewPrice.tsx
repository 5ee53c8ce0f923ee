import { createSignal, createUniqueId, For } from 'solid-js';
import { driveKind } from '../../../../core/src/drives/index.ts';
import { en } from '../../../../core/src/en.ts';
import { freshId } from '../../../../core/src/file/freshId.ts';
import type { PriceRow } from '../../../../core/src/file/prices.ts';
import { readPrice } from '../../../../core/src/price.ts';
import { Entry } from '../../fields/Entry.tsx';
import { useApp } from '../../state/app.ts';
import { readFreeTeeth } from './freeTeeth.ts';

/** A price that is not on the list yet; nothing is kept before all of it can be read. */
export function NewPrice(props: { readonly rows: readonly PriceRow[]; readonly add: (row: PriceRow) => void }) {
  const app = useApp();
  const size = createUniqueId();
  const sizes = () => {
    const stages = app.shop.file?.machines[app.machine()]?.stages ?? [];
    const named = stages.map((stage) => ({ kind: stage.kind, size: driveKind(stage.kind).size(stage.size) ?? stage.size }));
    return named.filter((one, index) => named.findIndex((other) => other.size === one.size) === index);
  };
  const [picked, pick] = createSignal<string>();
  const [teeth, setTeeth] = createSignal('');
  const [price, setPrice] = createSignal('');
  const of = () => sizes().find((one) => one.size === picked()) ?? sizes()[0];
  const read = () => {
    const wheel = of();
    const range = wheel === undefined ? null : readFreeTeeth(teeth(), wheel, props.rows);
    return wheel !== undefined && range?.ok === true && readPrice(price()).ok ? { ...wheel, ...range.value } : null;
  };
  const add = (event: SubmitEvent) => {
    event.preventDefault();
    const row = read();
    if (row === null) return;
    props.add({ id: freshId(props.rows, 'price'), kind: row.kind, size: row.size, from: row.from, to: row.to, price: price().trim() });
    setTeeth('');
    setPrice('');
  };
  const taken = (ok: boolean, expected: string) => (ok ? ({ ok: true } as const) : ({ ok: false, expected } as const));
  return (
    <form class="pricerow" onSubmit={add}>
      <div class="field">
        <label class="k" for={size}>{en`Size`}</label>
        <select id={size} name="reach.price.size" onChange={(event) => pick(event.currentTarget.value)}>
          <For each={sizes()}>{(one) => <option selected={one.size === of()?.size}>{one.size}</option>}</For>
        </select>
      </div>
      <Entry
        label={en`Teeth, from – to`}
        place={['reach', 'price', 'teeth']}
        width="9"
        text={teeth()}
        take={(text) => {
          setTeeth(text);
          const wheel = of();
          const range = text.trim() === '' || wheel === undefined ? null : readFreeTeeth(text, wheel, props.rows);
          return taken(range?.ok !== false, range?.ok === false ? range.expected : '');
        }}
      />
      <Entry
        label={en`Price of one`}
        place={['reach', 'price', 'price']}
        width="9"
        text={price()}
        take={(text) => {
          setPrice(text);
          const one = text.trim() === '' ? null : readPrice(text);
          return taken(one?.ok !== false, one?.ok === false ? one.expected : '');
        }}
      />
      <button type="submit" class="setprice" disabled={read() === null}>{en`Add the price`}</button>
    </form>
  );
}
