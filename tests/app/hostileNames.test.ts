import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writeShopFile } from '../../core/src/file/write.ts';
import { launch } from '../harness/launch.ts';
import { hostileDemo, STEERING } from '../hostile/hostileDemo.ts';
import { startBrowser } from './browser.ts';
import { renameMachine, settled } from './journey.ts';

// Names with control characters and marks of direction: the box in which one is edited holds it as it is, everything else shows codes.

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** Every text and every name for screen readers that holds a character which steers; what stands in a text box is no text of the page. */
async function raw(page: Page): Promise<readonly string[]> {
  const said = await page.evaluate(() => {
    const SAYS = ['aria-label', 'aria-valuetext', 'aria-description', 'title', 'placeholder', 'alt'];
    const found: string[] = [document.title];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_ALL);
    for (let node = walk.nextNode(); node !== null; node = walk.nextNode()) {
      if (node instanceof Element) for (const name of SAYS) found.push(node.getAttribute(name) ?? '');
      else if (!(node.parentElement instanceof HTMLTextAreaElement)) found.push(node.nodeValue ?? '');
    }
    return found;
  });
  // A line end or a tab of our own is white space of the page.
  return [...new Set(said.filter((text) => STEERING.test(text.replaceAll('\t', ' '))).map((text) => JSON.stringify(text).slice(0, 120)))];
}

async function unfold(page: Page): Promise<void> {
  for (let turn = 0; turn < 2; turn += 1)
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('main details')) if (fold instanceof HTMLDetailsElement) fold.open = true;
    });
}

test('lists, headings, options of boxes, names for screen readers and questions show them as codes', async () => {
  const home = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-names-'));
  const file = path.join(home, 'bench \u202Ecod.ratiowright');
  writeFileSync(file, writeShopFile(hostileDemo(), 'test'));
  const app = await launch(browser, { open: [file] });
  try {
    const { page } = app;
    const look = async (where: string) => expect(await raw(page), where).toEqual([]);
    const press = (name: string | RegExp) => page.getByRole('button', { name }).first().click();
    await page.getByRole('button', { name: 'Start empty' }).waitFor();
    await page.keyboard.press('Control+o');
    await settled(page);
    await page.keyboard.press('c');
    await page.keyboard.press('r');
    await expect.poll(() => page.locator('[data-near]').count()).toBe(8);
    await unfold(page);
    await look('options');
    expect(await page.locator('.whose').textContent()).toContain('[U+202E][U+001B]');

    await page.keyboard.press('Alt+1');
    for (const index of [1, 0]) {
      await page.locator('main.machine').waitFor();
      await page.locator('[name="pick.machine"]').selectOption({ index });
      await unfold(page);
      await look(`machine ${index}`);
    }
    expect(await page.locator('[data-place="machines.0.name"]').inputValue()).toContain('\u202E');
    await page.keyboard.press('F1');
    await page.locator('.help').waitFor();
    await look('help');
    await page.keyboard.press('F1');

    await page.keyboard.press('Alt+2');
    for (const index of [2, 1, 0]) {
      await page.locator('[name="pick.material"]').selectOption({ index });
      await look(`material ${index}`);
    }
    await press('Paste a list of materials');
    await page
      .getByRole('textbox', { name: 'The list' })
      .fill('Material,Mix ratio,Basis\nX\u202E\u001BY,100:40,volume\nZ\u2066,100:41,m\u202Eass');
    await page.getByRole('region', { name: 'Faults' }).locator('tbody tr').first().waitFor();
    await look('list of materials');

    await page.keyboard.press('Alt+4');
    await expect.poll(() => page.locator('.said').textContent()).toContain('ratios from');
    await page.getByRole('textbox', { name: 'Window from' }).fill('1');
    await page.getByRole('textbox', { name: 'Window to' }).fill('5');
    await expect.poll(() => page.locator('.said').textContent()).toContain('from 1 to 5');
    await page.getByRole('textbox', { name: 'Teeth to buy' }).fill('13 to 40');
    await press(/^What closes it above/);
    await press('Plan purchases');
    await expect.poll(() => page.locator('.plan').count()).toBeGreaterThan(0);
    await unfold(page);
    await look('reach');
    await press(/^Make the quote page/);
    await page.getByRole('textbox', { name: 'For (customer)' }).fill('Q\u202E\u001B');
    await press('Keep this quote');
    await page.locator('[data-quote]').waitFor();
    await look('quote page');

    await page.keyboard.press('Alt+5');
    await page.locator('.paper-holder').waitFor();
    await press(/^Read sheet/);
    await look('sheet');

    await page.keyboard.press('Alt+6');
    await page.locator('main.check').waitFor();
    await unfold(page);
    await look('ratio check');
    await press(/^Read the ratio check/);
    await unfold(page);
    await look('a kept check');

    await renameMachine(page, 'Mine\u202E\u001B');
    writeFileSync(file, readFileSync(file, 'utf8').replace('Bench 2', 'Their bench'));
    await page.keyboard.press('Control+s');
    await page.getByRole('dialog').waitFor();
    await look('a file that somebody else changed');
    await press('Go back');
    await page.keyboard.press('Control+o');
    await page.getByRole('dialog').waitFor();
    await look('a question');
  } finally {
    await app.close();
  }
});
