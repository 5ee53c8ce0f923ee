import { createMemo, For, Match, onCleanup, Show, Switch } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { type Finding, type Outcome, type Plan, placeText } from '../../../../core/src/index.ts';
import { insideCount } from '../../../../core/src/optionList.ts';
import { fewestChecksText, insideCountText } from '../../../../core/src/optionWords.ts';
import { useApp } from '../../state/app.ts';
import { focusList } from './rowKeys.ts';

/** How many fit, whether the search still runs, and what is missing where there is nothing to search. */
export function Head() {
  const app = useApp();
  const trouble = (): readonly Finding[] => findingsAgainst(app.solution.plan());
  return (
    <header class="listhead">
      <div class="head">
        <h1 class="t">
          <span role="status">
            <Show when={trouble().length === 0} fallback={en`No options yet`}>
              <CountWords />
            </Show>
          </span>
        </h1>
        <Show when={app.solution.answered()}>
          {(of) => (
            <span class="faint whose">
              {of().plan.machine.name}, {of().plan.material.name}
            </span>
          )}
        </Show>
        <Progress />
      </div>
      <Show when={trouble().length > 0}>
        <p>{en`Before there are options, the file has to say:`}</p>
        <ul class="todo">
          <For each={trouble()}>
            {(finding) => (
              <li>
                <button type="button" data-check={finding.check} data-severity={finding.severity} onClick={() => app.goTo(finding.where)}>
                  {finding.what} <small>{placeText(finding.where)}</small>
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <NoneInside />
    </header>
  );
}

const findingsAgainst = (outcome: Outcome<Plan> | null): readonly Finding[] => (outcome === null || outcome.ok ? [] : outcome.findings);

function CountWords() {
  const app = useApp();
  const words = createMemo(() => {
    const of = app.solution.answered();
    if (of === null) return en`Options`;
    if (of.plan.mix.limits === null) return en`Limits not given: no option is called inside`;
    return insideCountText(insideCount(of.plan, of.ranked));
  });
  return <span class="sentence">{words()}</span>;
}

/** The old list stays readable while a search runs; its room is always kept, so that nothing jumps. */
function Progress() {
  const app = useApp();
  const state = (): 'runs' | 'stopped' | 'done' => {
    if (app.solution.progress() !== null) return 'runs';
    return app.solution.plan()?.ok === true && !app.solution.current() ? 'stopped' : 'done';
  };
  return (
    <div class="progress right">
      <Switch>
        <Match when={state() === 'runs'}>
          <span>{en`searching, ${Math.floor(100 * (app.solution.progress() ?? 0))} %`}</span>
        </Match>
        <Match when={state() === 'stopped'}>
          <span class="warn">{app.solution.answered() === null ? en`not searched` : en`from before the last change`}</span>
        </Match>
      </Switch>
      <Show when={state() !== 'done'}>
        <button type="button" ref={keepFocus} onClick={() => (state() === 'runs' ? app.solution.cancel() : app.solution.again())}>
          {state() === 'runs' ? en`Cancel` : en`Search again`}
        </button>
      </Show>
    </div>
  );
}

/** The button goes when the search ends: whoever was on it is taken to the list rather than nowhere. */
function keepFocus(button: HTMLButtonElement) {
  onCleanup(() => {
    if (document.activeElement === button) requestAnimationFrame(focusList);
  });
}

/** Nothing fits: which checks are in the way, said by their titles. */
function NoneInside() {
  const app = useApp();
  const sets = () => app.solution.answered()?.ranked.blocked.fewestChecks ?? [];
  return (
    <Show when={sets().length > 0}>
      <p class="gap">
        <span class="bad">{en`Nothing inside the limits can be built.`}</span> {fewestChecksText(sets())}
      </p>
    </Show>
  );
}
