import { EXTENSION, LARGEST_FILE_BYTES } from '../../../core/src/file/envelope.ts';
import { download } from './download.ts';
import type { Host, OpenedFile, SavedFile } from './host.ts';

interface PickerOptions {
  readonly suggestedName?: string;
  readonly types: readonly { readonly description: string; readonly accept: Readonly<Record<string, readonly string[]>> }[];
}

declare global {
  interface Window {
    /** Only some browsers let a page write back to the file it opened. */
    showOpenFilePicker?(options: PickerOptions): Promise<readonly FileSystemFileHandle[]>;
    showSaveFilePicker?(options: PickerOptions): Promise<FileSystemFileHandle>;
  }
  interface DataTransferItem {
    getAsFileSystemHandle?(): Promise<FileSystemHandle | null>;
  }
}

const TYPES: PickerOptions['types'] = [{ description: 'Shop file', accept: { 'application/json': [EXTENSION] } }];

/** The app in a plain browser: the page's own file pickers where there are any, else an upload and a download. */
export function browserHost(): Host {
  const files = createFiles();
  let lossy = false;
  window.addEventListener('beforeunload', (event) => {
    if (lossy) event.preventDefault();
  });
  return {
    kind: 'browser',
    open: files.open,
    openRecent: async () => {
      throw new RangeError('A browser keeps no list of recent files.');
    },
    recent: async () => [],
    handedOver: files.handedOver,
    dropped: files.dropped,
    save: files.save,
    saveAs: files.saveAs,
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

interface Place {
  readonly handle: FileSystemFileHandle;
  /** When the file last changed as far as this page knows. */
  changed_ms: number;
}

function createFiles(): Pick<Host, 'open' | 'save' | 'saveAs' | 'dropped' | 'handedOver'> {
  const places = new Map<string, Place>();
  let waiting: File | FileSystemFileHandle | null = null;
  const keep = (handle: FileSystemFileHandle, changed_ms: number): string => {
    const token = crypto.randomUUID();
    places.set(token, { handle, changed_ms });
    return token;
  };

  return { open, save, saveAs, dropped, handedOver };

  async function open(): Promise<OpenedFile | null> {
    if (window.showOpenFilePicker === undefined) {
      const file = await upload();
      return file === null ? null : placeless(file);
    }
    const handle = await unlessCancelled(window.showOpenFilePicker({ types: TYPES }).then(([first]) => first));
    if (handle === null || handle === undefined) return null;
    return placed(handle);
  }

  async function placed(handle: FileSystemFileHandle): Promise<OpenedFile> {
    const file = await handle.getFile();
    return { name: file.name, text: await textOf(file), token: keep(handle, file.lastModified) };
  }

  async function dropped(file: File, item: DataTransferItem): Promise<void> {
    // Asked for at once: after the event the item is empty.
    const handle = await item.getAsFileSystemHandle?.();
    waiting = handle instanceof FileSystemFileHandle ? handle : file;
  }

  async function handedOver(): Promise<OpenedFile | null> {
    const taken = waiting;
    waiting = null;
    return taken instanceof File ? placeless(taken) : taken && placed(taken);
  }

  async function save(name: string, text: string, token: string | null): Promise<SavedFile | null> {
    const place = token === null ? undefined : places.get(token);
    if (place === undefined) return saveAs(name, text);
    const present = await place.handle.getFile().catch(() => null);
    if (present !== null && present.lastModified !== place.changed_ms)
      throw new Error(`${name} was changed by somebody else since it was opened, and was left as it is. Save yours under another name.`);
    place.changed_ms = await write(place.handle, text);
    return { name, token };
  }

  async function saveAs(name: string, text: string): Promise<SavedFile | null> {
    if (window.showSaveFilePicker === undefined) {
      download(name, text, 'application/json');
      return { name, token: null };
    }
    const handle = await unlessCancelled(window.showSaveFilePicker({ suggestedName: name, types: TYPES }));
    if (handle === null) return null;
    return { name: handle.name, token: keep(handle, await write(handle, text)) };
  }
}

/** The browser writes beside the file and puts it in place on closing. */
async function write(handle: FileSystemFileHandle, text: string): Promise<number> {
  try {
    const stream = await handle.createWritable();
    await stream.write(text);
    await stream.close();
    return (await handle.getFile()).lastModified;
  } catch (error) {
    throw new Error(
      `${handle.name} was not saved: the browser was not allowed to, or the disk is full. What is on the disk was left as it was.`,
      {
        cause: error,
      },
    );
  }
}

/** No place belongs to the token: saving such a file downloads it. */
const placeless = async (file: File): Promise<OpenedFile> => ({ name: file.name, text: await textOf(file), token: '' });

async function textOf(file: File): Promise<string> {
  if (file.size > LARGEST_FILE_BYTES) throw new Error(`${file.name} has ${file.size} bytes; more than ${LARGEST_FILE_BYTES} are not read.`);
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Error(`${file.name} is not a text file.`);
  }
}

async function unlessCancelled<T>(picked: Promise<T>): Promise<T | null> {
  try {
    return await picked;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return null;
    throw error;
  }
}

function upload(): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = EXTENSION;
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null));
    input.addEventListener('cancel', () => resolve(null));
    input.click();
  });
}
