import type { Host } from './host.ts';

/** The app in a plain browser: the page's own file pickers where there are any, else an upload and a download. */
export function browserHost(): Host {
  // Fetched as the page starts: the server may be gone by the time of the first save.
  const parts = import('./browserFiles.ts').then(async ({ createFiles }) => {
    const files = createFiles();
    return { files, kept: (await import('./browserAutosave.ts')).createAutosaves(files) };
  });
  // Whoever calls is told; until then nobody waits for it.
  parts.catch(() => undefined);
  let lossy = false;
  window.addEventListener('beforeunload', (event) => {
    if (lossy) event.preventDefault();
  });
  return {
    kind: 'browser',
    open: async () => (await parts).files.open(),
    openRecent: async () => {
      throw new RangeError('A browser keeps no list of recent files.');
    },
    recent: async () => [],
    handedOver: async () => (await parts).files.handedOver(),
    async dropped(file, item) {
      // Asked for at once: after the event the item is empty.
      const asked = item.getAsFileSystemHandle?.();
      (await parts).files.drop(file, (await asked) ?? null);
    },
    save: async (...args) => (await parts).files.save(...args),
    saveAs: async (...args) => (await parts).files.saveAs(...args),
    opens: async (...args) => (await parts).files.opens(...args),
    autosave: async (work) => (await parts).kept.autosave(work),
    dropAutosave: async (id) => (await parts).kept.dropAutosave(id),
    autosaves: async () => (await parts).kept.autosaves(),
    resume: async (id) => (await parts).kept.resume(id),
    print: async () => window.print(),
    async savePdf(name) {
      // The print dialog proposes the title of the page as the name of the file.
      const title = document.title;
      const restore = () => {
        document.title = title;
      };
      window.addEventListener('afterprint', restore, { once: true });
      document.title = name.replace(/\.pdf$/i, '');
      window.print();
      return true;
    },
    unsaved(unsaved, title) {
      lossy = unsaved;
      document.title = title;
    },
    close() {},
    menu() {},
    onCommand() {},
  };
}
