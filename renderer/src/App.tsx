import { createEffect, onCleanup, onMount, Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { en } from '../../core/src/en.ts';
import { visible } from '../../core/src/visible.ts';
import { Band } from './frame/Band.tsx';
import { Notice } from './frame/Notice.tsx';
import { PageList } from './frame/PageList.tsx';
import type { Host } from './host/host.ts';
import { AppProvider, createApp } from './state/app.ts';
import { commandsOf, listenForKeys } from './state/commands.ts';
import { Around } from './views/beside.ts';
import { Help, loadWhenIdle, pageFiles, pageView, Start } from './views/pages.ts';

export function App(props: { readonly host: Host }) {
  const app = createApp(props.host, pageFiles);
  const commands = commandsOf(app);
  onCleanup(listenForKeys(commands, app.host));
  onMount(() => void commands.find(({ id }) => id === 'file.handedOver')?.run());
  onMount(loadWhenIdle);
  onMount(() =>
    import('./state/keepWork.ts').then(
      ({ keepWork }) => keepWork(app),
      () => app.tell(en`Unsaved work is not kept against a crash: a part of the program could not be read.`),
    ),
  );
  createEffect(() => {
    if (app.question() !== null) void Around.load();
    if (app.help() !== null) void Help.load();
    if (app.shop.file === null) void Start.load();
  });
  createEffect(() => {
    const title = app.shop.file === null ? 'Ratiowright' : `${app.shop.unsaved ? '• ' : ''}${visible(app.shop.name)} – Ratiowright`;
    app.host.unsaved(app.shop.atStake, title);
  });
  return (
    <AppProvider value={app}>
      <div class="app">
        <a class="skip" href="#main">{en`Go to the page`}</a>
        <PageList commands={commands} />
        <header class="band">
          <Band />
        </header>
        <Show when={app.shop.file !== null} fallback={<Dynamic component={Start.get()} commands={commands} />}>
          <Dynamic component={pageView(app.page())} />
        </Show>
        <Notice />
        <Dynamic component={Around.get()} commands={commands} />
        <Dynamic component={Help.get()} commands={commands} />
      </div>
    </AppProvider>
  );
}
