import { createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import { en, plural } from '../../../core/src/en.ts';
import { findWords } from '../../../core/src/help/words/index.ts';
import { WordLine } from './WordLine.tsx';

/** Every word, found by typing. */
export function WordSearch() {
  const [typed, type] = createSignal('');
  const found = createMemo(() => findWords(typed()));
  let box: HTMLInputElement | undefined;
  onMount(() => {
    box?.focus();
    // The command opens what is open already: the cursor still goes here.
    const again = (event: KeyboardEvent) => event.key === '/' && event.defaultPrevented && box?.focus();
    window.addEventListener('keydown', again);
    onCleanup(() => window.removeEventListener('keydown', again));
  });
  return (
    <>
      <h2>{en`Words`}</h2>
      <label class="field">
        <span class="k">{en`Look up a word`}</span>
        <input
          ref={box}
          type="text"
          autocomplete="off"
          spellcheck={false}
          value={typed()}
          onInput={(event) => type(event.currentTarget.value)}
        />
      </label>
      <p class="hint" role="status">
        {plural(found().length)`1 word|${found().length} words`}
      </p>
      <Show when={found().length > 0} fallback={<p>{en`No word here holds “${typed().trim()}”.`}</p>}>
        <dl class="words">
          <For each={found()}>{(word) => <WordLine word={word} />}</For>
        </dl>
      </Show>
    </>
  );
}
