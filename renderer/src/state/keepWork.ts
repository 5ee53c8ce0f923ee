import { createEffect, createRoot } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import type { App } from './app.ts';
import { offerLeftWork } from './leftWork.ts';

/** Long enough that a run of typing is one write, short enough that a crash costs no more than a word. */
const DELAY_ms = 400;

/** Keeps unsaved work against a crash from here on, and offers what an earlier start left. */
export async function keepWork(app: App): Promise<void> {
  const { shop, host } = app;
  const left = await host.autosaves().catch(() => null);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last: Promise<void> = Promise.resolve();
  let failed = false;
  const inTurn = (work: () => Promise<void>) => {
    last = last.then(work).then(
      () => {
        failed = false;
      },
      (error) => {
        // A disk that stays full would say so at every word.
        if (!failed) app.tell(en`Unsaved work is not kept against a crash: ${error instanceof Error ? error.message : String(error)}`);
        failed = true;
      },
    );
  };
  const keep = () => {
    clearTimeout(timer);
    timer = undefined;
    if (shop.atStake) inTurn(() => host.autosave({ name: shop.name, token: shop.token, base: shop.base(), text: shop.text() }));
  };
  createRoot(() => {
    createEffect((kept: boolean) => {
      if (shop.atStake) {
        timer ??= setTimeout(keep, DELAY_ms);
        return true;
      }
      clearTimeout(timer);
      timer = undefined;
      if (kept) inTurn(() => host.dropAutosave(null));
      return false;
    }, false);
  });
  // A page that is hidden may be ended without another word.
  document.addEventListener('visibilitychange', () => document.hidden && timer !== undefined && keep());
  if (left === null) app.tell(en`What an earlier start may have left unsaved could not be read.`);
  else await offerLeftWork(app, left);
}
