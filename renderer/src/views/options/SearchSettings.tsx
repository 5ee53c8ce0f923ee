import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js';
import type { MachineRow } from '../../../../core/src/file/machine.ts';
import { readTeethRange, type TeethRange } from '../../../../core/src/teethRange.ts';
import { Entry } from '../../fields/Entry.tsx';
import { CountField } from '../../fields/index.tsx';
import { placeKey, useApp } from '../../state/app.ts';

type Search = NonNullable<MachineRow['search']>;

const WHEELS = [
  ['rack', 'from the rack'],
  ['rack and purchases', 'from the rack, and some to buy'],
  ['any', 'any in a range'],
] as const satisfies readonly (readonly [NonNullable<Search['wheels']>, string])[];

/** What the search may use; kept with the machine. */
export function SearchSettings() {
  const app = useApp();
  const [open, setOpen] = createSignal(false);
  createEffect(
    on(app.sought, (wanted) => {
      if (wanted?.[2] === 'search') setOpen(true);
    }),
  );
  const search = createMemo((): Search => app.shop.file?.machines[app.machine()]?.search ?? {});
  const wheels = () => search().wheels ?? 'rack';
  const place = (...rest: readonly string[]) => ['machines', app.machine(), 'search', ...rest];
  const edit = (field: keyof Search, change: (search: Search) => void) =>
    app.shop.edit(placeKey(place(field)), (file) => {
      const machine = file.machines[app.machine()];
      if (machine === undefined) return;
      const next: Search = machine.search ?? {};
      change(next);
      machine.search = next;
    });
  const inTrouble = () => {
    const plan = app.solution.plan();
    return plan?.ok === false && plan.findings.some(({ where }) => where[0] === 'machines' && where[2] === 'search');
  };
  const range = (teeth: TeethRange | undefined) => (teeth === undefined ? '' : `${teeth.from} to ${teeth.to}`);
  const summary = () => {
    const words = WHEELS.find(([id]) => id === wheels())?.[1];
    const bought = wheels() === 'rack and purchases' ? `, up to ${search().purchases ?? 1}` : '';
    const teeth = wheels() === 'rack' || search().teeth === undefined ? '' : `, ${range(search().teeth)} teeth`;
    return `wheels ${words}${bought}${teeth}; pumps ${search().anyPump ? 'any the machine may carry' : 'as fitted'}${search().openShared ? '; shared stages open' : ''}`;
  };
  return (
    <Show when={app.shop.file?.machines[app.machine()]}>
      <details class="settings" open={open() || inTrouble()} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          Search with <span class="faint">{summary()}</span>
        </summary>
        <div class="fields">
          <div class="field">
            <label class="k" for="search-wheels">
              Wheels
            </label>
            <select
              id="search-wheels"
              data-place={placeKey(place('wheels'))}
              value={wheels()}
              onChange={(event) => {
                const picked = WHEELS.find(([id]) => id === event.currentTarget.value)?.[0];
                if (picked !== undefined) edit('wheels', (next) => (next.wheels = picked));
              }}
            >
              <For each={WHEELS}>{([id, words]) => <option value={id}>{words}</option>}</For>
            </select>
          </div>
          <Show when={wheels() === 'rack and purchases'}>
            <CountField
              label="Most to buy"
              place={place('purchases')}
              value={search().purchases}
              least={1}
              most={8}
              width="4"
              placeholder="1"
              set={(count) => edit('purchases', (next) => keep(next, 'purchases', count))}
            />
          </Show>
          <Show when={wheels() !== 'rack'}>
            <Entry
              label={wheels() === 'any' ? 'Teeth, from – to' : 'Teeth to buy, from – to'}
              place={place('teeth')}
              text={range(search().teeth)}
              width="18"
              placeholder="limits of each slot"
              take={(text) => {
                const read = readTeethRange(text);
                if (read.ok) edit('teeth', (next) => keep(next, 'teeth', read.value));
                return read.ok ? { ok: true } : read;
              }}
            />
          </Show>
          <div class="ticks">
            <YesNo label="Any pump the machine may carry" field="anyPump" />
            <YesNo label="Change stages that both pumps share" field="openShared" />
          </div>
        </div>
      </details>
    </Show>
  );

  function YesNo(props: { readonly label: string; readonly field: 'anyPump' | 'openShared' }) {
    return (
      <label class="choice">
        <input
          type="checkbox"
          data-place={placeKey(place(props.field))}
          checked={search()[props.field] === true}
          onChange={(event) => {
            const yes = event.currentTarget.checked;
            edit(props.field, (next) => keep(next, props.field, yes ? true : undefined));
          }}
        />
        {props.label}
      </label>
    );
  }
}

/** What is not given has no key in the file. */
function keep<Key extends keyof Search>(search: Search, key: Key, value: Search[Key] | undefined): void {
  if (value === undefined) delete search[key];
  else search[key] = value;
}
