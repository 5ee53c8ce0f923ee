import { Show } from 'solid-js';
import { driveKind } from '../../../../core/src/drives/index.ts';
import { en } from '../../../../core/src/en.ts';
import type { StageRow } from '../../../../core/src/file/machine.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { type RangeEntry, rangeText, readWindowEntry, type TypedWindow } from '../../../../core/src/range.ts';
import { CheckField } from '../../fields/CheckField.tsx';
import { CountField, QuantityField, TextField } from '../../fields/index.tsx';
import { SelectField } from '../../fields/SelectField.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { type MachineForm, stageName } from './machineForm.ts';
import { ReadField } from './ReadField.tsx';

const TURNS = { A: en`turns pump A`, B: en`turns pump B`, both: en`turns both pumps`, neither: en`turns no pump` } as const;

/** What is known of the stage of the ringed slot. */
export function StageDetails(props: { readonly form: MachineForm; readonly stage: number }) {
  const app = useApp();
  const form = () => props.form;
  const row = () => form().row().stages[props.stage];
  const place = (key: string) => form().place('stages', props.stage, key);
  const set = <Key extends keyof StageRow>(key: Key, value: StageRow[Key] | undefined) =>
    form().editStage(props.stage, [key], (stage) => put(stage, key, value));
  const turns = () =>
    form()
      .tree()
      .links.find(({ stage }) => stage === props.stage)?.turns ?? 'neither';
  const entry = (): RangeEntry => ({
    dimension: 'length',
    unit: form().units().length,
    example: form().units().length === 'mm' ? '250 to 263' : '9 7/8 to 10 3/8',
  });
  return (
    <Show when={row()}>
      {(stage) => (
        <fieldset class="gap">
          <legend>
            {en`Stage ${stageName(stage())}`}, <span class="faint">{TURNS[turns()]}</span>
          </legend>
          <div class="g4">
            <SelectField
              label={capital(driveKind(stage().kind).words.size)}
              place={place('size')}
              value={driveKind(stage().kind).size(stage().size) ?? undefined}
              options={driveKind(stage().kind).sizes.map((size) => [size, size] as const)}
              pick={(size) => set('size', size)}
            />
            <CountField
              label={en`Pitches fitted`}
              place={place('pitches')}
              value={stage().pitches}
              least={4}
              most={10_000}
              set={(pitches) => set('pitches', pitches)}
            />
            <ReadField
              label={en`Centres from – to, ${form().units().length}`}
              hint={en`one figure where fixed`}
              place={place('centre')}
              value={windowOf(stage().centre)}
              read={(text) => readWindowEntry(entry(), text, app.say())}
              write={(centre) => rangeText('length', centre, form().units().length)}
              check={(centre) => machineTrouble({ stage: { centre } })}
              set={(centre) => set('centre', centre && centreOf(centre))}
            />
            <QuantityField
              label={en`Take-up, pitches`}
              place={place('takeUp')}
              dimension="pitches"
              unit="pitches"
              value={stage().takeUp}
              check={(takeUp) => machineTrouble({ stage: { takeUp } })}
              set={(takeUp) => set('takeUp', takeUp)}
            />
            <QuantityField
              label={en`Centre now, ${form().units().length}`}
              place={place('centreNow')}
              dimension="length"
              unit={form().units().length}
              value={stage().centreNow}
              check={(centreNow) => machineTrouble({ stage: { centreNow } })}
              set={(centre) => set('centreNow', centre)}
            />
            <TextField label={en`Stage is called`} place={place('name')} value={stage().name} set={(name) => set('name', name)} />
            <CheckField
              label={en`Offset link accepted`}
              place={place('offsetLink')}
              value={stage().offsetLink === true}
              set={(yes) => set('offsetLink', yes)}
            />
          </div>
        </fieldset>
      )}
    </Show>
  );
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** A fixed centre is a window whose ends are one. */
function windowOf(centre: StageRow['centre']): TypedWindow | undefined {
  if (centre === undefined) return undefined;
  return 'fixed' in centre ? { from: centre.fixed, to: centre.fixed } : centre;
}

function centreOf({ from, to }: TypedWindow): NonNullable<StageRow['centre']> {
  return from.value === to.value && from.unit === to.unit ? { fixed: from } : { from, to };
}
