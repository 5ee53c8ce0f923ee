import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { CatchBox, UnfinishedCatch } from '../../../../core/src/file/unfinishedCheck.ts';
import type { SideName } from '../../../../core/src/index.ts';
import { type CatchColumn, readBox } from '../../../../core/src/ratioCheck/boxes.ts';
import { caughtText } from '../../../../core/src/ratioCheck/causes/words.ts';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';
import { TypedBox } from './TypedBox.tsx';

const BOXES: Readonly<Record<CatchBox, string>> = { gross: en`gross`, tare: en`tare`, net: en`net`, volume: en`volume` };

/** One cell of a catch: a box, or the net weight worked out. */
export function CatchCell(props: {
  readonly state: RatioCheckState;
  readonly row: UnfinishedCatch;
  readonly index: number;
  readonly side: SideName;
  readonly column: CatchColumn;
  /** The element that says what is wrong with the catch. */
  readonly saidBy: string;
}) {
  const app = useApp();
  const net = () => {
    const caught = props.state.shown()?.evaluation.input.catches[props.index]?.sides[props.side].mass_kg;
    return caught?.known === true ? caughtText(caught.value, true, app.say()).replace(/\u00A0.*/, '') : '–';
  };
  const Box = (of: { readonly box: CatchBox }) => {
    const place = () => ['catches', props.index, props.side, of.box] as const;
    const text = () => props.row[props.side][of.box];
    const reading = () => {
      const read = readBox(of.box, text(), app.say());
      return read.ok ? read.reading : undefined;
    };
    // what is far from the others is said of the side, and stands at whatever is written of it
    const fault = () =>
      props.state.faultAt(...place()) ?? (text() === undefined ? null : props.state.faultAt('catches', props.index, props.side));
    return (
      <TypedBox
        bare
        label={en`Catch ${props.index + 1}, ${props.side} ${BOXES[of.box]}`}
        place={props.state.place(...place())}
        column={`${props.side}.${of.box}`}
        text={text()}
        set={(next) =>
          props.state.edit(place(), (check) => {
            const row = check.catches[props.index];
            if (row !== undefined) put(row[props.side], of.box, next);
          })
        }
        fault={fault()}
        saidBy={props.saidBy}
        reading={reading()}
      />
    );
  };
  return (
    <td class="num">
      <Show when={props.column !== 'worked net' && props.column} fallback={net()}>
        {(box) => <Box box={box()} />}
      </Show>
    </td>
  );
}
