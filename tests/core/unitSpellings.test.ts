// Every spelling of every unit, written out: a spelling that is lost is a data sheet that can no longer be typed as printed.
// Which unit each stands for is by definition or common practice; the sizes are held in units.test.ts.
import { expect, test } from 'vitest';
import { whole } from '../../core/src/ratio.ts';
import { canonicalUnit, DIMENSIONS, type Dimension, fromSI, unitsOf } from '../../core/src/units.ts';

const SPELLINGS: Readonly<Record<Dimension, Readonly<Record<string, readonly string[]>>>> = {
  length: { m: ['metre', 'meter'], mm: [], cm: [], in: ['inch', 'inches', '"', '″', '”'], ft: ['foot', 'feet', "'", '′', '’'] },
  temperature: { '°C': ['C', 'degC', 'celsius', 'ºC'], '°F': ['F', 'degF', 'fahrenheit'], K: ['kelvin'] },
  temperatureDifference: { K: ['kelvin'], '°C': ['C', 'degC'], '°F': ['F', 'degF'] },
  expansion: {
    '1/K': ['/K', 'per K', 'K^-1', 'K⁻¹'],
    '1/°C': ['/°C', 'per °C', '1/C', '/C', 'per C', '°C^-1', '°C⁻¹'],
    '1/°F': ['/°F', 'per °F', '1/F', '/F', 'per F', '°F^-1', '°F⁻¹'],
  },
  density: {
    'kg/m3': ['kg/m³'],
    'g/cm3': ['g/cc', 'g/ccm', 'g/cm³'],
    'g/mL': ['g/ml'],
    'kg/L': ['kg/dm3', 'kg/l'],
    'lb/ft3': ['lb/cu ft', 'lbs/ft3', 'pcf'],
    'lb/gal (US)': ['lb/gal', 'lbs/gal', 'lb/US gal'],
    'lb/in3': ['lb/cu in', 'lbs/in3'],
  },
  displacement: {
    'm3/rev': [],
    'cc/rev': ['cm3/rev', 'ccm/rev', 'cc/r', 'cm3/r', 'cm³/rev'],
    'mL/rev': ['mL/r'],
    'L/rev': ['dm3/rev', 'L/r'],
    'in3/rev': ['cu in/rev', 'in3/r'],
  },
  volume: {
    m3: ['m³'],
    L: ['dm3', 'litre', 'liter', 'l'],
    mL: ['ml'],
    cc: ['cm3', 'ccm', 'cm³'],
    in3: ['cu in'],
    'US gal': ['gal (US)'],
    'US fl oz': ['fl oz (US)'],
    'UK gal': ['gal (UK)', 'imp gal'],
    'UK fl oz': ['fl oz (UK)', 'imp fl oz'],
  },
  mass: { kg: ['KG'], g: [], lb: ['lbs'], oz: [] },
  speed: { 'rev/s': ['rps', 'r/s'], rpm: ['rev/min', 'r/min', '1/min', 'min^-1', 'min⁻¹'] },
  flow: {
    'm3/s': [],
    'cc/min': ['cm3/min', 'ccm/min'],
    'L/min': ['dm3/min', 'lpm'],
    'mL/min': [],
    'cc/s': ['cm3/s', 'mL/s'],
    'in3/min': ['cu in/min'],
    'US gal/min': ['gal/min (US)', 'US gpm'],
  },
  pressure: { Pa: [], kPa: [], MPa: [], bar: ['BAR'], psi: ['lbf/in2', 'lb/in2'] },
  torque: { 'N m': ['Nm', 'N·m', 'N-m'], 'lbf in': ['lb in', 'in lb', 'in lbf', 'in-lb'], 'lbf ft': ['lb ft', 'ft lb', 'ft lbf', 'ft-lb'] },
  force: { N: [], kN: [], lbf: [] },
  power: { W: [], kW: [], hp: ['HP'] },
  viscosity: { 'Pa s': ['Pa·s'], 'mPa s': ['mPas', 'mPa·s'], cP: ['cps', 'centipoise'] },
  time: { s: ['sec'], min: [], h: ['hr'] },
  share: { '': [], '%': ['percent', 'per cent'] },
  velocity: { 'm/s': [], 'm/min': [], 'ft/min': ['fpm'] },
  frequency: { '1/s': ['Hz', 'per s', 's^-1', 's⁻¹'] },
  angle: { rad: [] },
  number: { '': [] },
  pitches: { pitches: ['pitch'] },
};

const dimensions = Object.keys(DIMENSIONS) as Dimension[];

test('every unit of every dimension is written here', () => {
  expect(Object.keys(SPELLINGS).sort()).toEqual([...dimensions].sort());
  for (const dimension of dimensions) expect(Object.keys(SPELLINGS[dimension])).toEqual(unitsOf(dimension));
});

test.each(dimensions)('%s: each spelling is that unit, and an empty one is none unless the number stands alone', (dimension) => {
  for (const [name, spellings] of Object.entries(SPELLINGS[dimension]))
    for (const spelling of [name, ...spellings]) expect([spelling, canonicalUnit(dimension, spelling)]).toEqual([spelling, name]);
  expect(canonicalUnit(dimension, '')).toBe('' in SPELLINGS[dimension] ? '' : null);
});

test('millipascal and megapascal are told apart by their capital alone', () => {
  expect([canonicalUnit('pressure', 'mpa'), canonicalUnit('pressure', 'MPA'), canonicalUnit('viscosity', 'MPa s')]).toEqual([
    null,
    'MPa',
    null,
  ]);
});

test('a unit of another dimension names both', () => {
  expect(() => fromSI('length', whole(1), 'bar')).toThrow(new RangeError('"bar" is not a unit of length'));
});
