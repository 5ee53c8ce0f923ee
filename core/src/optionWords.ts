import type { Budget, Verdict } from './budget.ts';
import { optionChecks, pairChecks } from './checks/index.ts';
import { en } from './en.ts';
import type { Finding, Severity } from './finding.ts';
import { lengthText, type Say, signedRangeText } from './format.ts';
import type { InsideCount } from './optionList.ts';

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
    const title = checkTitle(worst.check);
    return { word: worst.severity, text: beside === 0 ? title : en`${title}, ${beside} more`, worst };
  }
  const [missing] = findings;
  if (missing === undefined) return { word: 'clear', text: '', worst: null };
  return { word: 'missing', text: en`${new Set(findings.map(({ check }) => check)).size} not checked`, worst: missing };
}

/**
 * How many options are inside, in words.
 *
 * @source our choice
 * @example insideCountText({ inside: 200, atLeast: true })  // 'at least 200 inside the limits'
 */
export function insideCountText({ inside, atLeast }: InsideCount): string {
  return atLeast ? en`at least ${inside} inside the limits` : en`${inside} inside the limits`;
}

/** Whether an option is inside, in a word; null where the material has no limits. */
export const insideWord = (inside: boolean | null): string | null => (inside === null ? null : inside ? en`inside` : en`outside`);

const VERDICTS: Readonly<Record<Verdict, string>> = {
  'inside with margin': en`with margin`,
  'inside, margin not known': en`margin not known`,
  'inside only nominally': en`only nominally`,
  outside: en`outside`,
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
  en`Fewest checks in the way: ${sets.map((set) => set.map(checkTitle).join(' + ')).join(en`; or `)}.`;

/**
 * A length as its text has it, without the unit: for a column whose head carries it.
 *
 * @source our choice
 * @example lengthNumberText(0.0254, { decimal: '.', system: 'inch' }, 2)  // '1.0000'
 */
export const lengthNumberText = (value_m: number, say: Say, places_mm: number): string =>
  lengthText(value_m, say, places_mm).split('\u00A0')[0] ?? '';
