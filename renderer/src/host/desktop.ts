import type { Shell } from '../../../electron/src/contract.ts';
import type { Host } from './host.ts';

declare global {
  interface Window {
    /** Set by the desktop shell before the page runs; absent in a browser. */
    readonly shell?: Shell;
  }
}

/** The app in its own window. */
export function desktopHost(shell: Shell): Host {
  const saveAs: Host['saveAs'] = (name, text) => shell.saveAs(name, text);
  return {
    kind: 'desktop',
    open: () => shell.open(),
    openRecent: (token) => shell.openRecent(token),
    recent: () => shell.recent(),
    handedOver: () => shell.handedOver(),
    async save(name, text, token) {
      if (token === null) return saveAs(name, text);
      await shell.save(token, text);
      return { name, token };
    },
    saveAs,
    print: () => shell.print(),
    savePdf: (name, paper) => shell.savePdf(name, paper),
    unsaved: (unsaved, title) => void shell.unsaved(unsaved, title),
    dropped: (file) => shell.dropped(file),
    close: () => void shell.close(),
    menu: (entries) => void shell.menu(entries),
    onCommand: (listener) => shell.onCommand(listener),
  };
}
