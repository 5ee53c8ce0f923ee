import { readFileSync } from 'node:fs';
import { readShopFile } from '../../core/src/file/read.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import type { Finding, Place } from '../../core/src/finding.ts';
import type { Say } from '../../core/src/format.ts';

/** Shop files for tests as plain JSON, to be made wrong in one place or another, and how to look at a place in them. */

export const say: Say = { decimal: '.', system: 'metric' };

export const demoText = (): string => readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8');

/** One change of plain JSON: what is put at a place, or that it is taken away. */
export type Change = readonly [where: Place, value: unknown];
export const GONE = Symbol('taken away');

/** Plain JSON with changes made to a copy of it. */
export function changed(json: unknown, ...changes: readonly Change[]): unknown {
  const copy: unknown = structuredClone(json);
  for (const [where, value] of changes) {
    const parent = valueAt(copy, where.slice(0, -1));
    const key = where.at(-1);
    if (typeof parent !== 'object' || parent === null || key === undefined) throw new Error(`there is no ${where.join(' ')}`);
    if (value === GONE) Reflect.deleteProperty(parent, key);
    else Reflect.set(parent, key, value);
  }
  return copy;
}

export const demoWith = (...changes: readonly Change[]): string => JSON.stringify(changed(JSON.parse(demoText()), ...changes));

/** What is at a place; undefined where nothing is. */
export function valueAt(json: unknown, where: Place): unknown {
  let at: unknown = json;
  for (const step of where) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, step)) return undefined;
    at = Reflect.get(at, step);
  }
  return at;
}

/**
 * Whether a place is one of the file: something is there, or it is a field of the schema that is still to be filled in, which
 * shows by its being refused when nothing at all is written into it.
 */
export function isPlace(json: unknown, where: Place): boolean {
  if (valueAt(json, where) !== undefined) return true;
  const parent = valueAt(json, where.slice(0, -1));
  if (typeof parent !== 'object' || parent === null || Array.isArray(parent)) return false;
  const read = readShopFile(JSON.stringify(changed(json, [where, null])));
  return !read.ok && read.findings.some((finding) => finding.where.join('\n').startsWith(where.join('\n')));
}

export function opened(text: string): ShopFile {
  const read = readShopFile(text);
  if (!read.ok) throw new Error(lines(read.findings).join('\n'));
  return read.value;
}

/** Findings in short: the place and the sentence. */
export const lines = (findings: readonly Finding[]): readonly string[] => findings.map(({ where, what }) => `${where.join(' ')}: ${what}`);

/** The least that a shop file holds: two pumps on the motor shaft, and one material. */
export function smallest(material: Readonly<Record<string, unknown>>, machine: Readonly<Record<string, unknown>> = {}): unknown {
  const pump = { id: 'p', displacement: { value: '1', unit: 'cc/rev' } };
  const side = { shaft: 'motor', fitted: 'p', pumps: [pump] };
  return {
    format: 'ratiowright shop file',
    version: 1,
    shop: { name: 'Invented test shop', invented: true },
    machines: [
      {
        id: 'bench',
        name: 'Test bench',
        motor: { speed: { value: '60', unit: 'rpm' } },
        shafts: [{ id: 'motor' }],
        stages: [],
        A: side,
        B: side,
        ...machine,
      },
    ],
    materials: [{ id: 'mix', name: 'Test mix', A: {}, B: {}, ...material }],
    racks: [],
    changeSheets: [],
    ratioChecks: [],
  };
}
