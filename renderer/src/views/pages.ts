import type { Component } from 'solid-js';
import type { Page, PageFiles } from '../state/app.ts';
import type { Command } from '../state/commands.ts';
import { Around } from './beside.ts';
import { type Later, later } from './later.ts';
import { rackTables } from './machine/rackTables.ts';
import { OptionsPage } from './options/OptionsPage.tsx';
import { PARTS } from './options/parts.ts';

/** The page that opens first comes with the window. */
const LATER: Readonly<Record<Exclude<Page, 'options'>, Later<Record<string, never>>>> = {
  machine: later(async () => (await import('./machine/MachinePage.tsx')).MachinePage),
  material: later(async () => (await import('./material/MaterialPage.tsx')).MaterialPage),
  reach: later(async () => (await import('./reach/ReachPage.tsx')).ReachPage),
  sheet: later(async () => (await import('./sheet/SheetPage.tsx')).SheetPage),
  check: later(async () => (await import('./check/CheckPage.tsx')).CheckPage),
};

/** Only asked for. */
export const Help = later<{ readonly commands: readonly Command[] }>(async () => (await import('../help/Help.tsx')).Help);
/** A file that was handed over is shown without it. */
export const Start = later<{ readonly commands: readonly Command[] }>(async () => (await import('./StartPage.tsx')).StartPage);

export const pageFiles: PageFiles = {
  has: (page) => pageView(page) !== undefined,
  load: async (page) => {
    if (page !== 'options') await LATER[page].load();
  },
};

/** Undefined until its file is there. */
export const pageView = (page: Page): Component | undefined => (page === 'options' ? OptionsPage : LATER[page].get());

/** Fetches one after another whatever is still to come, while the window has nothing else to do, so that no click waits. */
export function loadWhenIdle(): void {
  const loadAll = async () => {
    for (const part of [...PARTS, Around, ...Object.values(LATER), Help]) await part.load();
    await rackTables();
  };
  // Whoever asks for what could not be read is told then.
  requestIdleCallback(() => void loadAll().catch(() => undefined));
}
