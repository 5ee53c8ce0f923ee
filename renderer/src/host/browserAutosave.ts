import { en } from '../../../core/src/en.ts';
import type { BrowserFiles, FilePlace } from './browserFiles.ts';
import { textOf } from './fileText.ts';
import type { Host, LeftWork, Work } from './host.ts';

// Unsaved work in the browser's own database. Each page keeps its work under an id and holds a lock of that name as long as it lives, so that another page can tell what is left behind from what somebody is at.

interface Row extends Omit<Work, 'token'> {
  readonly id: string;
  readonly at_ms: number;
  readonly place: FilePlace | null;
}

const STORE = 'works';
const lockOf = (id: string): string => `ratiowright-work-${id}`;

export function createAutosaves(files: BrowserFiles): Pick<Host, 'autosave' | 'dropAutosave' | 'autosaves' | 'resume'> {
  const database = openDatabase();
  database.catch(() => undefined);
  let slot: string | null = null;

  return {
    async autosave({ token, ...work }) {
      slot ??= await ownId();
      const row: Row = { ...work, id: slot, at_ms: Date.now(), place: files.placeOf(token) };
      await change(await database, (works) => works.put(row));
    },
    async dropAutosave(id) {
      const dropped = id ?? slot;
      if (dropped !== null) await change(await database, (works) => works.delete(dropped));
    },
    async autosaves() {
      const rows = await rowsOf(await database);
      const alive = new Set((await navigator.locks.query()).held?.map(({ name }) => name));
      const left = rows.filter(({ id }) => !alive.has(lockOf(id))).sort((a, b) => b.at_ms - a.at_ms);
      return { works: await Promise.all(left.map(leftWork)), unreadable: [] };
    },
    async resume(id) {
      const row = (await rowsOf(await database)).find((one) => one.id === id);
      if (row === undefined || !(await hold(id))) throw new Error(en`Another window goes on with this work.`);
      slot = id;
      return row.place === null ? null : files.tokenFor(row.place);
    },
  };
}

async function ownId(): Promise<string> {
  const id = crypto.randomUUID();
  await hold(id);
  return id;
}

/** Holds the lock of an id until the page is gone; false where another page holds it. */
function hold(id: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const held = (lock: Lock | null) => {
      resolve(lock !== null);
      return lock === null ? undefined : new Promise<never>(() => undefined);
    };
    navigator.locks.request(lockOf(id), { ifAvailable: true }, held).catch(reject);
  });
}

async function leftWork({ place, ...work }: Row): Promise<LeftWork> {
  return { ...work, onDisk: place === null ? null : await presentText(place.handle) };
}

/** Null where the file is gone, or the browser would have to ask the person first. */
async function presentText(handle: FileSystemFileHandle): Promise<string | null> {
  try {
    const granted = (await handle.queryPermission?.({ mode: 'read' })) ?? 'granted';
    return granted === 'granted' ? await textOf(await handle.getFile()) : null;
  } catch {
    return null;
  }
}

function openDatabase(): Promise<IDBDatabase> {
  const opening = indexedDB.open('ratiowright', 1);
  opening.onupgradeneeded = () => void opening.result.createObjectStore(STORE, { keyPath: 'id' });
  return answerOf(opening);
}

async function rowsOf(database: IDBDatabase): Promise<readonly Row[]> {
  return answerOf<Row[]>(database.transaction(STORE).objectStore(STORE).getAll());
}

/** Done once it is on the disk. */
function change(database: IDBDatabase, act: (works: IDBObjectStore) => void): Promise<void> {
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(STORE, 'readwrite', { durability: 'strict' });
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error);
    act(transaction.objectStore(STORE));
  });
}

const answerOf = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
