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
const ANSWERS = ['save', 'close', 'back'] as const;
type Answer = (typeof ANSWERS)[number];

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
      if (answer === 'close') void endWithoutAutosave(() => window.destroy());
      // The page saves, asks for a place where it needs one, and closes only once all is saved.
      if (answer === 'save') sendCommand(window, 'file.saveAndClose');
    });
  });
}

async function ask(window: BrowserWindow): Promise<Answer> {
  const words: Readonly<Record<Answer, string>> = { save: en`Save`, close: en`Close without saving`, back: en`Go back` };
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: en`The shop file has changes that are not saved.`,
    detail: en`Closing without saving loses them.`,
    buttons: ANSWERS.map((answer) => words[answer]),
    defaultId: 0,
    cancelId: ANSWERS.indexOf('back'),
    noLink: true,
  });
  return ANSWERS[response] ?? 'back';
}
