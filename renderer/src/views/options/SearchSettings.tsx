import { createSignal, Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { en } from '../../../../core/src/en.ts';
import { searchSummary } from '../../../../core/src/searchSummary.ts';
import { useApp } from '../../state/app.ts';
import '../../style/searchSettings.css';
import { SearchFields } from './parts.ts';

/** What the search may use and what it counts; kept with the machine. */
export function SearchSettings() {
  const app = useApp();
  const [open, setOpen] = createSignal(false);
  const machine = () => app.shop.file?.machines[app.machine()];
  const inTrouble = () => {
    const plan = app.solution.plan();
    return plan?.ok === false && plan.findings.some(({ where }) => where[0] === 'machines' && where[2] === 'search');
  };
  return (
    <Show when={machine()}>
      {(row) => (
        <details class="settings" open={open() || inTrouble()} onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>
            {en`Search with`} <span class="faint">{searchSummary(row())}</span>
          </summary>
          <Dynamic component={SearchFields.get()} row={row()} />
        </details>
      )}
    </Show>
  );
}
