import { type BrowserWindow, Menu, type MenuItemConstructorOptions } from 'electron';
import type { MenuCommand } from './contract.ts';
import { sendCommand } from './window.ts';

/** The native menu: the system's own roles, and the page's commands by their id. */
export function setMenu(window: BrowserWindow): void {
  const mac = process.platform === 'darwin';
  // The page hears its keys itself; the menu only shows them, so that no command runs twice.
  const item = (label: string, accelerator: string, command: MenuCommand): MenuItemConstructorOptions => ({
    label,
    accelerator,
    registerAccelerator: false,
    click: () => sendCommand(window, command),
  });
  const line: MenuItemConstructorOptions = { type: 'separator' };
  const template: MenuItemConstructorOptions[] = [
    ...(mac ? [{ role: 'appMenu' } as const] : []),
    {
      label: 'File',
      submenu: [
        item('Open…', 'CommandOrControl+O', 'file.open'),
        line,
        item('Save', 'CommandOrControl+S', 'file.save'),
        item('Save as…', 'CommandOrControl+Shift+S', 'file.saveAs'),
        line,
        item('Print…', 'CommandOrControl+P', 'file.print'),
        line,
        { role: mac ? 'close' : 'quit' },
      ],
    },
    {
      label: 'Edit',
      submenu: [
        item('Undo', 'CommandOrControl+Z', 'edit.undo'),
        item('Redo', 'CommandOrControl+Shift+Z', 'edit.redo'),
        line,
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    { label: 'View', submenu: [{ role: 'resetZoom' }, { role: 'zoomIn' }, { role: 'zoomOut' }, line, { role: 'togglefullscreen' }] },
    { role: 'windowMenu' },
  ];
  Menu.setApplicationMenu(Menu.buildFromTemplate(template));
}
