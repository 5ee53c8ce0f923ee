import { blendOf, type Ingredient } from '../chemistry/blend.ts';
import { type Chemistry, chemistryOf } from '../chemistry/chemistry.ts';
import { indexSaid } from '../chemistry/indexText.ts';
import { equivalentWeightOf, type FigureKey, measureOf, shortText } from '../chemistry/measures.ts';
import { componentIn, otherTank, type SystemName, systemOf, type Tank } from '../chemistry/systems.ts';
import { en } from '../en.ts';
import type { Place } from '../finding.ts';
import { type Fraction, ONE } from '../ratio.ts';
import { readNumber } from '../reading.ts';
import { visible } from '../visible.ts';
import { type Input, input } from '../working.ts';
import type { ChemistryRow, IngredientRow } from './chemistryRow.ts';
import { type Problems, reading } from './problems.ts';

/** The mix ratio that a material's chemistry makes, and how the sheet says it; null where a problem was added. */
export function resolveChemistry(row: ChemistryRow, at: Place, problems: Problems): { chemistry: Chemistry; written: string } | null {
  const { system } = row;
  if (system === undefined) {
    problems.add([...at, 'system'], en`whether this is an epoxy or a urethane is missing`);
    return null;
  }
  const { askedAs, asked, index: indexWords } = systemOf(system);
  const askedIn = row[askedAs];
  if (askedIn === undefined)
    problems.add([...at, askedAs], en`in which tank the ${asked.words} is, A or B, is missing; it is never assumed`);
  if (row.index === undefined) problems.add([...at, 'index'], en`the ${indexWords.what} is missing: ask who made the formulation`);
  if (askedIn === undefined) return null;
  const weight = (tank: Tank) => tankWeight(row, system, askedIn, tank, at, problems);
  const [A, B] = [weight('A'), weight('B')];
  if (A === null || B === null || row.index === undefined) return null;
  const chemistry = chemistryOf(system, askedIn, reading(readNumber(row.index)), { A, B });
  const counted = shortTank(row, chemistry.countedIn);
  const written = visible(en`${counted} on ${shortTank(row, otherTank(chemistry.countedIn))}, ${indexSaid(system, row.index)}`);
  return { chemistry, written };
}

function shortTank(row: ChemistryRow, tank: Tank): string {
  const ingredients = row[tank]?.ingredients ?? [];
  const [first] = ingredients;
  return ingredients.length === 1 && first?.by !== undefined ? shortText(first.by, first) : en`blend of ${ingredients.length} in ${tank}`;
}

/** Equivalent weight of all that is in a tank; null where a problem was added. */
function tankWeight(
  row: ChemistryRow,
  system: SystemName,
  askedIn: Tank,
  tank: Tank,
  at: Place,
  problems: Problems,
): Input<Fraction> | null {
  const rows = row[tank]?.ingredients ?? [];
  const component = componentIn(system, askedIn, tank);
  const where = row[tank] === undefined ? [...at, tank] : [...at, tank, 'ingredients'];
  const before = problems.count;
  const read = rows.map((one, index) => {
    const name = visible(one.name ?? '').trim() || (rows.length === 1 ? tank : en`${tank}, ingredient ${index + 1}`);
    const place = [...where, index];
    const group = one.by === undefined ? null : measureOf(one.by).group;
    if (group !== null && group !== component.group)
      problems.add([...place, 'by'], en`tank ${tank} holds the ${component.words}, but ${name} is ${spokenGroup(group)}`);
    return ingredientOf(one, name, rows.length === 1, place, problems);
  });
  const ingredients = read.filter((one) => one !== null);
  if (problems.count > before || ingredients.length < rows.length) return null;
  if (ingredients.some(({ equivalentWeight }) => equivalentWeight !== null))
    return blendOf(en`equivalent weight of ${tank}, g/eq`, ingredients);
  problems.add(where, en`tank ${tank} holds the ${component.words}, and nothing in it is said to react: its data sheet says how much`);
  return null;
}

const spokenGroup = (group: NonNullable<ReturnType<typeof measureOf>['group']>): string =>
  ({ epoxide: en`a resin`, hardener: en`a hardener`, isocyanate: en`an isocyanate`, 'active hydrogen': en`a polyol or water` })[group];

function ingredientOf(row: IngredientRow, name: string, alone: boolean, place: Place, problems: Problems): Ingredient | null {
  const { by, parts } = row;
  const before = problems.count;
  if (by === undefined) problems.add([...place, 'by'], en`what the data sheet says of ${name} is missing: choose what describes it`);
  // Parts of what is alone in its tank cancel.
  if (parts === undefined && !alone) problems.add([...place, 'parts'], en`the parts by weight of ${name} are missing`);
  const figures: Partial<Record<FigureKey, Fraction>> = {};
  for (const { key, label } of by === undefined ? [] : measureOf(by).figures) {
    const typed = row[key];
    if (typed === undefined) problems.add([...place, key], en`missing for ${name}: the ${label}, as its data sheet says`);
    else figures[key] = reading(readNumber(typed));
  }
  if (by === undefined || problems.count > before) return null;
  const w = input(en`parts by weight of ${name}`, parts === undefined ? ONE : reading(readNumber(parts)), 'number');
  return { parts: w, equivalentWeight: equivalentWeightOf(by, name, figures) };
}
