import { createEffect, onCleanup } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { sentenceOf, useApp } from '../state/app.ts';
import type { Command } from '../state/commands.ts';
import { watchMeasured } from '../state/measured.ts';
import { Ask } from './Ask.tsx';
import { keepCursor } from './keepCursor.ts';

/** Asked by the shell only: in a menu they would do nothing or repeat another. */
const NOT_IN_MENU = new Set(['file.handedOver', 'file.saveAndClose']);

/** What lies around the page: questions over it, the cursor that is kept, the mark of what was measured, files dropped on the window, and the native menu, kept in step with the commands. */
export function Around(props: { readonly commands: readonly Command[] }) {
  const app = useApp();
  watchMeasured(app);
  onCleanup(keepCursor());
  createEffect(() => {
    const shown = props.commands.filter(({ id }) => !NOT_IN_MENU.has(id));
    app.host.menu(shown.map(({ id, title, key, windowsKey = null, when }) => ({ id, title, key, windowsKey, enabled: when() })));
  });

  const hover = (event: DragEvent) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    if (event.dataTransfer !== null) event.dataTransfer.dropEffect = 'copy';
  };
  const drop = (event: DragEvent) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    take(event.dataTransfer).catch((error: unknown) => app.tell(sentenceOf(error)));
  };
  /** A shop file dropped anywhere on the window is opened, after the same question as any other. */
  const take = async (dropped: DataTransfer | null): Promise<void> => {
    const [file, another] = dropped?.files ?? [];
    const item = [...(dropped?.items ?? [])].find(({ kind }) => kind === 'file');
    if (file === undefined || item === undefined) return;
    if (another !== undefined) throw new Error(en`Several files were dropped, and none was opened: drop one shop file at a time.`);
    await app.host.dropped(file, item);
    await props.commands.find(({ id }) => id === 'file.handedOver')?.run();
  };
  window.addEventListener('dragover', hover);
  window.addEventListener('drop', drop);
  onCleanup(() => {
    window.removeEventListener('dragover', hover);
    window.removeEventListener('drop', drop);
  });
  return <Ask />;
}

const carriesFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes(en`Files`) ?? false;
