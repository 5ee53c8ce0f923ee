import { driveKind } from '../../../../core/src/drives/index.ts';
import { en } from '../../../../core/src/en.ts';
import { type EntryText, readCount } from '../../../../core/src/entry.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import type { PieceRow } from '../../../../core/src/file/rack.ts';
import { QuantityField, TextField } from '../../fields/index.tsx';
import { SelectField } from '../../fields/SelectField.tsx';
import { put } from '../../state/put.ts';
import { ReadField } from './ReadField.tsx';
import type { RackForm } from './rackForm.ts';

interface PieceProps {
  readonly form: RackForm;
  readonly piece: PieceRow;
  readonly index: number;
  readonly lengthUnit: string;
}

/** One row of the rack. */
export function PieceLine(props: PieceProps) {
  const place = (key: string) => props.form.place('pieces', props.index, key);
  const label = (what: string) => en`${what}, row ${props.index + 1}`;
  const kind = () => driveKind(props.piece.kind);
  const edit = (key: string, change: (piece: PieceRow) => void) =>
    props.form.edit(['pieces', props.index, key], (rack) => {
      const changed = rack.pieces[props.index];
      if (changed !== undefined) change(changed);
    });
  const remove = () =>
    props.form.act(`pieces.remove.${props.piece.id}`, (rack) => {
      rack.pieces = rack.pieces.filter((_, index) => index !== props.index);
    });
  const count = (key: 'teeth' | 'quantity', what: string, least: number, most: number) => (
    <ReadField
      bare
      label={label(what)}
      place={place(key)}
      value={props.piece[key]}
      read={(text) => readGiven(text, least, most)}
      write={String}
      set={(value) =>
        edit(key, (piece) => {
          if (value !== undefined) piece[key] = value;
        })
      }
    />
  );
  const words = (key: 'part' | 'place', what: string) => (
    <TextField
      bare
      label={label(what)}
      place={place(key)}
      value={props.piece[key]}
      set={(value) => edit(key, (piece) => put(piece, key, value))}
    />
  );
  return (
    <tr>
      <td class="count">{count('teeth', en`Teeth`, 5, 400)}</td>
      <td>
        <SelectField
          bare
          label={label(en`Size`)}
          place={place('size')}
          value={kind().size(props.piece.size) ?? undefined}
          options={kind().sizes.map((size) => [size, size] as const)}
          pick={(size) =>
            edit('size', (piece) => {
              piece.size = size;
            })
          }
        />
      </td>
      <td class="length">
        <QuantityField
          bare
          label={label(en`Bore`)}
          place={place('bore')}
          dimension="length"
          unit={props.lengthUnit}
          value={props.piece.bore}
          check={(bore) => machineTrouble({ slot: { bore } })}
          set={(bore) => edit('bore', (piece) => put(piece, 'bore', bore))}
        />
      </td>
      <td class="count">{count('quantity', en`Quantity`, 0, 10_000)}</td>
      <td>{words('part', en`Part number`)}</td>
      <td>{words('place', en`Place`)}</td>
      <td>
        <button type="button" class="plain" aria-label={label(en`Remove`)} onClick={remove}>{en`Remove`}</button>
      </td>
    </tr>
  );
}

/** A row always has its teeth and its quantity, so an empty box keeps the last good one. */
function readGiven(text: string, least: number, most: number): EntryText<number> {
  return text.trim() === '' ? { ok: false, expected: en`${least} to ${most}` } : readCount(text, least, most);
}
