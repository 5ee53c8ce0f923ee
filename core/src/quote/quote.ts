import { en } from '../en.ts';
import type { Say } from '../format.ts';
import { knownOnRule } from '../knownOnRule.ts';
import { flagWords, limitsOnRule, type MaterialReach } from '../materialReach.ts';
import type { Plan } from '../plan.ts';
import { float } from '../ratio.ts';
import type { Reach } from '../reach/figures.ts';
import { reachRule, type ShownReach } from '../reachRule.ts';
import { reachSentences, toleranceText, windowText } from '../reachWords.ts';
import type { SheetBody } from '../sheet/changeSheetPage.ts';
import { SHEET_WIDTH_mm } from '../sheet/pageStyle.ts';
import { type QuotePage, quotePageBody } from '../sheet/quotePage.ts';
import { OFF_RATIO_DEFINITION } from '../sheet/ratioRows.ts';
import { clip } from '../visible.ts';
import { assumptions } from './assumptions.ts';
import { materialTable, WORST_CASE } from './materialTable.ts';
import { reachRows } from './reachRows.ts';
import { RULE_TYPE_mm, type RuleDrawing, ruleDrawing, ruleSvg } from './rule.ts';

/** What the core cannot know of a quote: its dates as text, whom it is for, the name of the file, and how the shop reads numbers. */
export interface AboutQuote {
  readonly number: string;
  readonly date: string;
  /** Null: as long as nothing it rests on changes. */
  readonly validUntil: string | null;
  /** Empty where none is named; the note too. */
  readonly customer: string;
  readonly note: string;
  readonly file: string;
  readonly say: Say;
  /** Materials that lack something, by name: they are not in the table. */
  readonly incomplete: readonly string[];
  /** Sentences of `quoteAdd`; none where nothing is known of it. */
  readonly add: readonly string[];
}

/** A material with its plan. */
export interface QuotedMaterial {
  readonly plan: Plan;
  readonly row: MaterialReach;
}

/** The page as data, and the rule that stands on it. */
export interface Quote {
  readonly page: QuotePage;
  readonly rule: RuleDrawing;
}

export const CUSTOMER_LENGTH = 60;
export const NOTE_LENGTH = 200;
const NAME_LENGTH = 60;
const SHORT_LENGTH = 28;

/** @source our choice of words; a ratio on paper is only ever calculated */
const CAUTIONS: readonly string[] = [
  en`Every figure is calculated from the pumps, the teeth and the data named below; no ratio has been measured.`,
  en`Each ratio is to be proved by a ratio check before anything is made with it: weighing what each side delivers, unmixed.`,
  en`Whether a ratio is good enough is decided by whoever answers for the process. The material’s data sheet, the machine’s manual, both safety data sheets and local rules come first; isocyanates and amines harm through skin and breath.`,
  en`Sprockets are changed with the drive locked out and the pressure released; all guards are back before anything turns.`,
];

const STROKES = en`Each stroke is a ratio that can be built, the grey shape how many.`;
const NO_STROKES = en`The grey shape is how many ratios can be built; they are too many to draw each.`;
const POLES = en`A pole is a ratio wanted, its limits dashed, its best option the thick bar.`;

/**
 * What a machine can mix, on one page for a customer: its reach by volume and weight, the worst target, the flow, the shop's materials,
 * and what all that rests on.
 *
 * @param plan       the machine with the material that ratios by weight are counted for
 * @param materials  in the order of the file
 * @source our choice of words
 */
export function quoteOf(plan: Plan, reach: Reach, materials: readonly QuotedMaterial[], about: AboutQuote): Quote {
  const { say, customer, validUntil } = about;
  const number = clip(about.number, SHORT_LENGTH);
  const rows = materials.map(({ row }) => row);
  const tolerance = toleranceText(reach.wish.tolerance, say);
  const page: QuotePage = {
    title: en`What ${clip(plan.machine.name, NAME_LENGTH)} can mix`,
    number: en`Quote page ${number}`,
    date: clip(about.date, SHORT_LENGTH),
    valid:
      validUntil === null ? en`Valid until anything it rests on changes` : en`Valid until ${validUntil}, unless what it rests on changes`,
    machine: clip(plan.machine.name, NAME_LENGTH),
    customer: clip(customer, CUSTOMER_LENGTH),
    note: clip(about.note, NOTE_LENGTH),
    shop: clip(plan.shop, NAME_LENGTH),
    window: en`${windowText(reach.wish, say)} by volume; log scale, more B to the left; ${gapsDrawn(reach, tolerance)}`,
    legend: `${reach.ratios === null ? NO_STROKES : STROKES} ${POLES}`,
    invented: plan.invented ? en`invented example` : '',
    cautions: CAUTIONS,
    reach: reachRows(plan, reach, say),
    materials: materialTable(rows),
    definitions: [OFF_RATIO_DEFINITION, ...(rows.length === 0 ? [] : [WORST_CASE])],
    add: about.add,
    assumptions: assumptions(plan, rows, about.incomplete, say),
    signatures: [
      en`Prepared by, date`,
      customer === '' ? en`For (customer); read, date` : en`Read by the customer, date`,
      en`Proved by a ratio check, by, date`,
    ],
    footer: en`${clip(about.file, NAME_LENGTH)}, quote page ${number}, page 1 of 1`,
  };
  return { page, rule: ruleOf(reach, materials, say) };
}

/** The page as it is printed; one that was kept prints as it did then. */
export function quoteBody({ page, rule }: Quote): SheetBody {
  const { svg, height_mm } = ruleSvg(rule);
  return quotePageBody(page, svg, height_mm);
}

function gapsDrawn({ gaps, moreGaps }: Reach, tolerance: string): string {
  if (gaps.length === 0)
    return moreGaps === null ? en`not looked for were gaps wider than ${tolerance}` : en`no gap is wider than ${tolerance}`;
  return moreGaps === 0
    ? en`black bars are gaps wider than ${tolerance}`
    : en`black bars are the ${gaps.length} widest gaps of those wider than ${tolerance}`;
}

function ruleOf(reach: Reach, materials: readonly QuotedMaterial[], say: Say): RuleDrawing {
  const { wish } = reach;
  const shown: ShownReach = {
    low: float(wish.low),
    high: float(wish.high),
    ...knownOnRule(reach),
    flags: materials.map(({ plan, row }) => ({
      id: row.id,
      words: flagWords({ ...row, name: clip(row.name, SHORT_LENGTH) }),
      wanted: float(row.wantedAPerB),
      limits: limitsOnRule(plan),
      best: row.best === null ? null : float(row.best.aPerB),
    })),
  };
  return ruleDrawing(reachRule(shown, SHEET_WIDTH_mm / RULE_TYPE_mm), reachSentences(reach, say).join(' '), say);
}
