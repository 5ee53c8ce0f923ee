import { createMemo, For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { optionFacts } from '../../../../core/src/facts/index.ts';
import type { Plan, PlannedOption } from '../../../../core/src/index.ts';
import type { Fact, FactGroup } from '../../../../core/src/workingText.ts';
import { useApp } from '../../state/app.ts';
import '../../style/figures.css';
import { Opening } from './Opening.tsx';
import { Working } from './Working.tsx';

/** Everything that follows from the chosen option, in groups that open; every figure opens to its working. */
export function Facts(props: { readonly plan: Plan; readonly option: PlannedOption }) {
  const app = useApp();
  const groups = createMemo(() => optionFacts(props.plan, props.option, app.say()));
  return (
    <section class="block figures" aria-label={en`Figures and their working`}>
      <h3>
        {en`Figures and their working`} <kbd>W</kbd>
      </h3>
      <For each={groups()}>{(group) => <Group group={group} />}</For>
    </section>
  );
}

/** The first figure of a group is the one people look for: it stands in its head. */
function Group(props: { readonly group: FactGroup }) {
  const first = () => props.group.facts[0];
  return (
    <details class="group" data-group={props.group.id}>
      <summary>
        <span>{props.group.title}</span>
        <Show when={first()}>
          {(fact) => (
            <span class="first faint">
              {fact().what} {fact().figure}
            </span>
          )}
        </Show>
      </summary>
      <For each={props.group.facts}>{(fact) => <Row fact={fact} />}</For>
    </details>
  );
}

function Row(props: { readonly fact: Fact }) {
  return (
    <Show
      when={props.fact.working}
      fallback={
        <p class="fact">
          <Figures fact={props.fact} />
        </p>
      }
    >
      {(worked) => (
        <Opening class="fact" fact={props.fact.id} line={<Figures fact={props.fact} />}>
          <Working worked={worked()} />
        </Opening>
      )}
    </Show>
  );
}

function Figures(props: { readonly fact: Fact }) {
  return (
    <span class="line">
      <span class="what">{props.fact.what}</span> <b class="num">{props.fact.figure}</b>
      <Show when={props.fact.note !== ''}>
        {' '}
        <small class="faint">{props.fact.note}</small>
      </Show>
    </span>
  );
}
