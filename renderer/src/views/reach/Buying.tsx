import { createMemo, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { useApp } from '../../state/app.ts';
import type { BuyingState } from '../../state/buying.ts';
import type { ReachState } from '../../state/reach.ts';
import { BuyingFields } from './BuyingFields.tsx';
import { MaterialPlansView } from './MaterialPlansView.tsx';
import { PriceList } from './PriceList.tsx';
import { WindowPlansView } from './WindowPlansView.tsx';

/** What to buy: asked for, worked out on request, and told with what each purchase is good for. */
export function Buying(props: { readonly reach: ReachState; readonly buying: BuyingState }) {
  const app = useApp();
  const found = createMemo(() => props.buying.found());
  const rack = () => {
    const plan = app.solution.plan();
    return plan?.ok === true ? (plan.value.rack?.id ?? null) : null;
  };
  const materials = () => {
    const of = found();
    return of?.kind === 'materials' ? of : null;
  };
  const window = () => {
    const of = found();
    return of?.kind === 'window' ? of : null;
  };
  return (
    <section class="buying" aria-label={en`What to buy`}>
      <h2>{en`What to buy`}</h2>
      <BuyingFields reach={props.reach} buying={props.buying} />
      <Show when={rack()} keyed>
        {(id) => <PriceList rack={id} />}
      </Show>
      <Show when={props.buying.stale()}>
        <p class="warn">{en`Something has changed since this was planned: plan again.`}</p>
      </Show>
      <div role="status" class="heard">
        <Show when={props.buying.progress() === null && found()}>{en`Purchases are planned.`}</Show>
      </div>
      <Show when={materials()}>{(of) => <MaterialPlansView found={of()} />}</Show>
      <Show when={window()}>{(of) => <WindowPlansView found={of()} />}</Show>
    </section>
  );
}
