import { en } from '../en.ts';
import type { EntryText } from '../entry.ts';
import { readQuantityEntry } from '../entry.ts';
import type { CatchBox, UnfinishedCheck } from '../file/unfinishedCheck.ts';
import type { Say } from '../format.ts';
import { Fraction } from '../ratio.ts';
import type { TypedQuantity } from '../reading.ts';
import { type Dimension, readQuantity, toSI } from '../units.ts';

/** The boxes of a ratio check that hold a quantity. */
export type CheckBox = CatchBox | 'turns' | 'time' | 'dial' | 'step' | 'uncertainty' | 'confidence';

interface Box {
  readonly dimension: Dimension;
  /** Meant where none is typed. */
  readonly unit: string;
  /** In that unit. */
  readonly least: string;
  readonly most: string;
  /** Whether the least itself is too little. */
  readonly above: boolean;
}

const mass = { dimension: 'mass', unit: 'g', least: '0', most: '10000000', above: false } as const;

/** The bounds are those of the file. */
const BOXES: Readonly<Record<CheckBox, Box>> = {
  gross: mass,
  tare: mass,
  net: mass,
  volume: { dimension: 'volume', unit: 'cc', least: '0', most: '10000000', above: true },
  turns: { dimension: 'number', unit: '', least: '0', most: '1000000', above: true },
  time: { dimension: 'time', unit: 's', least: '0', most: '360000', above: true },
  dial: { dimension: 'share', unit: '%', least: '0', most: '100', above: true },
  step: { dimension: 'mass', unit: 'g', least: '0', most: '100000', above: true },
  uncertainty: { dimension: 'mass', unit: 'g', least: '0', most: '100000', above: false },
  confidence: { dimension: 'share', unit: '%', least: '60', most: '99.9', above: false },
};

/** The unit meant where none is typed. */
export const boxUnit = (box: CheckBox): string => BOXES[box].unit;

/**
 * One box of a ratio check as it is typed.
 *
 * @param text  as typed; blank is not given
 * @returns the quantity as typed, or what was expected, which names the limit that is missed
 * @source our choice
 * @example readBox('step', '0', say)  // not ok: '0 g must be above 0 g.'
 */
export function readBox(box: CheckBox, text: string | undefined, say: Say): EntryText<TypedQuantity> {
  const { dimension, unit, least, most, above } = BOXES[box];
  const entry = readQuantityEntry(dimension, text ?? '', unit, say);
  if (!entry.ok || entry.value === undefined) return entry;
  const read = readQuantity(dimension, entry.value);
  if (!read.ok) return read;
  const limit = (of: string) => read.value.compare(toSI(dimension, new Fraction(of), unit));
  const said = `${entry.value.value} ${entry.value.unit}`.trim();
  const bound = (of: string) => `${of} ${unit}`.trim();
  if (limit(least) < 0 || (above && limit(least) === 0))
    return { ok: false, expected: above ? en`${said} must be above ${bound(least)}.` : en`${said} must be at least ${bound(least)}.` };
  if (limit(most) > 0) return { ok: false, expected: en`${said} must be at most ${bound(most)}.` };
  return entry;
}

/** Which boxes of a catch count, in the order in which they are filled. */
export const boxesOf = ({ weighing, volumes }: Pick<UnfinishedCheck, 'weighing' | 'volumes'>): readonly CatchBox[] => [
  ...(weighing === 'gross' ? (['gross', 'tare'] as const) : (['net'] as const)),
  ...(volumes === true ? (['volume'] as const) : []),
];

/** A column of one side: a box, or the net weight that is worked out from two of them. */
export type CatchColumn = CatchBox | 'worked net';

/** The columns of one side, the net weight beside what it is worked out from. */
export const columnsOf = (check: Pick<UnfinishedCheck, 'weighing' | 'volumes'>): readonly CatchColumn[] =>
  boxesOf(check).flatMap((box): readonly CatchColumn[] => (box === 'tare' ? [box, 'worked net'] : [box]));
