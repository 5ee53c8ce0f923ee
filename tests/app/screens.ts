import { copyFileSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { expect } from 'vitest';
import { type Launched, launch } from '../harness/launch.ts';
import { launchDemo, openOffered, renameMachine, settled } from './journey.ts';

// Every page, panel and question of the window, as full as the invented example makes it.

const DEMO = path.resolve(import.meta.dirname, '../examples/demo.ratiowright');
const FIRST_CATCHES = [
  ['244.6', '101.9'],
  ['244.1', '101.6'],
  ['244.4', 'heavy'],
] as const;

type Opener = (browser: Browser) => Promise<Launched>;

/** A page of the invented example by its key, and what is opened on it. */
function demo(key: string | null, main: string, more: (page: Page) => Promise<void> = async () => undefined): Opener {
  return async (browser) => {
    const app = await launchDemo(browser, {}, key);
    await app.page.locator(main).waitFor();
    await more(app.page);
    return app;
  };
}

const press = (page: Page, name: string | RegExp) =>
  page
    .getByRole('button', { name, exact: typeof name === 'string' })
    .first()
    .click();

/** Opens all that is folded, twice over, as what was folded may hold folds of its own. */
async function unfold(page: Page): Promise<void> {
  for (let turn = 0; turn < 2; turn += 1)
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('main details')) if (fold instanceof HTMLDetailsElement) fold.open = true;
    });
}

async function window1to5(page: Page): Promise<void> {
  await expect.poll(() => page.locator('.said').textContent()).toContain('ratios from');
  await page.getByRole('textbox', { name: 'Window from' }).fill('1');
  await page.getByRole('textbox', { name: 'Window to' }).fill('5');
  await expect.poll(() => page.locator('.said').textContent()).toContain('from 1 to 5');
}

async function catches(page: Page): Promise<void> {
  await page.locator('[data-place="unfinishedChecks.0.catches.0.A.net"]').focus();
  for (const text of FIRST_CATCHES.flat()) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  await expect.poll(() => page.locator('[data-cause]').count()).toBe(8);
}

/** The file somebody else changed in the meantime, here and there what is changed here too. */
const theirs: Opener = async (browser) => {
  const file = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-screens-')), 'bench.ratiowright');
  copyFileSync(DEMO, file);
  const app = await launch(browser, { open: [file] });
  await openOffered(app.page, 'bench.ratiowright');
  await renameMachine(app.page, 'Mine');
  writeFileSync(file, readFileSync(file, 'utf8').replace('"Bench 1"', '"Theirs"').replace('"Bench 2"', '"Their bench"'));
  await app.page.keyboard.press('Control+s');
  await app.page.getByRole('dialog').waitFor();
  return app;
};

/** Work that a crash left behind. */
const left: Opener = async (browser) => {
  const before = await launchDemo(browser);
  await renameMachine(before.page, 'Left');
  const { userData } = before.stage;
  await expect.poll(() => before.stage.log.filter(([what, call]) => what === 'invoke' && call === 'autosave').length).toBeGreaterThan(0);
  await before.close();
  const app = await launch(browser, { userData });
  await app.page.getByRole('dialog').waitFor();
  return app;
};

export const SCREENS: Readonly<Record<string, Opener>> = {
  'the start': async (browser) => {
    const app = await launch(browser);
    await app.page.getByRole('button', { name: 'Start empty' }).waitFor();
    return app;
  },
  'the machine, every group open': demo('Alt+1', 'main.machine', async (page) => {
    await unfold(page);
    await press(page, 'Add the usual lines');
    await page.locator('[data-place="machines.0.motor.speed"]').fill('fast');
  }),
  'the material': demo('Alt+2', 'main.material', unfold),
  'the material, from chemistry': demo('Alt+2', 'main.material', async (page) => {
    await page.locator('[name="pick.material"]').selectOption({ index: 1 });
    await page.locator('[data-place="materials.1.chemistry.index"]').waitFor();
    await unfold(page);
  }),
  'a list of materials': demo('Alt+2', 'main.material', async (page) => {
    await press(page, 'Paste a list of materials');
    await page
      .getByRole('textbox', { name: 'The list' })
      .fill('Material,Mix ratio,Basis\nInvented 1,100:40,volume\nInvented 2,100:41,mass\nInvented 3,1:1,weight');
    await page.getByRole('region', { name: 'Faults' }).locator('tbody tr').first().waitFor();
  }),
  'the options': demo(null, 'main.options'),
  'the options, all unfolded': demo(null, 'main.options', async (page) => {
    await press(page, /Compare/);
    await unfold(page);
  }),
  'the options, a ratio tried': demo(null, 'main.options', async (page) => {
    await page.keyboard.press('r');
    await page.locator('.tried input').first().fill('100 : 42');
    await expect.poll(() => page.locator('[data-near]').count()).toBe(8);
  }),
  'the reach, purchases planned': demo('Alt+4', 'main.reach', async (page) => {
    await window1to5(page);
    await page.getByRole('textbox', { name: 'Teeth to buy' }).fill('13 to 40');
    await press(page, /^What closes it above/);
    await page.locator('.prices summary').click();
    await press(page, 'Plan purchases');
    await expect.poll(() => page.locator('.plan').count()).toBe(2);
  }),
  'the quote page': demo('Alt+4', 'main.reach', async (page) => {
    await window1to5(page);
    await press(page, /^Make the quote page/);
    await page.locator('.paper-holder').waitFor();
    await press(page, 'Keep this quote');
    await page.locator('[data-quote]').waitFor();
  }),
  'the sheet': demo('Alt+5', '.paper-holder', unfold),
  'the ratio check': demo('Alt+6', 'main.check'),
  'a ratio check being typed': demo('Alt+6', 'main.check', async (page) => {
    await catches(page);
    await page.locator('[data-catch="1"] .acts button').first().click();
    await unfold(page);
  }),
  'a kept ratio check': demo('Alt+6', 'main.check', async (page) => {
    await press(page, 'Read the ratio check of 2026-11-09');
    await unfold(page);
  }),
  'the record of a ratio check': demo('Alt+6', 'main.check', async (page) => {
    await press(page, 'Read the ratio check of 2026-11-09');
    await press(page, 'Print check record');
    await page.locator('.paper-holder').waitFor();
  }),
  'help of a box': demo('Alt+1', 'main.machine', async (page) => {
    await page.locator('[data-place="machines.0.motor.speed"]').focus();
    await page.keyboard.press('F1');
    await page.locator('.help').waitFor();
  }),
  'help, its words, and the first change': demo('Alt+1', 'main.machine', async (page) => {
    await page.keyboard.press('F1');
    await page.locator('.help').waitFor();
    await press(page, /^First change/);
    await page.locator('.walk').waitFor();
    await page.locator('.help').getByRole('button', { name: 'Words' }).click();
  }),
  'help, the keys': demo(null, 'main.options', async (page) => {
    await page.keyboard.press('F1');
    await page.locator('.help').getByRole('button', { name: 'Keys' }).click();
  }),
  'a question': demo('Alt+1', 'main.machine', async (page) => {
    await renameMachine(page, 'Mine');
    await page.keyboard.press('Control+o');
    await page.getByRole('dialog').waitFor();
  }),
  'work left by a crash': left,
  'a file that somebody else changed': theirs,
  'about and licences': demo(null, 'main.options', async (page) => {
    await press(page, 'About and licences');
    await page.getByRole('dialog').waitFor();
  }),
};

/** What axe-core finds on the page, or in a part of it; evaluated by the test driver, so the page's own content policy stays in force. */
export async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const runner = (window as unknown as { axe: typeof axe }).axe;
    return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
  });
}

export { settled };
