import { createMemo, createSelector, createSignal, For, Show } from 'solid-js';
import { bandOf } from '../../../../core/src/band.ts';
import { en } from '../../../../core/src/en.ts';
import { type Order, orderNote } from '../../../../core/src/optionList.ts';
import { useApp } from '../../state/app.ts';
import '../../style/optionTable.css';
import { type Columns, columnsOf } from './columns.ts';
import { Dominated } from './Dominated.tsx';
import { OptionRow } from './OptionRow.tsx';
import type { Line, OptionLines } from './optionLines.ts';
import { nextRow } from './rowKeys.ts';
import { TableHead } from './TableHead.tsx';

const GROUPS = ['fitted', 'best', 'ranked'] as const;

const TITLES: Readonly<Record<Order, string>> = {
  closest: en`Closest first`,
  'least work': en`Least work first, inside the limits before outside`,
  'trade-off': en`Trade-off: the closer, the more work; inside the limits before outside`,
};

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
          <table ref={(element) => (table = element)} class={classOf(of())} role="grid" aria-label={en`Options`} onKeyDown={move}>
            <TableHead columns={of()} />
            <For each={GROUPS}>
              {(group) => (
                <Show when={props.lines.lines().some((line) => line.group === group)}>
                  <tbody>
                    <GroupHead group={group} lines={props.lines} columns={of().count} />
                    <For each={props.lines.lines().filter((line) => line.group === group)}>
                      {(line) => (
                        <>
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
                          <Show when={line.under.length > 0}>
                            <Dominated line={line} lines={props.lines} columns={of().count} />
                          </Show>
                        </>
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

const classOf = ({ stages }: Columns): string => (stages.length > 1 ? 'optiontable several' : 'optiontable');

const row = (table: HTMLElement, line: Line): HTMLElement | null => table.querySelector(`tr[data-key="${line.key}"]`);

/** What a group of rows is; for the order that is chosen, also what has to be known to read it. */
function GroupHead(props: { readonly group: Line['group']; readonly lines: OptionLines; readonly columns: number }) {
  const app = useApp();
  const title = () => {
    if (props.group === 'fitted') return null;
    return props.group === 'best' ? en`Best for each number of parts changed` : TITLES[props.lines.order()];
  };
  const note = () => (props.group === 'ranked' ? orderNote(props.lines.order(), app.solution.answered()?.ranked.more === true) : null);
  return (
    <Show when={title()}>
      <tr class="grp">
        <th scope="rowgroup" colspan={props.columns}>
          {title()}
          <Show when={note()}>
            <small>{note()}</small>
          </Show>
        </th>
      </tr>
    </Show>
  );
}

/** Totals say what was left out. */
function LeftOut(props: { readonly lines: OptionLines; readonly showAll: () => void }) {
  const app = useApp();
  const ranked = () => app.solution.answered()?.ranked;
  return (
    <div class="leftout">
      <Show when={props.lines.left() > 0}>
        <button type="button" onClick={() => props.showAll()}>
          {en`Show all ${props.lines.total()}`}
        </button>
      </Show>
      <small>
        <Show when={props.lines.left() > 0}>{en`${props.lines.left()} more rows are left out here.`} </Show>
        <Show when={ranked()?.more && props.lines.order() === 'closest'}>
          {en`More options exist than are listed; they rank behind these.`}{' '}
        </Show>
        <Show when={ranked()?.blocked.more}>{en`More are blocked than are listed.`}</Show>
      </small>
    </div>
  );
}
