import { en, plural } from '../en.ts';
import { MOST_CHECKLIST_LINES } from './machine.ts';

/**
 * What many shops check besides the change itself.
 *
 * @source common practice, no source; the wording is ours
 */
export const USUAL_CHECKLIST: readonly string[] = [
  en`Tank and heat-zone settings as the data sheet asks.`,
  en`Both components degassed.`,
  en`Dryers on the tanks: desiccant still good.`,
  en`Shaft packings: no drip, none runs hot.`,
  en`Seal cups full, liquid clean.`,
];

/** A checklist with the usual lines added, and what to say about it. */
export interface FilledChecklist {
  readonly lines: readonly string[];
  readonly message: string;
}

/**
 * A checklist with the usual lines that are not there yet put at its end, as far as the sheet has room.
 *
 * @param lines  the shop's own, 6 at most
 * @returns all lines, the shop's first, and one sentence about what was done
 * @source common practice, no source
 * @example withUsualLines([]).message  // '5 usual lines added.'
 */
export function withUsualLines(lines: readonly string[]): FilledChecklist {
  const there = new Set(lines.map(plain));
  const lacking = USUAL_CHECKLIST.filter((line) => !there.has(plain(line)));
  const added = lacking.slice(0, Math.max(0, MOST_CHECKLIST_LINES - lines.length));
  return { lines: [...lines, ...added], message: messageOf(added, lacking.slice(added.length)) };
}

/** Capitals, end stop and spaces make no other line. */
const plain = (line: string): string => line.trim().replace(/\.$/, '').toLowerCase();

function messageOf(added: readonly string[], left: readonly string[]): string {
  if (added.length === 0 && left.length === 0) return en`All usual lines are there already.`;
  const count = added.length;
  if (left.length === 0) return plural(count)`${count} usual line added.|${count} usual lines added.`;
  const first = count === 0 ? en`No line added` : plural(count)`${count} usual line added|${count} usual lines added`;
  return en`${first}: the sheet has room for ${MOST_CHECKLIST_LINES}. Left out: ${left.join(' ')}`;
}
