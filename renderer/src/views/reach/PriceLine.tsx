import { en } from '../../../../core/src/en.ts';
import type { PriceRow } from '../../../../core/src/file/prices.ts';
import { readPrice } from '../../../../core/src/price.ts';
import { Entry } from '../../fields/Entry.tsx';
import { readFreeTeeth } from './freeTeeth.ts';

interface LineProps {
  readonly row: PriceRow;
  readonly place: (key: 'from' | 'price') => readonly (string | number)[];
  readonly others: () => readonly PriceRow[];
  readonly set: (key: 'from' | 'price', change: (row: PriceRow) => void) => void;
  readonly remove: () => void;
}

/** One row of the price list. */
export function PriceLine(props: LineProps) {
  const label = (what: string) => en`${what}, ${props.row.size}, from ${props.row.from}`;
  return (
    <div class="pricerow">
      <span class="size">{props.row.size}</span>
      <Entry
        bare
        label={label(en`Teeth`)}
        place={props.place('from')}
        width="9"
        text={`${props.row.from} to ${props.row.to}`}
        take={(text) => {
          const read = readFreeTeeth(text, props.row, props.others());
          if (!read.ok) return read;
          props.set('from', (row) => Object.assign(row, read.value));
          return { ok: true };
        }}
      />
      <Entry
        bare
        label={label(en`Price`)}
        place={props.place('price')}
        width="9"
        text={props.row.price}
        take={(text) => {
          const read = readPrice(text);
          if (!read.ok) return read;
          props.set('price', (row) => {
            row.price = text.trim();
          });
          return { ok: true };
        }}
      />
      <button type="button" class="plain" aria-label={label(en`Remove the price`)} onClick={() => props.remove()}>{en`Remove`}</button>
    </div>
  );
}
