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
  return {
    ...shell,
    kind: 'desktop',
    async save(name, text, token, seen) {
      if (token === null) return shell.saveAs(name, text);
      const saved = await shell.save(token, text, seen);
      return 'theirs' in saved ? saved : { name, token, aside: saved.aside };
    },
    // What the event of the drop holds besides the file does not cross the bridge.
    dropped: (file) => shell.dropped(file),
    unsaved: (unsaved, title) => void shell.unsaved(unsaved, title),
  };
}
