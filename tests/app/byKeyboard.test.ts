import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readShopFile, type ShopFile } from '../../core/src/index.ts';
import { launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { settled } from './journey.ts';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

interface Stop {
  readonly what: string;
  readonly text: string;
  readonly place: string;
  readonly trouble: string | null;
}

/** Where the cursor is, and what is wrong with the place: none at all, no ring to be seen, outside the window, or under something. */
const here = (): Promise<Stop> =>
  page.evaluate(() => {
    const one = document.activeElement;
    if (!(one instanceof HTMLElement) || one === document.body) return { what: 'body', text: '', place: '', trouble: 'the cursor is lost' };
    const { outlineStyle, outlineWidth } = getComputedStyle(one);
    const box = one.getBoundingClientRect();
    const [x, y] = [
      (Math.max(0, box.left) + Math.min(innerWidth, box.right)) / 2,
      (Math.max(0, box.top) + Math.min(innerHeight, box.bottom)) / 2,
    ];
    const top = document.elementFromPoint(x, y);
    const isPart = one.matches('main, section, fieldset');
    const seen =
      top !== null &&
      (one.contains(top) || top.contains(one) || top.closest('label')?.contains(one) === true || one.shadowRoot?.contains(top) === true);
    const trouble =
      outlineStyle === 'none' || Number.parseFloat(outlineWidth) < 2
        ? 'no ring'
        : box.right < 1 || box.bottom < 1 || box.left > innerWidth - 1 || box.top > innerHeight - 1
          ? 'outside the window'
          : isPart || seen
            ? null
            : `under ${top?.outerHTML.slice(0, 60)}`;
    return {
      what: `${one.tagName.toLowerCase()} ${one.getAttribute('name') ?? ''} ${one.className}`,
      text: isPart ? '' : (one.textContent ?? '').replaceAll('\u00A0', ' ').trim().slice(0, 60),
      place: one.dataset.place ?? one.id,
      trouble,
    };
  });

/** One press, after which the cursor is somewhere and can be seen. */
async function press(key: string): Promise<Stop> {
  await page.keyboard.press(key);
  await expect.poll(async () => (await here()).trouble, { message: `after ${key}` }).toBeNull();
  return here();
}

/** Tab until the cursor is where a pattern says; every stop on the way can be seen. */
async function tabTo(where: RegExp): Promise<void> {
  for (let steps = 0; steps < 150; steps += 1) {
    const at = await here();
    if (at.trouble === null && [at.place, at.text, at.what].some((said) => where.test(said))) return;
    const before = at.what + at.text;
    const stop = await press('Tab');
    expect(stop.trouble, `Tab from ${before} to ${stop.what} ${stop.text}`).toBeNull();
  }
  throw new Error(`Tab never reached ${where}`);
}

async function type(text: string): Promise<void> {
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
}

function shop(file: string): ShopFile {
  const read = readShopFile(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.findings[0].what);
  return read.value;
}

test.each(['none', 'active'] as const)(
  'the whole job by keyboard alone, the cursor in sight at every stop; forced colours %s',
  async (forcedColors) => {
    const file = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-keys-')), 'job.ratiowright');
    const app = await launch(browser, { save: [file] });
    ({ page } = app);
    try {
      await page.emulateMedia({ forcedColors });
      await page.getByRole('button', { name: 'Start empty' }).waitFor();
      await page.keyboard.press('Tab');

      // The example, and another of its materials.
      await tabTo(/^Open the invented example/);
      await press('Enter');
      await settled(page);
      await press('Alt+2');
      await tabTo(/pick\.material/);
      await press('ArrowDown');
      expect(await page.locator('[data-place="materials.1.name"]').inputValue()).toBe('U40 elastomer');
      // The list stays under the cursor, so that the arrow goes on.
      expect((await press('ArrowDown')).what).toContain('pick.material');
      await press('ArrowUp');
      expect(await page.locator('[data-place="materials.1.name"]').inputValue()).toBe('U40 elastomer');

      // A box is changed.
      await tabTo(/^materials\.1\.A\.runAt$/);
      await type('42');

      // Options: one is chosen by its row, a ratio is tried.
      await press('Alt+3');
      await settled(page);
      await expect.poll(() => page.locator('h1 [role="status"]').textContent()).toMatch(/^\d+ inside the limits$/);
      await tabTo(/^tr /);
      const [first, second] = [await press('Home'), await press('End')];
      expect(first.text).not.toBe(second.text);
      await page.keyboard.press('Home');
      while (!(await page.evaluate(() => document.activeElement?.matches('[data-rank="1"]') ?? false))) await press('ArrowDown');
      await press('ArrowDown');
      await press('Enter');
      expect(await page.locator('tr[aria-selected="true"][data-rank="2"]').count()).toBe(1);
      await press('r');
      await expect.poll(async () => (await here()).place).toBe('try-ratio');
      await type('100 : 43');
      await expect.poll(() => page.locator('[data-near]').count()).toBe(8);

      // A sheet of the chosen option is printed, and kept.
      await tabTo(/^Put on the sheet/);
      await press('Enter');
      await tabTo(/^Print sheet/);
      await press('Enter');
      await expect.poll(() => page.getByText('Kept as sheet 0002').count()).toBe(1);

      // Reach, its window, and the quote page of it.
      await press('Alt+4');
      await tabTo(/^Window from|reach\.low|^input/);
      await type('1');
      await press('Tab');
      await type('5');
      await expect.poll(() => page.locator('.said').textContent()).toContain('from 1 to 5');
      await tabTo(/hold/);
      await press('q');
      await page.locator('.paper-holder').waitFor();
      await tabTo(/^Keep this quote/);
      await press('Enter');
      await page.locator('[data-quote]').waitFor();

      // A ratio check of that sheet is typed and kept.
      await press('Alt+6');
      await tabTo(/^unfinishedChecks\.0\.changeSheet$/);
      const proved = () => page.locator('[data-place="unfinishedChecks.0.changeSheet"] option:checked').textContent();
      await press('Home');
      for (let presses = 0; presses < 3 && !(await proved())?.includes('Sheet 0002'); presses += 1) await press('ArrowDown');
      expect(await proved()).toContain('Sheet 0002');
      await tabTo(/^unfinishedChecks\.0\.catches\.0\.A\.net$/);
      for (const text of ['244.6', '101.9', '244.1', '101.6', '244.4', '101.8']) {
        await page.keyboard.type(text);
        await press('Enter');
      }
      await expect.poll(() => page.locator('.verdict .v').textContent()).toMatch(/^(Pass|Fail|Not proven)/);
      await tabTo(/^Keep this ratio check/);
      await press('Enter');
      await expect.poll(() => page.locator('[data-check="check-0004"]').count()).toBe(1);
      expect((await here()).trouble).toBeNull();

      // And saved.
      await press('Control+s');
      await expect.poll(() => existsSync(file)).toBe(true);
      await expect.poll(() => page.locator('nav small').first().textContent()).toContain('· saved');
      const kept = shop(file);
      expect(kept.materials[1]?.A.runAt).toEqual({ value: '42', unit: '°C' });
      expect([kept.changeSheets.length, kept.quotePages?.length, kept.ratioChecks?.length]).toEqual([2, 1, 4]);
      expect(kept.changeSheets[1]?.material).toBe(kept.materials[1]?.id);
      expect(kept.ratioChecks?.at(-1)?.changeSheet).toBe(kept.changeSheets[1]?.id);
    } finally {
      await app.close();
    }
  },
);
