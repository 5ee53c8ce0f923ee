import { en, keyAsWord } from './en.ts';
import type { Say } from './format.ts';
import { clip } from './visible.ts';

/** blocks: cannot be built or run as written; warns: someone must decide; notes: good to know, or a check that was not made. */
export type Severity = 'blocks' | 'warns' | 'notes';

/** A path into the shop file, as `['machines', 0, 'stages', 1, 'driver', 'teeth']`. */
export type Place = readonly (string | number)[];

/** Units in which findings carry their figures; lengths and angles as people read them, never converted back. */
export type FigureUnit =
  | 'mm'
  | 'deg'
  | 'teeth'
  | 'pitches'
  | 'pieces'
  | 'rpm'
  | '%'
  | 'common factor'
  | 'bar'
  | 'cc/min'
  | 'pulses'
  | 'L'
  | 'N'
  | 'm/s'
  | 'N m'
  | 'W';

/** A number of a finding with its unit, as given to scripts; the sentence rounds it for reading. */
export interface Figure {
  readonly value: number;
  readonly unit: FigureUnit;
}

/** What a check has to say of its subject. `what` words the sentence for a shop's way of reading numbers. */
export interface Judgement {
  readonly severity: Severity;
  readonly where: Place;
  readonly what: (say: Say) => string;
  readonly figure: Figure | null;
  readonly limit: Figure | null;
  /** True where an input was not given, so that the check was not made. */
  readonly missing?: true;
}

/** One sentence of the program about the plan or an option, with what stands behind it. */
export interface Finding {
  readonly check: string;
  readonly severity: Severity;
  readonly where: Place;
  readonly what: string;
  readonly figure: Figure | null;
  readonly limit: Figure | null;
  readonly source: string;
  readonly missing: boolean;
}

/** Success may carry warnings; failure always says something. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T; readonly findings: readonly Finding[] }
  | { readonly ok: false; readonly findings: readonly [Finding, ...Finding[]] };

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = { blocks: en`blocks`, warns: en`warns`, notes: en`notes` };

const ORDER: Readonly<Record<Severity, number>> = { blocks: 0, warns: 1, notes: 2 };

/** Worst first; among equals the order in which they were found. */
export function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort((a, b) => ORDER[a.severity] - ORDER[b.severity]);
}

/** Of a key that is not known here. */
const MOST_LETTERS = 80;

/** Keys of the file that do not say in so many words what people call it; all others do, as `dialStep`. */
const FIELD_WORDS: Readonly<Record<string, string>> = {
  machines: en`machine`,
  materials: en`material`,
  racks: en`rack`,
  stages: en`stage`,
  shafts: en`shaft`,
  pumps: en`pump`,
  pieces: en`piece`,
  changeSheets: en`change sheet`,
  quotePages: en`quote page`,
  ratioChecks: en`ratio check`,
  unfinishedChecks: en`unfinished ratio check`,
  prices: en`price`,
  takeUp: en`take-up`,
  mayChange: en`may be changed`,
  teethFrom: en`least teeth`,
  teethTo: en`most teeth`,
  speedFrom: en`least speed`,
  speedTo: en`most speed`,
  usable: en`usable range`,
  at: en`at temperature`,
  perHundredA: en`B per 100 A`,
  thirdInto: en`third part into`,
  ingredients: en`ingredient`,
  by: en`described by`,
  hydrogens: en`active hydrogens`,
  catchTurns: en`turns a catch`,
  newDelivery: en`delivery when new`,
  catches: en`catch`,
  invented: en`invented example`,
  openShared: en`shared stages open`,
};

/** A part that is one letter names a side. */
const spokenPart = (part: string): string => ` ${part.length > 1 ? part.toLowerCase() : part}`;

/** Asked of its own keys only: a file may hold a key that every object has. */
function wordOf(step: string): string {
  if (Object.hasOwn(FIELD_WORDS, step)) return FIELD_WORDS[step] ?? '';
  const key = clip(step, MOST_LETTERS);
  return keyAsWord(/^[a-z]+(?:[A-Z][a-z]*)+$/.test(key) ? key.replace(/[A-Z][a-z]*/g, spokenPart) : key);
}

/** A place as people read it: `machine 1, stage 2, driver, teeth`. Rows are counted from 1. */
export function placeText(place: Place): string {
  let text = '';
  for (const step of place) text += typeof step === 'number' ? ` ${step + 1}` : `${text === '' ? '' : ', '}${wordOf(step)}`;
  return text === '' ? en`the file` : text;
}
