/** A file the person chose. `token` stands for its place on disk: the page never sees or names a path. */
export interface OpenedFile {
  readonly name: string;
  readonly text: string;
  readonly token: string;
}

export interface RecentFile {
  readonly name: string;
  readonly token: string;
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
  /** Writes to the place the token stands for. */
  save(token: string, text: string): Promise<void>;
  /** Shows the save dialog; null where it was cancelled. */
  saveAs(suggestedName: string, text: string): Promise<Omit<OpenedFile, 'text'> | null>;
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
