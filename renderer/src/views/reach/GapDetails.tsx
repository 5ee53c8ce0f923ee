import { createSignal, For, Show } from 'solid-js';
import type { GapCloser, GapClosers, Wheel } from '../../../../core/src/buying/index.ts';
import { closersSentence, wheelsText } from '../../../../core/src/buyWords.ts';
import { en } from '../../../../core/src/en.ts';
import { ONE } from '../../../../core/src/ratio.ts';
import type { ReachGap } from '../../../../core/src/reach/figures.ts';
import { gapText, offText, ratioInWords } from '../../../../core/src/reachWords.ts';
import { useApp } from '../../state/app.ts';
import type { GapChoice } from '../../state/gapChoice.ts';
import { addWheels } from './addWheels.ts';

/** What closes the gap that is chosen, and what each purchase leaves of it. */
export function GapDetails(props: { readonly choice: GapChoice }) {
  const app = useApp();
  return (
    <Show when={props.choice.chosen()}>
      {(gap) => (
        <section class="gapdetails" aria-label={en`What closes the gap`}>
          <div class="head">
            <h2>{en`Gap ${gapText(gap(), app.say())}`}</h2>
            <button type="button" class="plain" onClick={() => props.choice.choose(null)}>{en`Close`}</button>
          </div>
          <p>{asItIs(gap())}</p>
          <Show when={props.choice.trouble()} fallback={<Closing choice={props.choice} />}>
            {(trouble) => <p>{trouble()}</p>}
          </Show>
        </section>
      )}
    </Show>
  );

  function asItIs(gap: ReachGap): string {
    return en`As the rack is, a target of ${ratioInWords(gap.worstTarget, app.say())} is ${offText(gap.offRatio, app.say())} off.`;
  }
}

function Closing(props: { readonly choice: GapChoice }) {
  return (
    <>
      <p role="status">
        <Show when={props.choice.closers()}>{(closers) => closersSentence(closers())}</Show>
      </p>
      <Show
        when={props.choice.closers()}
        fallback={
          <p class="works">
            <Show
              when={props.choice.progress() !== null}
              fallback={<button type="button" onClick={props.choice.again}>{en`Work it out`}</button>}
            >
              <span class="faint nw">{en`working it out, ${Math.floor(100 * (props.choice.progress() ?? 0))} %`}</span>
              <button type="button" onClick={props.choice.cancel}>{en`Cancel`}</button>
            </Show>
          </p>
        }
      >
        {(closers) => <Closers closers={closers()} />}
      </Show>
    </>
  );
}

/** Single wheels first, and pairs only where they were looked at. */
function Closers(props: { readonly closers: GapClosers }) {
  return (
    <>
      <List caption={en`One wheel`} rows={props.closers.singles} count={props.closers.singleCount} />
      <List caption={en`Two wheels`} rows={props.closers.pairs} count={props.closers.pairCount} />
    </>
  );
}

const FIRST = 4;

function List(props: { readonly caption: string; readonly rows: readonly GapCloser[]; readonly count: number }) {
  const app = useApp();
  const [all, showAll] = createSignal(false);
  const shown = () => (all() ? props.rows : props.rows.slice(0, FIRST));
  const add = (wheels: readonly Wheel[]) => {
    addWheels(app, wheels);
    // The button goes with its gap.
    document.querySelector<HTMLElement>('.gapbox')?.focus();
  };
  return (
    <Show when={props.rows.length > 0}>
      {/* It scrolls, so the keyboard must reach it. */}
      <section class="scrollx" tabindex="0" aria-label={props.caption}>
        <table class="closers">
          <caption>{props.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{en`To buy`}</th>
              <th scope="col" class="num">{en`leaves`}</th>
              <th scope="col">{en`at`}</th>
              <th scope="col">
                <span class="heard">{en`Add`}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={shown()}>
              {(row) => (
                <tr>
                  <th scope="row">{wheelsText(row.wheels)}</th>
                  <td class="num nw">
                    <span class={row.closes ? 'good' : 'bad'}>
                      {row.closes ? offText(row.offRatio, app.say()) : en`over, ${offText(row.offRatio, app.say())}`}
                    </span>
                  </td>
                  <td class="nw">{ratioInWords(ONE.div(row.worstTarget), app.say())}</td>
                  <td>
                    <button type="button" class="plain" onClick={() => add(row.wheels)}>
                      {en`Add to the rack`} <span class="heard">{wheelsText(row.wheels)}</span>
                    </button>
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <Show when={shown().length < props.rows.length}>
          <button type="button" class="plain" onClick={() => showAll(true)}>
            {en`Show ${props.rows.length - FIRST} more`}
          </button>
        </Show>
        <Show when={all() && props.rows.length < props.count}>
          <p class="faint">{en`and ${props.count - props.rows.length} that leave more`}</p>
        </Show>
      </section>
    </Show>
  );
}
