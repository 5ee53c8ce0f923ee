import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync } from 'node:fs';
import { createRequire } from 'node:module';
import os from 'node:os';
import path from 'node:path';
import { _electron, type ElectronApplication } from 'playwright-core';
import type {} from '../../renderer/src/host/desktop.ts';
import type { Running, Setting } from '../journeys/journeys.ts';

// The built app in Electron itself, driven by Playwright. Run by `npm run test:electron` on a machine that has Electron and a display.

const ROOT = path.resolve(import.meta.dirname, '../..');

/** The place of Electron's program; asking for it fetches it on the first time. */
export function electronProgram(): string {
  try {
    const program: unknown = createRequire(import.meta.url)('electron');
    if (typeof program === 'string') return program;
  } catch (cause) {
    throw new Error(
      'Electron is not here and could not be fetched: these tests need it. `npm test` runs the same journeys on a stand-in.',
      {
        cause,
      },
    );
  }
  throw new Error('These tests run in Node, not inside Electron.');
}

export interface Desktop extends Running {
  readonly electron: ElectronApplication;
}

const running: ElectronApplication[] = [];

export async function endAll(): Promise<void> {
  for (const electron of running.splice(0)) await end(electron);
}

/** Closing may ask, and a test that failed answers no more. */
async function end(electron: ElectronApplication): Promise<void> {
  const child = electron.process();
  if (child.exitCode !== null || child.signalCode !== null) return;
  await electron.evaluate(({ app }) => app.exit(0)).catch(() => undefined);
  if (child.exitCode === null && child.signalCode === null) await once(child, 'exit');
}

export async function start(setting: Setting = {}): Promise<Desktop> {
  const userData = setting.userData ?? mkdtempSync(path.join(os.tmpdir(), 'ratiowright-desktop-'));
  const program = electronProgram();
  const args = (more: readonly string[]) => [ROOT, `--user-data-dir=${userData}`, ...more];
  const electron = await _electron.launch({ executablePath: program, args: args(setting.args ?? []), locale: 'en-US' });
  running.push(electron);
  await answerDialogs(electron, setting);
  const page = await electron.firstWindow();
  await page.waitForLoadState('load');
  const exited = () => electron.process().exitCode !== null || electron.process().signalCode !== null;
  return {
    electron,
    page,
    userData,
    title: () => electron.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.getTitle() ?? ''),
    menu: (name) =>
      electron.evaluate(({ Menu }, wanted) => {
        const found = Menu.getApplicationMenu()?.items.find(({ label }) => label === wanted)?.submenu;
        return (found?.items ?? [])
          .filter(({ type }) => type !== 'separator')
          .map(({ label, accelerator, enabled }) => [label, accelerator ?? null, enabled] as const);
      }, name),
    menuClick: (menu, item) =>
      electron.evaluate(
        ({ Menu, BrowserWindow }, [inMenu, wanted]) => {
          const found = Menu.getApplicationMenu()
            ?.items.find(({ label }) => label === inMenu)
            ?.submenu?.items.find(({ label }) => label === wanted);
          if (found === undefined) throw new Error(`the menu has no ${inMenu} > ${wanted}`);
          found.click({}, BrowserWindow.getAllWindows()[0], undefined);
        },
        [menu, item] as const,
      ),
    quit: () => electron.evaluate(({ app }) => app.quit()).catch(() => undefined),
    closed: async () => exited(),
    bounds: () =>
      electron.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.getNormalBounds() ?? { x: 0, y: 0, width: 0, height: 0 }),
    move: (bounds) => electron.evaluate(({ BrowserWindow }, to) => BrowserWindow.getAllWindows()[0]?.setBounds(to), bounds),
    async startAgain(more, folder) {
      const [code] = await once(spawn(program, args(more), { cwd: folder, stdio: 'ignore' }), 'exit');
      if (code !== 0) throw new Error(`the second start ended with code ${code}`);
    },
    end: () => end(electron),
  };
}

/** The system's own dialogs cannot be driven: each answers in its turn, and is cancelled where nothing is left to answer. */
async function answerDialogs(electron: ElectronApplication, { open = [], save = [], message = [] }: Setting): Promise<void> {
  await electron.evaluate(
    ({ dialog }, answers) => {
      const next = <T>(list: T[]) => list.shift();
      const [opens, saves, messages] = [[...answers.open], [...answers.save], [...answers.message]];
      Object.assign(dialog, {
        showOpenDialog: async () => {
          const file = next(opens);
          return { canceled: file === undefined, filePaths: file === undefined ? [] : [file] };
        },
        showSaveDialog: async () => {
          const filePath = next(saves);
          return { canceled: filePath === undefined, filePath: filePath ?? '' };
        },
        showMessageBox: async (...asked: readonly unknown[]) => {
          const cancel: unknown = Reflect.get(Object(asked.at(-1)), 'cancelId');
          return { response: next(messages) ?? cancel ?? 0, checkboxChecked: false };
        },
      });
    },
    { open, save, message },
  );
}
