import path from 'node:path';
import { app, BrowserWindow, type Event, type Session } from 'electron';
import { askBeforeClosing } from './closing.ts';
import { keepPlace, placeKept, SMALLEST } from './place.ts';
import { isOurs } from './scheme.ts';

/** What the window needs to run offline; everything else would leave the machine. */
const LOCAL = new Set(['app:', 'blob:', 'data:', 'devtools:']);

export function openWindow(): BrowserWindow {
  const { bounds, maximized } = placeKept();
  const window = new BrowserWindow({
    ...bounds,
    minWidth: SMALLEST.width,
    minHeight: SMALLEST.height,
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
  window.once('ready-to-show', () => {
    if (maximized) window.maximize();
    window.show();
  });
  keepPlace(window);
  askBeforeClosing(window);
  return window;
}

/** No page but ours is ever shown, whatever a link, a redirect, a frame or a dropped file asks for. */
export function lockContents(): void {
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', stayHere);
    contents.on('will-frame-navigate', stayHere);
    contents.on('will-redirect', stayHere);
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
    // Calls between browsers pass by the request filter.
    contents.setWebRTCIPHandlingPolicy('disable_non_proxied_udp');
  });
}

function stayHere(event: Event<{ readonly url: string }>): void {
  if (!isOurs(event.url)) event.preventDefault();
}

/** No name and no address of another machine is ever resolved, whatever part of the engine asks. */
export function lockNetwork(): void {
  app.commandLine.appendSwitch('host-resolver-rules', 'MAP * ~NOTFOUND');
}

/** The page gets no camera, no place, no device and no network. */
export function lockSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.webRequest.onBeforeRequest((request, answer) => answer({ cancel: !isLocal(request.url) }));
}

const isLocal = (address: string): boolean => URL.canParse(address) && LOCAL.has(new URL(address).protocol);
