import * as v from 'valibot';
import type { Finding, Outcome, Place } from '../finding.ts';
import { FORMAT, LARGEST_FILE_BYTES, VERSION } from './envelope.ts';
import { migrations } from './migrate.ts';
import { Problems } from './problems.ts';
import { references } from './references.ts';
import { type ShopFile, shopFile } from './shopFile.ts';

/** Reads the text of a shop file. Everything wrong with it is reported together, each with its place; nothing is repaired by guessing. */
export function readShopFile(text: string): Outcome<ShopFile> {
  const problems = new Problems();
  const json = parse(text, problems);
  if (json === null) return problems.failure();
  const current = toCurrentVersion(json, problems);
  if (current === null) return problems.failure();

  const result = v.safeParse(shopFile, current);
  if (!result.success) {
    for (const issue of result.issues) problems.add(placeOf(issue), sentence(issue));
    return problems.failure();
  }
  references(result.output, problems);
  return problems.none ? { ok: true, value: result.output, findings: unknownKeys(current, result.output, []) } : problems.failure();
}

function parse(text: string, problems: Problems): Record<string, unknown> | null {
  if (text.length > LARGEST_FILE_BYTES) {
    problems.add([], `the file is larger than ${LARGEST_FILE_BYTES / 1024 / 1024} MB and was not read`);
    return null;
  }
  try {
    // A byte order mark is no part of JSON, but editors leave one.
    const json: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    if (isObject(json)) return json;
    problems.add([], 'this is not a shop file: an object in braces is expected');
  } catch (error) {
    problems.add([], `this is not a shop file, or it is damaged: ${error instanceof Error ? error.message : String(error)}`);
  }
  return null;
}

function toCurrentVersion(json: Record<string, unknown>, problems: Problems): Record<string, unknown> | null {
  if (json.format !== FORMAT) {
    problems.add(['format'], `this is not a shop file: its format should read "${FORMAT}"`);
    return null;
  }
  const version = json.version;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    problems.add(['version'], 'the version must be a whole number, 1 or more');
    return null;
  }
  if (version > VERSION) {
    problems.add(
      ['version'],
      `the file is version ${version}, this program reads up to version ${VERSION}: open it with a newer Ratiowright`,
    );
    return null;
  }
  return migrations.slice(version - 1).reduce((step, migrate) => migrate(step), json);
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);

type Issue = v.BaseIssue<unknown>;

function placeOf(issue: Issue): Place {
  return (issue.path ?? []).map((step) => (typeof step.key === 'number' ? step.key : String(step.key)));
}

function sentence(issue: Issue): string {
  if (issue.received !== 'undefined') return issue.message;
  const key = issue.path?.at(-1)?.key;
  return `${key === undefined ? 'a value' : `"${String(key)}"`} is missing${issue.message.startsWith('Invalid') ? '' : `: ${issue.message}`}`;
}

/** Keys this version does not know open with a warning: saving will lose them. */
function unknownKeys(read: unknown, kept: unknown, place: Place): Finding[] {
  if (Array.isArray(read) && Array.isArray(kept)) return read.flatMap((row, index) => unknownKeys(row, kept[index], [...place, index]));
  if (!isObject(read) || !isObject(kept)) return [];
  return Object.entries(read).flatMap(([key, value]) => {
    if (key in kept) return unknownKeys(value, kept[key], [...place, key]);
    return [
      {
        check: 'file.unknownKey',
        severity: 'warns',
        where: [...place, key],
        what: `"${key}" is not known to this version; it will be lost when the file is saved.`,
        figure: null,
        limit: null,
        source: 'form of the shop file',
        missing: false,
      },
    ] satisfies Finding[];
  });
}
