import { For, Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { limitsOf } from '../../../core/src/help/fieldHelp.ts';
import { FIELD_PAGES } from '../../../core/src/help/fields/index.ts';
import { FIRST_CHANGE } from '../../../core/src/help/firstChange.ts';
import { PAGE_HELP } from '../../../core/src/help/pageHelp.ts';
import { WORDS } from '../../../core/src/help/words/index.ts';
import { useApp } from '../state/app.ts';
import type { Command } from '../state/commands.ts';
import { CheckList } from './CheckList.tsx';
import { KeyList } from './KeyList.tsx';
import { WordLine } from './WordLine.tsx';

/** All of help as one document; it stands in the page only while it is printed. */
export function HelpPaper(props: { readonly commands: readonly Command[] }) {
  const app = useApp();
  return (
    <article class={`helppaper ${app.paper()}`} aria-label={en`Help on paper`}>
      <h1>{en`Ratiowright: help`}</h1>
      <h2>{en`Pages`}</h2>
      <dl>
        <For each={Object.values(PAGE_HELP)}>
          {({ title, what }) => (
            <>
              <dt>{title}</dt>
              <dd>{what}</dd>
            </>
          )}
        </For>
      </dl>
      <h2>{en`First change, step by step, on the invented example`}</h2>
      <ol>
        <For each={FIRST_CHANGE}>{({ what }) => <li>{what}</li>}</For>
      </ol>
      <For each={FIELD_PAGES}>
        {({ title, lines }) => (
          <section>
            <h2>{title}</h2>
            <table>
              <thead>
                <tr>
                  <th scope="col">{en`Box`}</th>
                  <th scope="col">{en`What it means`}</th>
                  <th scope="col">{en`Limits and units`}</th>
                  <th scope="col">{en`Where it is found`}</th>
                </tr>
              </thead>
              <tbody>
                <For each={lines}>
                  {(line) => (
                    <tr>
                      <th scope="row">{line.name}</th>
                      <td>{line.means}</td>
                      <td>
                        <Show when={limitsOf(line, app.say())} fallback="–">
                          {(limits) => limits()}
                        </Show>
                      </td>
                      <td>{line.found}</td>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          </section>
        )}
      </For>
      <h2>{en`Words`}</h2>
      <dl class="words">
        <For each={WORDS}>{(word) => <WordLine word={word} />}</For>
      </dl>
      <CheckList />
      <KeyList commands={props.commands} />
    </article>
  );
}
