import { BrowserWindow, type IpcMainInvokeEvent, ipcMain } from 'electron';
import { aFileText, aFlag, aName, anId, aPaper, aPlace, aToken, aWork, orNull, theEntries } from './arguments.ts';
import { autosave, autosaves, dropAutosave, resume } from './autosave.ts';
import { setUnsaved } from './closing.ts';
import type { Call, Calls, Reply } from './contract.ts';
import { openFile, openRecentFile, opens, save, saveAs } from './files.ts';
import { openHandedOver, takeDropped } from './handover.ts';
import { showCommands } from './menu.ts';
import { print, savePdf } from './print.ts';
import { recentFiles } from './recent.ts';
import { isOurs } from './scheme.ts';

interface Handler<C extends Call> {
  /** Checks type and size of what the page sent: a page that was broken into may send anything. */
  readonly takes: (sent: readonly unknown[]) => Parameters<Calls[C]>;
  readonly run: (window: BrowserWindow, ...args: Parameters<Calls[C]>) => ReturnType<Calls[C]>;
}

/** One entry for each call of the contract: the compiler asks for it. */
const HANDLERS: { readonly [C in Call]: Handler<C> } = {
  open: { takes: () => [], run: openFile },
  openRecent: { takes: ([token]) => [aToken(token)], run: (_window, token) => openRecentFile(token) },
  recent: { takes: () => [], run: recentFiles },
  handedOver: { takes: () => [], run: openHandedOver },
  dropped: { takes: ([place]) => [aPlace(place)], run: async (_window, place) => takeDropped(place) },
  save: {
    takes: ([token, text, seen]) => [aToken(token), aFileText(text), orNull(aToken)(seen)],
    run: (_window, token, text, seen) => save(token, text, seen),
  },
  saveAs: { takes: ([name, text]) => [aName(name), aFileText(text)], run: saveAs },
  opens: { takes: ([token, seen]) => [aToken(token), orNull(aToken)(seen)], run: (_window, token, seen) => opens(token, seen) },
  autosave: { takes: ([work]) => [aWork(work)], run: (_window, work) => autosave(work) },
  dropAutosave: { takes: ([id]) => [orNull(anId)(id)], run: (_window, id) => dropAutosave(id) },
  autosaves: { takes: () => [], run: autosaves },
  resume: { takes: ([id]) => [anId(id)], run: (_window, id) => resume(id) },
  print: { takes: () => [], run: print },
  savePdf: { takes: ([name, paper]) => [aName(name), aPaper(paper)], run: savePdf },
  unsaved: {
    takes: ([unsaved, title]) => [aFlag(unsaved), aName(title)],
    run: async (window, unsaved, title) => setUnsaved(window, unsaved, title),
  },
  close: { takes: () => [], run: async (window) => window.close() },
  menu: { takes: ([entries]) => [theEntries(entries)], run: async (window, entries) => showCommands(window, entries) },
};

export function answerCalls(): void {
  eachKey(HANDLERS, answer);
}

function eachKey<T extends object>(map: T, act: (key: Extract<keyof T, string>) => void): void {
  for (const key in map) act(key);
}

function answer<C extends Call>(call: C): void {
  const { takes, run }: Handler<C> = HANDLERS[call];
  ipcMain.handle(call, async (event, ...sent: unknown[]): Promise<Reply<Awaited<ReturnType<Calls[C]>>>> => {
    const window = callerOf(event);
    try {
      return { ok: true, value: await run(window, ...takes(sent)) };
    } catch (error) {
      return { ok: false, what: error instanceof Error ? error.message : String(error) };
    }
  });
}

/** The one sender check: only the top frame of a window of ours, showing a page of ours, is answered. */
function callerOf(event: IpcMainInvokeEvent): BrowserWindow {
  const frame = event.senderFrame;
  const ours = frame !== null && frame.parent === null && isOurs(frame.url);
  const window = ours ? BrowserWindow.fromWebContents(event.sender) : null;
  if (window === null) throw new Error('This page may not call the shell.');
  return window;
}
