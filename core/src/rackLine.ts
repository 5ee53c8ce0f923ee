import type { DriveKind } from './drives/driveKind.ts';
import { en, plural } from './en.ts';
import type { PieceRow } from './file/rack.ts';
import type { Reading } from './reading.ts';
import { quoted } from './visible.ts';

/** What a rack line says of one tooth count. */
export interface RackCount {
  readonly size: string;
  readonly teeth: number;
  readonly quantity: number;
}

export const RACK_LINE_EXAMPLE = '40: 12-25, 28, 30x2, 36';

const TEETH = { least: 5, most: 400 };
const PIECES = { least: 1, most: 999 };
const MOST_ROWS = 500;
/** More than 500 rows of the longest kind need. */
const LONGEST = 8000;
const ENTRY = /^(\d{1,6})(?:\s*(?:-|–|\.\.|to)\s*(\d{1,6}))?(?:\s*[x×*]\s*(\d{1,6}))?$/i;

const refused = (said: string, kind: DriveKind) =>
  ({ ok: false, expected: en`${said} Expected the ${kind.words.size}, then teeth, ranges and counts, as ${RACK_LINE_EXAMPLE}.` }) as const;
const within = (value: number, { least, most }: { readonly least: number; readonly most: number }) => value >= least && value <= most;

/**
 * What hangs on a rack, said in one line: `40: 12-25, 28, 30x2, 36`, several sizes apart by semicolons.
 *
 * @param text  as typed; teeth 5 to 400, pieces 1 to 999, at most 500 tooth counts; blank is an empty list
 * @param kind  whose sizes and words hold
 * @returns one entry for each tooth count in the order of the line, one named twice added up; or what was not understood
 * @source our choice
 * @example readRackLine('40: 12-14, 30x2', chain)  // 12, 13 and 14 once, 30 twice
 */
export function readRackLine(text: string, kind: DriveKind): Reading<readonly RackCount[]> {
  if (text.length > LONGEST) return refused(en`The line has ${text.length} characters, more than ${LONGEST}.`, kind);
  const found = new Map<string, RackCount>();
  for (const group of text.split(/[;\n]/)) {
    if (group.trim() === '') continue;
    const trouble = readGroup(group, kind, found);
    if (trouble !== null) return refused(trouble, kind);
  }
  return { ok: true, value: [...found.values()] };
}

function readGroup(group: string, kind: DriveKind, found: Map<string, RackCount>): string | null {
  const [before = '', after, ...more] = group.split(':');
  if (after === undefined) return en`${quoted(group.trim())} has no ${kind.words.size} and colon in front.`;
  if (more.length > 0) return en`${quoted(group.trim())} has more than one colon: a semicolon stands between two sizes.`;
  const own = kind.size(before);
  if (own === null) return en`${quoted(before.trim())} is not a ${kind.words.size} known here (${kind.sizes.join(', ')}).`;
  // The name that stood there first goes for both of one chain.
  const size = [...found.values()].find((one) => kind.sameSize(one.size, own))?.size ?? own;
  const entries = after.split(',').map((entry) => entry.trim());
  // A comma at the end is the next entry not typed yet.
  if (entries.at(-1) === '') entries.pop();
  for (const entry of entries) {
    const trouble = readEntry(entry, size, kind, found);
    if (trouble !== null) return trouble;
  }
  return null;
}

function readEntry(entry: string, size: string, kind: DriveKind, found: Map<string, RackCount>): string | null {
  if (entry === '') return en`Nothing stands between two commas.`;
  const [, first, last = first, times = '1'] = ENTRY.exec(entry) ?? [];
  if (first === undefined || last === undefined) return en`${quoted(entry)} is not understood.`;
  const [from, to, quantity] = [Number(first), Number(last), Number(times)];
  if (!within(from, TEETH) || !within(to, TEETH)) return en`"${entry}": a ${kind.words.wheel} has ${TEETH.least} to ${TEETH.most} teeth.`;
  if (from > to) return en`"${entry}" runs from ${from} down to ${to}: the smaller comes first.`;
  if (!within(quantity, PIECES)) return en`"${entry}": ${quantity} is not a count from ${PIECES.least} to ${PIECES.most}.`;
  for (let teeth = from; teeth <= to; teeth += 1) {
    const before = found.get(`${size} ${teeth}`)?.quantity ?? 0;
    const total = quantity + before;
    if (!within(total, PIECES)) return en`${teeth} teeth add up to ${total}, more than ${PIECES.most}.`;
    found.set(`${size} ${teeth}`, { size, teeth, quantity: total });
  }
  return found.size > MOST_ROWS ? en`The line holds more than ${MOST_ROWS} tooth counts.` : null;
}

/**
 * The line for the rack as it is, which `readRackLine` reads back to the same counts.
 *
 * @param pieces  rows of the rack; what has no piece left is not written
 * @param kind    only its rows are written
 * @returns sizes in the order of the rack, teeth ascending; three or more in a row with one count are a range
 * @source our choice
 * @example writeRackLine(rows, chain)  // '40: 12-25, 28, 30x2, 36'
 */
export function writeRackLine(pieces: readonly PieceRow[], kind: DriveKind): string {
  const sizes: string[] = [];
  for (const piece of pieces) if (onLine(piece, kind) && !sizes.some((size) => kind.sameSize(size, piece.size))) sizes.push(piece.size);
  return sizes.map((size) => `${kind.size(size) ?? size}: ${entriesOf(quantities(pieces, kind, size))}`).join('; ');
}

const onLine = (piece: PieceRow, kind: DriveKind): boolean => piece.kind === kind.kind && piece.quantity > 0;

function quantities(pieces: readonly PieceRow[], kind: DriveKind, size: string): readonly (readonly [number, number])[] {
  const totals = new Map<number, number>();
  for (const piece of pieces)
    if (onLine(piece, kind) && kind.sameSize(piece.size, size)) totals.set(piece.teeth, piece.quantity + (totals.get(piece.teeth) ?? 0));
  return [...totals].sort(([a], [b]) => a - b);
}

function entriesOf(counts: readonly (readonly [number, number])[]): string {
  const entries: string[] = [];
  const times = (quantity: number) => (quantity === 1 ? '' : `x${quantity}`);
  for (let at = 0; at < counts.length; ) {
    const [from, quantity] = counts[at] ?? [0, 0];
    let length = 1;
    while (counts[at + length]?.[0] === from + length && counts[at + length]?.[1] === quantity) length += 1;
    if (length >= 3) entries.push(`${from}-${from + length - 1}${times(quantity)}`);
    else for (let n = 0; n < length; n += 1) entries.push(`${from + n}${times(quantity)}`);
    at += length;
  }
  return entries.join(', ');
}

/**
 * How a line was understood, to stand beside its box.
 *
 * @param counts  as read
 * @param kind    whose word for a wheel is used
 * @source our choice
 * @example rackLineReading(counts, chain)  // '17 tooth counts, 18 sprockets'
 */
export function rackLineReading(counts: readonly RackCount[], kind: DriveKind): string {
  const count = counts.length;
  const pieces = counts.reduce((sum, { quantity }) => sum + quantity, 0);
  const wheels = pieces === 1 ? kind.words.wheel : kind.words.wheels;
  return plural(count)`${count} tooth count, ${pieces} ${wheels}|${count} tooth counts, ${pieces} ${wheels}`;
}
