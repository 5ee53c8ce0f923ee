import { createMemo, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { MachineRow } from '../../../../core/src/file/machine.ts';
import { measuredDeliveries } from '../../../../core/src/measuredDeliveries.ts';
import { countRangeText } from '../../../../core/src/range.ts';
import { WHEEL_CHOICES } from '../../../../core/src/searchSummary.ts';
import { readTeethRange } from '../../../../core/src/teethRange.ts';
import { CheckField } from '../../fields/CheckField.tsx';
import { Entry } from '../../fields/Entry.tsx';
import { CountField } from '../../fields/index.tsx';
import { SelectField } from '../../fields/SelectField.tsx';
import { placeKey, useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';

type Search = NonNullable<MachineRow['search']>;

/** The boxes of the search settings. */
export function SearchFields(props: { readonly row: MachineRow }) {
  const app = useApp();
  const search = createMemo((): Search => props.row.search ?? {});
  const wheels = () => search().wheels ?? 'rack';
  const place = (...rest: readonly string[]) => ['machines', app.machine(), 'search', ...rest];
  const edit = (field: keyof Search, change: (search: Search) => void) =>
    app.shop.edit(placeKey(place(field)), (file) => {
      const row = file.machines[app.machine()];
      if (row === undefined) return;
      const next: Search = row.search ?? {};
      change(next);
      row.search = next;
    });
  const tick = (field: 'anyPump' | 'openShared' | 'asMeasured') => ({
    place: place(field),
    value: search()[field] === true,
    set: (yes: boolean) => edit(field, (next) => put(next, field, yes ? true : undefined)),
  });
  return (
    <div class="fields">
      <SelectField
        label={en`Wheels`}
        place={place('wheels')}
        // Where their boxes are not shown, this one brings them back.
        also={[place('purchases'), place('teeth')]}
        value={wheels()}
        options={WHEEL_CHOICES}
        pick={(value) => {
          const picked = WHEEL_CHOICES.find(([id]) => id === value)?.[0];
          if (picked !== undefined) edit('wheels', (next) => put(next, 'wheels', picked));
        }}
      />
      <Show when={wheels() === 'rack and purchases'}>
        <CountField
          label={en`Most to buy`}
          place={place('purchases')}
          value={search().purchases}
          least={1}
          most={8}
          width="4"
          placeholder="1"
          set={(count) => edit('purchases', (next) => put(next, 'purchases', count))}
        />
      </Show>
      <Show when={wheels() !== 'rack'}>
        <Entry
          label={wheels() === 'any' ? en`Teeth, from – to` : en`Teeth to buy, from – to`}
          place={place('teeth')}
          text={countRangeText(search().teeth ?? {})}
          width="18"
          placeholder={en`limits of each slot`}
          take={(text) => {
            const read = readTeethRange(text);
            if (read.ok) edit('teeth', (next) => put(next, 'teeth', read.value));
            return read.ok ? { ok: true } : read;
          }}
        />
      </Show>
      <div class="ticks">
        <CheckField {...tick('anyPump')} label={en`Any pump the machine may carry`} />
        <CheckField {...tick('openShared')} label={en`Change stages that both pumps share`} />
        <CheckField
          {...tick('asMeasured')}
          label={en`Count the measured delivery in the ratio`}
          note={measuredDeliveries(props.row) ?? en`no pump of this machine has one`}
          idle={measuredDeliveries(props.row) === null}
        />
      </div>
    </div>
  );
}
