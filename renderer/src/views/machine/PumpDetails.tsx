import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { withErrorText } from '../../../../core/src/entry.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { pumpSummary } from '../../../../core/src/machineSummary.ts';
import { readWithErrorEntry } from '../../../../core/src/twoFigures.ts';
import { QuantityField } from '../../fields/index.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { Fold } from './Fold.tsx';
import { GearFigures, GearTeeth } from './GearFields.tsx';
import type { PumpEntry } from './pumpEntry.ts';
import { ReadField } from './ReadField.tsx';

const SHARES = [
  ['newDelivery', en`Delivery when new, %`, en`of its displacement`],
  ['leastDelivery', en`Least delivery, %`, en`below it the pump is worn`],
] as const;

/** What is known of a pump beyond its line; closed, it is one line under it. */
export function PumpDetails(props: { readonly entry: PumpEntry }) {
  const app = useApp();
  const pump = () => props.entry.row();
  return (
    <Fold title={en`More on ${props.entry.called()}`} summary={pumpSummary(pump())} group="pump">
      <div class="g3">
        <QuantityField
          label={en`Pressure limit, ${props.entry.units().pressure}`}
          place={props.entry.place('pressureLimit')}
          dimension="pressure"
          unit={props.entry.units().pressure}
          value={pump().pressureLimit}
          check={(pressureLimit) => machineTrouble({ pump: { pressureLimit } })}
          set={(limit) => props.entry.edit(['pressureLimit'], (row) => put(row, 'pressureLimit', limit))}
        />
        <ReadField
          label={en`Measured delivery, %`}
          hint={en`as 98.5 +- 0.4`}
          place={props.entry.place('measuredDelivery')}
          value={pump().measuredDelivery}
          read={(text) => readWithErrorEntry('share', text, '%', app.say())}
          write={(delivery) => withErrorText('share', delivery, '%')}
          check={(measuredDelivery) => machineTrouble({ pump: { measuredDelivery } })}
          set={(delivery) => props.entry.edit(['measuredDelivery'], (row) => put(row, 'measuredDelivery', delivery))}
        />
        <For each={SHARES}>
          {([key, label, hint]) => (
            <QuantityField
              label={label}
              hint={hint}
              place={props.entry.place(key)}
              dimension="share"
              unit="%"
              value={pump()[key]}
              check={(share) => machineTrouble({ pump: { [key]: share } })}
              set={(share) => props.entry.edit([key], (row) => put(row, key, share))}
            />
          )}
        </For>
        <GearTeeth entry={props.entry} />
        <Show when={pump().gear}>{(gear) => <GearFigures entry={props.entry} gear={gear()} />}</Show>
      </div>
    </Fold>
  );
}
