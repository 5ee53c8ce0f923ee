import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { readBox } from '../../../../core/src/ratioCheck/boxes.ts';
import { CheckField } from '../../fields/CheckField.tsx';
import { SelectField } from '../../fields/SelectField.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';
import { TypedBox } from './TypedBox.tsx';

type HeadBox = 'turns' | 'time' | 'dial' | 'step' | 'uncertainty' | 'confidence';

const RUNS = [
  ['turns', en`turns`],
  ['time', en`seconds`],
] as const;
const WEIGHINGS = [
  ['gross', en`gross and tare`],
  ['tared', en`net, scale tared`],
  ['net', en`net, tare taken off`],
] as const;

/** How long a catch runs and what it is weighed on; what is seldom changed stands behind a line. */
export function HeadBoxes(props: { readonly state: RatioCheckState }) {
  const check = () => props.state.check();
  const Box = (of: { readonly name: HeadBox; readonly label: string; readonly hint?: string; readonly placeholder?: string }) => {
    const app = useApp();
    const reading = () => {
      const read = readBox(of.name, check()?.[of.name], app.say());
      return read.ok ? read.reading : undefined;
    };
    return (
      <TypedBox
        {...of}
        place={props.state.place(of.name)}
        text={check()?.[of.name]}
        set={(text) => props.state.edit([of.name], (row) => put(row, of.name, text))}
        fault={props.state.faultAt(of.name)}
        reading={reading()}
      />
    );
  };
  const Words = (of: { readonly name: 'date' | 'by' | 'note'; readonly label: string; readonly placeholder?: string }) => (
    <TypedBox
      {...of}
      words
      place={props.state.place(of.name)}
      text={check()?.[of.name]}
      set={(text) => props.state.edit([of.name], (row) => put(row, of.name, text))}
      fault={props.state.faultAt(of.name)}
    />
  );
  return (
    <>
      <div class="run">
        <SelectField
          label={en`A catch runs for`}
          place={props.state.place('runBy')}
          value={check()?.runBy}
          options={RUNS}
          pick={(value) => pickOf(RUNS, value, (picked) => props.state.edit(['runBy'], (row) => put(row, 'runBy', picked)))}
        />
        <Show when={check()?.runBy === 'turns'} fallback={<Box name="time" label={en`Seconds`} />}>
          <Box name="turns" label={en`Turns of the motor`} />
        </Show>
        <Show when={check()?.runBy === 'time'}>
          <Box name="dial" label={en`Dial, %`} />
        </Show>
        <Box name="step" label={en`Step of the scale, g`} placeholder="0.1" />
        <SelectField
          label={en`Written down is`}
          place={props.state.place('weighing')}
          value={check()?.weighing}
          options={WEIGHINGS}
          pick={(value) => pickOf(WEIGHINGS, value, (picked) => props.state.edit(['weighing'], (row) => put(row, 'weighing', picked)))}
        />
      </div>
      <details class="more">
        <summary>{en`More: scale uncertainty, confidence, volumes, day, name, note`}</summary>
        <div class="g3">
          <Box name="uncertainty" label={en`Scale uncertainty, ± g`} hint={en`from its certificate, at 95 %`} />
          <Box name="confidence" label={en`Confidence, %`} placeholder="95" />
          <Words name="date" label={en`Weighed on`} placeholder={en`today, as 2026-11-09`} />
          <Words name="by" label={en`Weighed by`} />
          <Words name="note" label={en`Note`} />
          <CheckField
            label={en`Volumes are read too`}
            place={props.state.place('volumes')}
            value={check()?.volumes === true}
            set={(on) => props.state.edit(['volumes'], (row) => put(row, 'volumes', on ? true : undefined))}
          />
        </div>
      </details>
    </>
  );
}

function pickOf<Value extends string>(choices: readonly (readonly [Value, string])[], value: string, pick: (picked: Value) => void): void {
  const found = choices.find(([one]) => one === value);
  if (found !== undefined) pick(found[0]);
}
