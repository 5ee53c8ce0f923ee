import { existsSync, mkdtempSync } from 'node:fs';
import { register } from 'node:module';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { MenuItemConstructorOptions } from 'electron';
import type { Browser, Page } from 'playwright-core';
import { createStandIn, type StandIn } from './electron.ts';
import { type Choices, createStage, type Stage } from './stage.ts';
import type { StandInWindow } from './window.ts';

// Starts the built main module (dist/electron/main.js) and its preload on the stand-in; each start has a module and a stand-in of its own.

const BUILT = path.resolve(import.meta.dirname, '../../dist');
const NAMES = ['app', 'BrowserWindow', 'dialog', 'ipcMain', 'Menu', 'protocol', 'screen', 'session'];
const READY_MS = 10_000;

declare global {
  var standIns: Map<string, StandIn['exports']> | undefined;
}

/** `electron`, imported by `main.js?run=3`, is the third stand-in. */
register(
  `data:text/javascript,${encodeURIComponent(`
  export async function resolve(name, context, next) {
    if (name !== 'electron') return next(name, context);
    const source = "const { ${NAMES.join(', ')} } = globalThis.standIns.get('" + new URL(context.parentURL).search + "'); export { ${NAMES.join(', ')} };";
    return { url: 'data:text/javascript,' + encodeURIComponent(source), shortCircuit: true };
  }`)}`,
);
globalThis.standIns ??= new Map();
let runs = 0;

export interface Launched {
  readonly stage: Stage;
  readonly standIn: StandIn;
  readonly window: StandInWindow;
  readonly page: Page;
  /** Clicks an item of the native menu. */
  menuClick(menu: string, item: string): void;
  close(): Promise<void>;
}

/** Starts the app up to its window, with its page loaded. */
export async function launch(browser: Browser, choices: Choices = {}): Promise<Launched> {
  const { stage, standIn } = await start(browser, choices);
  const window = await standIn.shown;
  return {
    stage,
    standIn,
    window,
    page: window.page,
    menuClick(menu, item) {
      const click = submenu(standIn.menu(), menu).find(({ label }) => label === item)?.click;
      if (click === undefined) throw new Error(`the menu has no ${menu} > ${item}`);
      Reflect.apply(click, undefined, []);
    },
    close: () => window.end(),
  };
}

/** Runs the main module, and no further: a second instance opens no window. */
export async function start(browser: Browser, choices: Choices): Promise<{ stage: Stage; standIn: StandIn }> {
  const main = path.join(choices.build ?? BUILT, 'electron/main.js');
  if (!existsSync(main)) throw new Error('The app is not built: run "npm run build" first.');
  const userData = choices.userData ?? mkdtempSync(path.join(os.tmpdir(), 'ratiowright-settings-'));
  const stage = createStage(browser, userData, choices);
  const standIn = createStandIn(stage);
  runs += 1;
  const run = `?run=${process.pid}-${runs}`;
  globalThis.standIns?.set(run, standIn.exports);
  const argv = process.argv;
  process.argv = [process.execPath, main, ...(choices.args ?? [])];
  try {
    await beforeHanging(import(/* @vite-ignore */ `${pathToFileURL(main).href}${run}`));
  } finally {
    process.argv = argv;
  }
  standIn.app.becomeReady();
  return { stage, standIn };
}

/** Electron is ready only after the main module has run: one that waits for it at its top level never ends. */
async function beforeHanging(main: Promise<unknown>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const hangs = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => reject(new Error('the main module never ends: it waits at its top level')), READY_MS);
  });
  await Promise.race([main, hangs]);
  clearTimeout(timer);
}

export function submenu(menu: readonly MenuItemConstructorOptions[], name: string): readonly MenuItemConstructorOptions[] {
  const items = menu.find(({ label }) => label === name)?.submenu;
  return Array.isArray(items) ? items : [];
}
