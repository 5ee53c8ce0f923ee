import { For, Show } from 'solid-js';
import { type LaidPlan, pricesOf } from '../../../../core/src/buying/index.ts';
import { boreText, boughtText, gainText, priceText, pumpText, wheelsOf, wheelsText } from '../../../../core/src/buyWords.ts';
import { en } from '../../../../core/src/en.ts';
import { exactRatioText, offRatioText } from '../../../../core/src/index.ts';
import { mountedText } from '../../../../core/src/mountedWords.ts';
import { insideWord } from '../../../../core/src/optionWords.ts';
import { ONE } from '../../../../core/src/ratio.ts';
import { useApp } from '../../state/app.ts';
import type { FoundPlans } from '../../state/buying.ts';
import { addWheels } from './addWheels.ts';

/** One plan of purchases: what each wheel is good for, and the best option that every material then gets. */
export function PlanBlock(props: { readonly laid: LaidPlan; readonly found: Extract<FoundPlans, { kind: 'materials' }> }) {
  const app = useApp();
  const wheels = () => wheelsOf(props.laid.purchases);
  const names = () => props.found.materials.map(({ name }) => name);
  const price = () => {
    const { plan } = props.found;
    const priceOf = pricesOf(plan);
    if (priceOf === undefined) return null;
    if (props.laid.pumps !== null && props.laid.pumps.length > 0) return en`price not known`;
    const prices = wheels().map(priceOf);
    const total = prices.reduce<number | null>((sum, one) => (sum === null || one === null ? null : sum + one), 0);
    return total === null ? en`price not known` : priceText(total, plan.currency, app.say());
  };
  return (
    <article class="plan" data-plan={boughtText(props.laid)}>
      <h4>
        {en`Buy ${boughtText(props.laid)}`}
        <Show when={price()}>{(words) => <small> {words()}</small>}</Show>
      </h4>
      <ul>
        <For each={props.laid.purchases}>
          {(purchase) => (
            <li>
              {wheelsText(wheelsOf([purchase]))}, {boreText(purchase.wheel, app.say())}: {gainText(purchase, names())}
            </li>
          )}
        </For>
        <For each={props.laid.pumps ?? []}>
          {(pump) => (
            <li>
              {pumpText(pump, app.say())}: {gainText({ ...pump, quantity: 1 }, names())}
            </li>
          )}
        </For>
      </ul>
      {/* It scrolls, so the keyboard must reach it. */}
      <section class="scrollx" tabindex="0" aria-label={en`Materials with ${boughtText(props.laid)}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">{en`Material`}</th>
              <th scope="col">{en`Best option then`}</th>
              <th scope="col">{en`Off-ratio`}</th>
              <th scope="col">{en`Teeth`}</th>
              <th scope="col" class="num">{en`Parts to change`}</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.laid.options}>
              {(option, index) => (
                <tr>
                  <th scope="row">{names()[index()]}</th>
                  <Show when={option} fallback={<td colspan="4">{en`nothing can be built`}</td>}>
                    {(one) => (
                      <>
                        <td class="nw">{exactRatioText(ONE.div(one().bPerA))}</td>
                        <td class="nw">
                          {offRatioText(one().offRatio, app.say())}
                          <small class={one().inside ? 'good' : 'bad'}> {insideWord(one().inside)}</small>
                        </td>
                        <td class="nw">{mountedText(props.found.plan, one().mounted)}</td>
                        <td class="num">{one().partsChanged}</td>
                      </>
                    )}
                  </Show>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </section>
      <Show when={wheels().length > 0}>
        <button type="button" class="gap" onClick={() => addWheels(app, wheels())}>
          {en`Add these to the rack`} <span class="heard">{wheelsText(wheels())}</span>
        </button>
      </Show>
    </article>
  );
}
