import { createMemo, For, Index } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { MOST_CATCHES } from '../../../../core/src/file/ratioCheckRow.ts';
import { pastedCells } from '../../../../core/src/pastedCells.ts';
import { SIDES } from '../../../../core/src/plan.ts';
import { blankCatch } from '../../../../core/src/ratioCheck/blankCatch.ts';
import { boxesOf, columnsOf } from '../../../../core/src/ratioCheck/boxes.ts';
import { useApp } from '../../state/app.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';
import { CatchFile } from './CatchFile.tsx';
import { CatchLine } from './CatchLine.tsx';
import { moveInTable } from './moveInTable.ts';

const HEADS = { gross: en`gross, g`, tare: en`tare, g`, net: en`net, g`, 'worked net': en`net`, volume: en`volume, cc` } as const;

/** The catches, typed from cell to cell; what a spreadsheet has on its clipboard fills them from the cell in which it is pasted. */
export function CatchTable(props: { readonly state: RatioCheckState }) {
  const app = useApp();
  let table: HTMLTableElement | undefined;
  const rows = () => props.state.check()?.catches ?? [];
  const columns = createMemo(() => {
    const check = props.state.check();
    return check === null ? [] : columnsOf(check);
  });
  const add = () => {
    if (rows().length >= MOST_CATCHES) return app.tell(en`A ratio check has at most ${MOST_CATCHES} catches.`);
    app.shop.pause();
    props.state.edit(['catches', 'added'], (check) => void check.catches.push(blankCatch()));
    app.shop.pause();
    const last = table?.querySelectorAll<HTMLElement>('tr[data-catch]');
    last?.[last.length - 1]?.querySelector<HTMLElement>('[data-column]')?.focus();
  };
  const paste = (event: ClipboardEvent) => {
    const at = event.target instanceof HTMLElement ? event.target.dataset.column?.split('.') : undefined;
    const text = event.clipboardData?.getData('text/plain') ?? '';
    const from = Number(event.target instanceof HTMLElement ? event.target.closest('tr')?.dataset.catch : Number.NaN);
    if (at === undefined || Number.isNaN(from) || !/[\t\n\r]/.test(text)) return;
    event.preventDefault();
    const check = props.state.check();
    const boxes = check === null ? [] : SIDES.flatMap((side) => boxesOf(check).map((box) => ({ side, box })));
    const first = boxes.findIndex(({ side, box }) => side === at[0] && box === at[1]);
    const cells = pastedCells(text);
    const lost = cells.some((line) => line.length > boxes.length - first) || from + cells.length > MOST_CATCHES;
    app.shop.pause();
    props.state.edit(['catches', 'pasted'], (check) => {
      cells.slice(0, MOST_CATCHES - from).forEach((line, down) => {
        const row = check.catches[from + down] ?? blankCatch();
        line.forEach((cell, right) => {
          const column = boxes[first + right];
          if (column !== undefined && cell !== '') row[column.side][column.box] = cell.slice(0, 200);
        });
        check.catches[from + down] = row;
      });
    });
    app.shop.pause();
    if (lost) app.tell(en`Not all that was pasted found a cell: there were more columns or lines than the table has.`);
  };
  return (
    <section class="catches" aria-labelledby="catches">
      <h2 id="catches">{en`Catches`}</h2>
      <div class="scrollx">
        <table ref={table} onKeyDown={(event) => moveInTable(event, add)} onPaste={paste}>
          <thead>
            <tr>
              <th scope="col">{en`Catch`}</th>
              <For each={SIDES}>
                {(side) => (
                  <For each={columns()}>
                    {(column) => (
                      <th scope="col" class="num nw" classList={{ ca: side === 'A', cb: side === 'B' }}>
                        <b>{side}</b> {HEADS[column]}
                      </th>
                    )}
                  </For>
                )}
              </For>
              <th scope="col" class="num">{en`Off-ratio`}</th>
              <th scope="col">
                <span class="heard">{en`What to do`}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            <Index each={rows()}>{(row, index) => <CatchLine state={props.state} row={row()} index={index} columns={columns()} />}</Index>
          </tbody>
        </table>
      </div>
      <p class="bar-of gap">
        <button type="button" onClick={add}>{en`Add a catch`}</button>
        <CatchFile state={props.state} />
        <span class="faint">
          <kbd>{en`Enter`}</kbd> {en`next cell,`} <kbd>{en`Ctrl Enter`}</kbd>{' '}
          {en`new catch, arrows move. Cells of a spreadsheet can be pasted.`}
        </span>
      </p>
    </section>
  );
}
