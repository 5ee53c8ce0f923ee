import { For } from 'solid-js';
import { en, plural } from '../../../../core/src/en.ts';
import type { RackRow } from '../../../../core/src/file/rack.ts';
import { TextField } from '../../fields/index.tsx';
import { placeKey, useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { NewPrice } from './NewPrice.tsx';
import { PriceLine } from './PriceLine.tsx';

/** What wheels cost, by size and teeth; kept with the rack. */
export function PriceList(props: { readonly rack: string }) {
  const app = useApp();
  const index = () => Math.max(0, app.shop.file?.racks.findIndex(({ id }) => id === props.rack) ?? 0);
  const rows = () => app.shop.file?.racks[index()]?.prices ?? [];
  const place = (...steps: readonly (string | number)[]) => ['racks', index(), 'prices', ...steps];
  const edit = (at: readonly (string | number)[], change: (rack: RackRow) => void) =>
    app.shop.edit(placeKey(place(...at)), (file) => {
      const rack = file.racks.find(({ id }) => id === props.rack);
      if (rack !== undefined) change(rack);
    });
  const act = (what: string, change: (rack: RackRow) => void) => {
    app.shop.pause();
    edit([what], change);
    app.shop.pause();
  };
  const summary = () => (rows().length === 0 ? en`none` : plural(rows().length)`one row|${rows().length} rows`);
  return (
    <details class="prices">
      <summary>
        {en`Prices`} <span class="faint">{summary()}</span>
      </summary>
      <p class="faint">{en`With prices the plan of the lowest price is told beside that of the fewest wheels.`}</p>
      <div class="pricerows">
        <For each={rows()}>
          {(row, at) => (
            <PriceLine
              row={row}
              place={(key) => place(at(), key)}
              others={() => rows().filter(({ id }) => id !== row.id)}
              set={(key, change) => edit([at(), key], (rack) => rack.prices?.filter(({ id }) => id === row.id).forEach(change))}
              remove={() =>
                act(`remove.${row.id}`, (rack) => {
                  rack.prices = rack.prices?.filter(({ id }) => id !== row.id) ?? [];
                  if (rack.prices.length === 0) delete rack.prices;
                })
              }
            />
          )}
        </For>
      </div>
      <NewPrice rows={rows()} add={(row) => act('add', (rack) => put(rack, 'prices', [...(rack.prices ?? []), row]))} />
      <TextField
        label={en`Word for the money`}
        place={['shop', 'currency']}
        width="12"
        value={app.shop.file?.shop.currency}
        set={(word) => app.shop.edit('shop.currency', (file) => put(file.shop, 'currency', word))}
      />
    </details>
  );
}
