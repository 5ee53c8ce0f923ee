import type { Say } from '../../../core/src/index.ts';

/** The unit meant where none is typed, by the shop's system; any other may be typed behind the number. */
export interface EntryUnits {
  readonly length: string;
  readonly displacement: string;
  readonly torque: string;
  readonly flow: string;
  readonly pressure: string;
  readonly tank: string;
  readonly mixer: string;
  readonly density: string;
  readonly temperature: string;
  readonly temperatureDifference: string;
  readonly expansion: string;
  readonly viscosity: string;
}

const UNITS: Readonly<Record<Say['system'], EntryUnits>> = {
  metric: {
    length: 'mm',
    displacement: 'cc/rev',
    torque: 'N m',
    flow: 'cc/min',
    pressure: 'bar',
    tank: 'L',
    mixer: 'cc',
    density: 'g/cm3',
    temperature: '°C',
    temperatureDifference: 'K',
    expansion: '1/K',
    viscosity: 'mPa s',
  },
  inch: {
    length: 'in',
    displacement: 'in3/rev',
    torque: 'lbf in',
    flow: 'in3/min',
    pressure: 'psi',
    tank: 'US gal',
    mixer: 'in3',
    density: 'lb/gal (US)',
    temperature: '°F',
    temperatureDifference: '°F',
    expansion: '1/°F',
    viscosity: 'cP',
  },
};

export const entryUnits = (say: Say): EntryUnits => UNITS[say.system];
