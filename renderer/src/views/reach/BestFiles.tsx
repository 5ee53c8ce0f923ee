import { createSignal } from 'solid-js';
import type { Target } from '../../../../core/src/bestOptions.ts';
import { bestOptionsCsv, bestOptionsTabbed } from '../../../../core/src/bestOptionsCsv.ts';
import { en, plural } from '../../../../core/src/en.ts';
import { copyText } from '../../host/copyText.ts';
import { download } from '../../host/download.ts';
import { useApp } from '../../state/app.ts';
import type { ReachState } from '../../state/reach.ts';

/** The table of best options for a spreadsheet: as a file, or on the clipboard. */
export function BestFiles(props: { readonly reach: ReachState }) {
  const app = useApp();
  const [said, say] = createSignal('');
  /** Null while a best option is still awaited. */
  const targets = (): readonly Target[] | null => {
    const rows: Target[] = [];
    for (const { id, name, plan, missing } of props.reach.materials()) {
      const best = props.reach.best(id);
      if (plan === null) rows.push({ id, name, plan, missing });
      else if (best === undefined) return null;
      else rows.push({ id, name, plan, best });
    }
    return rows;
  };
  const save = () => {
    const rows = targets();
    if (rows === null) return;
    const machine = app.shop.file?.machines[app.machine()]?.name ?? '';
    download(`${machine} best options.csv`.trim(), bestOptionsCsv(rows, app.say()), 'text/csv');
    say('');
  };
  const copy = () => {
    const rows = targets();
    if (rows === null) return;
    const copied = copyText(bestOptionsTabbed(rows, app.say()));
    const words = plural(
      rows.length,
    )`1 row copied, to be pasted into a spreadsheet.|${rows.length} rows copied, to be pasted into a spreadsheet.`;
    say(copied ? words : en`Nothing was copied: this browser does not allow it. Save as CSV instead.`);
  };
  return (
    <p class="gap bar-of">
      <button type="button" disabled={targets() === null} onClick={save}>{en`Save as CSV`}</button>
      <button type="button" disabled={targets() === null} onClick={copy}>{en`Copy`}</button>
      <span role="status">{said()}</span>
    </p>
  );
}
