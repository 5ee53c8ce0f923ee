import { readFile } from 'node:fs/promises';
import { decode, encode } from './wire.ts';

/** The names under which stand-in and page reach each other; page scripts never see the first. */
export const INVOKE = 'standInInvoke';

/**
 * The preload as a script that runs before those of the page. As in the sandbox, it sees `require('electron')` with the bridge and the messages, and nothing else.
 * Unlike there, it shares the page's world: that the two are apart is Electron's own part and cannot be shown here.
 */
export async function preloadScript(file: string, deliver: string, droppable: Readonly<Record<string, string>>): Promise<string> {
  return `(() => {
    const encode = ${encode};
    const decode = ${decode};
    (${bridge})(${JSON.stringify(INVOKE)}, ${JSON.stringify(deliver)}, ${JSON.stringify(droppable)}, encode, decode, (require, module, exports) => { ${await readFile(file, 'utf8')} });
  })();`;
}

type Invoke = (channel: string, args: string) => Promise<{ readonly error?: string; readonly value: string }>;
type Listener = (event: object, ...args: unknown[]) => void;

/** Runs in the page: it calls nothing outside itself. */
function bridge(
  invokeName: string,
  deliverName: string,
  droppable: Readonly<Record<string, string>>,
  encode: (value: unknown) => string,
  decode: (text: string) => unknown[],
  preload: (require: (name: string) => object, module: object, exports: object) => void,
): void {
  const invoke: Invoke = Reflect.get(globalThis, invokeName);
  Reflect.deleteProperty(globalThis, invokeName);
  // Frames inside the page get no preload.
  if (window !== window.top) return;

  const listeners = new Map<string, Listener[]>();
  const ipcRenderer = {
    async invoke(channel: string, ...args: unknown[]): Promise<unknown> {
      const reply = await invoke(channel, encode(args));
      if (reply.error !== undefined) throw new Error(reply.error);
      return decode(reply.value)[0];
    },
    on(channel: string, listener: Listener): object {
      listeners.set(channel, [...(listeners.get(channel) ?? []), listener]);
      return ipcRenderer;
    },
  };
  const deliver = (channel: string, args: string) => {
    for (const listener of listeners.get(channel) ?? []) listener({}, ...decode(args));
  };
  Object.defineProperty(globalThis, deliverName, { value: deliver, enumerable: false });

  /** What crosses the bridge: functions by proxy, errors by their message, files as they are, plain values by copy, all of it frozen. */
  const cross = (value: unknown): unknown => {
    if (typeof value === 'symbol') throw new TypeError('a symbol does not cross the bridge');
    if (typeof value === 'function') return Object.freeze((...args: unknown[]) => attempt(() => cross(value(...args.map(cross)))));
    if (value instanceof Promise)
      return value.then(cross, (error) => {
        throw cross(error);
      });
    if (value instanceof Error) return new Error(value.message);
    if (value instanceof File) return value;
    if (Array.isArray(value)) return Object.freeze(value.map(cross));
    if (value !== null && typeof value === 'object') {
      if (Object.getPrototypeOf(value) !== Object.prototype) throw new TypeError('An object could not be cloned.');
      return Object.freeze(Object.fromEntries(Object.entries(value).map(([key, part]) => [key, cross(part)])));
    }
    return value;
  };
  const attempt = (work: () => unknown): unknown => {
    try {
      return work();
    } catch (error) {
      throw cross(error);
    }
  };
  const contextBridge = {
    exposeInMainWorld: (name: string, api: object) => void Object.defineProperty(globalThis, name, { value: cross(api), enumerable: true }),
  };
  // A file that the page made by itself has no place, as in Electron.
  const webUtils = { getPathForFile: (file: File) => droppable[file.name] ?? '' };
  const require = (name: string): object => {
    if (name !== 'electron') throw new Error(`module not found: ${name}`);
    return { contextBridge, ipcRenderer, webUtils };
  };
  const module = { exports: {} };
  preload(require, module, module.exports);
}
