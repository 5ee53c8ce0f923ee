import { EventEmitter } from 'node:events';
import type {
  BrowserWindowConstructorOptions,
  CustomScheme,
  MenuItemConstructorOptions,
  MessageBoxOptions,
  OpenDialogOptions,
  SaveDialogOptions,
} from 'electron';
import type { Handler, Stage } from './stage.ts';
import { preventable, type StandInContents, StandInWindow } from './window.ts';

// Stand-in for the `electron` module in the main process: the calls the app uses, over a real browser. What it lacks fails when called.

class StandInApp extends EventEmitter {
  readonly isPackaged: boolean;
  readonly #ready: Promise<void>;
  /** Called once the main module has run to its end, as Electron becomes ready. */
  becomeReady: () => void = () => undefined;

  constructor(
    readonly stage: Stage,
    readonly openWindows: () => readonly StandInWindow[],
  ) {
    super();
    this.isPackaged = stage.choices.isPackaged ?? false;
    this.#ready = new Promise((resolve) => {
      this.becomeReady = () => {
        stage.ready = true;
        resolve();
      };
    });
  }
  getLocale(): string {
    if (!this.stage.ready) throw new Error('the stand-in gives its language only once it is ready');
    return this.stage.choices.locale ?? 'en-US';
  }
  whenReady(): Promise<void> {
    return this.#ready;
  }
  enableSandbox(): void {
    if (this.stage.ready) throw new Error('app.enableSandbox() can only be called before app is ready');
    this.stage.log.push(['enableSandbox']);
  }
  requestSingleInstanceLock(): boolean {
    this.stage.log.push(['requestSingleInstanceLock']);
    return !this.stage.choices.secondInstance;
  }
  readonly commandLine = {
    appendSwitch: (name: string, value = ''): void => {
      if (this.stage.ready) throw new Error('a switch set after ready does nothing');
      this.stage.log.push(['switch', name, value]);
    },
  };
  setAppUserModelId(id: string): void {
    this.stage.log.push(['app-id', id]);
  }
  addRecentDocument(file: string): void {
    this.stage.log.push(['recent-document', file]);
  }
  clearRecentDocuments(): void {
    this.stage.log.push(['no-recent-documents']);
  }
  getPath(name: string): string {
    if (name !== 'userData') throw new Error(`the stand-in has no ${name} folder`);
    return this.stage.userData;
  }
  /** As Electron does: every window is closed first, and one that stays ends the quitting. */
  quit(): void {
    this.stage.log.push(['quit']);
    for (const window of this.openWindows()) window.close();
  }
  exit(code: number): void {
    this.stage.log.push(['exit', code]);
  }
}

export interface StandIn {
  readonly app: StandInApp;
  readonly windows: ReadonlySet<StandInWindow>;
  /** The first window, once it is shown; rejects where the app says that it cannot start. */
  readonly shown: Promise<StandInWindow>;
  /** The items of the application menu. */
  readonly menu: () => readonly MenuItemConstructorOptions[];
  /** What `import ... from 'electron'` gives to the main module of this start. */
  readonly exports: Readonly<Record<string, unknown>>;
}

export function createStandIn(stage: Stage): StandIn {
  const windows = new Set<StandInWindow>();
  const app = new StandInApp(stage, () => [...windows]);
  let menu: readonly MenuItemConstructorOptions[] = [];
  const { log } = stage;
  let settle: { readonly resolve: (window: StandInWindow) => void; readonly reject: (error: Error) => void };
  const shown = new Promise<StandInWindow>((resolve, reject) => {
    settle = { resolve, reject };
  });
  shown.catch(() => undefined);

  const gone = (window: StandInWindow) => {
    windows.delete(window);
    if (windows.size === 0) app.emit('window-all-closed');
  };
  class BrowserWindow extends StandInWindow {
    static fromWebContents = (contents: StandInContents | undefined) => contents?.window ?? null;
    constructor(options: BrowserWindowConstructorOptions) {
      super(options, stage, gone);
      windows.add(this);
      app.emit('web-contents-created', preventable({}), this.webContents);
    }
    override show(): void {
      super.show();
      settle.resolve(this);
    }
  }
  const protocol = {
    registerSchemesAsPrivileged(schemes: readonly CustomScheme[]) {
      if (stage.ready) throw new Error('protocol.registerSchemesAsPrivileged should be called before app is ready');
      for (const { scheme, privileges } of schemes) stage.privileges.set(scheme, privileges ?? {});
    },
    handle(scheme: string, serve: (request: Request) => Promise<Response>) {
      if (!stage.ready) throw new Error('protocol.handle before ready');
      stage.schemes.set(scheme, serve);
    },
  };
  const defaultSession = {
    setPermissionRequestHandler: (handler: Stage['permissionRequest']) => {
      stage.permissionRequest = handler;
    },
    setPermissionCheckHandler: (handler: Stage['permissionCheck']) => {
      stage.permissionCheck = handler;
    },
    setDevicePermissionHandler: (handler: Stage['devicePermission']) => {
      stage.devicePermission = handler;
    },
    webRequest: {
      onBeforeRequest: (filter: Stage['requestFilter']) => {
        stage.requestFilter = filter;
      },
    },
  };
  const ipcMain = {
    handle(channel: string, handler: Handler) {
      if (stage.handlers.has(channel)) throw new Error(`Attempted to register a second handler for '${channel}'`);
      stage.handlers.set(channel, handler);
    },
  };
  const screen = {
    getAllDisplays() {
      if (!stage.ready) throw new Error('The screen module cannot be used before the app is ready');
      return stage.displays.map((workArea) => ({ workArea }));
    },
  };
  const dialog = {
    async showOpenDialog(_window: StandInWindow, options: OpenDialogOptions) {
      log.push(['open-dialog', options]);
      return stage.answers.open.shift() ?? { canceled: true, filePaths: [] };
    },
    async showSaveDialog(_window: StandInWindow, options: SaveDialogOptions) {
      log.push(['save-dialog', options]);
      return stage.answers.save.shift() ?? { canceled: true, filePath: '' };
    },
    async showMessageBox(_window: StandInWindow, options: MessageBoxOptions) {
      log.push(['message', options]);
      return stage.answers.message.shift() ?? { response: options.cancelId ?? 0, checkboxChecked: false };
    },
    showErrorBox(title: string, content: string) {
      log.push(['error-box', title, content]);
      settle.reject(new Error(`${title}: ${content}`));
    },
  };
  const Menu = {
    buildFromTemplate: (template: readonly MenuItemConstructorOptions[]) => template,
    setApplicationMenu: (template: readonly MenuItemConstructorOptions[]) => {
      menu = template;
    },
  };
  return {
    app,
    windows,
    shown,
    menu: () => menu,
    exports: { app, BrowserWindow, dialog, ipcMain, Menu, protocol, screen, session: { defaultSession } },
  };
}
