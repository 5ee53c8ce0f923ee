import type { Page } from 'playwright-core';

declare global {
  interface Window {
    /** When the list of options first stood there with no search running, from the start of the navigation; null until then. */
    usable_ms: number | null;
    /** Every task of 50 ms or more. */
    longTasks_ms: number[];
  }
}

/**
 * Looks inside the page from its first moment: notes when its options stand there, if asked opens the example as soon as it is offered, and says
 * `searched` whenever the worker has answered.
 */
export async function watch(page: Page, opensExample: boolean): Promise<void> {
  await page.addInitScript((opens) => {
    window.usable_ms = null;
    window.longTasks_ms = [];
    new PerformanceObserver((list) => {
      window.longTasks_ms.push(...list.getEntries().map(({ duration }) => duration));
    }).observe({ type: 'longtask', buffered: true });
    const Plain = window.Worker;
    window.Worker = class extends Plain {
      constructor(address: string | URL, options?: WorkerOptions) {
        super(address, options);
        this.addEventListener(
          'message',
          ({ data }) => (data.kind === 'found' || data.kind === 'near') && window.dispatchEvent(new Event('searched')),
        );
      }
    };
    const look = () => {
      if (window.usable_ms !== null) return;
      const buttons = opens ? [...document.querySelectorAll('button')] : [];
      buttons.find((button) => button.textContent?.startsWith('Open the invented example'))?.click();
      const searching = document.querySelector('.progress')?.textContent?.includes('searching') ?? false;
      if (document.querySelector('[data-rank]') !== null && !searching) window.usable_ms = performance.now();
    };
    new MutationObserver(look).observe(document, { childList: true, subtree: true, characterData: true, attributes: true });
  }, opensExample);
}

/** From the start of the navigation until the options can be used. */
export async function usable_ms(page: Page, address: string): Promise<number> {
  await page.goto(address);
  const found = await page.waitForFunction(() => window.usable_ms, undefined, { timeout: 120_000 });
  return (await found.jsonValue()) ?? Number.NaN;
}
