import * as v from 'valibot';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import type { Place } from '../finding.ts';
import { quoted } from '../visible.ts';
import { id, isObject, kind, line, list, row } from './fields.ts';
import { checkPrices } from './prices.ts';
import type { Problems } from './problems.ts';
import { checkShafts, shaftRows } from './shaftTree.ts';

const NAMED = row({ id });
const ON_RACK = row({ rack: id });
const SIZED = row({ kind, size: line });
const PUMPS = row({ fitted: id, pumps: list(NAMED) });

/**
 * What the schema cannot see: ids that are used twice or point nowhere, and sizes a kind does not know.
 *
 * It looks at plain JSON, so that it also speaks of a file with other faults; a rule is left out only where the very fields it
 * looks at are faulty, which the schema has then said.
 */
export function references(json: unknown, problems: Problems): void {
  for (const name of ['machines', 'materials', 'racks', 'changeSheets', 'quotePages', 'ratioChecks'])
    uniqueIds(field(json, name), [name], problems);
  const racks = rows(field(json, 'racks'));
  const rackIds = idsOf(racks);
  rows(field(json, 'machines')).forEach((machine, index) => {
    machineReferences(machine, rackIds, ['machines', index], problems);
  });
  racks.forEach((rack, index) => {
    rackReferences(rack, ['racks', index], problems);
  });
}

/** The ids that rows have. */
export const idsOf = (rows: readonly unknown[]): ReadonlySet<unknown> => new Set(rows.map((one) => field(one, 'id')));

/** The same for one machine among the racks of its file, of which the ids are asked; true where nothing is wrong. */
export function machineReferences(machine: unknown, racks: ReadonlySet<unknown>, place: Place, problems: Problems): boolean {
  const before = problems.count;
  const onlyOnce = ['shafts', 'stages'].map((name) => uniqueIds(field(machine, name), [...place, name], problems));
  where(ON_RACK, machine, (named) => {
    if (!racks.has(named.rack)) problems.add([...place, 'rack'], en`there is no rack with the id "${named.rack}"`);
  });
  rows(field(machine, 'stages')).forEach((stage, index) => {
    knownSize(stage, [...place, 'stages', index], problems);
  });
  for (const side of ['A', 'B']) {
    uniqueIds(field(field(machine, side), 'pumps'), [...place, side, 'pumps'], problems);
    where(PUMPS, field(machine, side), ({ fitted, pumps }) => {
      if (pumps.length === 0 || pumps.some((pump) => pump.id === fitted)) return;
      problems.add([...place, side, 'fitted'], en`the fitted pump "${fitted}" is not among the pumps of side ${side}`);
    });
  }
  // Where one id stands for two shafts, nobody can say how they hang together.
  if (!onlyOnce.includes(false)) where(shaftRows, machine, (shafts) => checkShafts(shafts, place, problems));
  return problems.count === before;
}

/** The same for one rack. */
export function rackReferences(rack: unknown, place: Place, problems: Problems): void {
  for (const name of ['pieces', 'prices']) {
    uniqueIds(field(rack, name), [...place, name], problems);
    rows(field(rack, name)).forEach((one, index) => {
      knownSize(one, [...place, name, index], problems);
    });
  }
  checkPrices(rows(field(rack, 'prices')), [...place, 'prices'], problems);
}

const field = (json: unknown, key: string): unknown => (isObject(json) ? json[key] : undefined);
const rows = (json: unknown): readonly unknown[] => (Array.isArray(json) ? json : []);

/** Applies a rule wherever the part it looks at is sound. */
function where<T>(part: v.GenericSchema<unknown, T>, json: unknown, rule: (part: T) => void): void {
  const read = v.safeParse(part, json);
  if (read.success) rule(read.output);
}

function uniqueIds(json: unknown, place: Place, problems: Problems): boolean {
  const seen = new Set<string>();
  let unique = true;
  rows(json).forEach((one, index) => {
    where(NAMED, one, (named) => {
      if (seen.has(named.id)) {
        problems.add([...place, index, 'id'], en`the id "${named.id}" is used twice`);
        unique = false;
      }
      seen.add(named.id);
    });
  });
  return unique;
}

function knownSize(json: unknown, place: Place, problems: Problems): void {
  where(SIZED, json, (named) => {
    const found = driveKind(named.kind);
    if (found.size(named.size) !== null) return;
    problems.add(
      [...place, 'size'],
      en`${quoted(named.size)} is not a ${found.words.size} known here; known are ${found.sizes.join(', ')}`,
    );
  });
}
