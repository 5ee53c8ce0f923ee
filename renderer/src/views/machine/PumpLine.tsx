import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { type RangeEntry, rangeText, readOpenRangeEntry, type TypedRange } from '../../../../core/src/range.ts';
import { QuantityField, TextField } from '../../fields/index.tsx';
import { placeKey, useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { PumpDetails } from './PumpDetails.tsx';
import { createPumpEntry, type PumpAt, type PumpRow } from './pumpEntry.ts';
import { ReadField } from './ReadField.tsx';

const SPEED: RangeEntry = { dimension: 'speed', unit: 'rpm', example: '10 to 100' };

/** A pump in one line of the table, and a closed line of further figures under it. */
export function PumpLine(props: PumpAt & { readonly only: boolean }) {
  const app = useApp();
  const entry = createPumpEntry(props);
  const { row, called, place, edit, units } = entry;
  return (
    <>
      <tr>
        <td>
          <QuantityField
            bare
            label={en`Displacement of ${called()}`}
            place={place('displacement')}
            dimension="displacement"
            unit={units().displacement}
            value={row().displacement}
            check={(displacement) => machineTrouble({ pump: { displacement } })}
            set={(value) => edit(['displacement'], (pump) => put(pump, 'displacement', value))}
          />
        </td>
        <td>
          <TextField
            bare
            label={en`Name of ${called()}`}
            place={place('name')}
            value={row().name}
            set={(name) => edit(['name'], (pump) => put(pump, 'name', name))}
          />
        </td>
        <td>
          <QuantityField
            bare
            label={en`Tolerance of ${called()}, ± %`}
            place={place('tolerance')}
            dimension="share"
            unit="%"
            value={row().tolerance}
            check={(tolerance) => machineTrouble({ pump: { tolerance } })}
            set={(value) => edit(['tolerance'], (pump) => put(pump, 'tolerance', value))}
          />
        </td>
        <td>
          <ReadField
            bare
            label={en`Speed of ${called()}, rpm from – to`}
            place={place('speedFrom')}
            also={[place('speedTo')]}
            value={speedOf(row())}
            read={(text) => readOpenRangeEntry(SPEED, text, app.say())}
            write={(speed) => rangeText('speed', speed, SPEED.unit)}
            check={({ from, to }) => machineTrouble({ pump: { ...(from && { speedFrom: from }), ...(to && { speedTo: to }) } })}
            set={(speed) =>
              edit(['speedFrom'], (pump) => {
                put(pump, 'speedFrom', speed?.from);
                put(pump, 'speedTo', speed?.to);
              })
            }
          />
        </td>
        <td>
          <Show when={!props.only} fallback={en`fitted`}>
            <input
              type="radio"
              name={`fitted-${props.side}`}
              data-place={placeKey(props.form.place(props.side, 'fitted'))}
              aria-label={en`${called()} is fitted`}
              checked={props.form.row()[props.side].fitted === row().id}
              onChange={entry.fit}
            />
          </Show>
        </td>
        <td>
          <Show when={!props.only}>
            <button type="button" class="plain" aria-label={en`Remove ${called()}`} onClick={entry.remove}>{en`Remove`}</button>
          </Show>
        </td>
      </tr>
      <tr class="more">
        <td colspan="6">
          <PumpDetails entry={entry} />
        </td>
      </tr>
    </>
  );
}

function speedOf({ speedFrom, speedTo }: PumpRow): TypedRange | undefined {
  if (speedFrom === undefined && speedTo === undefined) return undefined;
  return { ...(speedFrom && { from: speedFrom }), ...(speedTo && { to: speedTo }) };
}
