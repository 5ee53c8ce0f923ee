import type { Browser, Page } from 'playwright-core';
import { MOST_STEPS } from '../../../core/src/triedRatio.ts';
import { BIG_SHOP_NAME, bigShop } from './bigShop.ts';
import { watch } from './watch.ts';

const STEPS = 120;

/** What is dragged, the keys that lead to it, and what it holds on the way. */
interface Dragged {
  readonly what: string;
  readonly keys: readonly string[];
  readonly box: string;
  readonly values: readonly string[];
}
const on = (value: (share: number) => string): readonly string[] => Array.from({ length: STEPS }, (_, i) => value(i / STEPS));
export const DRAGGED: readonly Dragged[] = [
  {
    what: 'the slide of "Try a ratio"',
    keys: ['Alt+3', 'r'],
    box: '.tried input[type=range]',
    values: on((share) => String(Math.round(MOST_STEPS * (2 * share - 1)))),
  },
  {
    what: "the material's own ratio",
    keys: ['Alt+2'],
    box: '[data-place="materials.0.ratio.parts"]',
    values: on((share) => `100 : ${(30 + 30 * share).toFixed(2)}`),
  },
];
const MOST_MS = 60_000;

export interface Dragging {
  readonly what: string;
  readonly steps: number;
  /** null: none of 50 ms or more */
  readonly longestTask_ms: number | null;
  /** from the last step to the answer of the search for it; null: none within a minute */
  readonly answered_ms: number | null;
  /** between two frames that were drawn */
  readonly longestFrame_ms: number;
}

/** The target dragged on the large shop, a new value each frame. */
export async function dragging(browser: Browser, address: string, { what, keys, box, values }: Dragged): Promise<Dragging> {
  const context = await browser.newContext();
  const page = await context.newPage();
  // without pickers of its own the page uploads
  await page.addInitScript(() => Object.assign(window, { showOpenFilePicker: undefined }));
  await watch(page, false);
  await page.goto(address);
  await openBigShop(page);
  await page.waitForFunction(() => window.usable_ms, undefined, { timeout: MOST_MS });
  for (const key of keys) await page.keyboard.press(key);
  await page.locator(box).waitFor();
  await page.evaluate(() => void window.longTasks_ms.splice(0));
  const dragged = await page.evaluate(drag, { box, values, most_ms: MOST_MS });
  const tasks_ms = await page.evaluate(() => window.longTasks_ms);
  await context.close();
  return { what, steps: values.length, longestTask_ms: tasks_ms.length === 0 ? null : Math.max(...tasks_ms), ...dragged };
}

async function openBigShop(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Start empty' }).waitFor();
  const chooser = page.waitForEvent('filechooser');
  await page.keyboard.press('Control+o');
  await (await chooser).setFiles({ name: BIG_SHOP_NAME, mimeType: '', buffer: Buffer.from(bigShop()) });
  await page.locator('nav small', { hasText: BIG_SHOP_NAME }).waitFor();
}

interface Drag {
  readonly box: string;
  readonly values: readonly string[];
  readonly most_ms: number;
}

/** In the page: the next value into the box each frame, then the wait for what the last one finds. */
async function drag(how: Drag): Promise<Pick<Dragging, 'answered_ms' | 'longestFrame_ms'>> {
  const box = document.querySelector<HTMLInputElement>(how.box);
  if (box === null) throw new Error(`no ${how.box}`);
  const frame = () => new Promise<number>((then) => requestAnimationFrame(then));
  let longestFrame_ms = 0;
  let last_ms = await frame();
  for (const value of how.values) {
    box.value = value;
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
    const now_ms = await frame();
    longestFrame_ms = Math.max(longestFrame_ms, now_ms - last_ms);
    last_ms = now_ms;
  }
  const answered_ms = await new Promise<number | null>((then) => {
    window.addEventListener('searched', () => then(performance.now() - last_ms), { once: true });
    setTimeout(() => then(null), how.most_ms);
  });
  return { answered_ms, longestFrame_ms };
}
