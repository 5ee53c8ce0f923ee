import { en } from '../en.ts';
import { placeText } from '../finding.ts';
import { printedUnit, withTrueMinus } from '../format.ts';
import { isObject } from './fields.ts';

/** A row of a list as plain JSON, with the id by which it is the same row in another file. */
export type IdRow = Readonly<Record<string, unknown>> & { readonly id: string };

export const isRow = (json: unknown): json is IdRow => isObject(json) && typeof json.id === 'string';

/** Words for lists of rows. */
const LIST_WORDS: Readonly<Record<string, string>> = {
  machines: en`machines`,
  materials: en`materials`,
  racks: en`racks`,
  changeSheets: en`change sheets`,
  quotePages: en`quote pages`,
  ratioChecks: en`ratio checks`,
  unfinishedChecks: en`unfinished ratio checks`,
  shafts: en`shafts`,
  stages: en`stages`,
  pumps: en`pumps`,
  pieces: en`pieces`,
  prices: en`prices`,
  ingredients: en`ingredients`,
};

/** A key of the file in words, as `take-up`. */
export const keyWords = (key: string): string => placeText([key]);

/** A list of rows in words, as `change sheets`. */
export const listWords = (key: string): string => (Object.hasOwn(LIST_WORDS, key) ? LIST_WORDS[key] : undefined) ?? keyWords(key);

/** A row as people call it: `stage s1`, `piece 08B, 21 teeth`; by its name, else by what tells it from its neighbours, else by its id. */
export function rowWords(list: string, row: IdRow): string {
  const text = (key: string): string | null => {
    const value = row[key];
    return typeof value === 'string' && value !== '' ? value : typeof value === 'number' ? String(value) : null;
  };
  const teeth = text('teeth') ?? (text('from') === null ? null : en`${text('from')} to ${text('to')}`);
  const wheel = teeth === null || text('size') === null ? null : en`${text('size')}, ${teeth} teeth`;
  const place = wheel === null || text('place') === null ? '' : `, ${text('place')}`;
  return `${keyWords(list)} ${text('name') ?? text('number') ?? (wheel === null ? (text('date') ?? row.id) : wheel + place)}`;
}

/** A value as typed; a word for what is not given. */
export function valueWords(value: unknown): string {
  if (value === undefined) return en`not given`;
  if (typeof value === 'boolean') return value ? en`yes` : en`no`;
  if (typeof value === 'number') return withTrueMinus(String(value));
  if (isQuantity(value)) return withTrueMinus(value.value) + printedUnit(value.unit);
  if (typeof value !== 'string') return JSON.stringify(value);
  return /^-?[\d.,]/.test(value) ? withTrueMinus(value) : `“${value}”`;
}

/** A number with its unit, both as text. */
export const isQuantity = (json: unknown): json is { readonly value: string; readonly unit: string } =>
  isObject(json) && typeof json.value === 'string' && typeof json.unit === 'string';

export const rows = (json: unknown): readonly IdRow[] => (Array.isArray(json) ? json.filter(isRow) : []);

/** The name of what an id under a key points at; null where nothing has one. */
export type Names = (key: string, id: string) => string | null;

const LIST_OF: Readonly<Record<string, string>> = {
  rack: 'racks',
  machine: 'machines',
  material: 'materials',
  changeSheet: 'changeSheets',
  fitted: 'pumps',
};

/** What an id under a key stands for: a row of the lists at hand, else of those further out. */
export function namesAmong(json: object, outer: Names): Names {
  return (key, id) => {
    const row = rows(Reflect.get(json, LIST_OF[key] ?? '')).find((one) => one.id === id);
    const name = row?.name ?? row?.number;
    return typeof name === 'string' && name !== '' ? name : outer(key, id);
  };
}
