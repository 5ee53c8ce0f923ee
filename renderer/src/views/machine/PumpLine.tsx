import { Show } from 'solid-js';
import type { SideRow } from '../../../../core/src/file/machine.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import type { SideName } from '../../../../core/src/index.ts';
import { type RangeEntry, rangeText, readOpenRangeEntry, type TypedRange } from '../../../../core/src/range.ts';
import { QuantityField, TextField } from '../../fields/index.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import type { MachineForm } from './machineForm.ts';
import { ReadField } from './ReadField.tsx';

type PumpRow = SideRow['pumps'][number];

const SPEED: RangeEntry = { dimension: 'speed', unit: 'rpm', example: '10 to 100' };

interface PumpProps {
  readonly form: MachineForm;
  readonly side: SideName;
  readonly pump: PumpRow;
  readonly index: number;
  readonly only: boolean;
}

export function PumpLine(props: PumpProps) {
  const app = useApp();
  const place = (key: string) => props.form.place(props.side, 'pumps', props.index, key);
  const called = () => props.pump.name ?? `pump ${props.index + 1} of ${props.side}`;
  const edit = (key: string, change: (pump: PumpRow) => void) =>
    props.form.edit([props.side, 'pumps', props.index, key], (row) => {
      const changed = row[props.side].pumps[props.index];
      if (changed !== undefined) change(changed);
    });
  const fit = () =>
    props.form.act(`${props.side}.fitted`, (row) => {
      row[props.side].fitted = props.pump.id;
    });
  const remove = () =>
    props.form.act(`${props.side}.pumps.remove`, (row) => {
      const side = row[props.side];
      side.pumps = side.pumps.filter((_, index) => index !== props.index);
      const [first] = side.pumps;
      if (first !== undefined && !side.pumps.some(({ id }) => id === side.fitted)) side.fitted = first.id;
    });
  return (
    <tr>
      <td>
        <QuantityField
          bare
          label={`Displacement of ${called()}`}
          place={place('displacement')}
          dimension="displacement"
          unit={props.form.displacementUnit()}
          value={props.pump.displacement}
          check={(displacement) => machineTrouble({ pump: { displacement } })}
          set={(value) => edit('displacement', (pump) => put(pump, 'displacement', value))}
        />
      </td>
      <td>
        <TextField
          bare
          label={`Name of ${called()}`}
          place={place('name')}
          value={props.pump.name}
          set={(name) => edit('name', (pump) => put(pump, 'name', name))}
        />
      </td>
      <td>
        <QuantityField
          bare
          label={`Tolerance of ${called()}, ± %`}
          place={place('tolerance')}
          dimension="share"
          unit="%"
          value={props.pump.tolerance}
          check={(tolerance) => machineTrouble({ pump: { tolerance } })}
          set={(value) => edit('tolerance', (pump) => put(pump, 'tolerance', value))}
        />
      </td>
      <td>
        <ReadField
          bare
          label={`Speed of ${called()}, rpm from – to`}
          place={place('speedFrom')}
          value={speedOf(props.pump)}
          read={(text) => readOpenRangeEntry(SPEED, text, app.say())}
          write={(speed) => rangeText(speed, SPEED.unit)}
          check={({ from, to }) => machineTrouble({ pump: { ...(from && { speedFrom: from }), ...(to && { speedTo: to }) } })}
          set={(speed) =>
            edit('speedFrom', (pump) => {
              put(pump, 'speedFrom', speed?.from);
              put(pump, 'speedTo', speed?.to);
            })
          }
        />
      </td>
      <td>
        <Show when={!props.only} fallback="fitted">
          <input
            type="radio"
            name={`fitted-${props.side}`}
            aria-label={`${called()} is fitted`}
            checked={props.form.row()[props.side].fitted === props.pump.id}
            onChange={fit}
          />
        </Show>
      </td>
      <td>
        <Show when={!props.only}>
          <button type="button" class="plain" aria-label={`Remove ${called()}`} onClick={remove}>
            Remove
          </button>
        </Show>
      </td>
    </tr>
  );
}

function speedOf({ speedFrom, speedTo }: PumpRow): TypedRange | undefined {
  if (speedFrom === undefined && speedTo === undefined) return undefined;
  return { ...(speedFrom && { from: speedFrom }), ...(speedTo && { to: speedTo }) };
}
