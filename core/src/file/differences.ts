import { en } from '../en.ts';
import { capital } from '../format.ts';
import {
  type IdRow,
  isQuantity,
  isRow,
  keyWords,
  listWords,
  type Names,
  namesAmong,
  rows,
  rowWords,
  valueWords,
} from './differenceWords.ts';
import { isObject } from './fields.ts';
import type { ShopFile } from './shopFile.ts';

/** One thing in which two shop files differ. */
export interface Difference {
  /** Where, by ids, so that two people's changes to one place can be told: `machines/bench-1/stages/s1/driver/teeth`. */
  readonly key: string;
  /** The machine, material, rack or kept page it belongs to, as people call it. */
  readonly row: string;
  readonly what: string;
}

/** Where the comparison stands: the ids so far, and the words under the heading of the row. */
interface Spot {
  readonly key: string;
  readonly row: string;
  readonly words: readonly string[];
  /** What the ids in this row stand for. */
  readonly names: Names;
}

/** Who wrote a file, and in which form, is no change of what it says. */
const ENVELOPE = new Set(['format', 'version', 'writtenBy']);
/** Frozen words, drawings and exact figures of kept sheets, pages and checks: hundreds of them in one row. */
const KEPT = /^(?:changeSheets|quotePages|ratioChecks)\//;
const FROZEN: Readonly<Record<string, string>> = {
  lines: en`what was printed differs`,
  page: en`what was printed differs`,
  rule: en`what was drawn differs`,
  terms: en`what the verdict rests on differs`,
};

/**
 * What one shop file says otherwise than another, row by row, in the order of the file. Rows are the same row where they have one id.
 *
 * @param before  as it was
 * @param after   as it is
 * @returns empty where both say the same, whoever wrote them
 * @source our choice
 * @example differences(demo, demoWithTeeth22)  // [{ key: 'machines/bench-1/stages/s1/driver/teeth', row: 'Machine Bench 1', what: 'stage s1, driver, teeth: 21 → 22' }]
 */
export function differences(before: ShopFile, after: ShopFile): readonly Difference[] {
  const found: Difference[] = [];
  const names = namesAmong(
    after,
    namesAmong(before, () => null),
  );
  for (const key of keysOf(before, after)) {
    if (ENVELOPE.has(key)) continue;
    const list = { key, row: key === 'shop' ? en`The shop` : en`The list of ${listWords(key)}`, words: [], names };
    compare(Reflect.get(before, key), Reflect.get(after, key), list, found);
  }
  return found;
}

/**
 * The keys at which two people changed the same place, or one of them something inside what the other changed.
 *
 * @source our choice
 * @example clashes([{ key: 'racks/main/name', row: 'Rack Main', what: '' }], [{ key: 'racks/main', row: 'Rack Main', what: '' }])  // the keys 'racks/main/name' and 'racks/main'
 */
export function clashes(theirs: readonly Difference[], mine: readonly Difference[]): ReadonlySet<string> {
  const inside = (key: string, other: string) => key === other || key.startsWith(`${other}/`);
  const both = new Set<string>();
  for (const one of theirs)
    for (const other of mine) {
      if (!inside(one.key, other.key) && !inside(other.key, one.key)) continue;
      both.add(one.key).add(other.key);
    }
  return both;
}

const keysOf = (...both: readonly object[]): readonly string[] => [...new Set(both.flatMap((one) => Object.keys(one)))];

function compare(before: unknown, after: unknown, spot: Spot, found: Difference[]): void {
  if (JSON.stringify(before) === JSON.stringify(after)) return;
  const tell = (what: string) => void found.push({ key: spot.key, row: spot.row, what: [...spot.words, what].join(', ') });
  const lists = [before, after].filter(Array.isArray);
  if (lists.length > 0 && lists.flat().every(isRow)) compareRows(rows(before), rows(after), spot, found);
  else if (lists.length > 0) compareLines(list(before), list(after), spot, found);
  else if ([before, after].every((one) => (isObject(one) && !isQuantity(one)) || one === undefined)) {
    const from = fieldsOf(before);
    const to = fieldsOf(after);
    const names = namesAmong(to, namesAmong(from, spot.names));
    for (const key of keysOf(from, to)) {
      const inner = { ...spot, key: `${spot.key}/${key}`, words: [...spot.words, keyWords(key)], names };
      const frozen = KEPT.test(spot.key) ? FROZEN[key] : undefined;
      if (frozen === undefined) compare(from[key], to[key], inner, found);
      else if (JSON.stringify(from[key]) !== JSON.stringify(to[key])) tell(frozen);
    }
  } else compareValues(before, after, spot, found);
}

function compareValues(before: unknown, after: unknown, spot: Spot, found: Difference[]): void {
  const last = spot.key.split('/').at(-1) ?? '';
  const said = (value: unknown) => valueWords(typeof value === 'string' ? (spot.names(last, value) ?? value) : value);
  // Keys of a quantity in another order say the same.
  if (said(before) !== said(after))
    found.push({ key: spot.key, row: spot.row, what: `${spot.words.join(', ')}: ${said(before)} → ${said(after)}` });
}

/** Rows by their ids: those that are gone, those that are new, those that changed, and whether the order of those in both did. */
function compareRows(before: readonly IdRow[], after: readonly IdRow[], spot: Spot, found: Difference[]): void {
  const list = spot.key.split('/').at(-1) ?? '';
  const own = spot.key === list;
  const words = spot.words.slice(0, -1);
  const at = (row: IdRow, what: string | null): Spot => ({
    ...spot,
    key: `${spot.key}/${row.id}`,
    row: own ? capital(rowWords(list, row)) : spot.row,
    words: [...words, ...(own ? [] : [rowWords(list, row)]), ...(what === null ? [] : [what])],
  });
  const tell = ({ key, row, words: said }: Spot) => void found.push({ key, row, what: said.join(', ') });
  for (const row of before) if (!after.some(({ id }) => id === row.id)) tell(at(row, en`removed`));
  for (const row of after) {
    const same = before.find(({ id }) => id === row.id);
    if (same === undefined) tell(at(row, en`added`));
    else compare(same, row, at(same, null), found);
  }
  const order = (some: readonly IdRow[], other: readonly IdRow[]) =>
    some.filter(({ id }) => other.some((one) => one.id === id)).map(({ id }) => id);
  if (order(before, after).join(' ') === order(after, before).join(' ')) return;
  found.push({ key: `${spot.key}/`, row: spot.row, what: [...words, ...(own ? [] : [listWords(list)]), en`another order`].join(', ') });
}

/** Lines without ids are the same line where they have the same number. */
function compareLines(before: readonly unknown[], after: readonly unknown[], spot: Spot, found: Difference[]): void {
  for (let index = 0; index < Math.max(before.length, after.length); index += 1) {
    const words = [...spot.words.slice(0, -1), `${spot.words.at(-1) ?? ''} ${index + 1}`];
    compare(before[index], after[index], { ...spot, key: `${spot.key}/${index}`, words }, found);
  }
}

const fieldsOf = (json: unknown): Readonly<Record<string, unknown>> => (isObject(json) ? json : {});
const list = (json: unknown): readonly unknown[] => (Array.isArray(json) ? json : []);
