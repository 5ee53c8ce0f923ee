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

/** What the native menu or the system asks of the page: ids of its command list. */
export type MenuCommand = 'file.open' | 'file.save' | 'file.saveAs' | 'file.print' | 'file.handedOver' | 'edit.undo' | 'edit.redo';

/** Every call the page may make of the shell; the bridge and the handlers are checked against it. */
export interface Shell {
  /** Shows the open dialog; null where it was cancelled. */
  open(): Promise<OpenedFile | null>;
  openRecent(token: string): Promise<OpenedFile>;
  recent(): Promise<readonly RecentFile[]>;
  /** The file the system handed over since the last call, as by a double click; null where there was none. */
  handedOver(): Promise<OpenedFile | null>;
  /** Writes to the place the token stands for. */
  save(token: string, text: string): Promise<void>;
  /** Shows the save dialog; null where it was cancelled. */
  saveAs(suggestedName: string, text: string): Promise<Omit<OpenedFile, 'text'> | null>;
  print(): Promise<void>;
  /** Writes the page as it prints; false where it was cancelled. */
  savePdf(suggestedName: string, paper: Paper): Promise<boolean>;
  /** Whether closing the window would lose work, so that it asks first. */
  unsaved(unsaved: boolean, title: string): Promise<void>;
  onCommand(listener: (command: MenuCommand) => void): void;
}

/** The calls that wait for an answer, each on a channel of its own name. */
export type Call = Exclude<keyof Shell, 'onCommand'>;

/** An answer as it crosses to the page: a failure travels as its sentence. */
export type Reply<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly what: string };
