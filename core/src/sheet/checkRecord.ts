import { en } from '../en.ts';
import type { ShopFile } from '../file/shopFile.ts';
import type { Finding } from '../finding.ts';
import { type Say, withTrueMinus } from '../format.ts';
import type { CauseState } from '../ratioCheck/causes/index.ts';
import type { Judged } from '../ratioCheck/judge.ts';
import { CAUSE_STATES, DECISION_RULE, meetingText, proposalText, verdictHead, verdictReason } from '../ratioCheckWords.ts';
import { clip } from '../visible.ts';
import { checkCatches } from './checkCatches.ts';
import { howText, provesText } from './checkHow.ts';
import { agreeText, checkRows } from './checkRows.ts';
import { OFF_RATIO_DEFINITION, type RatioRow } from './ratioRows.ts';
import type { WordTable } from './wordTable.ts';

/** A ratio check as it is printed, every figure worded for reading. */
export interface CheckRecord {
  readonly title: string;
  readonly date: string;
  readonly machine: string;
  readonly shop: string;
  readonly material: string;
  readonly wanted: string;
  /** Pumps and teeth that were on, and the change sheet that put them there. */
  readonly proves: string;
  readonly invented: string | null;
  readonly cautions: readonly string[];
  /** How the catches were made. */
  readonly how: string;
  readonly catches: WordTable;
  readonly verdict: { readonly word: string; readonly reason: string; readonly agree: string; readonly rule: string };
  readonly result: readonly RatioRow[];
  readonly definition: string;
  /** Those that speak for themselves, and what was looked for in vain or not at all, in a line. */
  readonly causes: readonly string[];
  readonly otherCauses: string;
  readonly advice: readonly string[];
  readonly findings: readonly string[];
  readonly by: string | null;
  readonly note: string | null;
  readonly signatures: readonly string[];
  readonly footer: string;
}

/** What the core cannot know of it. */
export interface AboutCheck {
  readonly file: string;
  readonly say: Say;
}

const NAME_LENGTH = 60;
const LINE_LENGTH = 160;

/** @source common practice, no source; the wording is ours */
const CAUTIONS: readonly string[] = [
  en`Catch both sides apart and weigh them unmixed: mixed material heats up by itself. Put what was caught by as the safety data sheets ask.`,
  en`Wear what both safety data sheets ask for: isocyanates and amines harm through skin and breath. Parts and material may be hot.`,
  en`All guards on while anything turns; lock out the drive and release the pressure before a guard or a line is opened.`,
  en`The machine’s manual, both safety data sheets and local rules come first.`,
];

/**
 * A judged check as a page of words.
 *
 * @param findings  of reading the catches
 * @source our choice of words
 */
export function checkRecord(file: ShopFile, judged: Judged, findings: readonly Finding[], { file: name, say }: AboutCheck): CheckRecord {
  const { row, evaluation } = judged;
  const { terms } = evaluation.input;
  const isKept = file.ratioChecks.some(({ id }) => id === row.id);
  const speaking = judged.causes.filter(({ state }) => state === 'likely' || state === 'possible');
  const silent = (state: CauseState) => judged.causes.flatMap((one) => (one.state === state ? [one.within] : []));
  const [ruledOut, notLookedFor] = [silent('ruled out'), silent('not looked for')];
  return {
    title: isKept ? en`Ratio check ${checkNumber(row.id)}` : en`Ratio check`,
    date: row.date,
    machine: nameOf(file.machines, row.machine),
    shop: clip(file.shop.name, NAME_LENGTH),
    material: nameOf(file.materials, row.material),
    wanted: clip(
      withTrueMinus(terms.limitsWritten === null ? terms.written : en`${terms.written}; limits ${terms.limitsWritten}`),
      LINE_LENGTH,
    ),
    proves: provesText(file, row),
    invented: file.shop.invented === true ? en`invented example` : null,
    cautions: CAUTIONS,
    how: howText(row, evaluation.weighed),
    catches: checkCatches(row.catches, evaluation, say),
    verdict: {
      word: verdictHead(evaluation.verdict),
      reason: verdictReason(evaluation, say),
      agree: agreeText(evaluation),
      rule: DECISION_RULE,
    },
    result: checkRows(judged, say),
    definition: OFF_RATIO_DEFINITION,
    causes: speaking.map(({ title, state, what }) => `${title}, ${CAUSE_STATES[state]}: ${what}`),
    otherCauses: [
      ...(ruledOut.length === 0 ? [] : [en`Ruled out: ${ruledOut.join(', ')}.`]),
      ...(notLookedFor.length === 0 ? [] : [en`Not looked for: ${notLookedFor.join(', ')}.`]),
    ].join(' '),
    advice: [proposalText(judged.proposal, say), ...trendTexts(judged, say)],
    findings: findings.map(({ what }) => what),
    by: row.by ?? null,
    note: row.note ?? null,
    signatures: [en`Caught and weighed by, date`, en`Checked by, date`, en`Released for use, date`],
    footer: `${clip(name, NAME_LENGTH)}, ${isKept ? en`ratio check ${checkNumber(row.id)}` : en`a ratio check that is not kept in it`}`,
  };
}

/** The day of a check, and who made it. */
export const madeText = ({ date, by }: Pick<CheckRecord, 'date' | 'by'>): string => (by === null ? date : en`${date}, by ${by}`);

/** Checks are numbered through in their ids. */
const checkNumber = (id: string): string => /^check-(\d+)$/.exec(id)?.[1] ?? id;

const nameOf = (rows: readonly { readonly id: string; readonly name: string }[], id: string): string =>
  clip(rows.find((one) => one.id === id)?.name ?? id, NAME_LENGTH);

const TRENDS = [
  [en`Delivery of pump A`, ({ delivery }: Judged) => delivery.A],
  [en`Delivery of pump B`, ({ delivery }: Judged) => delivery.B],
  [en`Off-ratio`, ({ offRatio }: Judged) => offRatio],
] as const;

function trendTexts(judged: Judged, say: Say): readonly string[] {
  return TRENDS.flatMap(([what, of]) => {
    const sentence = meetingText(of(judged), say);
    return sentence === null ? [] : [`${what}: ${sentence}`];
  });
}
