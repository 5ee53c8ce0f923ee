import type { Browser } from 'playwright-core';
import { median } from '../timing.ts';
import { usable_ms, watch } from './watch.ts';

const TIMES = 7;

export interface Opening {
  readonly median_ms: number;
  readonly times_ms: readonly number[];
}

/** Each time in a browser context of its own, so with nothing cached. */
export async function opening(browser: Browser, address: string): Promise<Opening> {
  const times_ms: number[] = [];
  for (let i = 0; i < TIMES; i++) {
    const context = await browser.newContext();
    const page = await context.newPage();
    await watch(page, true);
    times_ms.push(await usable_ms(page, address));
    await context.close();
  }
  return { median_ms: median(times_ms), times_ms };
}
