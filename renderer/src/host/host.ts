import type { LeftBehind, LeftWork, MenuEntry, OpenedFile, Paper, RecentFile, Theirs, Work } from '../../../electron/src/contract.ts';

export interface SavedFile {
  readonly name: string;
  /** Null where the host cannot write to the same place again, as a browser without file access. */
  readonly token: string | null;
  /** The name under which a stranger's file was kept that lay there. */
  readonly aside: string | null;
}

/** What the app runs in: the desktop shell or a browser. Disk failures reject with a sentence for people. */
export interface Host {
  readonly kind: 'desktop' | 'browser';
  /** Null where the person cancelled. */
  open(): Promise<OpenedFile | null>;
  openRecent(token: string): Promise<OpenedFile>;
  recent(): Promise<readonly RecentFile[]>;
  /** The file the system handed over since the last call, as by a double click; null where there was none. */
  handedOver(): Promise<OpenedFile | null>;
  /**
   * Writes where the file came from; without a token it asks for a place. Null where the person cancelled. What somebody else wrote
   * there since is held against it, unless it is the version `seen`: that one is kept aside.
   */
  save(name: string, text: string, token: string | null, seen: string | null): Promise<SavedFile | { readonly theirs: Theirs } | null>;
  saveAs(name: string, text: string): Promise<SavedFile | null>;
  /** What was read or written last under the token, or the version `seen`, opens without fault. */
  opens(token: string, seen: string | null): Promise<void>;
  /** Keeps work against a crash; it takes the place of what this window kept before. */
  autosave(work: Work): Promise<void>;
  /** Work of this window, or of an id, that need not be kept any longer. */
  dropAutosave(id: string | null): Promise<void>;
  /** What earlier starts left; asked once, before this window keeps anything. */
  autosaves(): Promise<LeftBehind>;
  /** Goes on with work that was left behind; returns the token of its file, or null where it has none. */
  resume(id: string): Promise<string | null>;
  print(): Promise<void>;
  /** False where the person cancelled. A browser opens its print dialog, which saves as PDF. */
  savePdf(name: string, paper: Paper): Promise<boolean>;
  /** Tells the host whether closing would lose work, and what the window is called. */
  unsaved(unsaved: boolean, title: string): void;
  /** Takes what was dropped on the page, during the event of the drop; `handedOver` then opens it. */
  dropped(file: File, item: DataTransferItem): Promise<void>;
  /** Closes the window, which asks where work would be lost; a browser leaves that to the person. */
  close(): void;
  /** Puts the commands into the native menu; a browser has no such menu. */
  menu(entries: readonly MenuEntry[]): void;
  /** Hears what the native menu or the system asks for, by the id of a command. */
  onCommand(listener: (id: string) => void): void;
}

export type { LeftBehind, LeftWork, MenuEntry, OpenedFile, Paper, RecentFile, Theirs, Work };
