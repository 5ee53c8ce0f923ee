import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startBrowser } from './browser.ts';
import { launchDemo, settled } from './journey.ts';

// Colours that the system forces: it takes backgrounds and shadows away, and leaves the colours of drawings alone [CSS Color Adjustment Module, level 1].

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

const ink = (page: Page, selector: string) =>
  page
    .locator(selector)
    .first()
    .evaluate((one) => {
      const { stroke, fill } = getComputedStyle(one);
      return { stroke, fill };
    });

describe.each(['light', 'dark'] as const)('forced colours, %s', (colorScheme) => {
  async function on(look: (page: Page) => Promise<void>): Promise<void> {
    const app = await launchDemo(browser);
    try {
      await app.page.emulateMedia({ colorScheme, forcedColors: 'active' });
      await look(app.page);
    } finally {
      await app.close();
    }
  }
  const colour = (page: Page, system: string) =>
    page.evaluate((name) => {
      const probe = document.body.appendChild(document.createElement('p'));
      probe.style.color = name;
      const { color } = getComputedStyle(probe);
      probe.remove();
      return color;
    }, system);

  test('ratio band and drawings are drawn in the colours of the system', () =>
    on(async (page) => {
      const text = await colour(page, 'CanvasText');
      expect(text).not.toBe(await colour(page, 'Canvas'));
      for (const drawn of [
        '.rule .win',
        '.rule .limit',
        '.rule .tick',
        '.rule .wanted',
        '.rule .whisker line',
        '.drive .B',
        '.drive .sl',
        '.mark .win',
      ])
        expect((await ink(page, drawn)).stroke, drawn).toBe(text);
      expect((await ink(page, '.rule .bar.solid')).fill).toBe(text);
      // Solid is chosen, hollow is fitted; dashed is B.
      expect(
        await page
          .locator('.drive .B')
          .first()
          .evaluate((one) => getComputedStyle(one).strokeDasharray),
      ).not.toBe('none');
      await page.keyboard.press('Alt+1');
      for (const drawn of ['.tree .shaft', '.tree .ring', '.coupling', '.lineA', '.lineB'])
        expect((await ink(page, drawn)).stroke, drawn).toBe(text);
    }));

  test('the chosen row, the page that is open and a pressed button carry a mark that is no background', () =>
    on(async (page) => {
      const mark = await colour(page, 'Highlight');
      const left = (selector: string) =>
        page
          .locator(selector)
          .first()
          .evaluate((one) => {
            const { borderLeftWidth, borderLeftColor } = getComputedStyle(one);
            return [Number.parseFloat(borderLeftWidth), borderLeftColor];
          });
      for (const [chosen, other] of [
        ['tr[aria-selected="true"] > :first-child', 'tr[aria-selected="false"] > :first-child'],
        ['nav [aria-current="page"]', 'nav .page:not([aria-current])'],
      ] as const) {
        const [width, shown] = await left(chosen);
        expect(width, chosen).toBeGreaterThanOrEqual(2);
        expect(shown, chosen).toBe(mark);
        expect((await left(other))[0], other).toBe(0);
      }
      await page.keyboard.press('c');
      expect((await left('button[aria-pressed="true"]'))[1]).toBe(mark);
      await page.keyboard.press('Alt+4');
      await page
        .getByRole('button', { name: /^What closes it/ })
        .first()
        .click();
      expect(await left('tr.on > :first-child')).toEqual([6, mark]);
    }));

  test('the words of the main button are not covered, and a page as it prints stays black on white with its drawing', () =>
    on(async (page) => {
      await settled(page);
      const main = await page
        .locator('.pri')
        .first()
        .evaluate((one) => {
          const { forcedColorAdjust, color, backgroundColor } = getComputedStyle(one) as CSSStyleDeclaration & {
            forcedColorAdjust: string;
          };
          return { forcedColorAdjust, color, backgroundColor };
        });
      expect(main).toEqual({
        forcedColorAdjust: 'none',
        color: await colour(page, 'Canvas'),
        backgroundColor: await colour(page, 'CanvasText'),
      });
      await page.keyboard.press('Alt+5');
      await page.locator('.paper-holder').waitFor();
      const paper = await page.locator('.paper-holder').evaluate((one) => {
        const sheet = one.shadowRoot?.querySelector('.sheet');
        const line = one.shadowRoot?.querySelector('svg path');
        if (sheet === null || sheet === undefined || line === null || line === undefined) throw new Error('no sheet');
        return [getComputedStyle(sheet).backgroundColor, getComputedStyle(sheet).color, getComputedStyle(line).stroke];
      });
      expect(paper).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)', 'rgb(0, 0, 0)']);
    }));

  test('severities of findings are words, and a box that cannot be read has a wider edge and its words beneath', () =>
    on(async (page) => {
      const words = await page.locator('.side .find dt').allTextContents();
      expect(words.length).toBeGreaterThan(0);
      for (const word of words) expect(['blocks', 'warns', 'notes', 'missing']).toContain(word.trim());
      await page.keyboard.press('Alt+1');
      const box = page.locator('[data-place="machines.0.motor.speed"]');
      const edge = () => box.evaluate((one) => Number.parseFloat(getComputedStyle(one).borderTopWidth));
      const before = await edge();
      await box.fill('fast');
      expect(await edge()).toBeGreaterThan(before);
      expect(await page.locator('.hint.bad').first().textContent()).toContain('"fast"');
    }));
});
