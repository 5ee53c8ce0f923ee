import { browserHost } from './browser.ts';
import { desktopHost } from './desktop.ts';
import type { Host } from './host.ts';

export const pickHost = (): Host => (window.shell === undefined ? browserHost() : desktopHost(window.shell));
