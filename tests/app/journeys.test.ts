import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, test } from 'vitest';
import type {} from '../../renderer/src/host/desktop.ts';
import { launch, submenu } from '../harness/launch.ts';
import { preventable } from '../harness/window.ts';
import { JOURNEYS, type Running, type Setting } from '../journeys/journeys.ts';
import { startBrowser } from './browser.ts';

let browser: Browser;
const running: Running[] = [];
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(async () => {
  for (const app of running.splice(0)) await app.end();
});

async function start(setting: Setting = {}): Promise<Running> {
  const { stage, standIn, window, page, menuClick, close } = await launch(browser, setting);
  const app: Running = {
    page,
    userData: stage.userData,
    title: async () => window.title,
    menu: async (name) =>
      submenu(standIn.menu(), name).flatMap(({ label, accelerator, enabled = true }) =>
        label === undefined ? [] : [[label, typeof accelerator === 'string' ? accelerator : null, enabled] as const],
      ),
    menuClick: async (menu, item) => menuClick(menu, item),
    quit: async () => standIn.app.quit(),
    closed: async () => window.destroyed,
    bounds: async () => window.bounds,
    move: async (bounds) => {
      window.bounds = bounds;
    },
    startAgain: async (args, folder) => void standIn.app.emit('second-instance', preventable({}), ['program', ...args], folder),
    end: close,
  };
  running.push(app);
  return app;
}

test.each(Object.entries(JOURNEYS))('%s', (_what, journey) => journey(start));
