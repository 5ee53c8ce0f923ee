import type { Say } from '../../../../core/src/index.ts';

/** The unit meant where none is typed, by the shop's system; any other may be typed behind the number. */
export interface EntryUnits {
  readonly density: string;
  readonly temperature: string;
  readonly temperatureDifference: string;
  readonly expansion: string;
  readonly viscosity: string;
}

const UNITS: Readonly<Record<Say['system'], EntryUnits>> = {
  metric: { density: 'g/cm3', temperature: '°C', temperatureDifference: 'K', expansion: '1/K', viscosity: 'mPa s' },
  inch: { density: 'lb/gal (US)', temperature: '°F', temperatureDifference: '°F', expansion: '1/°F', viscosity: 'cP' },
};

export const entryUnits = (say: Say): EntryUnits => UNITS[say.system];
