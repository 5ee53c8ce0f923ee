import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/index.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { launchDemo, tabTo } from './journey.ts';

let browser: Browser;
let app: Launched;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-machine-'));
const field = (page: Page, place: string) => page.locator(`[data-place="machines.0.${place}"]`);
const openAll = (page: Page) =>
  page.evaluate(() => {
    for (const block of document.querySelectorAll('details')) block.open = true;
  });

/** Opens a closed group of fields by keyboard alone. */
async function openGroup(page: Page, group: string): Promise<void> {
  for (let steps = 0; steps < 120; steps += 1) {
    const here = await page.evaluate(() => document.activeElement?.closest('summary')?.parentElement?.dataset.group);
    if (here === group) return page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached the group ${group}`);
}

async function type(page: Page, entries: readonly (readonly [string, string])[]): Promise<void> {
  for (const [place, text] of entries) {
    await tabTo(page, `machines.0.${place}`);
    await page.keyboard.press('Control+a');
    await page.keyboard.type(text);
  }
}

async function savedText(page: Page, file: string): Promise<string> {
  await page.keyboard.press('Control+s');
  await expect.poll(() => page.locator('nav small').first().textContent()).toContain('· saved');
  return readFileSync(file, 'utf8');
}

async function demoMachine(choices: Parameters<typeof launch>[1] = {}): Promise<Page> {
  app = await launchDemo(browser, choices, 'Alt+1');
  await app.page.locator('main.machine').waitFor();
  return app.page;
}

/** Invented figures, in the order of the page. */
const TYPED: readonly (readonly [group: string, entries: readonly (readonly [string, string])[]])[] = [
  [
    'wanted',
    [
      ['wantedShot', '400 g in 6 s'],
      ['batch.amount', '60 kg'],
    ],
  ],
  [
    'load',
    [
      ['A.pressure', '28'],
      ['B.pressure', '200 psi'],
      ['A.mechanicalEfficiency', '0.88'],
      ['B.mechanicalEfficiency', '85 %'],
      ['serviceFactor', '1,3'],
    ],
  ],
  [
    'tanks',
    [
      ['A.tank.fill', '40'],
      ['B.tank.fill', '20'],
      ['A.tank.lowMark', '6'],
      ['B.tank.lowMark', '4'],
      ['mixerVolume', '35'],
    ],
  ],
  [
    'work',
    [
      ['minutes.sprocket', '15'],
      ['catchTurns', '30'],
    ],
  ],
  [
    'pump',
    [
      ['A.pumps.0.pressureLimit', '100'],
      ['A.pumps.0.measuredDelivery', '98.5 +- 0.4'],
      ['A.pumps.0.newDelivery', '99.5'],
      ['A.pumps.0.leastDelivery', '95'],
      ['A.pumps.0.gear.teeth', '12'],
      ['A.pumps.0.gear.module', '2'],
      ['A.pumps.0.gear.faceWidth', '1/2 in'],
    ],
  ],
];

test('flow, load, tanks, work and pump details are typed by keyboard alone and stand in the saved file as typed', async () => {
  const file = path.join(folder, 'typed.ratiowright');
  app = await launch(browser, { save: [file] });
  const { page } = app;
  await page.getByRole('button', { name: 'Start empty' }).waitFor();
  await page.keyboard.press('n');
  await expect.poll(() => field(page, 'motor.speed').count()).toBe(1);
  expect(await page.locator('details.fold summary').allTextContents()).toEqual([
    'Wanted: nothing given',
    'Load: nothing given',
    'Tanks and mixer: nothing given',
    'Work: starting values',
    'Own checklist: no lines of your own',
    'More on pump 1 of A: nothing given',
    'More on pump 1 of B: nothing given',
  ]);
  await type(page, [['motor.ratedTorque', '45']]);
  for (const [group, entries] of TYPED) {
    await openGroup(page, group);
    await type(page, entries);
  }
  expect(await page.locator('[data-group="load"] summary').textContent()).toBe(
    'Load: 28 bar and 200 psi, efficiency 0.88 and 85 %, service factor 1,3',
  );
  const [machine] = shop(await savedText(page, file)).machines;
  expect(machine?.motor).toEqual({ ratedTorque: of('45', 'N m') });
  expect(machine).toMatchObject({
    wantedShot: { amount: of('400', 'g'), time: of('6', 's') },
    batch: { of: 'mix', amount: of('60', 'kg') },
    A: { pressure: of('28', 'bar'), mechanicalEfficiency: of('0.88', ''), tank: { fill: of('40', 'L'), lowMark: of('6', 'L') } },
    B: { pressure: of('200', 'psi'), mechanicalEfficiency: of('85', '%'), tank: { fill: of('20', 'L'), lowMark: of('4', 'L') } },
    serviceFactor: of('1,3', ''),
    mixerVolume: of('35', 'cc'),
    minutes: { sprocket: of('15', 'min') },
    catchTurns: 30,
  });
  expect(machine?.A.pumps[0]).toEqual({
    id: 'a1',
    pressureLimit: of('100', 'bar'),
    gear: { teeth: 12, module: of('2', 'mm'), faceWidth: of('1/2', 'in') },
    measuredDelivery: { value: of('98.5', '%'), uncertainty: of('0.4', '%') },
    newDelivery: of('99.5', '%'),
    leastDelivery: of('95', '%'),
  });

  // One step of undo for each field, though each was typed letter by letter.
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await field(page, 'A.pumps.0.gear.faceWidth').inputValue()).toBe('');
  expect(await field(page, 'A.pumps.0.gear.module').inputValue()).toBe('2');
});

describe('an entry that cannot be kept', () => {
  test('says its limit, stays in its box, and the last good value stays in the file, also behind a closed group', async () => {
    const file = path.join(folder, 'refused.ratiowright');
    const page = await demoMachine({ save: [file] });
    await openAll(page);
    const told = async (place: string, text: string): Promise<string | null> => {
      await field(page, place).fill(text);
      expect([await field(page, place).inputValue(), await field(page, place).getAttribute('aria-invalid')]).toEqual([text, 'true']);
      return page.locator(`.field:has([data-place="machines.0.${place}"]) .hint`).textContent();
    };
    expect(await told('serviceFactor', '0.9')).toBe('0.9 is out of range: it must be at least 1');
    expect(await told('A.mechanicalEfficiency', '88')).toBe('88 is out of range: it must be at most 100 %');
    expect(await told('A.pressure', '28 L')).toContain('is not a number with a unit known here');
    expect(await told('batch.amount', '60')).toContain('Expected a number with its unit');
    expect(await told('wantedShot', '400 g in 6 s')).toBe('a flow is given, which says the same: empty that box first');
    await field(page, 'A.pumps.0.gear.module').fill('2');
    expect(await told('A.pumps.0.gear.teeth', '')).toBe('the other figures of the gear need its teeth: empty them first');

    await page.locator('[data-group="load"] summary').click();
    const said = await page.locator('[data-group="load"] summary').evaluate((summary) => getComputedStyle(summary, '::after').content);
    expect(said).toContain('cannot be read');

    const [machine] = shop(await savedText(page, file)).machines;
    expect([machine?.serviceFactor, machine?.A.mechanicalEfficiency, machine?.A.pressure, machine?.batch, machine?.wantedShot]).toEqual([
      of('1.3', ''),
      of('0.88', ''),
      of('28', 'bar'),
      undefined,
      undefined,
    ]);
    expect(machine?.A.pumps[0]?.gear).toEqual({ teeth: 12, module: of('2', 'mm') });
  });

  test('what a batch is of is kept while its amount is typed anew', async () => {
    const page = await demoMachine();
    await openAll(page);
    await field(page, 'batch.amount').fill('60 kg');
    await field(page, 'batch.of').selectOption('A');
    await field(page, 'batch.amount').fill('');
    await field(page, 'batch.amount').fill('45 L');
    expect(await page.locator('[data-group="wanted"] summary').textContent()).toBe('Wanted: 1000 cc/min, batch 45 L of A');
  });
});

test('a finding about a field in a closed group opens it and puts the cursor there', async () => {
  const twice = path.join(folder, 'twice.ratiowright');
  const json = JSON.parse(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  json.machines[0].wantedShot = { amount: of('400', 'g'), time: of('6', 's') };
  writeFileSync(twice, JSON.stringify(json));
  const page = await demoMachine({ open: [twice] });
  await page.keyboard.press('Control+o');
  const finding = page.getByRole('button', { name: 'A wanted flow and a wanted shot say the same thing twice' });
  await finding.waitFor();
  expect(await page.locator('[data-group="wanted"]').getAttribute('open')).toBeNull();
  await finding.click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-place'))).toBe('machines.0.wantedShot');
  expect(await field(page, 'wantedShot').isVisible()).toBe(true);
});

test('the shop’s own lines: usual ones added once, typed, moved with the cursor, removed, and saved in their order', async () => {
  const file = path.join(folder, 'lines.ratiowright');
  const page = await demoMachine({ save: [file] });
  await openAll(page);
  await page.getByRole('button', { name: 'Add a line' }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-place'))).toBe('machines.0.checklist.0');
  await page.keyboard.type('Photo to the line lead.');
  await page.getByRole('button', { name: 'Add the usual lines' }).click();
  const status = page.locator('[data-group="checklist"] [role="status"]');
  expect(await status.textContent()).toBe('5 usual lines added.');
  expect(await page.locator('[data-group="checklist"]').textContent()).toContain('The sheet has room for 6 lines');
  await page.getByRole('button', { name: 'Add the usual lines' }).click();
  expect(await status.textContent()).toBe('All usual lines are there already.');
  await page.getByRole('button', { name: 'Move line 1 down' }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-place'))).toBe('machines.0.checklist.1');
  await page.getByRole('button', { name: 'Remove line 6' }).click();
  const lines = shop(await savedText(page, file)).machines[0]?.checklist;
  expect([lines?.length, lines?.[1]]).toEqual([5, 'Photo to the line lead.']);
});

describe('with every group open', () => {
  for (const scheme of ['light', 'dark'] as const) {
    test(`${scheme}: axe-core finds nothing`, async () => {
      const page = await demoMachine();
      await page.emulateMedia({ colorScheme: scheme });
      await openAll(page);
      await page.getByRole('button', { name: 'Add the usual lines' }).click();
      await page.evaluate(axe.source);
      const found = await page.evaluate(async () => {
        const runner = (window as unknown as { axe: typeof axe }).axe;
        return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
      });
      expect(found).toEqual([]);
    });
  }

  // 640 × 400 is what a window of 1280 × 800 holds at 200 %.
  for (const [width, height] of [
    [640, 900],
    [640, 400],
    [1280, 800],
  ] as const) {
    test(`${width} × ${height}: nothing is cut off sideways, every box is 36 px high, nothing lengthens a window that scrolls inside`, async () => {
      const page = await demoMachine();
      await page.setViewportSize({ width, height });
      await openAll(page);
      const seen = await page.evaluate(() => {
        const root = document.documentElement;
        const boxes = [...document.querySelectorAll('.fold input, .fold select, .fold button, .fold summary')];
        const table = (element: Element) => element.closest('.scrollx') !== null;
        return {
          wide: root.scrollWidth > root.clientWidth,
          outside: boxes.filter((box) => !table(box) && box.getBoundingClientRect().right > root.clientWidth).length,
          low: boxes.filter((box) => box.getBoundingClientRect().height < 36).map((box) => box.outerHTML.slice(0, 80)),
          long: root.scrollHeight > root.clientHeight,
        };
      });
      expect(seen).toEqual({ wide: false, outside: 0, low: [], long: width < 1000 });
    });
  }
});

function of(value: string, unit: string) {
  return { value, unit };
}

function shop(text: string) {
  const outcome = readShopFile(text);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
  return outcome.value;
}
