import { en } from './en.ts';
import { withErrorText } from './entry.ts';
import { spoken } from './file/fields.ts';
import type { MachineRow, SideRow } from './file/machine.ts';
import { MOST_CHECKLIST_LINES } from './file/machine.ts';
import type { Say } from './format.ts';
import { serviceFactorsText } from './load/missing.ts';
import type { TypedQuantity } from './reading.ts';
import { shotText } from './twoFigures.ts';

// One line for each group of a machine's fields, as typed: it stands in place of the group while that is closed.

const NOTHING = en`nothing given`;

const listed = (parts: readonly (string | null)[]): string => parts.filter((part) => part !== null).join(', ') || NOTHING;

const said = (word: string, typed: TypedQuantity | undefined): string | null => (typed === undefined ? null : `${word} ${spoken(typed)}`);

/** A figure of each side; a unit that both share stands once. */
function ofSides(word: string, a: TypedQuantity | undefined, b: TypedQuantity | undefined): string | null {
  const before = word === '' ? '' : `${word} `;
  if (a !== undefined && b !== undefined) return before + en`${a.unit === b.unit ? a.value : spoken(a)} and ${spoken(b)}`;
  if (a !== undefined) return `${before}A ${spoken(a)}`;
  return b === undefined ? null : `${before}B ${spoken(b)}`;
}

/**
 * What is wanted of a machine, in one line.
 *
 * @source our choice
 * @example wantedSummary({ wantedFlow: { value: '1000', unit: 'cc/min' } })  // '1000 cc/min'
 */
export function wantedSummary({ wantedFlow, wantedShot, batch }: Pick<MachineRow, 'wantedFlow' | 'wantedShot' | 'batch'>): string {
  return listed([
    wantedFlow === undefined ? null : spoken(wantedFlow),
    wantedShot === undefined ? null : shotText(wantedShot),
    batch === undefined ? null : en`batch ${spoken(batch.amount)} of ${batch.of === 'mix' ? en`the mix` : batch.of}`,
  ]);
}

type SideFigures = Omit<SideRow, 'shaft' | 'fitted' | 'pumps'>;

interface Sides {
  readonly A: SideFigures;
  readonly B: SideFigures;
}

/**
 * What loads a machine's drive, in one line.
 *
 * @source our choice
 * @example loadSummary({ A: { pressure: bar('28') }, B: { pressure: bar('14') }, serviceFactor: plain('1.3') })  // '28 and 14 bar, service factor 1.3'
 */
export function loadSummary({ A, B, serviceFactor }: Sides & Pick<MachineRow, 'serviceFactor'>): string {
  return listed([
    ofSides('', A.pressure, B.pressure),
    ofSides(en`efficiency`, A.mechanicalEfficiency, B.mechanicalEfficiency),
    said(en`service factor`, serviceFactor),
  ]);
}

/**
 * The usual service factors, as a hint beside their box.
 *
 * @source the table of service factors
 * @example usualServiceFactors(say)  // 'with an electric motor 1.0 for an even load, 1.3 for moderate shock, 1.5 for heavy shock'
 */
export const usualServiceFactors = (say: Say): string => en`with an electric motor ${serviceFactorsText(say)}`;

/**
 * Tanks and mixer, in one line.
 *
 * @source our choice
 * @example tankSummary({ A: { tank: { fill: litres('40') } }, B: { tank: { fill: litres('20') } } })  // 'fill 40 and 20 L'
 */
export function tankSummary({ A, B, mixerVolume }: Sides & Pick<MachineRow, 'mixerVolume'>): string {
  return listed([
    ofSides(en`fill`, A.tank?.fill, B.tank?.fill),
    ofSides(en`low mark`, A.tank?.lowMark, B.tank?.lowMark),
    said(en`mixer`, mixerVolume),
  ]);
}

/**
 * Minutes of work and turns of a catch, in one line.
 *
 * @source our choice
 * @example workSummary({})  // 'starting values'
 */
export function workSummary({ minutes = {}, catchTurns }: Pick<MachineRow, 'minutes' | 'catchTurns'>): string {
  const own = listed([
    said(en`sprocket`, minutes.sprocket),
    said(en`chain length`, minutes.chainLength),
    said(en`centre`, minutes.centre),
    said(en`pump`, minutes.pump),
    catchTurns === undefined ? null : en`${catchTurns} turns a catch`,
  ]);
  return own === NOTHING ? en`starting values` : own;
}

/**
 * How many lines of its own a shop's sheet has.
 *
 * @source our choice
 * @example checklistSummary(['Seal cups full.', ''])  // '2 of 6 lines, 1 of them empty'
 */
export function checklistSummary(lines: readonly string[]): string {
  if (lines.length === 0) return en`no lines of your own`;
  const empty = lines.filter((line) => line.trim() === '').length;
  return empty === 0
    ? en`${lines.length} of ${MOST_CHECKLIST_LINES} lines`
    : en`${lines.length} of ${MOST_CHECKLIST_LINES} lines, ${empty} of them empty`;
}

/**
 * What is known of a pump beyond its line, in one line.
 *
 * @source our choice
 * @example pumpSummary({ gear: { teeth: 12 } })  // 'gear of 12 teeth'
 */
export function pumpSummary({
  pressureLimit,
  measuredDelivery,
  newDelivery,
  leastDelivery,
  gear,
}: Partial<SideRow['pumps'][number]>): string {
  return listed([
    said(en`limit`, pressureLimit),
    gear === undefined ? null : en`gear of ${gear.teeth} teeth`,
    measuredDelivery === undefined ? null : en`delivers ${`${withErrorText('share', measuredDelivery, '%')}\u00A0%`}`,
    said(en`new`, newDelivery),
    said(en`least`, leastDelivery),
  ]);
}
