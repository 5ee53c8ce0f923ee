import { createEffect, createSignal, on, onCleanup, onMount } from 'solid-js';
import type { App } from '../state/app.ts';

/** What on the page has the cursor, or had it last. What is in help itself does not count. */
export interface FollowedFocus {
  /** Null before anything of this page had it. */
  readonly element: () => HTMLElement | null;
  /** Puts the cursor back where it was. */
  readonly back: () => void;
}

export function followFocus(app: App): FollowedFocus {
  const [element, setElement] = createSignal<HTMLElement | null>(null);
  const follow = (next: EventTarget | null) => {
    if (next instanceof HTMLElement && next !== document.body && next.closest('.beside') === null) setElement(next);
  };
  const heard = (event: FocusEvent) => follow(event.target);
  onMount(() => {
    follow(document.activeElement);
    document.addEventListener('focusin', heard);
  });
  onCleanup(() => document.removeEventListener('focusin', heard));
  createEffect(on(app.page, () => setElement(null), { defer: true }));
  return { element, back: () => element()?.focus() };
}
