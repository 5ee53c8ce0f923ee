import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { capital, fixed, offRatioText, ratioText, type Say, withTrueMinus } from '../format.ts';
import { perHundredA } from '../mixRatio.ts';
import type { PlannedOption } from '../option.ts';
import type { Mix, Plan } from '../plan.ts';
import { type Fraction, whole } from '../ratio.ts';
import { pumpRatio, pumpsText, sprocketRatio } from '../train.ts';
import { clip } from '../visible.ts';
import { aPerB, partsPlaces, plainText, shortExactRatio } from './paperText.ts';

/** One way to read the ratio: what it is counted in, the figure, and what it is held against. */
export interface RatioRow {
  readonly what: string;
  readonly figure: string;
  readonly against: string;
}

/** What a data sheet is quoted with is cut beyond this. */
const WRITTEN_LENGTH = 48;

/** Stands beside every off-ratio in print. */
export const OFF_RATIO_DEFINITION = en`off-ratio is (B per A made) / (B per A wanted) − 1: +\u00A0is\u00A0B\u2011rich, −\u00A0is\u00A0B\u2011lean`;

/** The ratio after the change: exact, how far off, as the data sheet counts, where it comes from, and what it was before. */
export function ratioRows(plan: Plan, option: PlannedOption, fitted: PlannedOption, say: Say): readonly RatioRow[] {
  const { mix } = plan;
  const asWritten = mix.limitsWritten === null ? [] : [en`${clip(withTrueMinus(mix.limitsWritten), WRITTEN_LENGTH)} as written`];
  return [
    {
      what: en`By volume, exact`,
      figure: exactAndDecimal(option.bPerA, say),
      against: en`wanted ${ratioText(aPerB(mix.wantedBPerA), say)}`,
    },
    { what: en`Off-ratio`, figure: offRatioText(option.offRatio, say), against: [insideText(option.inside), ...asWritten].join(', ') },
    asTheSheetCounts(mix, option, say),
    product(plan, option, say),
    {
      what: en`Before the change`,
      figure: exactAndDecimal(fitted.bPerA, say),
      against: `${offRatioText(fitted.offRatio, say)}, ${insideText(fitted.inside)}`,
    },
  ];
}

function insideText(inside: boolean | null): string {
  if (inside === null) return en`limits not given`;
  return inside ? en`inside limits` : en`outside limits`;
}

function exactAndDecimal(bPerA: Fraction, say: Say): string {
  const R = aPerB(bPerA);
  const exact = shortExactRatio(R);
  if (exact === null) return ratioText(R, say);
  // A whole number to one has no decimals to add.
  return R.d === 1n ? exact : `${exact} = ${ratioText(R, say)}`;
}

function asTheSheetCounts(mix: Mix, option: PlannedOption, say: Say): RatioRow {
  const { basis, partsA: a, partsB: b, written } = mix.sheet;
  // For as many parts of A as the sheet has, which need not be 100.
  const partsOfB = (e: Fraction) => fixed(perHundredA.of({ a, b, e }).mul(a).div(whole(100)), partsPlaces(b), say);
  const limits = mix.limits === null ? [] : [en`limits ${partsOfB(mix.limits.low)} to ${partsOfB(mix.limits.high)}`];
  return {
    what: basis === 'weight' ? en`By weight` : en`As sheet counts`,
    figure: `${plainText(a, say)} : ${partsOfB(option.offRatio)}`,
    against: [en`wanted ${clip(written, WRITTEN_LENGTH)}`, ...limits].join(', '),
  };
}

/** Pumps and wheels as one product, so that a ratio already in the pumps is not applied twice. */
function product(plan: Plan, option: PlannedOption, say: Say): RatioRow {
  const ratio = (bPerA: Fraction) => shortExactRatio(aPerB(bPerA)) ?? ratioText(aPerB(bPerA), say);
  const words = [...new Set(plan.stages.map(({ kind }) => driveKind(kind).words.wheels))];
  const [first, ...others] = words;
  const wheels = first !== undefined && others.length === 0 ? first : en`wheels`;
  const teeth = option.stages.map((stage) => stage.teeth);
  return {
    what: `${capital(pumpsText(option.pumps))} × ${wheels}`,
    figure: `(${ratio(pumpRatio(option.pumps))}) × (${ratio(sprocketRatio(plan, teeth))})`,
    against: en`both are in the figures above; apply neither again`,
  };
}
