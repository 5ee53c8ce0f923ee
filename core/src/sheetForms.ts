import { type Chemistry, indexMade } from './chemistry/chemistry.ts';
import { indexText } from './chemistry/indexText.ts';
import { systemOf } from './chemistry/systems.ts';
import { en } from './en.ts';
import { fixed, offRatioText, ratioText, type Say, signed, temperatureText } from './format.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import { liesInside, type OffRatioLimits, offRatio } from './mixRatio.ts';
import { BY_BASIS, type SideName } from './plan.ts';
import { type Fraction, ONE, ratioOf, whole, ZERO } from './ratio.ts';
import { input } from './working.ts';

/** The ratio of one material, as far as its sheet and its densities carry it. */
export interface KnownRatio {
  readonly basis: 'weight' | 'volume';
  /** As the sheet says it: `100 : 45 by weight`. */
  readonly written: string;
  /** Whether a third part stands in one of the tanks; then the parts are those of the tanks. */
  readonly premixed: boolean;
  readonly partsA: Fraction;
  readonly partsB: Fraction;
  readonly limits: OffRatioLimits | null;
  /** By volume at the temperatures the machine runs at. */
  readonly runBPerA: Given<Fraction>;
  readonly densityBOverA: Given<Fraction>;
  readonly runAt_K: Readonly<Record<SideName, Given<Fraction>>>;
  /** Null where the sheet prints the ratio itself. */
  readonly chemistry: Chemistry | null;
}

type RatioKind = 'A to one B' | 'parts' | 'share' | 'off-ratio';
type FormKind = RatioKind | 'index';

/** One way to say the ratio, with the limits said the same way; null where a density or the limits are missing. */
export interface FormRow {
  readonly label: string;
  readonly kind: FormKind;
  readonly mostB: Fraction | null;
  readonly wanted: Fraction | null;
  readonly leastB: Fraction | null;
}

const HUNDRED = whole(100);

/** How each kind of form is counted out of B per A. */
const COUNTED: Readonly<Record<RatioKind, (bPerA: Fraction, wanted: Fraction) => Fraction>> = {
  'A to one B': (bPerA) => ONE.div(bPerA),
  parts: (bPerA) => bPerA.mul(HUNDRED),
  share: (bPerA) => bPerA.div(ONE.add(bPerA)).mul(HUNDRED),
  'off-ratio': (bPerA, wanted) => offRatio(bPerA, wanted).mul(HUNDRED),
};

/**
 * A mix ratio in every form people say it in, each with both limits; exact.
 *
 * @returns rows in the order in which they are read; the form the sheet itself uses is always among them
 * @source definitions; weight ratio = volume ratio × density ratio
 * @example formRows(ratio of 100 : 33 by weight, 30 to 40 parts of B)  // 'B per 100 A by weight': 40, 33, 30
 */
export function formRows(ratio: KnownRatio): readonly FormRow[] {
  const sheet = known(sheetBPerA(ratio));
  const weight = byWeight(ratio);
  const volume = ratio.runBPerA;
  const asSheet = ratio.basis === 'volume' && !(volume.known && volume.value.equals(sheetBPerA(ratio)));
  const row = (label: string, kind: RatioKind, bPerA: Given<Fraction>) => formRow(label, kind, bPerA, ratio.limits);
  return [
    row(en`By weight, A : B`, 'A to one B', weight),
    ...(asSheet ? [row(en`By volume as the sheet counts it, A : B`, 'A to one B', sheet)] : []),
    row(en`By volume as run, A : B`, 'A to one B', volume),
    row(en`B per 100 A by weight`, 'parts', weight),
    row(en`B per 100 A by volume as run`, 'parts', volume),
    row(en`B’s share of the weight, %`, 'share', weight),
    row(en`B’s share of the volume as run, %`, 'share', volume),
    ...(ratio.chemistry === null ? [] : [indexRow(ratio.chemistry, ratio.limits)]),
    row(en`Off-ratio of B per A, %, + is B-rich`, 'off-ratio', sheet),
  ];
}

function indexRow(chemistry: Chemistry, limits: OffRatioLimits | null): FormRow {
  const at = (e: Fraction | undefined) => (e === undefined ? null : madeAt(chemistry, e));
  const { label } = systemOf(chemistry.system).index;
  return { label, kind: 'index', mostB: at(limits?.high), wanted: at(ZERO), leastB: at(limits?.low) };
}

const madeAt = (chemistry: Chemistry, e: Fraction): Fraction => indexMade(chemistry, input(en`off-ratio`, e, 'share')).value;

function formRow(label: string, kind: RatioKind, bPerA: Given<Fraction>, limits: OffRatioLimits | null): FormRow {
  const at = (e: Fraction | undefined) =>
    e === undefined || !bPerA.known ? null : COUNTED[kind](bPerA.value.mul(ONE.add(e)), bPerA.value);
  return { label, kind, mostB: at(limits?.high), wanted: at(ZERO), leastB: at(limits?.low) };
}

const sheetBPerA = ({ partsA, partsB }: KnownRatio): Fraction => partsB.div(partsA);

function byWeight(ratio: KnownRatio): Given<Fraction> {
  if (ratio.basis === 'weight') return known(sheetBPerA(ratio));
  const { runBPerA, densityBOverA } = ratio;
  return runBPerA.known && densityBOverA.known ? known(runBPerA.value.mul(densityBOverA.value)) : NOT_GIVEN;
}

/**
 * A figure of a form as it is read; a dash where there is none.
 *
 * @param value  one of the three of its row
 * @source our choice: ratios with 4 places, all else with 2
 * @example formText(row of kind 'A to one B', new Fraction('20/9'), say)  // '2.2222 : 1'
 */
export function formText({ kind }: FormRow, value: Fraction | null, say: Say): string {
  if (value === null) return '–';
  if (kind === 'A to one B') return ratioText(value, say);
  return kind === 'off-ratio' ? signed(value, 2, say) : fixed(value, 2, say);
}

/** A beaker's worth of A, to picture the ratio by. */
const BEAKER = 20;

/**
 * What the sheet's ratio means at the pumps, in one sentence.
 *
 * @source arithmetic
 * @example ratioSentence(ratio, say)  // '100 : 45 by weight is 2.0224 : 1 by volume when A runs at 40 °C and B at 25 °C: for every 20 cc of A, 9.89 cc of B.'
 */
export function ratioSentence(ratio: KnownRatio, say: Say): string {
  const volume = ratio.runBPerA;
  if (!volume.known) return en`${ratio.written}. What that is by volume as run is not known yet.`;
  const stays = ratio.basis === 'volume' && volume.value.equals(sheetBPerA(ratio));
  const unit = say.system === 'metric' ? 'cc' : 'in³';
  const b = fixed(volume.value.mul(whole(BEAKER)), 2, say);
  const subject = `${ratio.written}${ratio.premixed || ratio.chemistry !== null ? ',' : ''}`;
  const parts = en`for every ${BEAKER} ${unit} of A, ${b} ${unit} of B`;
  const made = ratioText(ONE.div(volume.value), say);
  const when = running(ratio, say);
  if (when === null) return stays ? en`${subject} stays ${made} by volume: ${parts}.` : en`${subject} is ${made} by volume: ${parts}.`;
  return stays
    ? en`${subject} stays ${made} by volume when ${when}: ${parts}.`
    : en`${subject} is ${made} by volume when ${when}: ${parts}.`;
}

/** How far an index is carried to show what it does: 1 % either way. */
const A_PER_CENT = ratioOf(1, 100);

/**
 * What the chemistry of a material counts, in sentences: equivalent weights, what they make, and what an off-ratio does to the index.
 *
 * @source our choice of words
 * @example chemistrySentences(U40 of the demo, say)  // 'Equivalent weights: A 340.034, B 135.539 g/eq.', …
 */
export function chemistrySentences(chemistry: Chemistry, say: Say): readonly string[] {
  const { system, equivalentWeight, perHundredA, index } = chemistry;
  const weights = (['A', 'B'] as const).map((side) => `${side}\u00A0${fixed(equivalentWeight[side].value, 3, say)}`).join(', ');
  const at = (e: Fraction) => fixed(madeAt(chemistry, e), 2, say);
  const percent = fixed(A_PER_CENT.mul(HUNDRED), 0, say);
  return [
    en`Equivalent weights: ${weights}\u00A0g/eq.`,
    en`At ${indexText(system, index.value, say)} these take ${fixed(perHundredA.value, 3, say)} parts of B for 100 of A, by weight.`,
    en`${percent}\u00A0% B-rich makes it ${at(A_PER_CENT)}, ${percent}\u00A0% B-lean ${at(A_PER_CENT.neg())}.`,
  ];
}

/** At what temperatures the two sides run, where that is given. */
function running({ runAt_K }: KnownRatio, say: Say): string | null {
  const sides = (['A', 'B'] as const).flatMap((side) => {
    const at_K = runAt_K[side];
    return at_K.known ? [{ side, at: temperatureText(at_K.value, say) }] : [];
  });
  const [first, second] = sides;
  if (first === undefined) return null;
  const { side, at } = first;
  return second === undefined ? en`${side} runs at ${at}` : en`${side} runs at ${at} and ${second.side} at ${second.at}`;
}

/**
 * Off-ratio of a machine set up for the sheet's numbers on the other basis.
 *
 * @returns null where the densities do not tell
 * @source arithmetic
 * @example wrongBasisOffRatio(ratio of 100 : 38.9 by weight, 2.17229 : 1 by volume)  // −0.155
 */
export function wrongBasisOffRatio(ratio: KnownRatio): Fraction | null {
  const other = ratio.basis === 'weight' ? ratio.runBPerA : byWeight(ratio);
  return other.known ? offRatio(sheetBPerA(ratio), other.value) : null;
}

/**
 * What a mistaken basis would cost, as a sentence; null where the densities do not tell.
 *
 * @source arithmetic
 * @example wrongBasisText(ratio, say)  // 'Taken by volume by mistake, these numbers would run 8.99 % B-lean, outside the limits. The sheet must say “by weight”.'
 */
export function wrongBasisText(ratio: KnownRatio, say: Say): string | null {
  const e = wrongBasisOffRatio(ratio);
  if (e === null) return null;
  const other = BY_BASIS[ratio.basis === 'weight' ? 'volume' : 'weight'];
  if (e.equals(ZERO)) return en`Taken ${other} by mistake, these numbers would do no harm: A and B are equally dense as run.`;
  const { limits } = ratio;
  const off = offRatioText(e, say);
  const cost =
    limits === null
      ? en`Taken ${other} by mistake, these numbers would run ${off}.`
      : liesInside(e, limits)
        ? en`Taken ${other} by mistake, these numbers would run ${off}, inside the limits.`
        : en`Taken ${other} by mistake, these numbers would run ${off}, outside the limits.`;
  return `${cost} ${ratio.chemistry === null ? en`The sheet must say “${BY_BASIS[ratio.basis]}”.` : en`Equivalents are weighed.`}`;
}

/**
 * Both limits in off-ratio, whatever the sheet's own way of saying them.
 *
 * @source definition of off-ratio
 * @example limitsText({ low: -1/11, high: 7/33 }, say)  // 'As off-ratio of B per A: −9.09 to +21.21 %, + is B-rich.'
 */
export function limitsText(limits: OffRatioLimits, say: Say): string {
  const percent = (e: Fraction) => signed(e.mul(HUNDRED), 2, say);
  return en`As off-ratio of B per A: ${percent(limits.low)} to ${percent(limits.high)} %, + is B-rich.`;
}
