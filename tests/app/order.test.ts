// The order of the list: by its control and by its letter, what is folded away, and that the headless command prints the same.
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { examples, ratiowright } from '../cli/run.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { launchDemo, openOffered, settled } from './journey.ts';

let browser: Browser;
let app: Launched;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

const ORDERS = ['closest', 'least work', 'trade-off'] as const;
const control = (page: Page, order: string) => page.getByRole('radio', { name: order, exact: true });
const checked = (page: Page) =>
  page
    .locator('fieldset.order')
    .locator('label', { has: page.locator(':checked') })
    .textContent();

/** The rows of the ordered list: number, teeth, off-ratio in %, minutes, how many stand folded under it. Blocked rows have no figures. */
const rows = (page: Page) =>
  page.locator('.optiontable tr[data-key^="line-"]:not(.blocked)').evaluateAll((all) =>
    all.map((row) => {
      const cells = [...row.querySelectorAll('td')].map((cell) => (cell.textContent ?? '').replaceAll('\u00a0', ' '));
      const off = cells.find((cell) => / % B-|exact/.test(cell)) ?? '';
      const fold = row.nextElementSibling?.classList.contains('fold') ? (row.nextElementSibling.textContent ?? '') : '';
      return {
        number: (cells[0] ?? '').replace('–', '-'),
        teeth: cells.filter((cell) => /^\d+ to \d+$/.test(cell)).join(', '),
        offRatio: Number.parseFloat(off),
        minutes: Number(cells[cells.indexOf(off) + 2]),
        under: Number.parseInt(/\d+/.exec(fold)?.[0] ?? '0', 10),
        inside: !/outside/.test(off),
      };
    }),
  );

function printed(order: string, ...choice: readonly string[]) {
  const { out } = ratiowright('options', ...choice, '--order', order.replace(' ', '-'), '--rows', '200');
  return [...out.matchAll(/^(\d+|-) +((?:\d+ to \d+(?:, )?)+) .*?(?:(\d+) dominated)?$/gm)].map(([, number, teeth, under = '0']) => ({
    number,
    teeth,
    under: Number(under),
  }));
}

async function showAll(page: Page): Promise<void> {
  const more = page.getByRole('button', { name: /^Show all/ });
  if ((await more.count()) > 0) await more.click();
  await expect.poll(() => more.count()).toBe(0);
}

async function demo(): Promise<Page> {
  app = await launchDemo(browser);
  return app.page;
}

test.each([['demo.ratiowright', '--machine', 'bench-1', '--material', 'e12'], ['three-pair.ratiowright'], ['four-gear.ratiowright']])(
  '%s: in each order, chosen by the control, the rows are those of the headless command',
  async (file, ...choice) => {
    app = await launch(browser, { open: [path.join(examples, file)] });
    const { page } = app;
    await openOffered(page, file);
    await page.keyboard.press('Alt+3');
    await settled(page);
    for (const order of [...ORDERS].reverse()) {
      await control(page, order).check();
      await showAll(page);
      const expected = printed(order, file, ...choice).slice(0, 200);
      expect(expected.length, order).toBeGreaterThan(3);
      const shown = (await rows(page)).slice(0, 200);
      expect(
        shown.map(({ number, teeth, under }) => ({ number, teeth, under })),
        order,
      ).toEqual(expected);
    }
  },
);

test('O goes from order to order and round again, also from the control itself; in a box it is a letter', async () => {
  const page = await demo();
  expect(await checked(page)).toBe('closest');
  const heads: (string | null)[] = [];
  for (const order of ['least work', 'trade-off', 'closest']) {
    await page.keyboard.press('o');
    expect(await checked(page)).toBe(order);
    heads.push(await page.locator('.optiontable tr.grp').last().locator('th').textContent());
  }
  expect(new Set(heads).size).toBe(3);
  // One sprocket 12 min, one chain length 10, one centre 3 [added by hand from the minutes of the file]; two sprockets make 37.
  expect((await rows(page))[0]).toMatchObject({ number: '1', teeth: '23 to 25', minutes: 37 });
  await control(page, 'closest').focus();
  await page.keyboard.press('o');
  expect((await rows(page))[0]).toMatchObject({ number: '5', teeth: '21 to 23', minutes: 25 });
  await page.keyboard.press('t');
  await page.keyboard.type('o');
  expect([await page.locator('#try-teeth').inputValue(), await checked(page)]).toEqual(['o', 'least work']);
});

test('what the trade-off folds away takes no less time and is no closer; it unfolds by mouse and by keyboard', async () => {
  const page = await demo();
  await control(page, 'trade-off').check();
  const front = await rows(page);
  expect(front.slice(0, 3).map(({ number, minutes }) => [number, minutes])).toEqual([
    ['5', 25],
    ['3', 27],
    ['1', 37],
  ]);
  const folds = page.locator('.optiontable tr.fold button');
  expect(await folds.count()).toBe(front.filter(({ under }) => under > 0).length);
  for (const unfold of [() => folds.first().click(), () => folds.first().press('Enter')]) {
    await unfold();
    expect(await folds.first().getAttribute('aria-expanded')).toBe('true');
    await expect.poll(async () => (await rows(page)).length).toBe(front.length + (front[0]?.under ?? 0));
    await folds.first().press('Enter');
    expect(await rows(page)).toEqual(front);
  }
  for (const fold of await folds.all()) await fold.click();
  await expect.poll(async () => (await rows(page)).length).toBe(front.reduce((sum, { under }) => sum + 1 + under, 0));
  // Dominated: better in neither and no further outside the limits than what it stands under [definition of Pareto dominance].
  let [head] = front;
  for (const row of await rows(page)) {
    if (front.some(({ teeth }) => teeth === row.teeth)) head = row;
    expect(row.minutes, row.teeth).toBeGreaterThanOrEqual(head?.minutes ?? Number.NaN);
    if (row.inside === head?.inside) expect(row.offRatio, row.teeth).toBeGreaterThanOrEqual(head.offRatio);
    else expect(row.inside, row.teeth).toBe(false);
  }
});

test('what is chosen stays chosen through every order, and the order stays when the page is left', async () => {
  const page = await demo();
  await page.locator('[data-rank="3"]').click();
  const chosen = () => page.locator('.optiontable [aria-selected="true"]').getAttribute('data-ratio');
  for (const order of ORDERS) {
    await control(page, order).check();
    expect([order, await chosen()]).toEqual([order, '54/25']);
  }
  for (const key of ['Alt+2', 'Alt+3']) await page.keyboard.press(key);
  expect([await checked(page), await chosen()]).toEqual(['trade-off', '54/25']);
});
