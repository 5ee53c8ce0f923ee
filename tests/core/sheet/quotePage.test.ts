import { describe, expect, test } from 'vitest';
import type { Quote } from '../../../core/src/quote.ts';
import { quoteLines, quotePageBody } from '../../../core/src/sheet/quotePage.ts';
import { quoted } from './demoQuote.ts';
import { inch } from './demoSheet.ts';

const text = ({ page }: Quote): string => `${quoteLines(page).join('\n').replaceAll('\u00A0', '~')}\n`;

describe('golden text of the quote page (invented example)', () => {
  test('Bench 1 from 1 to 5', async () => {
    await expect(text(quoted({}))).toMatchFileSnapshot('../../golden/quote-page-bench-1.txt');
  });
  test('Bench 2 in inches with a decimal comma', async () => {
    await expect(text(quoted({ machine: 'bench-2', say: inch }))).toMatchFileSnapshot('../../golden/quote-page-bench-2-inch.txt');
  });
});

describe('Bench 1 [invented example, worked out apart from this program]', () => {
  const { page } = quoted({});
  const figures = Object.fromEntries(
    page.reach.map(({ what, figure, against }) => [what, `${figure}; ${against}`].map((words) => words.replaceAll('\u00A0', ' '))),
  );
  test('reach, share and worst target', () => {
    expect(figures['Different ratios in the window']).toMatch(/^191 ratios; /);
    expect(figures['Within ± 2 % of one of them']).toMatch(/^95\.42 % of the window/);
    expect(figures['Worst off-ratio for any target']).toMatch(/^7\.14 %; at 5 : 1/);
    expect(figures['Widest gap between two ratios']).toMatch(/^3\.23 %; at 140 : 31/);
  });
  test('by weight it is the same reach times the densities as run', () => {
    // 1.16 / (1 + 0.00062 × 17) over 0.97 [density as run]: 14/3 becomes 5.5226…
    const heavy = ((14 / 3) * (1.16 / (1 + 0.00062 * 17))) / 0.97;
    expect(figures['The same by weight']).toContain(`to ${heavy.toFixed(4)} : 1`);
  });
  test('what to add: one sprocket for L5, of two equal choices', () => {
    expect(page.add.map((words) => words.replaceAll('\u00A0', ' '))).toEqual([
      'Adding 1 wheel, the fewest, brings 3 of the 3 materials that have limits inside their limits: 08B 14 T, bore 25.00 mm; or 08B 37 T, bore 25.00 mm.',
      expect.stringMatching(/^With 14 T: L5 laminating resin /),
      expect.stringMatching(/^With 37 T: L5 laminating resin /),
    ]);
  });
  test('it never speaks of a proved ratio', () => {
    expect(page.cautions.join(' ')).toContain('to be proved by a ratio check');
    expect(page.invented).toBe('invented example');
  });
});

test('the user’s own words are escaped, and long lists say what was left out', () => {
  const { page, rule } = quoted({
    change: (file) => {
      const [first] = file.materials;
      if (first === undefined) throw new Error('no material');
      for (let index = 0; index < 12; index += 1) file.materials.push({ ...structuredClone(first), id: `m${index}`, name: '<b>&' });
    },
  });
  expect(page.materials.rest).toBe('and 3 more materials of the shop file');
  const { html } = quotePageBody(page, rule.svg, rule.height_mm);
  expect(html).not.toContain('<b>&<');
  expect(html).toContain('&lt;b&gt;&amp;');
});
