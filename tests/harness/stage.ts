import type { MessageBoxReturnValue, OpenDialogReturnValue, Privileges, Rectangle, SaveDialogReturnValue } from 'electron';
import type { Browser } from 'playwright-core';

/** What a test decides before the app starts. */
export interface Choices {
  /** Answers of the dialogs in their order; a dialog without an answer is cancelled. */
  readonly open?: readonly string[];
  readonly save?: readonly string[];
  readonly message?: readonly number[];
  /** Why the printer fails, in the order of the calls; without an entry it prints. */
  readonly printFailures?: readonly string[];
  /** Whether another instance runs already. */
  readonly secondInstance?: boolean;
  readonly isPackaged?: boolean;
  /** The folder of the person's settings; a new one by default. */
  readonly userData?: string;
  /** Command-line arguments after the program. */
  readonly args?: readonly string[];
  /** The files that a person could drop on the window, by name with their place on the disk. */
  readonly droppable?: Readonly<Record<string, string>>;
  /** What the screens leave free for windows, in pixels; one of full size by default. */
  readonly displays?: readonly Rectangle[];
  /** The language of the system; English by default. */
  readonly locale?: string;
  /** A folder with another build of the app. */
  readonly build?: string;
  /** Takes the page's content policy away, so that the walls behind it can be seen. */
  readonly bypassPolicy?: boolean;
}

export type Handler = (event: object, ...args: unknown[]) => unknown;
type RequestFilter = (details: { readonly url: string }, answer: (response: { readonly cancel?: boolean }) => void) => void;

/** What the app told the stand-in: one for each start, read by the tests. */
export interface Stage {
  readonly browser: Browser;
  readonly choices: Choices;
  readonly userData: string;
  readonly answers: {
    readonly open: OpenDialogReturnValue[];
    readonly save: SaveDialogReturnValue[];
    readonly message: MessageBoxReturnValue[];
  };
  readonly printFailures: string[];
  displays: readonly Rectangle[];
  readonly log: unknown[][];
  readonly schemes: Map<string, (request: Request) => Promise<Response>>;
  readonly privileges: Map<string, Privileges>;
  readonly handlers: Map<string, Handler>;
  ready: boolean;
  requestFilter: RequestFilter | null;
  permissionRequest: ((contents: object | null, permission: string, answer: (granted: boolean) => void) => void) | null;
  permissionCheck: ((contents: object | null, permission: string) => boolean) | null;
  devicePermission: ((details: object) => boolean) | null;
}

export function createStage(browser: Browser, userData: string, choices: Choices): Stage {
  return {
    browser,
    choices,
    userData,
    answers: {
      open: (choices.open ?? []).map((file) => ({ canceled: false, filePaths: [file] })),
      save: (choices.save ?? []).map((filePath) => ({ canceled: false, filePath })),
      message: (choices.message ?? []).map((response) => ({ response, checkboxChecked: false })),
    },
    printFailures: [...(choices.printFailures ?? [])],
    displays: choices.displays ?? [{ x: 0, y: 0, width: 1920, height: 1040 }],
    log: [],
    schemes: new Map(),
    privileges: new Map(),
    handlers: new Map(),
    ready: false,
    requestFilter: null,
    permissionRequest: null,
    permissionCheck: null,
    devicePermission: null,
  };
}

/** Electron grants what no handler refuses: so does the stand-in, and a rule that is missing shows. */
export function granted(stage: Stage, permission: string): boolean {
  const answers: boolean[] = [];
  stage.permissionRequest?.(null, permission, (yes) => void answers.push(yes));
  return !answers.includes(false);
}

export const checked = (stage: Stage, permission: string): boolean => stage.permissionCheck?.(null, permission) ?? true;

export const deviceGranted = (stage: Stage, deviceType: string): boolean =>
  stage.devicePermission?.({ deviceType, origin: 'app://ratiowright', device: {} }) ?? true;

export function requestPasses(stage: Stage, url: string): boolean {
  const answers: (boolean | undefined)[] = [];
  stage.requestFilter?.({ url }, ({ cancel }) => void answers.push(cancel));
  return !answers.includes(true);
}
