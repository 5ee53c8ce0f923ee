import { createMemo, createSelector, createSignal, For, Show } from 'solid-js';
import { bandOf } from '../../../../core/src/band.ts';
import { useApp } from '../../state/app.ts';
import { columnsOf } from './columns.ts';
import { OptionRow } from './OptionRow.tsx';
import type { Line, OptionLines } from './optionLines.ts';
import { nextRow } from './rowKeys.ts';
import { TableHead } from './TableHead.tsx';

const GROUPS = [
  ['fitted', null],
  ['best', 'Best for each number of parts changed'],
  ['ranked', 'Closest first'],
] as const;

/** The list. One row takes the Tab key; arrows move, Enter chooses. */
export function OptionTable(props: { readonly lines: OptionLines }) {
  const app = useApp();
  const [reached, reach] = createSignal('');
  const columns = createMemo(() => {
    const of = app.solution.answered();
    return of === null ? null : columnsOf(of.plan);
  });
  const rule = createMemo(() => {
    const of = app.solution.answered();
    return of === null ? null : bandOf(of.plan, of.ranked.options.slice(0, 12).map(app.solution.lay));
  });
  const tabStop = createMemo(() => {
    const keys = props.lines.lines().map(({ key }) => key);
    return keys.includes(reached()) ? reached() : (props.lines.selected()?.key ?? keys[0]);
  });
  // Only the two rows concerned hear of a change.
  const isTabStop = createSelector(tabStop);
  const isSelected = createSelector(() => props.lines.selected()?.key);
  const move = (event: KeyboardEvent & { readonly currentTarget: HTMLElement }) => {
    const lines = props.lines.lines();
    const from = lines.findIndex(({ key }) => key === tabStop());
    const line = lines[from];
    if (!(event.target instanceof HTMLTableRowElement) || line === undefined) return;
    const next = lines[nextRow(event.key, from, lines.length) ?? -1];
    if (next !== undefined) row(event.currentTarget, next)?.focus();
    else if (event.key === 'Enter' || event.key === ' ') props.lines.pick(line);
    else return;
    event.preventDefault();
  };
  let table: HTMLTableElement | undefined;
  const showAll = () => {
    const first = props.lines.lines().length;
    props.lines.showAll();
    const line = props.lines.lines()[first];
    if (line !== undefined && table !== undefined) row(table, line)?.focus();
  };
  return (
    <div class="listscroll">
      <Show when={columns()}>
        {(of) => (
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: its rows are chosen by arrows and Enter, as a grid's are
          <table ref={(element) => (table = element)} class="optiontable" role="grid" aria-label="Options" onKeyDown={move}>
            <TableHead columns={of()} />
            <For each={GROUPS}>
              {([group, title]) => (
                <Show when={props.lines.lines().some((line) => line.group === group)}>
                  <tbody>
                    <Show when={title}>
                      <tr class="grp">
                        <th scope="rowgroup" colspan={of().count}>
                          {title}
                        </th>
                      </tr>
                    </Show>
                    <For each={props.lines.lines().filter((line) => line.group === group)}>
                      {(line) => (
                        <Show when={rule()}>
                          {(scale) => (
                            <OptionRow
                              line={line}
                              columns={of()}
                              rule={scale()}
                              selected={isSelected(line.key)}
                              tabStop={isTabStop(line.key)}
                              choose={() => props.lines.pick(line)}
                              reach={() => reach(line.key)}
                            />
                          )}
                        </Show>
                      )}
                    </For>
                  </tbody>
                </Show>
              )}
            </For>
          </table>
        )}
      </Show>
      <LeftOut lines={props.lines} showAll={showAll} />
    </div>
  );
}

const row = (table: HTMLElement, line: Line): HTMLElement | null => table.querySelector(`tr[data-key="${line.key}"]`);

/** Totals say what was left out. */
function LeftOut(props: { readonly lines: OptionLines; readonly showAll: () => void }) {
  const app = useApp();
  const ranked = () => app.solution.answered()?.ranked;
  return (
    <div class="leftout">
      <Show when={props.lines.left() > 0}>
        <button type="button" onClick={() => props.showAll()}>
          Show all {ranked()?.options.length}
        </button>
      </Show>
      <small>
        <Show when={props.lines.left() > 0}>{props.lines.left()} more rows are left out here. </Show>
        <Show when={ranked()?.more}>More options exist than are listed; they rank behind these. </Show>
        <Show when={ranked()?.blocked.more}>More are blocked than are listed.</Show>
      </small>
    </div>
  );
}
