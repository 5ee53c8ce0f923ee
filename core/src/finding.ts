import type { Say } from './format.ts';

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

const ORDER: Readonly<Record<Severity, number>> = { blocks: 0, warns: 1, notes: 2 };

/** Worst first; among equals the order in which they were found. */
export function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort((a, b) => ORDER[a.severity] - ORDER[b.severity]);
}

/** Keys of the file whose name is not yet a word of the trade. */
const FIELD_WORDS: Readonly<Record<string, string>> = {
  machines: 'machine',
  materials: 'material',
  racks: 'rack',
  stages: 'stage',
  shafts: 'shaft',
  pumps: 'pump',
  pieces: 'piece',
  changeSheets: 'change sheet',
  quotePages: 'quote page',
  ratioChecks: 'ratio check',
  unfinishedChecks: 'unfinished ratio check',
  centreNow: 'centre now',
  takeUp: 'take-up',
  offsetLink: 'offset link',
  mayChange: 'may be changed',
  teethFrom: 'least teeth',
  teethTo: 'most teeth',
  turnedBy: 'turned by',
  speedFrom: 'least speed',
  speedTo: 'most speed',
  dialStep: 'dial step',
  ratedTorque: 'rated torque',
  usable: 'usable range',
  runAt: 'run at',
  at: 'at temperature',
  secondDensity: 'second density',
  perHundredA: 'B per 100 A',
  thirdInto: 'third part into',
  otherRatio: 'other ratio',
  resinIn: 'resin in',
  isocyanateIn: 'isocyanate in',
  ingredients: 'ingredient',
  by: 'described by',
  hydrogens: 'active hydrogens',
  catchTurns: 'turns a catch',
  wantedFlow: 'wanted flow',
  mixerVolume: 'mixer volume',
  serviceFactor: 'service factor',
  mechanicalEfficiency: 'mechanical efficiency',
  lowMark: 'low mark',
  wantedShot: 'wanted shot',
  pressureLimit: 'pressure limit',
  measuredDelivery: 'measured delivery',
  newDelivery: 'delivery when new',
  leastDelivery: 'least delivery',
  catches: 'catch',
  leftOut: 'left out',
  faceWidth: 'face width',
  gapWidth: 'gap width',
  gapLength: 'gap length',
  outsideDiameter: 'outside diameter',
  insideDiameter: 'inside diameter',
  centreDistance: 'centre distance',
};

/** A place as people read it: `machine 1, stage 2, driver, teeth`. Rows are counted from 1. */
export function placeText(place: Place): string {
  let text = '';
  for (const step of place) text += typeof step === 'number' ? ` ${step + 1}` : `${text === '' ? '' : ', '}${FIELD_WORDS[step] ?? step}`;
  return text === '' ? 'the file' : text;
}
