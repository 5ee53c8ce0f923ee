import path from 'node:path';
import { app, BrowserWindow, type Event, type Session } from 'electron';
import { askBeforeClosing } from './closing.ts';
import type { MenuCommand } from './contract.ts';
import { isOurs } from './scheme.ts';

/** What the window needs to run offline; everything else would leave the machine. */
const LOCAL = new Set(['app:', 'blob:', 'data:', 'devtools:']);

export function openWindow(): BrowserWindow {
  const window = new BrowserWindow({
    width: 1280,
    height: 860,
    minWidth: 640,
    minHeight: 480,
    show: false,
    webPreferences: {
      preload: path.join(import.meta.dirname, 'preload.cjs'),
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      webviewTag: false,
      // The spelling checker fetches its word lists over the network.
      spellcheck: false,
      devTools: !app.isPackaged,
    },
  });
  window.once('ready-to-show', () => window.show());
  askBeforeClosing(window);
  return window;
}

export function sendCommand(window: BrowserWindow, command: MenuCommand): void {
  window.webContents.send('command', command);
}

/** No page but ours is ever shown, whatever a link, a redirect, a frame or a dropped file asks for. */
export function lockContents(): void {
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', stayHere);
    contents.on('will-frame-navigate', stayHere);
    contents.on('will-redirect', stayHere);
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  });
}

function stayHere(event: Event<{ readonly url: string }>): void {
  if (!isOurs(event.url)) event.preventDefault();
}

/** The page gets no camera, no place, no device and no network. */
export function lockSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.webRequest.onBeforeRequest((request, answer) => answer({ cancel: !isLocal(request.url) }));
}

const isLocal = (address: string): boolean => URL.canParse(address) && LOCAL.has(new URL(address).protocol);
