import { desktopHost } from './desktop.ts';
import type { Host } from './host.ts';

/** The shell's own window need not carry what a plain browser needs. */
export const pickHost = async (): Promise<Host> =>
  window.shell === undefined ? (await import('./browser.ts')).browserHost() : desktopHost(window.shell);
