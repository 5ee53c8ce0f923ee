import { For, Show, untrack } from 'solid-js';
import type { Band } from '../../../../core/src/band.ts';
import { en } from '../../../../core/src/en.ts';
import { fixed, isBlocked, offRatioText, type PlannedOption } from '../../../../core/src/index.ts';
import type { StageOption } from '../../../../core/src/option.ts';
import { findingsInShort, lengthNumberText } from '../../../../core/src/optionWords.ts';
import { exactText, ONE } from '../../../../core/src/ratio.ts';
import { SAID_SEVERITY, type SaidSeverity } from '../../saidSeverity.ts';
import { useApp } from '../../state/app.ts';
import type { Columns } from './columns.ts';
import { OffRatioMark } from './OffRatioMark.tsx';
import type { Line } from './optionLines.ts';
import { VerdictWord } from './VerdictWord.tsx';

interface RowProps {
  readonly line: Line;
  readonly columns: Columns;
  readonly rule: Band;
  readonly selected: boolean;
  readonly tabStop: boolean;
  readonly choose: () => void;
  readonly reach: () => void;
}

/** One option, laid out when its row is first drawn. */
export function OptionRow(props: RowProps) {
  const app = useApp();
  const option = untrack(() => app.solution.lay(props.line.mounted));
  const place = () => {
    const { group, rank } = props.line;
    if (group === 'ranked') return rank ?? '–';
    return group === 'fitted' ? en`now` : '';
  };
  return (
    <tr
      classList={{ blocked: props.line.blocked, under: props.line.dominated }}
      data-key={props.line.key}
      data-rank={props.line.rank ?? undefined}
      data-best={props.line.changed ?? undefined}
      data-ratio={exactText(ONE.div(option.bPerA))}
      aria-selected={props.selected}
      tabindex={props.tabStop ? 0 : -1}
      onClick={() => props.choose()}
      onFocus={() => props.reach()}
    >
      <td class="nw faint">
        {place()}
        <Show when={props.line.dominated}>
          <span class="heard"> {en`dominated`}</span>
        </Show>
      </td>
      <For each={option.stages}>{(stage) => <TeethCell stage={stage} />}</For>
      <td class="num">{fixed(ONE.div(option.bPerA), 4, app.say())}</td>
      <Show when={props.line.blocked} fallback={<Figures {...props} option={option} />}>
        <td colspan={props.columns.count - 2 - option.stages.length}>
          <span class="bad">{SAID_SEVERITY.blocked}</span>, {offRatioText(option.offRatio, app.say(), 3)}.{' '}
          <For each={option.findings.filter(({ severity }) => severity === 'blocks')}>
            {(finding) => (
              <span data-check={finding.check} data-severity={finding.severity}>
                {finding.what}{' '}
              </span>
            )}
          </For>
        </td>
      </Show>
    </tr>
  );
}

/** Driver and driven: new ones bold in the colour of their side, those that stay faint. */
function TeethCell(props: { readonly stage: StageOption }) {
  const style = (end: 'driver' | 'driven') => {
    const { stage, teeth } = props.stage;
    if (stage[end].teeth === teeth[end]) return 'faint';
    return stage.turns === 'A' ? 'new ca' : stage.turns === 'B' ? 'new cb' : 'new';
  };
  return (
    <td class="nw">
      <span class={style('driver')}>{props.stage.teeth.driver}</span> {en`to`}{' '}
      <span class={style('driven')}>{props.stage.teeth.driven}</span>
    </td>
  );
}

function Figures(props: RowProps & { readonly option: PlannedOption }) {
  const app = useApp();
  const loops = (word: (loop: NonNullable<StageOption['fit']['loop']>) => string) =>
    props.option.stages.map(({ fit }) => (fit.loop === null ? '–' : word(fit.loop))).join(', ');
  return (
    <>
      <td class="markcell">
        <OffRatioMark rule={props.rule} option={props.option} />
      </td>
      <td class="nw">
        {offRatioText(props.option.offRatio, app.say(), 3)}
        <VerdictWord option={props.option} />
      </td>
      <td class="num">{props.option.changed}</td>
      <td class="num">{fixed(props.option.work_s / 60, 0, app.say())}</td>
      <Show when={props.columns.buying}>
        <td class="num">{props.option.purchases}</td>
      </Show>
      <Show when={props.columns.pumps}>
        <td>
          {props.option.pumps.A.name}, {props.option.pumps.B.name}
        </td>
      </Show>
      <Show when={props.columns.geometry}>
        <td class="num nw">{loops(({ pitches }) => String(pitches))}</td>
        <td class="num nw centrecell">{loops(({ centre_m }) => lengthNumberText(centre_m, app.say(), 2))}</td>
      </Show>
      <td class="findcell">
        <div class="short">
          <Show when={props.line.noGain}>
            <span class="faint">{en`no gain;`}</span>{' '}
          </Show>
          <Short option={props.option} />
        </div>
      </td>
    </>
  );
}

const COLOURS = { blocks: 'bad', warns: 'warn', notes: 'faint', missing: 'faint', clear: 'good' } as const;

function Short(props: { readonly option: PlannedOption }) {
  const short = () => findingsInShort(props.option.findings);
  const word = (): SaidSeverity => (isBlocked(props.option) ? 'blocked' : short().word);
  return (
    <span data-check={short().worst?.check} data-severity={short().worst?.severity} title={short().text}>
      <span class={COLOURS[short().word]}>{SAID_SEVERITY[word()]}</span> {short().text}
    </span>
  );
}
