import { createUniqueId, For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { UnfinishedCatch } from '../../../../core/src/file/unfinishedCheck.ts';
import { type Finding, offRatioText } from '../../../../core/src/index.ts';
import { SIDES } from '../../../../core/src/plan.ts';
import { isBlank } from '../../../../core/src/ratioCheck/blankCatch.ts';
import type { CatchColumn } from '../../../../core/src/ratioCheck/boxes.ts';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';
import { CatchCell } from './CatchCell.tsx';
import { TypedBox } from './TypedBox.tsx';

/** One catch; what is wrong with it stands in a line of its own under it. */
export function CatchLine(props: {
  readonly state: RatioCheckState;
  readonly row: UnfinishedCatch;
  readonly index: number;
  readonly columns: readonly CatchColumn[];
}) {
  const app = useApp();
  const said = createUniqueId();
  let why: HTMLTableCellElement | undefined;
  const isOut = () => props.row.leftOut !== undefined;
  const findings = () => {
    const start = props.state.place('catches', props.index);
    return (props.state.written()?.findings ?? []).filter(({ where }) => start.every((part, at) => where[at] === part));
  };
  const off = () => props.state.shown()?.evaluation.counted.find(({ number }) => number === props.index + 1);
  /** One undo step by itself. */
  const act = (key: string, change: Parameters<RatioCheckState['edit']>[1]) => {
    app.shop.pause();
    props.state.edit(['catches', props.index, key], change);
    app.shop.pause();
  };
  const setOut = (text: string | undefined) => (check: Parameters<Parameters<RatioCheckState['edit']>[1]>[0]) => {
    const row = check.catches[props.index];
    if (row !== undefined) put(row, 'leftOut', text);
  };
  const leaveOut = () => {
    act('out', setOut(isOut() ? undefined : ''));
    if (isOut()) why?.querySelector('input')?.focus();
  };
  return (
    <>
      <tr data-catch={props.index} classList={{ left: isOut() }}>
        <th scope="row">{props.index + 1}</th>
        <For each={SIDES}>
          {(side) => <For each={props.columns}>{(column) => <CatchCell {...props} side={side} column={column} saidBy={said} />}</For>}
        </For>
        <td class="num nw">
          <Show when={off()} fallback={<span class="faint">{isOut() ? en`left out` : '–'}</span>}>
            {(one) => <>{offRatioText(one().offRatio, app.say())}</>}
          </Show>
        </td>
        <td class="acts">
          <button
            type="button"
            class="plain"
            aria-label={isOut() ? en`Count it: catch ${props.index + 1}` : en`Leave out: catch ${props.index + 1}`}
            onClick={leaveOut}
          >
            {isOut() ? en`Count it` : en`Leave out`}
          </button>
          <button
            type="button"
            class="plain"
            aria-label={en`Remove catch ${props.index + 1}`}
            onClick={() => act('removed', (check) => void check.catches.splice(props.index, 1))}
          >{en`Remove`}</button>
        </td>
      </tr>
      <tr class="said" id={said} hidden={findings().length === 0 && !isOut()}>
        <td colspan="12" ref={why}>
          <div>
            <Show when={isOut()}>
              <TypedBox
                words
                label={en`Why catch ${props.index + 1} is left out`}
                place={props.state.place('catches', props.index, 'leftOut')}
                text={props.row.leftOut}
                set={(text) => props.state.edit(['catches', props.index, 'leftOut'], setOut(text ?? ''))}
                fault={null}
                placeholder={en`spilled, cup not empty, air in the line`}
              />
            </Show>
            <For each={findings()}>{(finding) => <p class={colourOf(finding, props.row, props.columns)}>{finding.what}</p>}</For>
          </div>
        </td>
      </tr>
    </>
  );
}

/** What is only still to be written is no fault yet. */
function colourOf({ severity, where }: Finding, row: UnfinishedCatch, columns: readonly CatchColumn[]): string {
  const side = where.at(-1);
  const boxes = columns.filter((column) => column !== 'worked net');
  if ((side === 'A' || side === 'B') && isBlank(row[side], boxes)) return 'faint';
  return severity === 'blocks' ? 'bad' : severity === 'warns' ? 'warn' : '';
}
