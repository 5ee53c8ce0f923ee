import type { Budget, Verdict } from './budget.ts';
import { optionChecks, pairChecks } from './checks/index.ts';
import type { Finding, Severity } from './finding.ts';
import { exactRatioText, fixed, lengthText, ratioText, type Say, signedRangeText } from './format.ts';
import type { PlannedOption } from './option.ts';
import type { InsideCount } from './optionList.ts';
import type { Plan, Pump } from './plan.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import { delivered_m3_per_rev, pumpRatio, pumpsText } from './train.ts';
import { fromSI } from './units.ts';

// Words about options that the list and the chosen option share.

/** `missing` and `clear` are states of a list, not severities of a finding. */
export interface FindingsInShort {
  readonly word: Severity | 'missing' | 'clear';
  readonly text: string;
  /** The finding that is spoken of; null where nothing stands against the option. */
  readonly worst: Finding | null;
}

const TITLES: ReadonlyMap<string, string> = new Map([...pairChecks, ...optionChecks].map(({ id, title }) => [id, title]));

/** A check by the title people know it by; its id where it is no check of pairs or options. */
export const checkTitle = (id: string): string => TITLES.get(id) ?? id;

/**
 * All findings of an option in a few words: the worst check by its title and how many speak beside it. An option whose checks lack
 * an input is never called clear.
 *
 * @param findings  worst first
 * @source our choice
 * @example findingsInShort([])  // { word: 'clear', text: '', worst: null }
 */
export function findingsInShort(findings: readonly Finding[]): FindingsInShort {
  const made = findings.filter((finding) => !finding.missing);
  const [worst] = made;
  if (worst !== undefined) {
    const beside = made.length - 1;
    return { word: worst.severity, text: checkTitle(worst.check) + (beside === 0 ? '' : `, ${beside} more`), worst };
  }
  const [missing] = findings;
  if (missing === undefined) return { word: 'clear', text: '', worst: null };
  return { word: 'missing', text: `${new Set(findings.map(({ check }) => check)).size} not checked`, worst: missing };
}

/**
 * How many options are inside, in words.
 *
 * @source our choice
 * @example insideCountText({ inside: 200, atLeast: true })  // 'at least 200 inside the limits'
 */
export function insideCountText({ inside, atLeast }: InsideCount): string {
  return `${atLeast ? 'at least ' : ''}${inside} inside the limits`;
}

/** Whether an option is inside, in a word; null where the material has no limits. */
export const insideWord = (inside: boolean | null): string | null => (inside === null ? null : inside ? 'inside' : 'outside');

const VERDICTS: Readonly<Record<Verdict, string>> = {
  'inside with margin': 'with margin',
  'inside, margin not known': 'margin not known',
  'inside only nominally': 'only nominally',
  outside: 'outside',
};

/** The verdict of the off-ratio budget in a list that says of itself that it is held against the limits. */
export const verdictWord = (verdict: Verdict): string => VERDICTS[verdict];

/**
 * Both ends of the worst case.
 *
 * @source our choice: signed, since it is a range
 * @example worstRangeText(budgetOf(E12 on Bench 1, 23 driving 25), say)  // '−1.76 to +1.61 %'
 */
export function worstRangeText({ from, to }: Pick<Budget, 'from' | 'to'>, say: Say): string {
  return signedRangeText(from.value, to.value, say);
}

/** The sets of checks of which each alone lets an option through, by their titles. */
export const fewestChecksText = (sets: readonly (readonly string[])[]): string =>
  `Fewest checks in the way: ${sets.map((set) => set.map(checkTitle).join(' + ')).join('; or ')}.`;

/**
 * Pumps and wheels as one product, so that a ratio already in the pumps is not applied twice.
 *
 * @returns stages that both pumps share cancel and are left out
 * @source kinematics: R = D_A n_A / (D_B n_B)
 * @example productText(plan, option, say)  // 'pumps 12 : 6 × teeth 25 : 23 = 50 : 23 = 2.1739 : 1'
 */
export function productText(plan: Plan, option: PlannedOption, say: Say): string {
  const R = ONE.div(option.bPerA);
  const wheels = option.stages.flatMap(({ stage, teeth }) => {
    if (stage.turns !== 'A' && stage.turns !== 'B') return [];
    // A wheel that drives pump A makes more of A; one that drives pump B makes less of it.
    const pair = stage.turns === 'A' ? `${teeth.driver} : ${teeth.driven}` : `${teeth.driven} : ${teeth.driver}`;
    return [plan.stages.length === 1 ? `teeth ${pair}` : `${stage.name} ${pair}`];
  });
  const pumps = `${pumpsText(option.pumps)} ${displacements(option.pumps, say)}`;
  return `${[pumps, ...wheels].join(' × ')} = ${exactRatioText(R)} = ${ratioText(R, say)}`;
}

/**
 * A length as its text has it, without the unit: for a column whose head carries it.
 *
 * @source our choice
 * @example lengthNumberText(0.0254, { decimal: '.', system: 'inch' }, 2)  // '1.0000'
 */
export const lengthNumberText = (value_m: number, say: Say, places_mm: number): string =>
  lengthText(value_m, say, places_mm).split('\u00A0')[0] ?? '';

/** What the pumps count for in one turn, as numbers where they are short in one of the usual units, else their ratio in smallest terms. */
function displacements(pumps: Readonly<Record<'A' | 'B', Pump>>, say: Say): string {
  for (const unit of say.system === 'metric' ? ['cc/rev'] : ['in3/rev', 'cc/rev']) {
    const [a, b] = [pumps.A, pumps.B].map((pump) => shortDecimal(fromSI('displacement', delivered_m3_per_rev(pump), unit), say));
    if (typeof a === 'string' && typeof b === 'string') return `${a} : ${b}`;
  }
  return exactRatioText(ONE.div(pumpRatio(pumps)));
}

/** A number with as many places as it has, four at most; null where it has more. */
function shortDecimal(value: Fraction, say: Say): string | null {
  for (let places = 0; places <= 4; places += 1) if (value.mul(whole(10n ** BigInt(places))).d === 1n) return fixed(value, places, say);
  return null;
}
