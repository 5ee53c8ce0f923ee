import type { Component } from 'solid-js';
import type { Page, PageFiles } from '../state/app.ts';
import { OptionsPage } from './options/OptionsPage.tsx';

/** The page that opens first comes with the window; the others come in files of their own. */
const LATER: Readonly<Record<Exclude<Page, 'options'>, () => Promise<Component>>> = {
  machine: async () => (await import('./machine/MachinePage.tsx')).MachinePage,
  material: async () => (await import('./material/MaterialPage.tsx')).MaterialPage,
  sheet: async () => (await import('./sheet/SheetPage.tsx')).SheetPage,
};

export interface Pages extends PageFiles {
  readonly get: (page: Page) => Component | undefined;
  /** Fetches one after another whatever is still to come, while the window has nothing else to do. */
  readonly loadWhenIdle: () => void;
}

export function createPages(): Pages {
  const there = new Map<Page, Component>([['options', OptionsPage]]);
  const load = async (page: Page): Promise<void> => {
    if (page === 'options' || there.has(page)) return;
    there.set(page, await LATER[page]());
  };
  const loadAll = async () => {
    for (const page of ['material', 'machine', 'sheet'] as const) await load(page);
  };
  return {
    get: (page) => there.get(page),
    has: (page) => there.has(page),
    load,
    // Whoever asks for a page that could not be read is told then.
    loadWhenIdle: () => void requestIdleCallback(() => void loadAll().catch(() => undefined)),
  };
}
