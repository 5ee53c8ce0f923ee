/** A file the person chose. `token` stands for its place on disk: the page never sees or names a path. */
export interface OpenedFile {
  readonly name: string;
  readonly text: string;
  readonly token: string;
  /** The name of the backup that lies beside it; null where there is none. */
  readonly backup: string | null;
}

/** A file that somebody else wrote to since it was opened: nothing was written over it. */
export interface Theirs {
  /** Null where it cannot be read as text; `what` says why. */
  readonly text: string | null;
  readonly what: string;
  /** Names this version of it, so that only what the person has seen is replaced. */
  readonly seen: string;
}

/** What a save came to: written, with the name under which a stranger's file was kept that lay there; or held back. */
export type Saved = { readonly aside: string | null } | { readonly theirs: Theirs };

/** Work that no file holds yet, as it is kept against a crash. */
export interface Work {
  readonly name: string;
  readonly token: string | null;
  /** The text as it was opened or saved last. */
  readonly base: string;
  readonly text: string;
}

/** Work that an earlier start left behind. */
export interface LeftWork extends Omit<Work, 'token'> {
  readonly id: string;
  /** When it was kept, in milliseconds since 1970. */
  readonly at_ms: number;
  /** The text of its file as it is now; null where it has none, or none that can be read. */
  readonly onDisk: string | null;
}

/** What earlier starts left: work, and the names under which what could not be read was kept aside. */
export interface LeftBehind {
  readonly works: readonly LeftWork[];
  readonly unreadable: readonly string[];
}

export interface RecentFile {
  readonly name: string;
  readonly token: string;
}

export interface SavedAs {
  readonly name: string;
  readonly token: string;
  readonly aside: string | null;
}

export type Paper = 'A4' | 'Letter';

/** A command of the page as the native menu shows it; the first part of its id names the menu. */
export interface MenuEntry {
  readonly id: string;
  readonly title: string;
  /** As `Ctrl+Shift+S`; on a Mac the command key stands in for Ctrl. Null: none. */
  readonly key: string | null;
  /** The key that Windows uses for the same; null: no other. */
  readonly windowsKey: string | null;
  readonly enabled: boolean;
}

/** Every call the page may make of the shell; the bridge and the handlers are checked against it. */
export interface Shell {
  /** Shows the open dialog; null where it was cancelled. */
  open(): Promise<OpenedFile | null>;
  openRecent(token: string): Promise<OpenedFile>;
  recent(): Promise<readonly RecentFile[]>;
  /** The file the system handed over since the last call, as by a double click; null where there was none. */
  handedOver(): Promise<OpenedFile | null>;
  /** Takes a file dropped on the page; `handedOver` then opens it. */
  dropped(file: File): Promise<void>;
  /**
   * Writes to the place the token stands for. What somebody else wrote there since stays, unless it is the version `seen`: that one
   * is kept aside.
   */
  save(token: string, text: string, seen: string | null): Promise<Saved>;
  /** Shows the save dialog; null where it was cancelled. A stranger's file that it replaces is kept aside. */
  saveAs(suggestedName: string, text: string): Promise<SavedAs | null>;
  /** What was read or written last under the token, or the version `seen`, opens without fault: it may become the backup. */
  opens(token: string, seen: string | null): Promise<void>;
  /** Keeps work against a crash; it takes the place of what this window kept before. */
  autosave(work: Work): Promise<void>;
  /** Work of this window, or of an id, that need not be kept any longer. */
  dropAutosave(id: string | null): Promise<void>;
  autosaves(): Promise<LeftBehind>;
  /** Goes on with work that was left behind; returns the token of its file, or null where it has none. */
  resume(id: string): Promise<string | null>;
  print(): Promise<void>;
  /** Writes the page as it prints; false where it was cancelled. */
  savePdf(suggestedName: string, paper: Paper): Promise<boolean>;
  /** Whether closing the window would lose work, so that it asks first. */
  unsaved(unsaved: boolean, title: string): Promise<void>;
  /** Closes the window, which still asks where work would be lost. */
  close(): Promise<void>;
  /** Puts the page's commands into the native menu, in place of those before. */
  menu(entries: readonly MenuEntry[]): Promise<void>;
  /** Hears the id of a command that the native menu or the system asks for. */
  onCommand(listener: (id: string) => void): void;
}

/** The calls as they reach the shell, each on a channel of its own name: of a dropped file the bridge sends the place, which the page cannot know. */
export interface Calls extends Omit<Shell, 'onCommand' | 'dropped'> {
  dropped(place: string): Promise<void>;
}
export type Call = keyof Calls;

/** An answer as it crosses to the page: a failure travels as its sentence. */
export type Reply<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly what: string };
