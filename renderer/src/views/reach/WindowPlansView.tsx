import { For, Show } from 'solid-js';
import { boreText, boughtText, pumpText, shortText, wheelsOf, wheelsText } from '../../../../core/src/buyWords.ts';
import { en } from '../../../../core/src/en.ts';
import { ratioText } from '../../../../core/src/index.ts';
import type { WindowPlan } from '../../../../core/src/windowPlans.ts';
import { leftText, windowGainText, windowSentence } from '../../../../core/src/windowWords.ts';
import { useApp } from '../../state/app.ts';
import type { FoundPlans } from '../../state/buying.ts';
import { addWheels } from './addWheels.ts';

/** The fewest purchases that bring a whole window within its tolerance. */
export function WindowPlansView(props: { readonly found: Extract<FoundPlans, { kind: 'window' }> }) {
  const app = useApp();
  const plans = () => props.found.plans;
  const proofText = () => {
    const ratios = plans()
      .proofRatios.map((ratio) => ratioText(ratio, app.say()))
      .join(', ');
    return plans().fewestPurchases === null
      ? en`They cannot serve all of these: ${ratios}.`
      : en`Fewer cannot serve all of these: ${ratios}.`;
  };
  const left = () => plans().planCount - plans().plans.length;
  return (
    <div class="plans">
      <p>{windowSentence(plans(), props.found.window, app.say())}</p>
      <Show when={shortText(plans().mostPurchases, props.found.most, plans().buysPumps)}>{(words) => <p>{words()}</p>}</Show>
      <Show when={plans().fewestPurchases !== 0}>
        <p class="faint">{proofText()}</p>
      </Show>
      <table class="levels">
        <caption>{plans().buysPumps ? en`The least that a number of parts leaves` : en`The least that a number of wheels leaves`}</caption>
        <thead>
          <tr>
            <th scope="col">{en`To buy`}</th>
            <th scope="col">{en`Worst target of the window`}</th>
            <th scope="col">{en`First such plan`}</th>
          </tr>
        </thead>
        <tbody>
          <For each={plans().steps}>
            {(step) => (
              <tr>
                <th scope="row">{step.purchases}</th>
                <td>{step.noGain ? en`no gain` : leftText(step, app.say())}</td>
                <td>{(step.first && boughtText(step.first)) || '–'}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <Show when={plans().fewestPurchases !== 0}>
        <div class="blocks">
          <For each={plans().plans}>{(plan) => <Block plan={plan} />}</For>
        </div>
        <Show when={left() > 0}>
          <p class="faint">{en`and ${left()} further equal plans that are not shown`}</p>
        </Show>
      </Show>
    </div>
  );
}

function Block(props: { readonly plan: WindowPlan }) {
  const app = useApp();
  const wheels = () => wheelsOf(props.plan.purchases);
  return (
    <article class="plan" data-plan={boughtText(props.plan)}>
      <h4>{en`Buy ${boughtText(props.plan)}`}</h4>
      <p>{en`It leaves ${leftText(props.plan, app.say())}.`}</p>
      <ul>
        <For each={props.plan.purchases}>
          {(purchase) => (
            <li>
              {wheelsText(wheelsOf([purchase]))}, {boreText(purchase.wheel, app.say())}: {windowGainText(purchase, app.say())}
            </li>
          )}
        </For>
        <For each={props.plan.pumps ?? []}>
          {(pump) => (
            <li>
              {pumpText(pump, app.say())}: {windowGainText(pump, app.say())}
            </li>
          )}
        </For>
      </ul>
      <Show when={wheels().length > 0}>
        <button type="button" class="gap" onClick={() => addWheels(app, wheels())}>
          {en`Add these to the rack`} <span class="heard">{wheelsText(wheels())}</span>
        </button>
      </Show>
    </article>
  );
}
