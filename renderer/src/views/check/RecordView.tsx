import { createMemo, onCleanup, onMount, Show } from 'solid-js';
import { checkCharts } from '../../../../core/src/checkCharts.ts';
import { en } from '../../../../core/src/en.ts';
import { checkFacts } from '../../../../core/src/ratioCheck/checkFacts.ts';
import { checkRecord } from '../../../../core/src/sheet/checkRecord.ts';
import { checkRecordBody, recordChart } from '../../../../core/src/sheet/checkRecordPage.ts';
import { workingGroups } from '../../../../core/src/sheet/workingPage.ts';
import { useApp } from '../../state/app.ts';
import type { Kept } from '../../state/keptChecks.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';
import { Paper } from '../sheet/Paper.tsx';
import { PrintTools } from '../sheet/PrintTools.tsx';
import '../../style/sheet.css';

/** The record of a kept check, as it prints. */
export function RecordView(props: { readonly state: RatioCheckState; readonly opened: Kept; readonly back: () => void }) {
  const app = useApp();
  /** No page is made before its causes are looked for. */
  const body = createMemo(() => {
    const [file, judged] = [app.shop.file, props.state.judged()];
    if (file === null || judged === null || !props.state.judgedIsCurrent()) return null;
    const say = app.say();
    const record = checkRecord(file, judged, props.opened.findings, { file: app.shop.name, say });
    const charts = checkCharts(file, judged, say, recordChart(record)).map(({ svg }) => svg);
    return checkRecordBody(record, charts, app.workings() ? workingGroups(checkFacts(judged, say), say) : []);
  });
  const print = async () => {
    if (body() !== null) await app.host.print();
  };
  onMount(() => app.printInstead(print));
  onCleanup(() => app.printInstead(null));
  return (
    <main id="main" class="desk">
      <PrintTools
        words={en`Print check record`}
        disabled={body() === null}
        print={print}
        pdf={() => app.host.savePdf(`ratio-${props.opened.row.id}.pdf`, app.paper())}
      >
        <label class="choice">
          <input
            type="checkbox"
            name="workings"
            checked={app.workings()}
            onChange={(event) => app.setWorkings(event.currentTarget.checked)}
          />
          {en`with the workings on further pages`}
        </label>
        <button type="button" onClick={() => props.back()}>{en`Back to the check`}</button>
        <span class="faint">{en`Black and white.`}</span>
      </PrintTools>
      <Show when={body()} fallback={<p class="screen">{en`Looking for the causes; the page follows.`}</p>}>
        {(made) => <Paper body={made()} size={app.paper()} />}
      </Show>
    </main>
  );
}
