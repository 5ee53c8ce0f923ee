import { en } from '../../en.ts';
import type { FieldPage } from '../fieldLine.ts';

const part = (key: string): string => `materials.*.A|B|third|premix.${key}`;
const SHEET = en`Data sheet of the part, never that of a similar one.`;

/** The table of densities on the Material page. */
export const densities: FieldPage = {
  title: en`Densities and temperatures`,
  lines: [
    {
      place: part('density.value'),
      name: en`Density`,
      means: en`Mass over volume of this part; it carries a ratio by weight over to the pumps, which meter volumes.`,
      found: en`Data sheet, or weigh 100 ml at the temperature you state.`,
    },
    {
      place: part('density.at'),
      name: en`Density holds at`,
      means: en`The temperature at which the density was measured.`,
      found: en`Beside the density in the data sheet, often 20 or 25 °C.`,
    },
    {
      place: part('secondDensity.value'),
      name: en`Second density`,
      means: en`The density at another temperature; the two give the expansion.`,
      found: en`Data sheet, or weigh 100 ml once more, warm.`,
    },
    {
      place: part('secondDensity.at'),
      name: en`Second density holds at`,
      means: en`The temperature of the second density.`,
      found: en`Beside it in the data sheet, or a thermometer.`,
    },
    {
      place: part('expansion'),
      name: en`Expansion`,
      means: en`By which share the volume grows for each degree.`,
      found: en`Data sheet: “coefficient of thermal expansion”, by volume. A linear one is a third of it.`,
    },
    {
      place: part('runAt'),
      name: en`Temperature in the tank`,
      means: en`How warm the part is at its pump while it is metered.`,
      found: en`Thermometer at the pump, or the setting of the heater.`,
    },
    {
      place: part('viscosity'),
      name: en`Viscosity`,
      means: en`How thick the part is as it is run; thin parts slip more through the pump.`,
      found: SHEET,
    },
    {
      place: part('densityUncertainty'),
      name: en`Density known to ±`,
      means: en`How far the true density may be from the stated one; it enters the off-ratio budget.`,
      found: en`Spread of the batches in the data sheet, or your own scale and flask.`,
    },
    {
      place: part('temperatureUncertainty'),
      name: en`Temperature held to ±`,
      means: en`How far the temperature swings while it runs; it enters the off-ratio budget.`,
      found: en`Watch the heater for some time.`,
    },
  ],
};
