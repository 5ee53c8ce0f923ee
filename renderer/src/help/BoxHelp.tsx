import { createEffect, createMemo, For, onCleanup, Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { limitsOf, lineAt } from '../../../core/src/help/fieldHelp.ts';
import type { FieldLine } from '../../../core/src/help/fieldLine.ts';
import { PAGE_HELP, START_HELP } from '../../../core/src/help/pageHelp.ts';
import { wordsIn } from '../../../core/src/help/words/index.ts';
import { useApp } from '../state/app.ts';
import { describe, nameOf } from './boxes.ts';
import { LimitReadings } from './LimitReadings.tsx';
import { WordLine } from './WordLine.tsx';

/** The line that the box with the cursor is described by. */
const LINE = 'help-line';

/** What the box means, what may be typed, where its value is found, and the words that this uses. */
export function BoxHelp(props: { readonly box: HTMLElement | null }) {
  const app = useApp();
  const line = createMemo(() => lineAt(nameOf(props.box) ?? ''));
  createEffect(() => {
    if (props.box !== null && line() !== null) onCleanup(describe(props.box, LINE));
  });
  return (
    <Show when={line()} fallback={<PageLine />}>
      {(of) => (
        <div class="box">
          <h2>{of().name}</h2>
          <p id={LINE}>{of().means}</p>
          <dl>
            <Show when={limitsOf(of(), app.say())}>
              {(limits) => (
                <>
                  <dt>{en`Limits and units`}</dt>
                  <dd>{limits()}</dd>
                </>
              )}
            </Show>
            <dt>{en`Where it is found`}</dt>
            <dd>{of().found}</dd>
          </dl>
          <Show when={of().place.startsWith('materials.*.limits.') && props.box}>{(box) => <LimitReadings box={box()} />}</Show>
          <Words line={of()} />
        </div>
      )}
    </Show>
  );
}

function Words(props: { readonly line: FieldLine }) {
  const words = createMemo(() => {
    const { name, means, found } = props.line;
    return wordsIn(`${name} ${means} ${found}`).filter(({ word }) => word !== name.toLowerCase());
  });
  return (
    <Show when={words().length > 0}>
      <div class="block">
        <h3>{en`Words of this box`}</h3>
        <dl class="words">
          <For each={words()}>{(word) => <WordLine word={word} />}</For>
        </dl>
      </div>
    </Show>
  );
}

/** Where no box has the cursor. */
function PageLine() {
  const app = useApp();
  const help = () => (app.shop.file === null ? START_HELP : PAGE_HELP[app.page()]);
  return (
    <div class="box">
      <h2>{help().title}</h2>
      <p>{help().what}</p>
      <p class="faint gap">{en`Put the cursor into a box: its help stands here. Where no unit is typed, the one at the box is meant.`}</p>
    </div>
  );
}
