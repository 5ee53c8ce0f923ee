import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { Finding } from '../../../../core/src/index.ts';
import { SAID_SEVERITY } from '../../saidSeverity.ts';
import { useApp } from '../../state/app.ts';

const COLOURS = { blocks: 'bad', warns: 'warn', notes: 'faint' } as const;
const LISTS: readonly unknown[] = ['machines', 'racks'];

/** What stands against a plan of this machine, or is good to know of it; each line goes to its field. */
export function MachineFindings() {
  const app = useApp();
  const findings = (): readonly Finding[] => app.solution.plan()?.findings.filter(({ where }) => LISTS.includes(where[0])) ?? [];
  return (
    <div class="dock">
      <div class="bar-of">
        <h2>{en`Findings on this machine`}</h2>
        <button
          type="button"
          class="right"
          classList={{ pri: findings().every(({ severity }) => severity !== 'blocks') }}
          onClick={() => app.show('material')}
        >{en`Go on to the material`}</button>
      </div>
      <Show when={findings().length > 0} fallback={<p class="faint">{en`None: the machine has all that a plan needs.`}</p>}>
        <dl class="find">
          <For each={findings()}>
            {(finding) => (
              <>
                <dt class={COLOURS[finding.severity]} data-check={finding.check} data-severity={finding.severity}>
                  {SAID_SEVERITY[finding.missing ? 'missing' : finding.severity]}
                </dt>
                <dd>
                  <button type="button" class="plain" onClick={() => app.goTo(finding.where)}>
                    {finding.what}
                  </button>
                </dd>
              </>
            )}
          </For>
        </dl>
      </Show>
    </div>
  );
}
