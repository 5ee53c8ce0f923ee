import { createMemo, createSignal } from 'solid-js';
import { createStore, produce, reconcile, unwrap } from 'solid-js/store';
import { type ShopFile, writeShopFile } from '../../../core/src/index.ts';
import { makeHistory } from './history.ts';

/** The one store: the shop file as typed, where it came from, and whether it is saved. All else is derived. */
export interface ShopStore {
  readonly file: ShopFile | null;
  readonly name: string;
  readonly token: string | null;
  readonly unsaved: boolean;
  /** Whether something somebody did would be lost with the window: an example or an empty shop as it was opened is not. */
  readonly atStake: boolean;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Changes the file. `key` names the field: edits of one field in a row are one undo step until `pause`. */
  edit(key: string, change: (file: ShopFile) => void): void;
  /** Ends a run of edits to one field: called when a field is left. */
  pause(): void;
  undo(): void;
  redo(): void;
  /** `from` says what the file grew out of, where that is not the file itself. */
  load(file: ShopFile, name: string, token: string | null, from?: Origin): void;
  /** The text to write. */
  text(): string;
  /** The text as it was opened or saved last. */
  base(): string;
  /** `text` is what was written: what was typed since is not saved. */
  saved(name: string, token: string | null, text: string): void;
  /** A plain copy, free of the store. */
  snapshot(): ShopFile | null;
}

export interface Origin {
  /** The text as it was opened or saved last; null: that of the file. */
  readonly base: string | null;
  /** What undo goes back to. */
  readonly before: ShopFile | null;
}

interface State {
  file: ShopFile | null;
  name: string;
  token: string | null;
}

export const WRITTEN_BY = `Ratiowright 0.1.0`;

export function createShopStore(): ShopStore {
  const [state, setState] = createStore<State>({ file: null, name: '', token: null });
  const history = makeHistory<ShopFile>();
  const [steps, setSteps] = createSignal({ undo: false, redo: false });
  /** The text as it was opened or saved last, and whether a file holds it. */
  const [base, setBase] = createSignal({ text: '', saved: false });
  const [version, setVersion] = createSignal(0);
  const snapshot = (): ShopFile | null => (state.file === null ? null : structuredClone(unwrap(state.file)));
  const text = () => {
    const file = snapshot();
    return file === null ? '' : writeShopFile(file, WRITTEN_BY);
  };
  const written = createMemo(() => {
    version();
    return text();
  });
  const settle = () => {
    setSteps({ undo: history.canUndo, redo: history.canRedo });
    setVersion((n) => n + 1);
  };
  // Rows are matched by id, and only plain copies go in: a store must never be handed its own rows back.
  const restore = (file: ShopFile | null) => {
    if (file !== null) setState('file', reconcile(file, { key: 'id', merge: false }));
    settle();
  };

  return {
    get file() {
      return state.file;
    },
    get name() {
      return state.name;
    },
    get token() {
      return state.token;
    },
    get unsaved() {
      return state.file !== null && !(base().saved && written() === base().text);
    },
    get atStake() {
      return state.file !== null && written() !== base().text;
    },
    get canUndo() {
      return steps().undo;
    },
    get canRedo() {
      return steps().redo;
    },
    edit(key, change) {
      const before = snapshot();
      if (before === null) return;
      history.record(before, key);
      setState(
        'file',
        produce((file) => {
          if (file !== null) change(file);
        }),
      );
      settle();
    },
    pause: () => history.pause(),
    undo() {
      const present = snapshot();
      if (present !== null) restore(history.undo(present));
    },
    redo() {
      const present = snapshot();
      if (present !== null) restore(history.redo(present));
    },
    load(file, name, token, from) {
      history.clear();
      if (from?.before) history.record(from.before, '');
      history.pause();
      setState({ file: structuredClone(file), name, token });
      setBase({ text: from?.base ?? text(), saved: token !== null });
      settle();
    },
    text,
    base: () => base().text,
    saved(name, token, text) {
      setState({ name, token });
      setBase({ text, saved: true });
      settle();
    },
    snapshot,
  };
}
