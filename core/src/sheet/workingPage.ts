import { en } from '../en.ts';
import type { Say } from '../format.ts';
import { isWorked, type Worked } from '../working.ts';
import { type FactGroup, workingText } from '../workingText.ts';
import { escaped } from './html.ts';

/** One working on paper, with the number by which the others refer to it. */
export interface NumberedWorking {
  readonly number: number;
  readonly what: string;
  readonly result: string;
  /** The formula, then with its numbers put in. */
  readonly lines: readonly [string, string];
  /** What each letter stands for; one that was worked out refers to its number. */
  readonly put: readonly string[];
  readonly source: string;
}

export interface WorkingGroup {
  readonly title: string;
  readonly workings: readonly NumberedWorking[];
}

/**
 * Every working behind the figures of an option, each once: what a figure rests on stands before it and is referred to by number.
 *
 * @source our choice of order: group by group, foundations first
 */
export function workingGroups(groups: readonly FactGroup[], say: Say): readonly WorkingGroup[] {
  const numbers = new Map<string, number>();
  return groups.flatMap(({ title, facts }) => {
    const workings: NumberedWorking[] = [];
    const add = (worked: Worked): number => {
      const known = numbers.get(keyOf(worked));
      if (known !== undefined) return known;
      const references = new Map(worked.put.flatMap(([letter, input]) => (isWorked(input) ? [[letter, add(input)] as const] : [])));
      const number = numbers.size + 1;
      numbers.set(keyOf(worked), number);
      workings.push(numbered(number, worked, references, say));
      return number;
    };
    for (const { working } of facts) if (working !== null) add(working);
    return workings.length === 0 ? [] : [{ title, workings }];
  });
}

/** Two workings that say the same are one, whether exact or in floats. */
const keyOf = ({ what, formula, value, put }: Worked): string =>
  [what, formula.written, Number(value), ...put.map(([letter, { value: number }]) => `${letter}=${Number(number)}`)].join('|');

function numbered(number: number, worked: Worked, references: ReadonlyMap<string, number>, say: Say): NumberedWorking {
  const { what, formula, numbers, put, result, source } = workingText(worked, say);
  return {
    number,
    what,
    result,
    lines: [formula, numbers],
    put: put.map(({ letter, what: name, figure, si }) => {
      const reference = references.get(letter);
      return `${letter} = ${figure}${si === null ? '' : ` = ${si}`}, ${name}${reference === undefined ? '' : ` (${reference})`}`;
    }),
    source,
  };
}

const SI_NOTE = en`Formulas take SI units: metre, kilogram, second, newton, pascal; turns are counted, a share of 1 % is 0.01.`;

/** The pages of workings that follow a sheet, as markup; the user's own words are escaped. */
export function workingPages(title: string, groups: readonly WorkingGroup[]): string {
  const entry = ({ number, what, result, lines, put, source }: NumberedWorking) =>
    `<li><b>${number} ${escaped(what)}: ${escaped(result)}</b><div>${lines.map(escaped).join('<br>')}</div><div>${escaped(put.join('; '))}</div><div>${escaped(en`Source: ${source}`)}</div></li>`;
  const group = ({ title: name, workings }: WorkingGroup) => `<h2>${escaped(name)}</h2><ul>${workings.map(entry).join('')}</ul>`;
  return `<section class="work"><h1>${escaped(title)}</h1><p>${escaped(SI_NOTE)}</p><div class="workcols">${groups.map(group).join('')}</div></section>`;
}
