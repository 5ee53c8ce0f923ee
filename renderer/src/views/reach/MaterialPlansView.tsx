import { createSignal, For, Show } from 'solid-js';
import { bestLevel, type LaidPlan } from '../../../../core/src/buying/index.ts';
import { boughtCount, countOf, materialsSentences, priceSentence, shortText } from '../../../../core/src/buyWords.ts';
import { en } from '../../../../core/src/en.ts';
import { useApp } from '../../state/app.ts';
import type { FoundPlans } from '../../state/buying.ts';
import { PlanBlock } from './PlanBlock.tsx';

type Found = Extract<FoundPlans, { kind: 'materials' }>;

/** The fewest purchases for some materials: how far each number of wheels goes, the equal plans, and the cheapest where prices are known. */
export function MaterialPlansView(props: { readonly found: Found }) {
  const app = useApp();
  const buying = () => props.found.plans.found;
  const names = () => props.found.materials.map(({ name }) => name);
  const best = () => bestLevel(buying());
  const pumps = () => (best().plans[0]?.pumps ?? null) !== null;
  const priced = () => props.found.plan.prices.length > 0;
  const short = () => (buying().fewestPurchases === null ? shortText(buying().mostPurchases, props.found.most, pumps()) : null);
  /** Where it takes no more wheels it stands among the fewest, with its price. */
  const cheaper = () => props.found.plans.cheapest.filter((plan) => boughtCount(plan) > best().purchases);
  return (
    <div class="plans">
      <For each={materialsSentences(buying(), names(), pumps())}>{(sentence) => <p>{sentence}</p>}</For>
      <Show when={short()}>{(words) => <p>{words()}</p>}</Show>
      <Show when={priced()}>
        <p>{priceSentence(buying(), props.found.plan.currency, app.say())}</p>
      </Show>
      <table class="levels">
        <caption>{pumps() ? en`What each number of parts can do` : en`What each number of wheels can do`}</caption>
        <thead>
          <tr>
            <th scope="col">{en`To buy`}</th>
            <th scope="col">{en`Materials inside their limits, at most`}</th>
            <th scope="col">{en`Equal plans`}</th>
          </tr>
        </thead>
        <tbody>
          <For each={buying().levels}>
            {({ purchases, servedCount, noGain, planCount }) => (
              <tr>
                <th scope="row">{purchases}</th>
                <td>{en`${servedCount} of ${names().length}`}</td>
                <td>{noGain ? en`no gain` : planCount}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <Show when={best().purchases > 0}>
        <Plans
          title={en`Fewest, whatever they cost: ${countOf(best().purchases, pumps())}`}
          plans={props.found.plans.fewest}
          count={best().planCount}
          found={props.found}
        />
      </Show>
      <Show when={cheaper().length > 0}>
        <Plans title={en`Lowest price, however many`} plans={cheaper()} count={buying().cheapest?.planCount ?? 0} found={props.found} />
      </Show>
    </div>
  );
}

const FIRST = 2;

function Plans(props: { readonly title: string; readonly plans: readonly LaidPlan[]; readonly count: number; readonly found: Found }) {
  const [all, showAll] = createSignal(false);
  const shown = () => (all() ? props.plans : props.plans.slice(0, FIRST));
  const left = () => props.count - props.plans.length;
  return (
    <div class="planlist">
      <h3>{props.title}</h3>
      <div class="blocks">
        <For each={shown()}>{(plan) => <PlanBlock laid={plan} found={props.found} />}</For>
      </div>
      <Show when={shown().length < props.plans.length}>
        <button type="button" onClick={() => showAll(true)}>
          {en`Show ${props.plans.length - FIRST} more equal plans`}
        </button>
      </Show>
      <Show when={left() > 0}>
        <p class="faint">{en`and ${left()} further equal plans that are not shown`}</p>
      </Show>
    </div>
  );
}
