import { en } from '../en.ts';
import type { Finding, Outcome, Place } from '../finding.ts';
import { quoted } from '../visible.ts';
import { FORMAT, LARGEST_FILE_BYTES, VERSION } from './envelope.ts';
import { isObject } from './fields.ts';
import { migrations } from './migrate.ts';
import { checked, MOST_PROBLEMS, Problems } from './problems.ts';
import { references } from './references.ts';
import { type ShopFile, shopFile } from './shopFile.ts';

/** A shop with a thousand sheets has a tenth of them; so many are gone through in about a second. */
const MOST_VALUES = 1_500_000;

/** Of a file with more values the first fault is enough: each takes a kilobyte while all are looked for. */
const MOST_GONE_THROUGH = 100_000;

type Json = Readonly<Record<string, unknown>>;

/**
 * Reads the text of a shop file. Everything wrong with it is reported together, each with its place; nothing is repaired by guessing.
 *
 * @param damage  what is said of a text that is no JSON
 */
export function readWith(text: string, damage: (text: string) => string): Outcome<ShopFile> {
  const problems = new Problems();
  const json = parse(text, damage, problems);
  const current = json === null ? null : toCurrentVersion(json, problems);
  if (current === null) return problems.failure();
  const file = checked(shopFile, current, [], problems, valueCount(current, MOST_GONE_THROUGH) > MOST_GONE_THROUGH);
  references(current, problems);
  if (file === null || !problems.none) return problems.failure();
  return { ok: true, value: file, findings: fewEnough(unknownKeys(current, file, [])) };
}

function parse(text: string, damage: (text: string) => string, problems: Problems): Json | null {
  if (text.length > LARGEST_FILE_BYTES) {
    problems.add([], en`the file is larger than ${LARGEST_FILE_BYTES / 1024 / 1024} MB and was not read`);
    return null;
  }
  // A byte order mark is no part of JSON, but editors leave one.
  const plain = text.replace(/^\uFEFF/, '');
  try {
    const json: unknown = JSON.parse(plain);
    if (valueCount(json, MOST_VALUES) > MOST_VALUES) problems.add([], en`the file holds more than ${MOST_VALUES} values and was not read`);
    else if (isObject(json)) return json;
    else problems.add([], en`this is not a shop file: it should hold an object in braces`);
  } catch {
    problems.add([], damage(plain));
  }
  return null;
}

/** How many values JSON holds, however deep it is; counting ends beyond the most. */
function valueCount(json: unknown, most: number): number {
  const open: unknown[] = [json];
  let values = 1;
  while (open.length > 0 && values <= most) {
    const one = open.pop();
    if (typeof one !== 'object' || one === null) continue;
    const inside: readonly unknown[] = Object.values(one);
    values += inside.length;
    if (values <= most) for (const value of inside) open.push(value);
  }
  return values;
}

function toCurrentVersion(json: Json, problems: Problems): Json | null {
  if (json.format !== FORMAT) {
    problems.add(['format'], en`this is not a shop file: its format should read "${FORMAT}"`);
    return null;
  }
  const version = json.version;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    problems.add(['version'], en`the version must be a whole number, 1 or more`);
    return null;
  }
  if (version > VERSION) {
    problems.add(
      ['version'],
      en`the file is version ${version}, this program reads up to version ${VERSION}: open it with a newer Ratiowright`,
    );
    return null;
  }
  return migrations.slice(version - 1).reduce<Json>((step, migrate) => migrate(step), json);
}

/** Of keys without end the first are named; the last finding says how many more there are. */
function fewEnough(unknown: readonly Finding[]): readonly Finding[] {
  const [beyond] = unknown.slice(MOST_PROBLEMS);
  if (beyond === undefined) return unknown;
  const what = en`${unknown.length - MOST_PROBLEMS} more keys are not known to this version; they will be lost too.`;
  return [...unknown.slice(0, MOST_PROBLEMS), { ...beyond, where: [], what }];
}

/** Keys this version does not know open with a warning: saving will lose them. */
function unknownKeys(read: unknown, kept: unknown, place: Place): Finding[] {
  if (Array.isArray(read) && Array.isArray(kept)) return read.flatMap((row, index) => unknownKeys(row, kept[index], [...place, index]));
  if (!isObject(read) || !isObject(kept)) return [];
  return Object.entries(read).flatMap(([key, value]) => {
    // `in` would find what every object inherits, as "constructor".
    if (Object.hasOwn(kept, key)) return unknownKeys(value, kept[key], [...place, key]);
    return [
      {
        check: 'file.unknownKey',
        severity: 'warns',
        where: [...place, key],
        what: en`${quoted(key)} is not known to this version; it will be lost when the file is saved.`,
        figure: null,
        limit: null,
        source: en`form of the shop file`,
        missing: false,
      },
    ] satisfies Finding[];
  });
}
