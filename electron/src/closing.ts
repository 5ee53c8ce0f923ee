import { type BrowserWindow, dialog } from 'electron';
import { endWithoutAutosave } from './autosave.ts';

/** Windows whose page holds work that no file holds yet. */
const unsavedWindows = new WeakSet<BrowserWindow>();

export function setUnsaved(window: BrowserWindow, unsaved: boolean, title: string): void {
  if (unsaved) unsavedWindows.add(window);
  else unsavedWindows.delete(window);
  window.setDocumentEdited(unsaved);
  window.setTitle(title);
}

/** Closing with unsaved work asks; the safe answer is the default one and the one of the Escape key. */
export function askBeforeClosing(window: BrowserWindow): void {
  let asking = false;
  window.on('close', (event) => {
    if (!unsavedWindows.has(window)) return;
    event.preventDefault();
    if (asking) return;
    asking = true;
    void mayLose(window).then((lose) => {
      asking = false;
      if (lose) void endWithoutAutosave(() => window.destroy());
    });
  });
}

async function mayLose(window: BrowserWindow): Promise<boolean> {
  const answer = await dialog.showMessageBox(window, {
    type: 'warning',
    message: 'The shop file has changes that are not saved.',
    detail: 'Closing now loses them.',
    buttons: ['Go back', 'Close without saving'],
    defaultId: 0,
    cancelId: 0,
    noLink: true,
  });
  return answer.response === 1;
}
