import { For, type JSX, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { Dimension } from '../../../../core/src/entry.ts';
import { partTrouble } from '../../../../core/src/file/partTrouble.ts';
import { quantity } from '../../../../core/src/index.ts';
import { partCount } from '../../../../core/src/ratioWriting.ts';
import { visible } from '../../../../core/src/visible.ts';
import { entryUnits } from '../../fields/entryUnits.ts';
import { QuantityField } from '../../fields/index.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { DensityCell } from './DensityCell.tsx';
import { editPart, type MaterialForm, type PartKey } from './materialForm.ts';

type Figure = 'expansion' | 'runAt' | 'viscosity' | 'densityUncertainty' | 'temperatureUncertainty';
const DIMENSION: Readonly<Record<Figure, Dimension>> = {
  expansion: 'expansion',
  runAt: 'temperature',
  viscosity: 'viscosity',
  densityUncertainty: 'share',
  temperatureUncertainty: 'temperatureDifference',
};
const WHOSE: Readonly<Record<PartKey, string>> = { A: 'A', B: 'B', third: en`the third part`, premix: en`the mixture` };

/** Densities, and what moves them; one column a part, so that both tanks stand side by side. */
export function DensityTable(props: { readonly form: MaterialForm }) {
  const app = useApp();
  const row = () => props.form.row();
  const units = () => entryUnits(app.say());
  const columns = (): readonly PartKey[] => (partCount(row().ratio?.parts ?? '') === 3 ? ['A', 'B', 'third', 'premix'] : ['A', 'B']);
  const isTank = (part: PartKey) => part === 'A' || part === 'B';
  const cells = (cell: (part: PartKey) => JSX.Element) => <For each={columns()}>{(part) => <td>{cell(part)}</td>}</For>;
  const figure = (part: PartKey, key: Figure, unit: string, word: string) => (
    <QuantityField
      label={en`${word} of ${WHOSE[part]}`}
      bare
      place={props.form.place(part, key)}
      dimension={DIMENSION[key]}
      unit={unit}
      value={row()[part]?.[key]}
      check={(value) => partTrouble({ [key]: value })}
      set={(value) => editPart(props.form, part, [key], (changed) => put(changed, key, value))}
    />
  );
  const tankFigure = (key: Figure, unit: string, word: string) => cells((part) => isTank(part) && figure(part, key, unit, word));
  const asRun = (part: PartKey) => {
    const mix = props.form.mix();
    if (!mix?.ok || (part !== 'A' && part !== 'B')) return '–';
    const density = mix.value.density_kg_per_m3[part];
    return density.known ? quantity(density.value, 'density', units().density, 4, app.say()) : '–';
  };
  return (
    <fieldset class="block ruled">
      <legend>{en`Densities`}</legend>
      <div class="scrollx">
        <table class="parts" classList={{ four: columns().length > 2 }}>
          <thead>
            <tr>
              <td />
              <For each={columns()}>{(part) => <PartHead form={props.form} part={part} />}</For>
            </tr>
          </thead>
          <tbody>
            <Line words={en`Density`} unit={en`${units().density} at ${units().temperature}`}>
              {cells((part) => (
                <DensityCell form={props.form} part={part} which="density" whose={WHOSE[part]} />
              ))}
            </Line>
            <Line words={en`Run at`} unit={units().temperature}>
              {tankFigure('runAt', units().temperature, en`Temperature in the tank`)}
            </Line>
            <Line words={en`Expansion`} unit={units().expansion}>
              {cells((part) => figure(part, 'expansion', units().expansion, en`Expansion`))}
            </Line>
            <Line words={en`or a second density`} unit={en`${units().density} at ${units().temperature}`}>
              {cells((part) => (
                <DensityCell form={props.form} part={part} which="secondDensity" whose={WHOSE[part]} />
              ))}
            </Line>
            <Line words={en`Viscosity`} unit={units().viscosity}>
              {tankFigure('viscosity', units().viscosity, en`Viscosity`)}
            </Line>
            <Line words={en`Density known to ±`} unit="%">
              {cells((part) => figure(part, 'densityUncertainty', '%', en`Uncertainty of the density`))}
            </Line>
            <Line words={en`Temperature held to ±`} unit={units().temperatureDifference}>
              {cells((part) => figure(part, 'temperatureUncertainty', units().temperatureDifference, en`Uncertainty of the temperature`))}
            </Line>
            <Line words={en`As run`} unit={en`worked out`}>
              {cells(asRun)}
            </Line>
          </tbody>
        </table>
      </div>
      <p class="hint">
        {en`Any unit may be typed behind a number. An empty field stays empty: what needs it says that it was not made.`}
        <Show when={columns().length > 2}>
          {' '}
          {en`Give the density of the third part or that of the mixture; where both are given, the mixture’s counts.`}
        </Show>
      </p>
    </fieldset>
  );
}

function PartHead(props: { readonly form: MaterialForm; readonly part: PartKey }) {
  const name = () => {
    const given = props.form.row()[props.part]?.name;
    return given === undefined ? undefined : visible(given);
  };
  const tank = () => props.form.row().ratio?.thirdInto;
  const words = () => {
    if (props.part === 'third') return name() ?? en`Third part`;
    if (props.part === 'premix') return tank() === undefined ? en`Mixture` : en`Mixture in tank ${tank()}`;
    return `${props.part} ${name() ?? ''}`;
  };
  return (
    <th scope="col" classList={{ ca: props.part === 'A', cb: props.part === 'B' }}>
      {words()}
    </th>
  );
}

function Line(props: { readonly words: string; readonly unit: string; readonly children: JSX.Element }) {
  return (
    <tr>
      <th scope="row">
        {props.words} <small>{props.unit.replace('cm3', 'cm³')}</small>
      </th>
      {props.children}
    </tr>
  );
}
