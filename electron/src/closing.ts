import { type BrowserWindow, dialog } from 'electron';
import { en } from '../../core/src/en.ts';
import { endWithoutAutosave } from './autosave.ts';
import { sendCommand } from './send.ts';

/** Windows whose page holds work that no file holds yet. */
const unsavedWindows = new WeakSet<BrowserWindow>();

export function setUnsaved(window: BrowserWindow, unsaved: boolean, title: string): void {
  if (unsaved) unsavedWindows.add(window);
  else unsavedWindows.delete(window);
  window.setDocumentEdited(unsaved);
  window.setTitle(title);
}

/** In the order of the buttons; Enter saves and Escape goes back, so that neither loses anything. */
const ANSWERS = ['Save', 'Close without saving', en`Go back`] as const;
const GO_BACK = ANSWERS.indexOf('Go back');

/** Closing with unsaved work asks, and so does quitting, which closes every window first. */
export function askBeforeClosing(window: BrowserWindow): void {
  let asking = false;
  window.on('close', (event) => {
    if (!unsavedWindows.has(window)) return;
    event.preventDefault();
    if (asking) return;
    asking = true;
    void ask(window).then((answer) => {
      asking = false;
      if (answer === 'Close without saving') void endWithoutAutosave(() => window.destroy());
      // The page saves, asks for a place where it needs one, and closes only once all is saved.
      if (answer === 'Save') sendCommand(window, 'file.saveAndClose');
    });
  });
}

async function ask(window: BrowserWindow): Promise<(typeof ANSWERS)[number]> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: en`The shop file has changes that are not saved.`,
    detail: en`Closing without saving loses them.`,
    buttons: [...ANSWERS],
    defaultId: 0,
    cancelId: GO_BACK,
    noLink: true,
  });
  return ANSWERS[response] ?? en`Go back`;
}
