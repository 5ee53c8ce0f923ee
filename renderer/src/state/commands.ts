import { en } from '../../../core/src/en.ts';
import { EXTENSION } from '../../../core/src/index.ts';
import { visible } from '../../../core/src/visible.ts';
import type { Host } from '../host/host.ts';
import { beside } from '../views/beside.ts';
import { type App, PAGES, type Page, sentenceOf } from './app.ts';
import { KEY_WORDS } from './keyWords.ts';

/** Everything a person can ask for by key, button or menu: one list, read by all three. */
export interface Command {
  readonly id: string;
  readonly title: string;
  /** As `Ctrl+S` or `Alt+1`; on a Mac the command key stands in for Ctrl. Null: a button only. */
  readonly key: string | null;
  /** The key that Windows uses for the same. */
  readonly windowsKey?: string;
  readonly when: () => boolean;
  readonly run: () => void | Promise<void>;
}

const PAGE_TITLES: Readonly<Record<Page, string>> = {
  machine: en`Machine`,
  material: en`Material`,
  options: en`Options`,
  reach: en`Reach`,
  sheet: en`Sheet`,
  check: en`Ratio check`,
};

const newShop = () => import('./newShop.ts');

export function commandsOf(app: App): readonly Command[] {
  const { shop, host } = app;
  const open = () => shop.file !== null;
  const always = () => true;
  const guarded = async (work: () => Promise<void>) => {
    try {
      await work();
    } catch (error) {
      app.tell(sentenceOf(error));
    }
  };
  /** One after the other: whoever saves again before the first is through means the same file. */
  let saving: Promise<void> = Promise.resolve();
  const save = (asNew: boolean) => {
    saving = saving.then(() => guarded(async () => (await import('./saving.ts')).saveShop(app, asNew)));
    return saving;
  };
  const leave = (then: () => void | Promise<void>) =>
    guarded(async () => {
      if (await mayLeave(app)) await then();
    });
  return [
    {
      id: 'file.open',
      title: en`Open a file`,
      key: 'Ctrl+O',
      when: always,
      run: () =>
        leave(async () => {
          const opened = await host.open();
          if (opened !== null) app.take(opened);
        }),
    },
    { id: 'file.save', title: en`Save`, key: 'Ctrl+S', when: open, run: () => save(false) },
    { id: 'file.saveAs', title: en`Save as`, key: 'Ctrl+Shift+S', when: open, run: () => save(true) },
    {
      id: 'file.saveAndClose',
      title: en`Save and close`,
      key: null,
      when: open,
      run: async () => {
        await save(false);
        // What saving had to tell must be read before the window goes.
        if (!shop.unsaved && app.notice() === null) host.close();
      },
    },
    {
      id: 'file.print',
      title: en`Print the sheet`,
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
      title: en`Open what the system handed over`,
      key: null,
      when: always,
      run: () =>
        leave(async () => {
          const opened = await host.handedOver();
          if (opened !== null) app.take(opened);
        }),
    },
    { id: 'edit.undo', title: en`Undo`, key: 'Ctrl+Z', when: () => shop.canUndo, run: () => shop.undo() },
    { id: 'edit.redo', title: en`Redo`, key: 'Ctrl+Shift+Z', windowsKey: 'Ctrl+Y', when: () => shop.canRedo, run: () => shop.redo() },
    {
      id: 'help.about',
      title: en`About and licences`,
      key: null,
      when: always,
      run: () => guarded(async () => (await beside()).openAbout(app)),
    },
    {
      id: 'start.demo',
      title: en`Open the invented example`,
      key: 'D',
      when: () => !open(),
      run: () => leave(async () => void app.take({ text: await (await newShop()).demoShop(), name: `example${EXTENSION}` })),
    },
    {
      id: 'start.empty',
      title: en`Start empty`,
      key: 'N',
      when: () => !open(),
      run: () => leave(async () => void app.take({ text: (await newShop()).emptyShop(), name: `shop${EXTENSION}` })),
    },
    { id: 'help.box', title: en`Help`, key: 'F1', when: always, run: () => app.showHelp(app.help() === null ? 'box' : null) },
    { id: 'help.words', title: en`Look up a word`, key: '/', when: always, run: () => app.showHelp('words') },
    ...PAGES.map((page, index) => ({
      id: `page.${page}`,
      title: PAGE_TITLES[page],
      key: `Alt+${index + 1}`,
      when: open,
      run: () => app.show(page),
    })),
  ];
}

/** Another file takes the place of this one: what is not saved stays in the window unless the person says otherwise. */
export async function mayLeave({ shop, ask }: App): Promise<boolean> {
  const text = en`${visible(shop.name)} is not saved. If another file takes its place, its changes are lost.`;
  return !shop.atStake || ask({ text, yes: en`Lose the changes`, no: en`Keep this file` });
}

/** Keys run commands; single letters only outside fields, so that nobody loses what is typed. */
export function listenForKeys(commands: readonly Command[], host: Host): () => void {
  // A question stops the way until it is answered.
  const asked = () => document.querySelector('dialog[open]');
  const hear = (id: string) => {
    const question = asked();
    const command = commands.find((one) => one.id === id);
    if (question === null && command?.when()) void command.run();
    // What the system hands over waits; the rest was meant for what stands behind the question.
    if (id === 'file.handedOver') question?.addEventListener('close', () => hear(id), { once: true });
  };
  host.onCommand(hear);
  const listen = (event: KeyboardEvent) => {
    const pressed = keyOf(event);
    const command = commands.find((one) => (one.key === pressed || one.windowsKey === pressed) && one.when());
    if (command === undefined || event.defaultPrevented || asked() !== null) return;
    if (pressed.length === 1 && isField(event.target)) return;
    event.preventDefault();
    void command.run();
  };
  window.addEventListener('keydown', listen);
  return () => window.removeEventListener('keydown', listen);
}

/** A key as the platform writes it. @source the guides of Apple and Microsoft on keys, from memory */
export function shownKey({ key, windowsKey }: Command): string | null {
  const { platform } = navigator;
  const shown = (platform.startsWith('Win') ? windowsKey : undefined) ?? key;
  if (platform.startsWith('Mac')) return shown?.replace('Ctrl+Shift+', '⇧⌘').replace('Ctrl+', '⌘').replace('Alt+', '⌥') ?? null;
  return (
    shown
      ?.split('+')
      .map((part) => KEY_WORDS[part] ?? part)
      .join('+') ?? null
  );
}

function keyOf(event: KeyboardEvent): string {
  // With Alt a Mac types signs of its own, so that the key itself counts.
  const alone = event.altKey ? event.code.replace(/^(Digit|Key)/, '') : event.key;
  const key = alone.length === 1 ? alone.toUpperCase() : event.key;
  const parts = [
    event.ctrlKey || event.metaKey ? 'Ctrl' : '',
    event.altKey ? 'Alt' : '',
    // On some keyboards Shift makes the slash.
    event.shiftKey && key !== '/' ? 'Shift' : '',
    key,
  ];
  return parts.filter((part) => part !== '').join('+');
}

export const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.isContentEditable || ['INPUT', 'SELECT', 'TEXTAREA'].includes(target.tagName));
