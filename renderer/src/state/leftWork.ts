import { en } from '../../../core/src/en.ts';
import { differences } from '../../../core/src/file/differences.ts';
import { askAboutLeft } from '../frame/LeftDialog.tsx';
import type { LeftBehind, LeftWork } from '../host/host.ts';
import type { App } from './app.ts';
import { asItStood } from './asItStood.ts';
import { mayLeave } from './commands.ts';

/** Offers what earlier starts left, one after the other, the newest first; what is not decided is offered again at the next start. */
export async function offerLeftWork(app: App, { works, unreadable }: LeftBehind): Promise<void> {
  if (unreadable.length > 0)
    app.tell(en`Unsaved work of an earlier start could not be read. It was kept in the program's own folder as ${unreadable.join(', ')}.`);
  for (const work of works) {
    try {
      if (await offer(app, work)) return;
    } catch (error) {
      app.tell(error instanceof Error ? error.message : String(error));
    }
  }
}

/** True where it was opened. */
async function offer(app: App, work: LeftWork): Promise<boolean> {
  const { host } = app;
  const file = asItStood(work.text);
  const base = asItStood(work.base);
  const disk = work.onDisk === null ? null : asItStood(work.onDisk);
  const changes = file && base && differences(base, file);
  // It was saved, or undone, in the moment before the end.
  if (changes?.length === 0 || (file && disk && differences(disk, file).length === 0)) {
    await host.dropAutosave(work.id);
    return false;
  }
  const stranger = base !== null && disk !== null && differences(base, disk).length > 0;
  const choice = await askAboutLeft(app, { work, changes, readable: file !== null, stranger });
  if (choice === 'drop') await host.dropAutosave(work.id);
  if (choice === 'copy') await host.saveAs(work.name, work.text);
  if (choice !== 'open' || file === null || !(await mayLeave(app))) return false;
  const token = await host.resume(work.id);
  app.open(file, work.name, token, { base: work.base, before: asItStood(work.base) });
  return true;
}
