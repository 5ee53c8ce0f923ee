import path from 'node:path';
import { app, type BrowserWindow } from 'electron';
import { EXTENSION } from '../../core/src/file/envelope.ts';
import type { OpenedFile } from './contract.ts';
import { openPlace } from './files.ts';
import { sendCommand } from './window.ts';

// A shop file that the system hands over, by a double click or a command line, waits here until the page asks for it.

let waiting: string | null = fileAmong(process.argv, process.cwd());
let receiver: BrowserWindow | null = null;

function fileAmong(args: readonly string[], folder: string): string | null {
  const file = args.find((arg) => arg.toLowerCase().endsWith(EXTENSION) && !arg.startsWith('-'));
  return file === undefined ? null : path.resolve(folder, file);
}

/** macOS hands files over by an event, the first one before the system is ready. */
export function takeOpenFileEvents(): void {
  app.on('open-file', (event, file) => {
    event.preventDefault();
    take(file);
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
    if (file !== null) take(file);
  });
}

function take(file: string): void {
  waiting = file;
  if (receiver !== null) sendCommand(receiver, 'file.handedOver');
}

export async function openHandedOver(): Promise<OpenedFile | null> {
  const file = waiting;
  waiting = null;
  return file === null ? null : openPlace(file);
}
