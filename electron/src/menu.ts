import { type BrowserWindow, Menu, type MenuItemConstructorOptions } from 'electron';
import { en } from '../../core/src/en.ts';
import type { MenuEntry } from './contract.ts';
import { handOver } from './handover.ts';
import { emptyList, onListChange, recentPlaces } from './recent.ts';
import { sendCommand } from './send.ts';

type Item = MenuItemConstructorOptions;

const LINE: Item = { type: 'separator' };

/** The native menu: the system's own roles, which Electron names in English alone, the page's commands by their id, and the files used last. */
export function showCommands(window: BrowserWindow, entries: readonly MenuEntry[]): Promise<void> {
  const show = () => {
    turn = turn
      .catch(() => undefined)
      .then(async () => {
        const places = await recentPlaces();
        if (!window.isDestroyed()) Menu.setApplicationMenu(Menu.buildFromTemplate(template(window, entries, places)));
      });
    return turn;
  };
  onListChange(show);
  return show();
}

/** One menu after the other, so that the one asked for last is the one that stays, however long the list of files takes to read. */
let turn: Promise<void> = Promise.resolve();

function template(window: BrowserWindow, entries: readonly MenuEntry[], places: readonly string[]): Item[] {
  const mac = process.platform === 'darwin';
  const windows = process.platform === 'win32';
  const of = (...groups: readonly string[]): Item[] =>
    groups.flatMap((group) => entries.filter(({ id }) => id.startsWith(`${group}.`)).map((entry) => item(window, entry)));
  const undoing = of('edit');
  const helping = of('help');
  return [
    ...(mac ? [{ role: 'appMenu' } as const] : []),
    {
      label: en`File`,
      submenu: [
        ...of('start', 'file'),
        LINE,
        { label: en`Open again`, submenu: again(places) },
        LINE,
        mac ? { role: 'close', label: en`Close Window` } : { role: 'quit', label: windows ? en`Exit` : en`Quit` },
      ],
    },
    {
      label: en`Edit`,
      submenu: [
        ...(undoing.length > 0 ? [...undoing, LINE] : []),
        { role: 'cut', label: en`Cut` },
        { role: 'copy', label: en`Copy` },
        { role: 'paste', label: en`Paste` },
        { role: 'selectAll', label: en`Select All` },
      ],
    },
    ...(of('page').length > 0 ? [{ label: en`Page`, submenu: of('page') }] : []),
    {
      label: en`View`,
      submenu: [
        { role: 'resetZoom', label: en`Actual Size` },
        { role: 'zoomIn', label: en`Zoom In` },
        { role: 'zoomOut', label: en`Zoom Out` },
        LINE,
        { role: 'togglefullscreen', label: en`Toggle Full Screen` },
      ],
    },
    { role: 'windowMenu', label: en`Window` },
    ...(helping.length > 0 ? [{ role: 'help', label: en`Help`, submenu: helping } as const] : []),
  ];
}

function item(window: BrowserWindow, entry: MenuEntry): Item {
  const accelerator = acceleratorOf((process.platform === 'win32' ? entry.windowsKey : null) ?? entry.key);
  return {
    id: entry.id,
    label: plain(entry.title),
    enabled: entry.enabled,
    // The page hears its keys itself; the menu only shows them, so that no command runs twice.
    ...(accelerator === null ? {} : { accelerator, registerAccelerator: false }),
    click: () => sendCommand(window, entry.id),
  };
}

/** A key without Ctrl or Alt is a letter, which a menu would take away from whoever types. */
const acceleratorOf = (key: string | null): string | null =>
  key !== null && /^(Ctrl|Alt)\+/.test(key) ? key.replace('Ctrl', 'CommandOrControl') : null;

function again(places: readonly string[]): Item[] {
  if (places.length === 0) return [{ label: en`No files yet`, enabled: false }];
  return [
    ...places.map((place): Item => ({ label: plain(place), click: () => handOver(place) })),
    LINE,
    { label: en`Empty this list`, click: () => void emptyList() },
  ];
}

/** In a menu an ampersand marks the letter that follows. */
const plain = (words: string): string => words.replaceAll('&', '&&');
