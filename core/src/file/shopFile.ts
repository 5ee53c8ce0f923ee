import * as v from 'valibot';
import { VERSION } from './envelope.ts';
import { id, line, list, yesNo } from './fields.ts';
import { machine } from './machine.ts';
import { material } from './material.ts';
import { rack } from './rack.ts';

const maybe = v.exactOptional;
/** Sheets and ratio checks are kept from the day the program can make them; until then a file holds none. */
const none = (what: string) => v.pipe(list(v.object({ id })), v.maxLength(0, `this version cannot read ${what} yet`));

/** The whole shop file after its envelope, values as typed with their units. Holes are allowed: `resolve` says what a plan lacks. */
export const shopFile = v.object({
  format: v.string(),
  version: v.literal(VERSION),
  writtenBy: maybe(line),
  shop: v.object({ name: line, invented: maybe(yesNo), note: maybe(line) }),
  machines: list(machine),
  materials: list(material),
  racks: list(rack),
  changeSheets: none('change sheets'),
  ratioChecks: none('ratio checks'),
});

export type ShopFile = v.InferOutput<typeof shopFile>;
