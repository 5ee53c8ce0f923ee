import { createSignal, For, Show } from 'solid-js';
import { driveKinds } from '../../../../core/src/drives/index.ts';
import { en } from '../../../../core/src/en.ts';
import { freshId } from '../../../../core/src/file/freshId.ts';
import type { PieceRow } from '../../../../core/src/file/rack.ts';
import { useApp } from '../../state/app.ts';
import { PieceLine } from './PieceLine.tsx';
import { RackFiles } from './RackFiles.tsx';
import { RackLine } from './RackLine.tsx';
import { createRackForm, type RackForm } from './rackForm.ts';

/** One rack: its lines of quick entry, its table, its file. */
export function RackContent(props: { readonly id: string; readonly lengthUnit: string }) {
  const app = useApp();
  const first = () => app.shop.file?.racks.find(({ id }) => id === props.id);
  return (
    <Show when={first()}>
      {(row) => {
        const form = createRackForm(row());
        return (
          <>
            <For each={driveKinds}>{(kind) => <RackLine form={form} kind={kind} lengthUnit={props.lengthUnit} />}</For>
            <PieceTable form={form} lengthUnit={props.lengthUnit} />
          </>
        );
      }}
    </Show>
  );
}

/** More are drawn on demand, so that a large rack opens at once. */
const FIRST_ROWS = 60;

function PieceTable(props: { readonly form: RackForm; readonly lengthUnit: string }) {
  const app = useApp();
  const pieces = () => props.form.row().pieces;
  const [all, showAll] = createSignal(false);
  const shown = () => (all() ? pieces() : pieces().slice(0, FIRST_ROWS));
  const add = () => {
    showAll(true);
    props.form.act('pieces.add', (rack) => void rack.pieces.push(newPiece(rack.pieces)));
    app.goTo(props.form.place('pieces', pieces().length - 1, 'teeth'));
  };
  return (
    <>
      <Show when={pieces().length > 0}>
        <div class="scrollx">
          <table class="pieces">
            <thead>
              <tr>
                <th scope="col">{en`Teeth`}</th>
                <th scope="col">{en`Size`}</th>
                <th scope="col">{en`Bore, ${props.lengthUnit}`}</th>
                <th scope="col">{en`Quantity`}</th>
                <th scope="col">{en`Part number`}</th>
                <th scope="col">{en`Place`}</th>
                <th scope="col">
                  <span class="heard">{en`Remove`}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              <For each={shown()}>
                {(piece, index) => <PieceLine form={props.form} piece={piece} index={index()} lengthUnit={props.lengthUnit} />}
              </For>
            </tbody>
          </table>
        </div>
        <Show when={shown().length < pieces().length}>
          <button type="button" class="gap" onClick={() => showAll(true)}>
            {en`Show all ${pieces().length} rows`}
          </button>
        </Show>
      </Show>
      <div class="bar-of gap">
        <button type="button" onClick={add}>{en`Add a row`}</button>
        <RackFiles form={props.form} />
      </div>
    </>
  );
}

/** A row goes on from the last one; it counts nothing until its quantity is typed. */
function newPiece(pieces: readonly PieceRow[]): PieceRow {
  const last = pieces.at(-1);
  const [kind] = driveKinds;
  return {
    id: freshId(pieces, 'piece'),
    kind: last?.kind ?? kind?.kind ?? '',
    size: last?.size ?? kind?.sizes[0] ?? '',
    teeth: Math.min(400, (last?.teeth ?? 16) + 1),
    quantity: 0,
    ...(last?.bore && { bore: { ...last.bore } }),
  };
}
