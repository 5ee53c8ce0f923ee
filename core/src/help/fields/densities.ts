import type { FieldPage } from '../fieldLine.ts';

const part = (key: string): string => `materials.*.A|B|third|premix.${key}`;
const SHEET = 'Data sheet of the part, never that of a similar one.';

/** The table of densities on the Material page. */
export const densities: FieldPage = {
  title: 'Densities and temperatures',
  lines: [
    {
      place: part('density.value'),
      name: 'Density',
      means: 'Mass over volume of this part; it carries a ratio by weight over to the pumps, which meter volumes.',
      found: 'Data sheet, or weigh 100 ml at the temperature you state.',
    },
    {
      place: part('density.at'),
      name: 'Density holds at',
      means: 'The temperature at which the density was measured.',
      found: 'Beside the density in the data sheet, often 20 or 25 °C.',
    },
    {
      place: part('secondDensity.value'),
      name: 'Second density',
      means: 'The density at another temperature; the two give the expansion.',
      found: 'Data sheet, or weigh 100 ml once more, warm.',
    },
    {
      place: part('secondDensity.at'),
      name: 'Second density holds at',
      means: 'The temperature of the second density.',
      found: 'Beside it in the data sheet, or a thermometer.',
    },
    {
      place: part('expansion'),
      name: 'Expansion',
      means: 'By which share the volume grows for each degree.',
      found: 'Data sheet: “coefficient of thermal expansion”, by volume. A linear one is a third of it.',
    },
    {
      place: part('runAt'),
      name: 'Temperature in the tank',
      means: 'How warm the part is at its pump while it is metered.',
      found: 'Thermometer at the pump, or the setting of the heater.',
    },
    {
      place: part('viscosity'),
      name: 'Viscosity',
      means: 'How thick the part is as it is run; thin parts slip more through the pump.',
      found: SHEET,
    },
    {
      place: part('densityUncertainty'),
      name: 'Density known to ±',
      means: 'How far the true density may be from the stated one; it enters the off-ratio budget.',
      found: 'Spread of the batches in the data sheet, or your own scale and flask.',
    },
    {
      place: part('temperatureUncertainty'),
      name: 'Temperature held to ±',
      means: 'How far the temperature swings while it runs; it enters the off-ratio budget.',
      found: 'Watch the heater for some time.',
    },
  ],
};
