import type { Browser, CDPSession, Page } from 'playwright-core';
import { usable_ms, watch } from './watch.ts';

const BOX = '[data-place="materials.0.ratio.parts"]';
const WARM_UP = 20;

export interface Heap {
  readonly searches: number;
  readonly before: Held;
  readonly after: Held;
}

/** What page and worker still hold after many searches of the example, all that nothing refers to having been given back. */
export async function heap(browser: Browser, address: string, searches: number): Promise<Heap> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await watch(page, true);
  await usable_ms(page, address);
  await page.keyboard.press('Alt+2');
  await page.locator(BOX).waitFor();
  await search(page, WARM_UP);
  const before = await held(page);
  await search(page, searches);
  const after = await held(page);
  await context.close();
  return { searches, before, after };
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

interface Held {
  readonly page_MB: number;
  /** null where no worker runs */
  readonly worker_MB: number | null;
}

async function held(page: Page): Promise<Held> {
  const devtools = await page.context().newCDPSession(page);
  const workers: string[] = [];
  devtools.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => targetInfo.type === 'worker' && workers.push(sessionId));
  await devtools.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false });
  await devtools.send('HeapProfiler.collectGarbage');
  const { usedSize } = await devtools.send('Runtime.getHeapUsage');
  const worker_MB = workers[0] === undefined ? null : await workerHeld_MB(devtools, workers[0]);
  await devtools.detach();
  return { page_MB: usedSize / 1e6, worker_MB };
}

/** A worker is spoken to through its page: one message in another. */
async function workerHeld_MB(devtools: CDPSession, sessionId: string): Promise<number> {
  const ask = (id: number, method: string): Promise<unknown> => {
    const answered = new Promise<unknown>((then) => {
      devtools.on('Target.receivedMessageFromTarget', ({ message }) => {
        const answer = JSON.parse(message) as { readonly id?: number; readonly result?: unknown };
        if (answer.id === id) then(answer.result);
      });
    });
    return devtools.send('Target.sendMessageToTarget', { sessionId, message: JSON.stringify({ id, method }) }).then(() => answered);
  };
  await ask(1, 'HeapProfiler.collectGarbage');
  const usage = await ask(2, 'Runtime.getHeapUsage');
  const used: unknown = typeof usage === 'object' && usage !== null ? Reflect.get(usage, 'usedSize') : null;
  if (typeof used !== 'number') throw new Error('the worker did not say what it holds');
  return used / 1e6;
}
