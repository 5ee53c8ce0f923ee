import { createEffect, Match, onCleanup, onMount, Show, Switch } from 'solid-js';
import { Ask } from './frame/Ask.tsx';
import { Band } from './frame/Band.tsx';
import { Notice } from './frame/Notice.tsx';
import { PageList } from './frame/PageList.tsx';
import type { Host } from './host/host.ts';
import { AppProvider, createApp } from './state/app.ts';
import { commandsOf, listenForKeys } from './state/commands.ts';
import { MachinePage } from './views/machine/MachinePage.tsx';
import { MaterialPage } from './views/material/MaterialPage.tsx';
import { OptionsPage } from './views/options/OptionsPage.tsx';
import { StartPage } from './views/StartPage.tsx';
import { SheetPage } from './views/sheet/SheetPage.tsx';

export function App(props: { readonly host: Host }) {
  const app = createApp(props.host);
  const commands = commandsOf(app);
  onCleanup(listenForKeys(commands, app.host));
  onMount(() => void commands.find(({ id }) => id === 'file.handedOver')?.run());
  createEffect(() => {
    const title = app.shop.file === null ? 'Ratiowright' : `${app.shop.unsaved ? '• ' : ''}${app.shop.name} – Ratiowright`;
    app.host.unsaved(app.shop.unsaved, title);
  });
  return (
    <AppProvider value={app}>
      <div class="app">
        <a class="skip" href="#main">
          Go to the page
        </a>
        <PageList commands={commands} />
        <header class="band">
          <Band />
        </header>
        <Show when={app.shop.file !== null} fallback={<StartPage commands={commands} />}>
          <Switch>
            <Match when={app.page() === 'machine'}>
              <MachinePage />
            </Match>
            <Match when={app.page() === 'material'}>
              <MaterialPage />
            </Match>
            <Match when={app.page() === 'options'}>
              <OptionsPage />
            </Match>
            <Match when={app.page() === 'sheet'}>
              <SheetPage />
            </Match>
          </Switch>
        </Show>
        <Notice />
        <Ask />
      </div>
    </AppProvider>
  );
}
