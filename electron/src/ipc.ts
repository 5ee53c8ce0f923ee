import { BrowserWindow, type IpcMainInvokeEvent, ipcMain } from 'electron';
import { LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import { setUnsaved } from './closing.ts';
import type { Call, Paper, Reply, Shell } from './contract.ts';
import { openFile, openRecentFile, save, saveAs } from './files.ts';
import { openHandedOver } from './handover.ts';
import { print, savePdf } from './print.ts';
import { recentFiles } from './recent.ts';
import { isOurs } from './scheme.ts';

interface Handler<C extends Call> {
  /** Checks type and size of what the page sent: a page that was broken into may send anything. */
  readonly takes: (sent: readonly unknown[]) => Parameters<Shell[C]>;
  readonly run: (window: BrowserWindow, ...args: Parameters<Shell[C]>) => ReturnType<Shell[C]>;
}

/** One entry for each call of the contract: the compiler asks for it. */
const HANDLERS: { readonly [C in Call]: Handler<C> } = {
  open: { takes: () => [], run: openFile },
  openRecent: { takes: ([token]) => [aToken(token)], run: (_window, token) => openRecentFile(token) },
  recent: { takes: () => [], run: recentFiles },
  handedOver: { takes: () => [], run: openHandedOver },
  save: { takes: ([token, text]) => [aToken(token), aFileText(text)], run: (_window, token, text) => save(token, text) },
  saveAs: { takes: ([name, text]) => [aName(name), aFileText(text)], run: saveAs },
  print: { takes: () => [], run: print },
  savePdf: { takes: ([name, paper]) => [aName(name), aPaper(paper)], run: savePdf },
  unsaved: {
    takes: ([unsaved, title]) => [aFlag(unsaved), aName(title)],
    run: async (window, unsaved, title) => setUnsaved(window, unsaved, title),
  },
};

export function answerCalls(): void {
  eachKey(HANDLERS, answer);
}

function eachKey<T extends object>(map: T, act: (key: Extract<keyof T, string>) => void): void {
  for (const key in map) act(key);
}

function answer<C extends Call>(call: C): void {
  const { takes, run }: Handler<C> = HANDLERS[call];
  ipcMain.handle(call, async (event, ...sent: unknown[]): Promise<Reply<Awaited<ReturnType<Shell[C]>>>> => {
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
