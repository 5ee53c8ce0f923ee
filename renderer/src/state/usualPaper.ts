import type { Paper } from '../../../core/src/sheet/pageStyle.ts';

/** Regions that print on letter paper; the rest of the world prints on A4. */
const LETTER: ReadonlySet<string> = new Set('BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' '));

/**
 * The paper a person is likely to have, by the language tag of the system: of a tag without a region, where most of its speakers live.
 *
 * @param language  as BCP 47 writes it; A4 where it cannot be read
 * @source cldr-paper
 * @example usualPaper('es-MX')  // 'Letter'
 */
export function usualPaper(language: string): Paper {
  try {
    return LETTER.has(new Intl.Locale(language).maximize().region ?? '') ? 'Letter' : 'A4';
  } catch {
    return 'A4';
  }
}
