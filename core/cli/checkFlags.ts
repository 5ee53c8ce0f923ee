import { en } from '../src/en.ts';
import type { TypedQuantity } from '../src/entry.ts';
import type { Dimension } from '../src/units.ts';
import { readEntry } from '../src/units.ts';

/** What a ratio check on the command line is of. */
export type CheckWish =
  /** One that the file keeps. */
  | { readonly of: 'kept'; readonly id: string }
  | { readonly of: 'all' }
  /** Null: what is fitted. The scale is that of the last kept check of the machine where none is given. */
  | {
      readonly of: 'before' | 'new';
      readonly sheet: string | null;
      readonly catches: string;
      readonly turns: TypedQuantity | null;
      readonly time: TypedQuantity | null;
      readonly dial: TypedQuantity | null;
      readonly step: TypedQuantity | null;
      readonly tared: boolean;
      readonly uncertainty: TypedQuantity | null;
      readonly confidence: TypedQuantity | null;
      readonly by: string | null;
    };

const OF_NEW = [
  'sheet',
  'machine',
  'material',
  'catches',
  'turns',
  'time',
  'dial',
  'step',
  'tared',
  'scale-uncertainty',
  'confidence',
  'by',
];

/** Reads what `ratio-check` is asked for; what is wrong with it is added to the problems. */
export function readCheckWish(given: ReadonlyMap<string, string>, problems: string[]): CheckWish {
  const modes = ['check', 'all', 'before', 'catches'].filter((name) => given.has(name));
  if (modes.length !== 1) problems.push(en`ratio-check needs one of --catches FILE.csv, --before, --check ID and --all.`);
  const id = given.get('check');
  const ofKept = id !== undefined || given.has('all');
  for (const name of OF_NEW)
    if (ofKept && name !== 'catches' && given.has(name))
      problems.push(en`--${name} belongs to a new check, not to one that the file keeps.`);
  for (const name of ['out', 'workings'])
    if ((given.has('all') || given.has('before')) && given.has(name)) problems.push(en`--${name} belongs to one check with catches.`);
  if (given.has('csv') && !given.has('all')) problems.push(en`--csv of ratio-check belongs to --all.`);
  if (given.has('all') && given.has('json')) problems.push(en`--all is printed as text, or with --csv as CSV: leave out --json.`);
  if (id !== undefined) return { of: 'kept', id };
  if (given.has('all')) return { of: 'all' };
  return { of: given.has('before') ? 'before' : 'new', ...readNew(given, problems) };
}

function readNew(given: ReadonlyMap<string, string>, problems: string[]) {
  const quantity = (name: string, dimension: Dimension, unit: string | null): TypedQuantity | null => {
    const text = given.get(name);
    if (text === undefined) return null;
    const read = readEntry(dimension, text);
    const named = read.ok ? (read.value.unit ?? unit) : null;
    if (!read.ok) problems.push(`--${name}: ${read.expected}`);
    else if (named === null) problems.push(en`--${name} needs a unit: ${text} of what?`);
    return read.ok && named !== null ? { value: read.value.value, unit: named } : null;
  };
  if (given.has('sheet'))
    for (const name of ['machine', 'material'])
      if (given.has(name)) problems.push(en`--${name} follows from --sheet: leave one of the two out.`);
  if (given.has('time') !== given.has('dial')) problems.push(en`--time and --dial go together: seconds tell turns only with the dial.`);
  if (given.has('turns') && given.has('time')) problems.push(en`--turns or --time with --dial, not both.`);
  for (const name of ['tared', 'scale-uncertainty'])
    if (given.has(name) && !given.has('step')) problems.push(en`--${name} says more of a scale whose --step is given.`);
  return {
    sheet: given.get('sheet') ?? null,
    catches: given.get('catches') ?? '',
    turns: quantity('turns', 'number', ''),
    time: quantity('time', 'time', null),
    dial: quantity('dial', 'share', '%'),
    step: quantity('step', 'mass', null),
    tared: given.has('tared'),
    uncertainty: quantity('scale-uncertainty', 'mass', null),
    confidence: quantity('confidence', 'share', '%'),
    by: given.get('by') ?? null,
  };
}
