import { FIGURES, type FigureKey, MEASURE_NAMES, type MeasureName, measureOf } from '../../../../core/src/chemistry/measures.ts';
import { componentIn, SYSTEM_NAMES, type SystemName, systemOf, type Tank } from '../../../../core/src/chemistry/systems.ts';
import type { ChemistryRow, IngredientRow } from '../../../../core/src/file/chemistryRow.ts';
import { freshId } from '../../../../core/src/file/freshId.ts';
import { put } from '../../state/put.ts';
import type { MaterialForm } from './materialForm.ts';

export const chemistryOf = (form: MaterialForm): ChemistryRow => form.row().chemistry ?? {};

/** The tank that was asked for, once it is known. */
export function askedTank({ system, ...said }: ChemistryRow): Tank | undefined {
  return system === undefined ? undefined : said[systemOf(system).askedAs];
}

/** Changes the chemistry, which is there as long as the ratio comes from it. */
export const editChemistry = (form: MaterialForm, key: string, change: (chemistry: ChemistryRow) => void): void =>
  form.edit(['chemistry', key], (row) => {
    row.chemistry ??= {};
    change(row.chemistry);
  });

/** One ingredient a tank to begin with; which tank holds what is still to be said. */
export function pickSystem(form: MaterialForm, system: SystemName): void {
  editChemistry(form, 'system', (chemistry) => {
    chemistry.system = system;
    for (const name of SYSTEM_NAMES) if (name !== system) put(chemistry, systemOf(name).askedAs, undefined);
    for (const tank of ['A', 'B'] as const) chemistry[tank] ??= { ingredients: [{ id: freshId([], 'ingredient') }] };
  });
}

/** Changes one ingredient. */
export function editIngredient(form: MaterialForm, tank: Tank, id: string, key: string, change: (row: IngredientRow) => void): void {
  editChemistry(form, `${tank}.${id}.${key}`, (chemistry) => {
    const row = chemistry[tank]?.ingredients.find((one) => one.id === id);
    if (row !== undefined) change(row);
  });
}

/** Another measure has other figures: what was typed for the first is not taken for one of them. */
export function pickMeasure(form: MaterialForm, tank: Tank, id: string, by: MeasureName | undefined): void {
  editIngredient(form, tank, id, 'by', (row) => {
    if (row.by === by) return;
    put(row, 'by', by);
    for (const key of FIGURES) put(row, key, undefined);
  });
}

export function addIngredient(form: MaterialForm, tank: Tank): void {
  editChemistry(form, `${tank}.add`, (chemistry) => {
    chemistry[tank] ??= { ingredients: [] };
    const rows = chemistry[tank].ingredients;
    rows.push({ id: freshId(rows, 'ingredient') });
  });
}

export function removeIngredient(form: MaterialForm, tank: Tank, id: string): void {
  editChemistry(form, `${tank}.remove.${id}`, (chemistry) => {
    const rows = chemistry[tank]?.ingredients;
    const at = rows?.findIndex((one) => one.id === id) ?? -1;
    if (at >= 0) rows?.splice(at, 1);
  });
}

export const setFigure = (form: MaterialForm, tank: Tank, id: string, key: FigureKey, value: string | undefined): void =>
  editIngredient(form, tank, id, key, (row) => put(row, key, value));

/** What may be in a tank: what reacts there and what is inert; both sides of the system while it is not said which is where. */
export function measuresFor(chemistry: ChemistryRow, tank: Tank, now: MeasureName | undefined): readonly MeasureName[] {
  const { system } = chemistry;
  if (system === undefined) return MEASURE_NAMES;
  const asked = askedTank(chemistry);
  const sides = systemOf(system);
  const groups = asked === undefined ? [sides.asked.group, sides.other.group] : [componentIn(system, asked, tank).group];
  return MEASURE_NAMES.filter((by) => {
    const { group } = measureOf(by);
    return by === now || group === null || groups.includes(group);
  });
}
