import { en } from '../../../core/src/en.ts';
import { EXTENSION } from '../../../core/src/file/envelope.ts';
import { download } from './download.ts';
import { digestOf, failureOf, textOf, unlessCancelled, upload } from './fileText.ts';
import type { Host, OpenedFile, SavedFile, Theirs } from './host.ts';

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
  interface FileSystemHandle {
    /** A handle that was kept over a restart must be asked for again. */
    requestPermission?(options: { readonly mode: 'readwrite' }): Promise<PermissionState>;
    queryPermission?(options: { readonly mode: 'read' }): Promise<PermissionState>;
  }
}

const TYPES: PickerOptions['types'] = [{ description: en`Shop file`, accept: { 'application/json': [EXTENSION] } }];

export interface FilePlace {
  readonly handle: FileSystemFileHandle;
  /** Digest of the file as far as this page knows. */
  readonly digest: string;
}

export interface BrowserFiles extends Pick<Host, 'open' | 'save' | 'saveAs' | 'opens' | 'handedOver'> {
  /** Takes what was dropped; `handedOver` then opens it, by its handle where that is one of a file. */
  drop(file: File, handle: FileSystemHandle | null): void;
  /** Null where no file that can be written to belongs to the token. */
  placeOf(token: string | null): FilePlace | null;
  tokenFor(place: FilePlace): string;
}

export function createFiles(): BrowserFiles {
  const places = new Map<string, FilePlace>();
  const placeOf = (token: string | null) => (token === null ? null : (places.get(token) ?? null));
  const tokenFor = (place: FilePlace): string => {
    const token = crypto.randomUUID();
    places.set(token, place);
    return token;
  };

  let waiting: File | FileSystemFileHandle | null = null;

  return {
    placeOf,
    tokenFor,
    drop(file, handle) {
      waiting = handle instanceof FileSystemFileHandle ? handle : file;
    },
    async handedOver() {
      const taken = waiting;
      waiting = null;
      return taken instanceof File ? placeless(taken) : taken && placed(taken);
    },
    open,
    save,
    saveAs,
    async opens(token, seen) {
      const place = placeOf(token);
      if (place !== null && seen !== null) places.set(token, { ...place, digest: seen });
    },
  };

  async function open(): Promise<OpenedFile | null> {
    if (window.showOpenFilePicker === undefined) {
      const file = await upload();
      return file === null ? null : placeless(file);
    }
    const handle = await unlessCancelled(window.showOpenFilePicker({ types: TYPES }).then(([first]) => first));
    return handle === null || handle === undefined ? null : placed(handle);
  }

  async function placed(handle: FileSystemFileHandle): Promise<OpenedFile> {
    const file = await handle.getFile();
    const text = await textOf(file);
    return { name: file.name, text, token: tokenFor({ handle, digest: await digestOf(file) }), backup: null };
  }

  async function save(
    name: string,
    text: string,
    token: string | null,
    seen: string | null,
  ): Promise<SavedFile | { theirs: Theirs } | null> {
    const place = placeOf(token);
    if (place === null || token === null) return saveAs(name, text);
    const { handle } = place;
    const present = await presentOf(handle);
    const digest = present === null ? place.digest : await digestOf(present);
    const strange = digest !== place.digest;
    if (present !== null && strange && digest !== seen) return { theirs: await theirsOf(present, digest) };
    // A page cannot write beside a file, so what a stranger wrote there is kept as a download.
    const aside = present !== null && strange ? name.replace(/(\.[^.]*)?$/, '.aside$1') : null;
    if (present !== null && aside !== null) download(aside, present, 'application/json');
    places.set(token, await write(handle, text));
    return { name, token, aside };
  }

  async function saveAs(name: string, text: string): Promise<SavedFile | null> {
    if (window.showSaveFilePicker === undefined) {
      download(name, text, 'application/json');
      return { name, token: null, aside: null };
    }
    const handle = await unlessCancelled(window.showSaveFilePicker({ suggestedName: name, types: TYPES }));
    if (handle === null) return null;
    return { name: handle.name, token: tokenFor(await write(handle, text)), aside: null };
  }
}

/** No place belongs to the token: saving such a file downloads it. */
const placeless = async (file: File): Promise<OpenedFile> => ({ name: file.name, text: await textOf(file), token: '', backup: null });

/** Null where the file is gone: it is written again. */
async function presentOf(handle: FileSystemFileHandle): Promise<File | null> {
  try {
    await handle.requestPermission?.({ mode: 'readwrite' });
    return await handle.getFile();
  } catch (error) {
    if (error instanceof DOMException && error.name === 'NotFoundError') return null;
    throw failureOf(handle.name, error);
  }
}

async function theirsOf(file: File, seen: string): Promise<Theirs> {
  try {
    return { text: await textOf(file), what: en`${file.name} was changed by somebody else since it was opened.`, seen };
  } catch (error) {
    return { text: null, what: error instanceof Error ? error.message : String(error), seen };
  }
}

/** The browser writes beside the file and puts it in place on closing. */
async function write(handle: FileSystemFileHandle, text: string): Promise<FilePlace> {
  try {
    const stream = await handle.createWritable();
    await stream.write(text);
    await stream.close();
    return { handle, digest: await digestOf(new Blob([text])) };
  } catch (error) {
    throw failureOf(handle.name, error);
  }
}
