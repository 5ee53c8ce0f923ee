import * as v from 'valibot';
import { FIGURES, type FigureKey, figureTrouble, MEASURE_NAMES, type MeasureName, measureOf } from '../chemistry/measures.ts';
import { SYSTEM_NAMES, SYSTEMS, systemOf } from '../chemistry/systems.ts';
import { en } from '../en.ts';
import type { Fraction } from '../ratio.ts';
import { readNumber } from '../reading.ts';
import { id, line, list, numberText, oneOf, row } from './fields.ts';

const maybe = v.exactOptional;

/** A plain number within limits, which `allowed` words; `say` words what is wrong with one outside. */
const within = (misses: (value: Fraction) => boolean, allowed: string, say: (typed: string, value: Fraction) => string) =>
  v.pipe(
    numberText,
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      const read = readNumber(dataset.value);
      if (read.ok && misses(read.value)) addIssue({ message: say(dataset.value, read.value), expected: allowed });
    }),
  );

const PARTS_ALLOWED = en`the parts by weight must be above 0`;
const parts = within(
  (value) => value.compare(0) <= 0,
  PARTS_ALLOWED,
  (typed) => en`${typed} is out of range: ${PARTS_ALLOWED}`,
);

const LEAST_INDEX = '20';
const MOST_INDEX = '1000';
const INDEX_ALLOWED = en`the index is in per cent, ${LEAST_INDEX} to ${MOST_INDEX}`;
const index = within(
  (value) => value.compare(LEAST_INDEX) < 0 || value.compare(MOST_INDEX) > 0,
  INDEX_ALLOWED,
  (typed, value) =>
    value.compare(0) > 0 && value.compare(10) < 0
      ? en`${typed} looks like a ratio: ${INDEX_ALLOWED}`
      : en`${typed} is out of range: ${INDEX_ALLOWED}`,
);

const plainIngredient = row({
  id,
  name: maybe(line),
  parts: maybe(parts),
  by: maybe(oneOf(MEASURE_NAMES, en`an ingredient is described by ${MEASURE_NAMES.map((name) => `"${name}"`).join(', ')}`)),
  value: maybe(numberText),
  hydrogens: maybe(numberText),
  factor: maybe(numberText),
});

/** What is weighed into a tank: its parts by weight, and how much of it reacts. Each measure brings its own figures. */
const ingredient = v.pipe(
  plainIngredient,
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    for (const key of FIGURES) {
      const typed = dataset.value[key];
      const message = typed === undefined ? null : ingredientTrouble(dataset.value.by, key, typed);
      if (message !== null) addIssue({ message, path: [{ type: 'object', origin: 'value', input: dataset.value, key, value: typed }] });
    }
  }),
);

/**
 * What the file would refuse about one figure of an ingredient; null where nothing is wrong.
 *
 * @example ingredientTrouble('EEW', 'value', '0.51')  // '0.51 looks like an epoxy value in mol/100 g. EEW: 50 to 10000 g/eq'
 */
export function ingredientTrouble(by: MeasureName | undefined, key: FigureKey, typed: string): string | null {
  if (by === undefined) return null;
  const rule = measureOf(by).figures.find((figure) => figure.key === key);
  if (rule === undefined) return en`an ingredient by "${by}" has no "${key}"`;
  const read = readNumber(typed);
  return read.ok ? figureTrouble(rule, read.value, typed) : null;
}

const ingredients = v.pipe(
  list(ingredient),
  v.maxLength(20, en`a tank has at most 20 ingredients`),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    dataset.value.forEach((one, at) => {
      if (dataset.value.findIndex((other) => other.id === one.id) === at) return;
      const step = { type: 'array', origin: 'value', input: dataset.value, key: at, value: one } as const;
      addIssue({
        message: en`the id "${one.id}" is used twice`,
        path: [step, { type: 'object', origin: 'value', input: one, key: 'id', value: one.id }],
      });
    });
  }),
);

const tank = row({ ingredients });
const tankName = oneOf(['A', 'B'], en`a tank is "A" or "B"; which one is never assumed`);

/** A mix ratio out of what reacts in the two tanks, by weight. Which tank holds what is asked: it differs between shops and countries. */
export const chemistry = v.pipe(
  row({
    system: maybe(oneOf(SYSTEM_NAMES, en`the systems are "epoxy" and "urethane"`)),
    resinIn: maybe(tankName),
    isocyanateIn: maybe(tankName),
    index: maybe(index),
    A: maybe(tank),
    B: maybe(tank),
  }),
  v.check(
    ({ system, ...said }) =>
      system === undefined ||
      Object.values(SYSTEMS).every(({ askedAs }) => askedAs === systemOf(system).askedAs || said[askedAs] === undefined),
    ({ input: { system } }) =>
      en`of "resinIn" and "isocyanateIn" only the one of its system is given: ${system === 'epoxy' ? en`an epoxy has a resin` : en`a urethane has an isocyanate`}`,
  ),
);

/** What the file would refuse about parts or an index; null where nothing is wrong. */
export function chemistryNumberTrouble(which: 'parts' | 'index', typed: string): string | null {
  const read = v.safeParse(which === 'parts' ? parts : index, typed);
  return read.success ? null : `${read.issues[0].message}.`;
}

export type ChemistryRow = v.InferOutput<typeof chemistry>;
export type IngredientRow = NonNullable<ChemistryRow['A']>['ingredients'][number];
