import { VERDICT_WORDS } from '../budget.ts';
import { en, plural } from '../en.ts';
import type { BestReach, MaterialReach } from '../materialReach.ts';
import { NONE } from '../sheet/paperText.ts';
import type { QuoteTable } from '../sheet/quotePage.ts';
import { clip } from '../visible.ts';

/** As many as one page takes. */
const KEPT_MATERIALS = 12;
const NAME_LENGTH = 28;
/** A column is narrow: `B-rich` must not end a line at its hyphen. */
const UNBROKEN = '\u2011';

/**
 * Materials with the best option for each, and whether it stays inside the limits in the worst case.
 *
 * @source our choice of words
 */
export function materialTable(materials: readonly MaterialReach[]): QuoteTable {
  const rest = materials.length - KEPT_MATERIALS;
  return {
    heads: [
      en`Material`,
      en`Wanted, by volume`,
      en`Limits, off-ratio`,
      en`Best option`,
      en`Off-ratio`,
      en`In the worst case`,
      en`Teeth`,
      en`Flow of A and B`,
    ],
    rows: materials
      .slice(0, KEPT_MATERIALS)
      .map(({ name, wanted, limits, best }) => [
        clip(name, NAME_LENGTH),
        wanted,
        limits,
        best?.ratio ?? NONE,
        best === null ? en`nothing can be built` : best.offRatio.replace('-', UNBROKEN),
        best === null ? NONE : worstCaseText(best),
        best?.teeth ?? NONE,
        best?.flow ?? NONE,
      ]),
    rest: rest > 0 ? plural(rest)`and ${rest} more material of the shop file|and ${rest} more materials of the shop file` : '',
  };
}

const worstCaseText = ({ verdict, worstCase }: BestReach): string =>
  `${worstCase ?? en`not known`}, ${verdict === null ? en`limits not given` : VERDICT_WORDS[verdict]}`;

/** Stands beneath the table: what its worst case is. */
export const WORST_CASE = en`The worst case adds up, all the same way, what pumps, densities, temperatures and slip may do to the off-ratio, as far as they are given.`;
