import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { app, type BrowserWindow } from 'electron';
import { en } from '../../core/src/en.ts';
import { EXTENSION } from '../../core/src/file/envelope.ts';
import type { OpenedFile } from './contract.ts';
import { isGone } from './diskFailure.ts';
import { openPlace } from './files.ts';
import { forget } from './recent.ts';
import { sendCommand } from './send.ts';

// A shop file that the system hands over, by a double click, a command line, a drop or the menu, waits here until the page asks for it.

let waiting: string | null = fileAmong(process.argv, process.cwd());
let receiver: BrowserWindow | null = null;

function fileAmong(args: readonly string[], folder: string): string | null {
  const file = args.find((arg) => arg.toLowerCase().endsWith(EXTENSION) && !arg.startsWith('-'));
  if (file === undefined) return null;
  return /^file:/i.test(file) ? pathOf(file) : path.resolve(folder, file);
}

/** Desktops of Linux hand files over as addresses. One of another machine is none of ours. */
function pathOf(address: string): string | null {
  try {
    return fileURLToPath(address);
  } catch {
    return null;
  }
}

/** macOS hands files over by an event, the first one before the system is ready. */
export function takeOpenFileEvents(): void {
  app.on('open-file', (event, file) => {
    event.preventDefault();
    handOver(file);
  });
}

/** A second start ends itself and leaves its arguments to the first. */
export function takeSecondInstances(window: BrowserWindow): void {
  receiver = window;
  window.once('closed', () => {
    receiver = null;
  });
  app.on('second-instance', (_event, args, folder) => {
    if (receiver?.isMinimized()) receiver.restore();
    receiver?.focus();
    const file = fileAmong(args, folder);
    if (file !== null) handOver(file);
  });
}

export function handOver(file: string): void {
  waiting = file;
  if (receiver !== null) sendCommand(receiver, 'file.handedOver');
}

/** The page asks for a dropped file by itself. A place that is none, or no shop file, did not come from a drop that the page may make. */
export function takeDropped(place: string): void {
  if (!path.isAbsolute(place)) throw new Error(en`What was dropped is no file on this computer.`);
  if (!place.toLowerCase().endsWith(EXTENSION))
    throw new Error(en`${path.basename(place)} was not opened: only shop files (${EXTENSION}) are.`);
  waiting = place;
}

export async function openHandedOver(): Promise<OpenedFile | null> {
  const file = waiting;
  waiting = null;
  if (file === null) return null;
  try {
    return await openPlace(file);
  } catch (error) {
    if (isGone(error)) await forget(file);
    throw error;
  }
}
