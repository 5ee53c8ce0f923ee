import { expect, test } from 'vitest';
import { usualPaper } from '../../renderer/src/state/usualPaper.ts';

// <paperSize type="US-Letter" territories="BZ CA CL CO CR GT MX NI PA PH PR SV US VE"/>, A4 for 001, the world
// [cldr-paper, seen].
test.each('BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' '))('%s prints on letter paper', (region) => {
  for (const language of ['en', 'es', 'fr']) expect(usualPaper(`${language}-${region}`)).toBe('Letter');
});

test.each(['en-GB', 'de-DE', 'de', 'fr-FR', 'es-ES', 'es-419', 'pt-BR', 'ja-JP', 'zh-Hans-CN', 'en-AU'])('%s prints on A4', (language) => {
  expect(usualPaper(language)).toBe('A4');
});

test('a language without a region counts where most of its speakers live; what is no language prints on A4', () => {
  // Likely subtags: en is en-Latn-US, es is es-Latn-ES [Unicode CLDR, likelySubtags, from memory].
  expect([usualPaper('en'), usualPaper('es'), usualPaper(''), usualPaper('no language'), usualPaper('C')]).toEqual([
    'Letter',
    'A4',
    'A4',
    'A4',
    'A4',
  ]);
});
