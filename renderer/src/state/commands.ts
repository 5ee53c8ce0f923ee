import { EXTENSION, placeText, readShopFile } from '../../../core/src/index.ts';
import type { Host } from '../host/host.ts';
import { type App, PAGES, type Page } from './app.ts';

/** Everything a person can ask for by key, button or menu: one list, read by all three. */
export interface Command {
  readonly id: string;
  readonly title: string;
  /** As `Ctrl+S` or `Alt+1`; on a Mac the command key stands in for Ctrl. Null: a button only. */
  readonly key: string | null;
  readonly when: () => boolean;
  readonly run: () => void | Promise<void>;
}

const PAGE_TITLES: Readonly<Record<Page, string>> = {
  machine: 'Machine',
  material: 'Material',
  options: 'Options',
  reach: 'Reach',
  sheet: 'Sheet',
  check: 'Ratio check',
};

export function commandsOf(app: App): readonly Command[] {
  const { shop, host } = app;
  const open = () => shop.file !== null;
  const always = () => true;
  const guarded = async (work: () => Promise<void>) => {
    try {
      await work();
    } catch (error) {
      app.tell(error instanceof Error ? error.message : String(error));
    }
  };
  const save = (asNew: boolean) =>
    guarded(async () => {
      const name = shop.name === '' ? `shop${EXTENSION}` : shop.name;
      const saved = asNew ? await host.saveAs(name, shop.text()) : await host.save(name, shop.text(), shop.token);
      if (saved === null) return;
      shop.saved(saved.name, saved.token);
      app.tell(unreadable(shop.text()));
    });
  /** Another file takes the place of this one: what is not saved stays in the window unless the person says otherwise. */
  const leave = (then: () => void | Promise<void>) =>
    guarded(async () => {
      const text = `${shop.name} is not saved. If another file takes its place, its changes are lost.`;
      if (shop.unsaved && shop.canUndo && !(await app.ask({ text, yes: 'Lose the changes', no: 'Keep this file' }))) return;
      await then();
    });
  return [
    {
      id: 'file.open',
      title: 'Open a file',
      key: 'Ctrl+O',
      when: always,
      run: () =>
        leave(async () => {
          const opened = await host.open();
          if (opened !== null) app.take(opened.text, opened.name, opened.token);
        }),
    },
    { id: 'file.save', title: 'Save', key: 'Ctrl+S', when: open, run: () => save(false) },
    { id: 'file.saveAs', title: 'Save as', key: 'Ctrl+Shift+S', when: open, run: () => save(true) },
    {
      id: 'file.print',
      title: 'Print the sheet',
      key: 'Ctrl+P',
      when: () => app.ownPrint() !== null || app.solution.chosen() !== null,
      run: () =>
        guarded(async () => {
          const own = app.ownPrint();
          await (own === null ? (await import('./keepSheet.ts')).printSheet(app) : own());
        }),
    },
    {
      id: 'file.handedOver',
      title: 'Open what the system handed over',
      key: null,
      when: always,
      run: () =>
        leave(async () => {
          const opened = await host.handedOver();
          if (opened !== null) app.take(opened.text, opened.name, opened.token);
        }),
    },
    { id: 'edit.undo', title: 'Undo', key: 'Ctrl+Z', when: () => shop.canUndo, run: () => shop.undo() },
    { id: 'edit.redo', title: 'Redo', key: 'Ctrl+Shift+Z', when: () => shop.canRedo, run: () => shop.redo() },
    {
      id: 'start.demo',
      title: 'Open the invented example',
      key: 'D',
      when: () => !open(),
      run: () => leave(async () => void app.take(await (await import('./newShop.ts')).demoShop(), `example${EXTENSION}`, null)),
    },
    {
      id: 'start.empty',
      title: 'Start empty',
      key: 'N',
      when: () => !open(),
      run: () => leave(async () => void app.take((await import('./newShop.ts')).emptyShop(), `shop${EXTENSION}`, null)),
    },
    { id: 'help.box', title: 'Help', key: 'F1', when: always, run: () => app.showHelp(app.help() === null ? 'box' : null) },
    { id: 'help.words', title: 'Look up a word', key: '/', when: always, run: () => app.showHelp('words') },
    ...PAGES.map((page, index) => ({
      id: `page.${page}`,
      title: PAGE_TITLES[page],
      key: `Alt+${index + 1}`,
      when: open,
      run: () => app.show(page),
    })),
  ];
}

/** Saving never loses work, so it is not refused; but what would not open again must be said while it can still be mended. */
function unreadable(text: string): string | null {
  const outcome = readShopFile(text);
  if (outcome.ok) return null;
  const troubles = outcome.findings.map((finding) => `${placeText(finding.where)}: ${finding.what}`);
  return `Saved. As it stands the file will not open again until this is put right: ${troubles.join(' ')}`;
}

/** Keys run commands; single letters only outside fields, so that nobody loses what is typed. */
export function listenForKeys(commands: readonly Command[], host: Host): () => void {
  host.onCommand((id) => {
    const command = commands.find((one) => one.id === id);
    if (command?.when()) void command.run();
  });
  const listen = (event: KeyboardEvent) => {
    const pressed = keyOf(event);
    const command = commands.find((one) => one.key === pressed && one.when());
    if (command === undefined || event.defaultPrevented) return;
    if (pressed.length === 1 && isField(event.target)) return;
    event.preventDefault();
    void command.run();
  };
  window.addEventListener('keydown', listen);
  return () => window.removeEventListener('keydown', listen);
}

/** On some keyboards Shift makes the slash. */
function keyOf(event: KeyboardEvent): string {
  const key = event.key.length === 1 ? event.key.toUpperCase() : event.key;
  const parts = [
    event.ctrlKey || event.metaKey ? 'Ctrl' : '',
    event.altKey ? 'Alt' : '',
    event.shiftKey && key !== '/' ? 'Shift' : '',
    key,
  ];
  return parts.filter((part) => part !== '').join('+');
}

export const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.isContentEditable || ['INPUT', 'SELECT', 'TEXTAREA'].includes(target.tagName));
