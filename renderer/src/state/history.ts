/** Snapshots of the whole file, so that undo cannot miss a field. */
export interface History<T> {
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Remembers the state before an edit. Edits with one key in a row count as one, until `pause`. */
  record(before: T, key: string): void;
  pause(): void;
  /** The state to go back to, or null; `present` becomes what redo returns to. */
  undo(present: T): T | null;
  redo(present: T): T | null;
  clear(): void;
}

/** A day's typing; older steps are forgotten. */
const KEPT = 300;

export function makeHistory<T>(): History<T> {
  let past: T[] = [];
  let future: T[] = [];
  let lastKey: string | null = null;
  return {
    get canUndo() {
      return past.length > 0;
    },
    get canRedo() {
      return future.length > 0;
    },
    record(before, key) {
      future = [];
      if (key === lastKey) return;
      lastKey = key;
      past = [...past.slice(1 - KEPT), before];
    },
    pause() {
      lastKey = null;
    },
    undo(present) {
      const before = past.at(-1);
      if (before === undefined) return null;
      past = past.slice(0, -1);
      future = [present, ...future];
      lastKey = null;
      return before;
    },
    redo(present) {
      const [after, ...rest] = future;
      if (after === undefined) return null;
      future = rest;
      past = [...past, present];
      lastKey = null;
      return after;
    },
    clear() {
      past = [];
      future = [];
      lastKey = null;
    },
  };
}
