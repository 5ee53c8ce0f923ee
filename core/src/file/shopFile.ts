import * as v from 'valibot';
import { VERSION } from './envelope.ts';
import { line, list, row, yesNo } from './fields.ts';
import { machine } from './machine.ts';
import { material } from './material.ts';
import { quoteRecord } from './quoteRecord.ts';
import { rack } from './rack.ts';
import { ratioCheckRow } from './ratioCheckRow.ts';
import { sheetRecord } from './sheetRecord.ts';
import { unfinishedCheck } from './unfinishedCheck.ts';

const maybe = v.exactOptional;
/** The whole shop file after its envelope, values as typed with their units. Holes are allowed: `resolve` says what a plan lacks. */
export const shopFile = row({
  format: v.string(),
  version: v.literal(VERSION),
  writtenBy: maybe(line),
  shop: row({ name: line, invented: maybe(yesNo), currency: maybe(line), note: maybe(line) }),
  machines: list(machine),
  materials: list(material),
  racks: list(rack),
  changeSheets: list(sheetRecord),
  quotePages: maybe(list(quoteRecord)),
  ratioChecks: list(ratioCheckRow),
  /** At most one for a machine. */
  unfinishedChecks: maybe(list(unfinishedCheck)),
});

export type ShopFile = v.InferOutput<typeof shopFile>;
