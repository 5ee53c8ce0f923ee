// The built main module on a stand-in without a window, for children that save to a real disk until they are killed or it is full.
import { register } from 'node:module';

const nothing = () => undefined;

/** Starts it for one file and one folder of settings; what comes back calls the shell as a page does. */
export async function startShell(file, userData) {
  const contents = { send: nothing };
  class BrowserWindow {
    static fromWebContents = () => window;
    webContents = contents;
    isDestroyed = () => false;
    on = nothing;
    once = nothing;
    async loadURL() {}
  }
  const handlers = new Map();
  globalThis.standIn = {
    app: {
      enableSandbox: nothing,
      setAppUserModelId: nothing,
      commandLine: { appendSwitch: nothing },
      addRecentDocument: nothing,
      clearRecentDocuments: nothing,
      on: nothing,
      requestSingleInstanceLock: () => true,
      whenReady: () => Promise.resolve(),
      getPath: () => userData,
      getLocale: () => 'en-US',
      quit: nothing,
      exit: (code) => process.exit(code),
      isPackaged: true,
    },
    BrowserWindow,
    dialog: { showOpenDialog: async () => ({ canceled: false, filePaths: [file] }), showErrorBox: (...what) => console.error(...what) },
    ipcMain: { handle: (channel, handler) => handlers.set(channel, handler) },
    Menu: { buildFromTemplate: nothing, setApplicationMenu: nothing },
    protocol: { registerSchemesAsPrivileged: nothing, handle: nothing },
    screen: { getAllDisplays: () => [] },
    session: {
      defaultSession: {
        setPermissionRequestHandler: nothing,
        setPermissionCheckHandler: nothing,
        setDevicePermissionHandler: nothing,
        webRequest: { onBeforeRequest: nothing },
      },
    },
  };
  const window = new BrowserWindow();
  const names = Object.keys(globalThis.standIn).join(', ');
  const source = `const { ${names} } = globalThis.standIn; export { ${names} };`;
  register(
    `data:text/javascript,${encodeURIComponent(
      `export const resolve = (name, context, next) => name === 'electron'
      ? { url: ${JSON.stringify(`data:text/javascript,${encodeURIComponent(source)}`)}, shortCircuit: true } : next(name, context);`,
    )}`,
  );
  await import('../../dist/electron/main.js');
  await new Promise(setImmediate);

  const event = { sender: contents, senderFrame: { url: 'app://ratiowright/', parent: null } };
  return async (channel, ...args) => {
    const reply = await handlers.get(channel)(event, ...args);
    if (!reply.ok) throw new Error(reply.what);
    return reply.value;
  };
}
