import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo } from './journey.ts';

let browser: Browser;
let app: Launched;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

/** The Reach page of the demo, from 1 to 5. */
async function opened(): Promise<void> {
  app = await launch(browser);
  page = app.page;
  await openDemo(page);
  await page.keyboard.press('Alt+4');
  await low().waitFor();
  await expect.poll(said).toContain('ratios from');
  await low().fill('1');
  await high().fill('5:1');
  await expect.poll(said).toContain('from 1 to 5 : 1');
}
const low = () => page.getByRole('textbox', { name: 'Window from' });
const high = () => page.getByRole('textbox', { name: 'Window to' });
const said = async () => ((await page.locator('.said').textContent()) ?? '').replaceAll('\u00A0', ' ');
const strokes = () => page.locator('.reachsvg .strokes').getAttribute('d');
const gapsDrawn = () => page.locator('.reachsvg [data-gap]').count();
const rule = () => page.locator('.hold');

test('the demo: how many ratios, how much of the window, the worst target, and the gaps in drawing and table alike', async () => {
  await opened();
  expect(await said()).toContain('191 ratios from 1 to 5 : 1 by volume; 95.42 % of that window lies within ± 2 % of one of them.');
  expect(await said()).toContain('The worst is 5 : 1, which 14 : 3 (4.6667 : 1) makes 7.14 % B-rich; nothing higher can be built.');
  const rows = page.locator('.gaps tbody tr');
  expect(await rows.count()).toBe(await gapsDrawn());
  expect(((await rows.first().textContent()) ?? '').replaceAll('\u00A0', ' ')).toContain('above 4.6667, the largest5 : 17.14 %');
  expect(await page.locator('.reachsvg').first().getAttribute('aria-label')).toContain('191 ratios from 1 to 5 : 1');
});

test('materials stand as flags, with limits and best option, and in a table', async () => {
  await opened();
  await expect.poll(() => page.locator('[data-material]').filter({ hasText: 'B-' }).count()).toBe(3);
  expect(await page.locator('[data-flag]').evaluateAll((flags) => flags.map((flag) => flag.getAttribute('data-flag')))).toEqual([
    'e12',
    'u40',
    'l5',
  ]);
  expect(await page.locator('[data-flag="e12"] .limit').count()).toBe(2);
  expect(await page.locator('[data-flag="e12"] .best').count()).toBe(1);
  const e12 = ((await page.locator('[data-material="e12"]').textContent()) ?? '').replaceAll('\u00A0', ' ');
  expect(e12).toContain('50 : 23 = 2.17390.07 % B-lean inside−1.76 to +1.61 % inside with margin23 to 25');
  expect(await page.locator('[data-words="l5"]').textContent()).toContain('7.14\u00A0% B-rich, outside');
});

test('zooming by wheel keeps the ratio under the hand, dragging moves it, and the figures follow', async () => {
  await opened();
  const before = await strokes();
  const box = await rule().boundingBox();
  if (box === null) throw new Error('no rule');
  // A tenth in from the left end.
  await page.mouse.move(box.x + box.width * 0.1, box.y + box.height / 2);
  // Whoever scrolls past the rule does not change the window that was typed: it takes the wheel once it has the cursor.
  await page.mouse.wheel(0, -300);
  await page.evaluate(() => new Promise(requestAnimationFrame));
  expect([await low().inputValue(), await high().inputValue()]).toEqual(['1', '5:1']);
  await rule().focus();
  await page.mouse.wheel(0, -300);
  await expect.poll(() => low().inputValue()).not.toBe('1');
  const [from, to] = [Number(await low().inputValue()), Number(await high().inputValue())];
  expect(from * (to / from) ** 0.1).toBeCloseTo(5 ** 0.1, 2);
  expect(await strokes()).not.toBe(before);
  await expect.poll(said).toContain(`from ${from} to ${to} : 1`);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.3, box.y + box.height / 2, { steps: 5 });
  await page.mouse.up();
  // To the right by a fifth of the width: what was under the hand still is, so there is more B at the left.
  const moved = Number(await low().inputValue());
  expect(moved).toBeCloseTo(from * (to / from) ** -0.2, 2);
  await expect.poll(said).toContain(`from ${moved} to`);
});

test('by keyboard: arrows move, plus and minus zoom, Home shows all that can be built', async () => {
  await opened();
  await rule().focus();
  await page.keyboard.press('ArrowRight');
  expect(Number(await low().inputValue())).toBeCloseTo(5 ** 0.1, 3);
  await page.keyboard.press('+');
  const [from, to] = [Number(await low().inputValue()), Number(await high().inputValue())];
  expect(Math.log(to / from)).toBeCloseTo(Math.log(5) / 1.25, 2);
  await page.keyboard.press('Home');
  await expect.poll(said).toContain('from 0.8 to 5 : 1');
  expect([await low().inputValue(), await high().inputValue()]).toEqual(['0.8', '5']);
});

test('a tolerance changes gaps and share; what cannot be read says what was expected and changes nothing', async () => {
  await opened();
  const tolerance = page.getByRole('textbox', { name: /^Tolerance/ });
  await tolerance.fill('8');
  await expect.poll(said).toContain('all of that window lies within ± 8 %');
  expect(await page.locator('.gaps tbody').textContent()).toBe('There is none.');
  expect(await gapsDrawn()).toBe(0);
  const before = await said();
  await high().fill('0,5');
  expect(await page.locator('.windowfields').textContent()).toContain('The first must be smaller than the second.');
  await high().fill('wide');
  expect(await high().getAttribute('aria-invalid')).toBe('true');
  expect(await said()).toBe(before);
});

test('the window stays while other pages are looked at, and belongs to the machine that is picked', async () => {
  await opened();
  await page.keyboard.press('Alt+1');
  await page
    .getByRole('combobox', { name: /^machine/i })
    .first()
    .selectOption({ index: 1 });
  await page.keyboard.press('Alt+4');
  await expect.poll(said).toContain('from 1 to 5 : 1');
  expect(await said()).not.toContain('191 ratios');
  expect(await page.locator('.whose').textContent()).toContain('Bench 2');
});

test('an answer that comes while the cursor is in an end of the window waits until it has left', async () => {
  app = await launch(browser);
  page = app.page;
  await openDemo(page);
  await page.keyboard.press('Alt+1');
  // half of what it was, so that ratios twice as large come within reach
  await page.locator('[data-place="machines.0.B.pumps.0.displacement"]').first().fill('3');
  await page.keyboard.press('Alt+4');
  await expect.poll(said).toContain('the largest 28 : 3');
  await high().focus();
  expect(await high().inputValue()).toBe('10');
  app.menuClick('Edit', 'Undo');
  await expect.poll(said).toContain('the largest 14 : 3');
  expect(await high().inputValue()).toBe('10');
  await page.keyboard.press('Tab');
  expect(await high().inputValue()).toBe('5');
  await high().focus();
  await page.keyboard.press('End');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('x');
  app.menuClick('Edit', 'Redo');
  await expect.poll(said).toContain('the largest 28 : 3');
  await page.keyboard.press('Tab');
  // what cannot be read is not lost
  expect(await high().inputValue()).toBe('x');
  await high().fill('7');
  await expect.poll(said).toContain('to 7 : 1 by volume');
});

test('at 320 px the words beneath the ratio band lie within the window and apart', async () => {
  await opened();
  await page.setViewportSize({ width: 320, height: 700 });
  const words = page.locator('.band .key span').filter({ hasText: /./ });
  const boxes = await words.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
  expect(boxes.length).toBe(2);
  for (const { left, right } of boxes) expect([left >= 0, right <= 320]).toEqual([true, true]);
  expect(boxes[1]?.top).toBeGreaterThanOrEqual(boxes[0]?.bottom ?? Number.NaN);
});

test('at 320 px only the tables scroll sideways', async () => {
  await opened();
  await page.setViewportSize({ width: 320, height: 700 });
  const beyond = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('main.reach, .windowfields input, .works, .said, .hold, .reachrule button, .scrollx')]
        .filter((element) => element.getBoundingClientRect().right > 321 || element.getBoundingClientRect().left < -1)
        .map((element) => element.className),
    );
  await expect.poll(beyond).toEqual([]);
});
