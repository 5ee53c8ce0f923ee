import { app, dialog, session } from 'electron';
import { en, speak } from '../../core/src/en.ts';
import { dictionaryFor } from '../../core/words/dictionaries.ts';
import { takeOpenFileEvents, takeSecondInstances } from './handover.ts';
import { answerCalls } from './ipc.ts';
import { showCommands } from './menu.ts';
import { registerScheme, START_PAGE, serveApp } from './scheme.ts';
import { lockContents, lockNetwork, lockSession, openWindow } from './window.ts';

// The system is ready only once this module has run to its end: nothing here may be awaited.
app.enableSandbox();
// The name under which the installer puts the program, so that Windows takes its windows and recent files for its own.
app.setAppUserModelId('invalid.example.ratiowright');
lockNetwork();
registerScheme();
lockContents();
takeOpenFileEvents();
app.on('window-all-closed', () => app.quit());

if (app.requestSingleInstanceLock()) app.whenReady().then(start).catch(giveUp);
else app.quit();

async function start(): Promise<void> {
  speak(await dictionaryFor([app.getLocale()]));
  serveApp();
  lockSession(session.defaultSession);
  answerCalls();
  const window = openWindow();
  takeSecondInstances(window);
  await showCommands(window, []);
  await window.loadURL(START_PAGE);
}

function giveUp(error: unknown): void {
  dialog.showErrorBox(en`Ratiowright cannot start`, String(error));
  app.exit(1);
}
