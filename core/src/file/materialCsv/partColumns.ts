import { SIDES, type SideName } from '../../plan.ts';
import type { TypedQuantity } from '../../reading.ts';
import type { Dimension } from '../../units.ts';
import type { PartRow } from '../material.ts';

/** A column that holds a quantity of one part. */
export interface PartColumn {
  readonly side: SideName;
  readonly head: string;
  readonly dimension: Dimension;
  /** Where it stands in the part. */
  readonly path: readonly [keyof PartRow, ('value' | 'at')?];
  readonly of: (part: PartRow) => TypedQuantity | undefined;
}

type PlainKey = 'expansion' | 'runAt' | 'viscosity' | 'densityUncertainty' | 'temperatureUncertainty';

const PLAIN: readonly (readonly [word: string, key: PlainKey, dimension: Dimension])[] = [
  ['expansion', 'expansion', 'expansion'],
  ['run', 'runAt', 'temperature'],
  ['viscosity', 'viscosity', 'viscosity'],
  ['density uncertainty', 'densityUncertainty', 'share'],
  ['temperature uncertainty', 'temperatureUncertainty', 'temperatureDifference'],
];

function densityColumns(side: SideName, word: string, key: 'density' | 'secondDensity'): readonly PartColumn[] {
  return [
    { side, head: `${word} ${side}`, dimension: 'density', path: [key, 'value'], of: (part) => part[key]?.value },
    { side, head: `${word} ${side} at`, dimension: 'temperature', path: [key, 'at'], of: (part) => part[key]?.at },
  ];
}

/** Every quantity of both parts, one column each. */
export const PART_COLUMNS: readonly PartColumn[] = SIDES.flatMap((side) => [
  ...densityColumns(side, 'density', 'density'),
  ...densityColumns(side, 'second density', 'secondDensity'),
  ...PLAIN.map(
    ([word, key, dimension]): PartColumn => ({ side, head: `${word} ${side}`, dimension, path: [key], of: (part) => part[key] }),
  ),
]);
