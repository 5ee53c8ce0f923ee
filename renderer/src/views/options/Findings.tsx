import { For, Show } from 'solid-js';
import { en, plural } from '../../../../core/src/en.ts';
import { type Finding, placeText } from '../../../../core/src/index.ts';
import { SAID_SEVERITY, type SaidSeverity } from '../../saidSeverity.ts';
import { useApp } from '../../state/app.ts';

const COLOURS = { blocks: 'bad', warns: 'warn', notes: 'faint' } as const;

/** Worst first, each with the way to its field. Checks that could not be made stand apart, since they neither block nor pass. */
export function Findings(props: { readonly title?: string; readonly findings: readonly Finding[] }) {
  const made = () => props.findings.filter((finding) => !finding.missing);
  const missing = () => props.findings.filter((finding) => finding.missing);
  return (
    <div class="block">
      <h3>{props.title ?? en`Findings`}</h3>
      <dl class="find">
        <For each={made()}>{(finding) => <Row finding={finding} word={finding.severity} />}</For>
        <Show when={props.findings.length === 0}>
          <dt class="good">{SAID_SEVERITY.clear}</dt>
          <dd>{en`Every check passes.`}</dd>
        </Show>
      </dl>
      <Show when={missing().length > 0}>
        <details>
          <summary>{plural(missing().length)`1 check lacks an input|${missing().length} checks lack an input`}</summary>
          <dl class="find">
            <For each={missing()}>{(finding) => <Row finding={finding} word="missing" />}</For>
          </dl>
        </details>
      </Show>
    </div>
  );
}

function Row(props: { readonly finding: Finding; readonly word: SaidSeverity }) {
  const app = useApp();
  return (
    <>
      <dt class={COLOURS[props.finding.severity]} data-check={props.finding.check} data-severity={props.finding.severity}>
        {SAID_SEVERITY[props.word]}
      </dt>
      <dd>
        {props.finding.what}{' '}
        <Show when={props.finding.where.length > 0}>
          <button type="button" class="plain faint" onClick={() => app.goTo(props.finding.where)}>
            {placeText(props.finding.where)}
          </button>
        </Show>
      </dd>
    </>
  );
}
