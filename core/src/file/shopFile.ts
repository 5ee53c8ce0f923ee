import * as v from 'valibot';
import { VERSION } from './envelope.ts';
import { id, line, list, row, yesNo } from './fields.ts';
import { machine } from './machine.ts';
import { material } from './material.ts';
import { quoteRecord } from './quoteRecord.ts';
import { rack } from './rack.ts';
import { sheetRecord } from './sheetRecord.ts';

const maybe = v.exactOptional;
/** Ratio checks are kept from the day the program can make them; until then a file holds none. */
const none = (what: string) => v.pipe(list(row({ id })), v.maxLength(0, `this version cannot read ${what} yet`));

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
  ratioChecks: none('ratio checks'),
});

export type ShopFile = v.InferOutput<typeof shopFile>;
