import type { Browser, Page } from 'playwright-core';
import { usable_ms, watch } from './watch.ts';

const BOX = '[data-place="materials.0.ratio.parts"]';
const WARM_UP = 20;

export interface Heap {
  readonly searches: number;
  readonly before_MB: number;
  readonly after_MB: number;
  /** what the worker holds, where it can say so */
  readonly worker_MB: number | null;
}

/** What the page still holds after many searches of the example, all that nothing refers to having been given back. */
export async function heap(browser: Browser, address: string, searches: number): Promise<Heap> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await watch(page, true);
  await usable_ms(page, address);
  await page.keyboard.press('Alt+2');
  await page.locator(BOX).waitFor();
  await search(page, WARM_UP);
  const before_MB = await held_MB(page);
  await search(page, searches);
  const after_MB = await held_MB(page);
  const worker_MB = await workerHeld_MB(page);
  await context.close();
  return { searches, before_MB, after_MB, worker_MB };
}

/** Another ratio in the box, and on to the next once the search for it has ended: the page's own words say so. */
async function search(page: Page, times: number): Promise<void> {
  await page.evaluate(
    async ([selector, count]) => {
      const box = document.querySelector<HTMLInputElement>(selector);
      if (box === null) throw new Error(`no ${selector}`);
      for (let i = 0; i < count; i++) {
        const ended = new Promise<void>((then) => window.addEventListener('searched', () => then(), { once: true }));
        box.value = `100 : ${(36 + (i % 100) / 20).toFixed(2)}`;
        box.dispatchEvent(new InputEvent('input', { bubbles: true }));
        await ended;
      }
    },
    [BOX, times] as const,
  );
}

async function held_MB(page: Page): Promise<number> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('HeapProfiler.collectGarbage');
  const { usedSize } = await devtools.send('Runtime.getHeapUsage');
  await devtools.detach();
  return usedSize / 1e6;
}

async function workerHeld_MB(page: Page): Promise<number | null> {
  const [worker] = page.workers();
  if (worker === undefined) return null;
  return worker.evaluate(() => {
    const memory: unknown = Reflect.get(performance, 'memory');
    const used: unknown = typeof memory === 'object' && memory !== null ? Reflect.get(memory, 'usedJSHeapSize') : null;
    return typeof used === 'number' ? used / 1e6 : null;
  });
}
