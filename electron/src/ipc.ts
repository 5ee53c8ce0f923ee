import { BrowserWindow, type IpcMainInvokeEvent, ipcMain } from 'electron';
import { LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import { setUnsaved } from './closing.ts';
import type { Call, Calls, MenuEntry, Paper, Reply } from './contract.ts';
import { openFile, openRecentFile, save, saveAs } from './files.ts';
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
  save: { takes: ([token, text]) => [aToken(token), aFileText(text)], run: (_window, token, text) => save(token, text) },
  saveAs: { takes: ([name, text]) => [aName(name), aFileText(text)], run: saveAs },
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

/** A file name of the longest kind, with what the title adds to it. */
const LONGEST_NAME = 300;

function aString(value: unknown, what: string): string {
  if (typeof value !== 'string') throw new RangeError(`${what} must be text.`);
  return value;
}

function aName(value: unknown): string {
  const name = aString(value, 'A name');
  if (name.length > LONGEST_NAME) throw new RangeError(`A name has ${name.length} characters; more than ${LONGEST_NAME} are not taken.`);
  return name;
}

function aToken(value: unknown): string {
  const token = aString(value, 'A token');
  if (token.length > LONGEST_NAME) throw new RangeError('A token is too long.');
  return token;
}

/** The longest path that a system takes. */
const LONGEST_PLACE = 32_767;

function aPlace(value: unknown): string {
  const place = aString(value, 'A place');
  if (place.length > LONGEST_PLACE) throw new RangeError('A place is too long.');
  return place;
}

/** More commands than a menu can show. */
const MOST_ENTRIES = 100;

function theEntries(value: unknown): readonly MenuEntry[] {
  if (!Array.isArray(value)) throw new RangeError('The commands must be a list.');
  if (value.length > MOST_ENTRIES) throw new RangeError(`There are ${value.length} commands; more than ${MOST_ENTRIES} are not taken.`);
  return value.map(anEntry);
}

function anEntry(value: unknown): MenuEntry {
  if (typeof value !== 'object' || value === null) throw new RangeError('A command must be an object.');
  const field = (name: string): unknown => Reflect.get(value, name);
  const aKey = (name: string) => (field(name) === null ? null : aName(field(name)));
  return {
    id: aName(field('id')),
    title: aName(field('title')),
    key: aKey('key'),
    windowsKey: aKey('windowsKey'),
    enabled: aFlag(field('enabled')),
  };
}

function aFileText(value: unknown): string {
  const text = aString(value, 'The content of a file');
  const size = Buffer.byteLength(text);
  if (size > LARGEST_FILE_BYTES)
    throw new RangeError(`The file would have ${size} bytes; more than ${LARGEST_FILE_BYTES} are not written.`);
  return text;
}

function aPaper(value: unknown): Paper {
  if (value !== 'A4' && value !== 'Letter') throw new RangeError('A paper must be A4 or Letter.');
  return value;
}

function aFlag(value: unknown): boolean {
  if (typeof value !== 'boolean') throw new RangeError('A flag must be true or false.');
  return value;
}
