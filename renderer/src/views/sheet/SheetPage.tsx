import { createMemo, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { isBlocked } from '../../../../core/src/index.ts';
import { useApp } from '../../state/app.ts';
import { markAsFitted, printSheet, type ReadySheet, readySheet, saveSheetPdf } from '../../state/keepSheet.ts';
import { KeptSheets } from './KeptSheets.tsx';
import { Paper } from './Paper.tsx';
import { PrintTools } from './PrintTools.tsx';
import '../../style/sheet.css';

/** The change sheet of the chosen option, as it prints; printing keeps it in the shop file. */
export function SheetPage() {
  const app = useApp();
  const ready = createMemo(() => readySheet(app));
  return (
    <main id="main" class="desk">
      <Show when={ready()} fallback={<p class="screen">{waiting()}</p>}>
        {(sheet) => (
          <>
            <Tools sheet={sheet()} />
            <Paper body={sheet().body} size={app.paper()} />
          </>
        )}
      </Show>
      <KeptSheets />
    </main>
  );
  function waiting(): string {
    if (app.solution.progress() !== null) return en`Searching; the sheet follows.`;
    const plan = app.solution.plan();
    if (plan !== null && !plan.ok) return en`The plan is not complete yet: the Options page says what is missing.`;
    return en`There is no option to put on a sheet.`;
  }
}

function Tools(props: { readonly sheet: ReadySheet }) {
  const app = useApp();
  const blocked = () => {
    const option = app.solution.chosen();
    return option !== null && isBlocked(option);
  };
  return (
    <PrintTools words={en`Print sheet ${props.sheet.number}`} print={() => printSheet(app)} pdf={() => saveSheetPdf(app)}>
      <label class="choice">
        <input
          type="checkbox"
          name="workings"
          checked={app.workings()}
          onChange={(event) => app.setWorkings(event.currentTarget.checked)}
        />
        {en`with the workings on further pages`}
      </label>
      <button
        type="button"
        disabled={blocked() || app.solution.chosen()?.changed === 0}
        onClick={() => markAsFitted(app, props.sheet)}
      >{en`Mark as fitted`}</button>
      <span class="faint">
        {props.sheet.kept === null
          ? en`Black and white. Printing keeps a copy of the page in the shop file.`
          : en`Kept as sheet ${props.sheet.kept.number}.`}
      </span>
    </PrintTools>
  );
}
