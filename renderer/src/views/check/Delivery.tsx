import { createMemo, For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { SIDES, type SideName } from '../../../../core/src/plan.ts';
import { storedDelivery } from '../../../../core/src/ratioCheck/storedDelivery.ts';
import { deliveryText, proposalText } from '../../../../core/src/ratioCheckWords.ts';
import { visible } from '../../../../core/src/visible.ts';
import { useApp } from '../../state/app.ts';
import type { RatioCheckState, Shown } from '../../state/ratioCheck.ts';
import { showAsMeasured, usableDeliveries, useDeliveries } from '../../state/useDeliveries.ts';

/** What each pump gave of its displacement, and what the options would be with that. */
export function Delivery(props: { readonly state: RatioCheckState }) {
  return (
    <Show when={props.state.shown()}>
      {(shown) => (
        <section class="block" aria-labelledby="delivery">
          <h2 id="delivery">{en`Delivery`}</h2>
          <dl class="figures">
            <For each={SIDES}>{(side) => <OfPump side={side} shown={shown()} />}</For>
          </dl>
          <Use shown={shown()} />
          <Show when={props.state.judged()?.proposal}>
            {(proposal) => (
              <p class="gap" classList={{ faint: !props.state.judgedIsCurrent() }}>
                <ProposalLine proposal={proposal()} />
              </p>
            )}
          </Show>
        </section>
      )}
    </Show>
  );
}

function ProposalLine(props: { readonly proposal: Parameters<typeof proposalText>[0] }) {
  const app = useApp();
  return <>{proposalText(props.proposal, app.say())}</>;
}

function OfPump(props: { readonly side: SideName; readonly shown: Shown }) {
  const app = useApp();
  const name = () => {
    const machine = app.shop.file?.machines.find(({ id }) => id === props.shown.row.machine);
    const pump = machine?.[props.side].pumps.find(({ id }) => id === props.shown.row.mounted.pumps[props.side]);
    return visible(pump?.name ?? props.shown.row.mounted.pumps[props.side]);
  };
  const measured = () => props.shown.evaluation.delivery[props.side];
  return (
    <>
      <dt classList={{ ca: props.side === 'A', cb: props.side === 'B' }}>{en`Pump ${props.side}, ${name()}`}</dt>
      <dd>
        <Show
          when={measured()}
          fallback={<span class="faint">{en`not known: it needs turns, or seconds with the dial, and the density`}</span>}
        >
          {(of) => <>{deliveryText(of(), app.say())}</>}
        </Show>
      </dd>
    </>
  );
}

function Use(props: { readonly shown: Shown }) {
  const app = useApp();
  const usable = createMemo(() => usableDeliveries(props.shown));
  const used = () => {
    const of = usable();
    const machine = app.shop.file?.machines.find(({ id }) => id === props.shown.row.machine);
    return (
      of !== null &&
      SIDES.every((side) => {
        const pump = machine?.[side].pumps.find(({ id }) => id === props.shown.row.mounted.pumps[side]);
        return JSON.stringify(pump?.measuredDelivery) === JSON.stringify(storedDelivery(of[side]));
      })
    );
  };
  const say = (trouble: string | null) => {
    if (trouble !== null) app.tell(trouble);
  };
  return (
    <>
      <p class="bar-of gap">
        <button
          type="button"
          disabled={usable() === null || used()}
          onClick={() => say(useDeliveries(app, props.shown, false))}
        >{en`Use these deliveries`}</button>
        <button
          type="button"
          disabled={usable() === null}
          onClick={() => say(showAsMeasured(app, props.shown))}
        >{en`Show options as measured`}</button>
      </p>
      <p class="hint">
        {usable() === null
          ? en`Deliveries are used only of catches that agree and tell both pumps.`
          : used()
            ? en`These deliveries are kept with the pumps.`
            : en`Using them keeps them with the pumps on the Machine page; the second button counts them in the ratio too.`}
      </p>
    </>
  );
}
