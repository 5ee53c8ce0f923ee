import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { MaterialReach } from '../../../../core/src/materialReach.ts';
import type { ReachGap } from '../../../../core/src/reach/figures.ts';
import { gapText, offText, ratioInWords, toleranceText } from '../../../../core/src/reachWords.ts';
import { useApp } from '../../state/app.ts';
import type { GapChoice } from '../../state/gapChoice.ts';
import type { ReachState } from '../../state/reach.ts';

/** What the marks below the rule say, as a table to read aloud, to copy and to choose from. */
export function Gaps(props: { readonly reach: ReachState; readonly rows: readonly MaterialReach[]; readonly choice: GapChoice }) {
  const app = useApp();
  const inIt = ({ low, high }: ReachGap) =>
    props.rows
      .filter(({ wantedAPerB }) => (low === null || wantedAPerB.compare(low) > 0) && (high === null || wantedAPerB.compare(high) < 0))
      .map(({ name }) => name)
      .join(', ');
  const isChosen = (gap: ReachGap) => props.choice.chosen() === gap;
  return (
    <Show when={props.reach.found()}>
      {(found) => (
        // It scrolls, so the keyboard must reach it.
        <section class="scrollx gapbox" tabindex="0" aria-label={en`Gaps`}>
          <table class="gaps">
            <caption>{en`Gaps wider than ${toleranceText(found().reach.wish.tolerance, app.say())}`}</caption>
            <thead>
              <tr>
                <th scope="col">{en`A : B by volume`}</th>
                <th scope="col">{en`Worst target`}</th>
                <th scope="col" class="num">{en`Off-ratio there`}</th>
                <th scope="col">{en`Materials in it`}</th>
                <th scope="col">
                  <span class="heard">{en`What closes it`}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              <For
                each={found().reach.gaps}
                fallback={
                  <tr>
                    <td colspan="5">
                      {found().reach.moreGaps === null ? en`Too many to be looked for at this tolerance.` : en`There is none.`}
                    </td>
                  </tr>
                }
              >
                {(gap) => (
                  <tr classList={{ on: isChosen(gap) }}>
                    <th scope="row" class="nw">
                      {gapText(gap, app.say())}
                    </th>
                    <td class="nw">{ratioInWords(gap.worstTarget, app.say())}</td>
                    <td class="num">{offText(gap.offRatio, app.say())}</td>
                    <td>{inIt(gap) || '–'}</td>
                    <td>
                      <button
                        type="button"
                        class="plain"
                        aria-pressed={isChosen(gap)}
                        onClick={() => props.choice.choose(isChosen(gap) ? null : gap)}
                      >
                        {en`What closes it`} <span class="heard">{gapText(gap, app.say())}</span>
                      </button>
                    </td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
          <Show when={found().reach.moreGaps}>{(more) => <p class="faint">{en`and ${more()} narrower ones`}</p>}</Show>
        </section>
      )}
    </Show>
  );
}
