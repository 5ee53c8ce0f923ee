import type { BrowserWindow } from 'electron';

/** Asks the page for a command of its list. */
export function sendCommand(window: BrowserWindow, id: string): void {
  window.webContents.send('command', id);
}
