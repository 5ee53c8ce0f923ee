import { fixed, ratioText, type Say, temperatureText } from './format.ts';
import { knownOnRule } from './knownOnRule.ts';
import { flagWords, flowRangeText, limitsOnRule, type MaterialReach } from './materialReach.ts';
import { insideWord } from './optionWords.ts';
import { type Plan, SIDES, type Stage } from './plan.ts';
import { type QuoteRule, quoteRule, RULE_TYPE_mm } from './quoteRule.ts';
import { float, whole } from './ratio.ts';
import type { Reach, ReachEnd } from './reach/figures.ts';
import { reachRule, type ShownReach } from './reachRule.ts';
import {
  countText,
  coveredText,
  gapCountText,
  offText,
  placeText,
  ratioInWords,
  reachSentences,
  toleranceText,
  windowText,
} from './reachWords.ts';
import { SHEET_WIDTH_mm } from './sheet/pageStyle.ts';
import { clip, displacementText, NONE, shortName } from './sheet/paperText.ts';
import type { QuotePage, QuoteTable } from './sheet/quotePage.ts';
import { OFF_RATIO_DEFINITION, type RatioRow } from './sheet/ratioRows.ts';
import { fittedPumps } from './train.ts';

/** What the core cannot know of a quote: its date as text, the name of the file, and how the shop reads numbers. */
export interface AboutQuote {
  readonly number: string;
  readonly date: string;
  readonly file: string;
  readonly say: Say;
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
  readonly rule: QuoteRule;
}

const KEPT_MATERIALS = 12;
const NAME_LENGTH = 60;
const SHORT_LENGTH = 28;

/** @source our choice of words; a ratio on paper is only ever calculated */
const CAUTIONS: readonly string[] = [
  'Calculated from pumps and teeth, to be proved by a ratio check: weighing what each side delivers, unmixed.',
  'The machine’s manual, both safety data sheets and local rules come first; isocyanates and amines harm through skin and breath.',
  'Sprockets are changed with the drive locked out and the pressure released; all guards are back before anything turns.',
];

/**
 * What a machine can mix, on one page for a customer: its reach by volume and weight, the worst target, the flow, the shop's materials,
 * and what all that rests on.
 *
 * @param plan       the machine with the material that ratios by weight are counted for
 * @param materials  in the order of the file
 * @source our choice of words
 */
export function quoteOf(plan: Plan, reach: Reach, materials: readonly QuotedMaterial[], about: AboutQuote): Quote {
  const { say } = about;
  const number = clip(about.number, SHORT_LENGTH);
  const page: QuotePage = {
    title: `What ${clip(plan.machine.name, NAME_LENGTH)} can mix`,
    number: `Quote page ${number}`,
    date: clip(about.date, SHORT_LENGTH),
    machine: clip(plan.machine.name, NAME_LENGTH),
    shop: clip(plan.shop, NAME_LENGTH),
    window: `${windowText(reach.wish, say)} by volume; log scale, more B to the left; black bars are gaps wider than ${toleranceText(reach.wish.tolerance, say)}`,
    invented: plan.invented ? 'invented example' : null,
    cautions: CAUTIONS,
    reach: reachRows(plan, reach, say),
    materials: materialTable(materials),
    definition: OFF_RATIO_DEFINITION,
    add: about.add,
    assumptions: assumptions(plan, materials, say),
    signatures: ['Prepared by, date', 'For (customer)', 'Read by customer, date'],
    footer: `${clip(about.file, NAME_LENGTH)}, quote page ${number}, page 1 of 1`,
  };
  return { page, rule: ruleOf(reach, materials, say) };
}

function reachRows(plan: Plan, reach: Reach, say: Say): readonly RatioRow[] {
  const { worst, widest, smallest, largest, wish, weightFactor } = reach;
  if (worst === null || smallest === null || largest === null) return [{ what: 'Reach', figure: 'none', against: 'nothing can be built' }];
  const flow = ({ flow_m3_per_s }: ReachEnd) => (flow_m3_per_s === null ? NONE : flowRangeText(flow_m3_per_s.from, flow_m3_per_s.to, say));
  const range = (factor = weightFactor) =>
    factor === null ? 'not known' : `${fixed(smallest.aPerB.mul(factor), 4, say)} to ${ratioText(largest.aPerB.mul(factor), say)}`;
  const weighed = `for ${clip(plan.material.name, SHORT_LENGTH)}${weightFactor === null ? ', whose densities are not given' : runningText(plan, say)}`;
  return [
    {
      what: 'Different ratios in the window',
      figure: countText(reach),
      against: `${gapCountText(reach)} than ${toleranceText(wish.tolerance, say)}`,
    },
    {
      what: `Within ${toleranceText(wish.tolerance, say)} of one of them`,
      figure: reach.covered === null ? 'not looked for' : `${coveredText(reach.covered, say)} of the window`,
      against: 'on its log scale',
    },
    {
      what: 'Worst off-ratio for any target',
      figure: offText(worst.offRatio, say),
      against: `at ${ratioInWords(worst.worstTarget, say)}; ${placeText(worst, say)}`,
    },
    ...(widest === null
      ? []
      : [
          {
            what: 'Widest gap between two ratios',
            figure: offText(widest.offRatio, say),
            against: `at ${ratioInWords(widest.worstTarget, say)}; ${placeText(widest, say)}`,
          },
        ]),
    {
      what: 'All that can be built, by volume',
      figure: `${fixed(smallest.aPerB, 4, say)} to ${ratioText(largest.aPerB, say)}`,
      against: 'A : B as run',
    },
    { what: 'The same by weight', figure: range(), against: weighed },
    {
      what: 'Flow of A and B, most B',
      figure: flow(smallest),
      against: `at ${ratioInWords(smallest.aPerB, say)}, over what the dial may be set to`,
    },
    { what: 'Flow of A and B, least B', figure: flow(largest), against: `at ${ratioInWords(largest.aPerB, say)}` },
  ];
}

function runningText({ mix: { runAt_K } }: Plan, say: Say): string {
  const at = SIDES.flatMap((side) => (runAt_K[side].known ? [`${side} at ${temperatureText(runAt_K[side].value, say)}`] : []));
  return at.length === 0 ? '' : `, ${at.join(', ')}`;
}

function materialTable(materials: readonly QuotedMaterial[]): QuoteTable {
  const rest = materials.length - KEPT_MATERIALS;
  return {
    heads: ['Material', 'Wanted, by volume', 'Limits, off-ratio', 'Best option', 'Off-ratio', 'Teeth', 'Flow of A and B'],
    rows: materials.slice(0, KEPT_MATERIALS).map(({ row: { name, wanted, limits, best } }) => {
      const inside = best === null ? null : insideWord(best.inside);
      return [
        clip(name, SHORT_LENGTH),
        wanted,
        limits,
        best?.ratio ?? NONE,
        best === null ? 'nothing can be built' : `${best.offRatio}${inside === null ? '' : `, ${inside}`}`,
        best?.teeth ?? NONE,
        best?.flow ?? NONE,
      ];
    }),
    rest: rest > 0 ? `and ${rest} more materials of the shop file` : '',
  };
}

const WHEELS: Readonly<Record<Plan['choice']['wheels'], string>> = {
  rack: 'those on the rack and on the machine',
  'rack and purchases': 'those on the rack and on the machine, and some to buy',
  any: 'any in a range, whatever is on the rack',
};

function assumptions(plan: Plan, materials: readonly QuotedMaterial[], say: Say): readonly string[] {
  const pumps = fittedPumps(plan);
  const tolerance = (side: 'A' | 'B') =>
    pumps[side].tolerance.known ? ` ± ${fixed(pumps[side].tolerance.value.mul(whole(100)), 2, say)}\u00A0%` : ', tolerance not given';
  const fitted = SIDES.map((side) => `${side} ${displacementText(pumps[side].displacement_m3_per_rev, say)}${tolerance(side)}`).join('; ');
  const { choice } = plan;
  const measured = SIDES.some((side) => pumps[side].asMeasured);
  const open = plan.stages.filter((stage) => stage.open);
  const missing = new Set(
    materials.flatMap(({ plan: { findings } }) => findings.flatMap(({ missing: lacks, what }) => (lacks ? [what] : []))),
  );
  return [
    `Pumps ${choice.anyPump ? 'fitted or any a side may carry; fitted' : 'as fitted'}: ${fitted}.`,
    `Delivery ${measured ? 'as measured' : 'as new'}: wear and slip are not counted in the ratios.`,
    `Wheels: ${WHEELS[choice.wheels]}${choice.wheels === 'rack and purchases' ? `, at most ${choice.purchases}` : ''}${choice.teeth === null ? '' : `, ${choice.teeth.from} to ${choice.teeth.to} teeth`}.`,
    open.length === 0 ? 'No stage may change.' : `Stages that may change: ${open.map((stage) => stageText(stage)).join('; ')}.`,
    'A ratio counts only where it can be built: chain length and centre, guard, bores, teeth of each slot, quantities.',
    ...(missing.size === 0
      ? []
      : [`Not given for these materials: ${missing.size} ${missing.size === 1 ? 'point' : 'points'}, named in the list of findings.`]),
    'Holds for the machine, the rack and the materials as they stand in the shop file on the date above.',
  ];
}

const stageText = ({ name, size }: Stage): string => `${shortName(name)}, ${size}`;

function ruleOf(reach: Reach, materials: readonly QuotedMaterial[], say: Say): QuoteRule {
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
  return quoteRule(reachRule(shown, SHEET_WIDTH_mm / RULE_TYPE_mm), reachSentences(reach, say).join(' '), say);
}
