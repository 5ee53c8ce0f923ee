import { createUniqueId, For, Show } from 'solid-js';
import type { CatchBox, UnfinishedCatch } from '../../../../core/src/file/unfinishedCheck.ts';
import { offRatioText } from '../../../../core/src/index.ts';
import { readBox } from '../../../../core/src/ratioCheck/boxes.ts';
import { caughtText } from '../../../../core/src/ratioCheck/causes/words.ts';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';
import { TypedBox } from './TypedBox.tsx';

interface LineProps {
  readonly state: RatioCheckState;
  readonly row: UnfinishedCatch;
  readonly index: number;
  readonly boxes: readonly CatchBox[];
  readonly netShown: boolean;
}

/** One catch; what is wrong with it stands in a line of its own under it. */
export function CatchLine(props: LineProps) {
  const app = useApp();
  const faults = createUniqueId();
  const called = (side: string, box: string) => `Catch ${props.index + 1}, ${side} ${box}`;
  const said = () => {
    const start = props.state.place('catches', props.index);
    const found = props.state.written()?.findings ?? [];
    return found.filter(({ where }) => where.length >= start.length && start.every((part, at) => where[at] === part));
  };
  const off = () => props.state.shown()?.evaluation.counted.find(({ number }) => number === props.index + 1);
  const net = (side: 'A' | 'B') => {
    const caught = props.state.shown()?.evaluation.input.catches[props.index]?.sides[side].mass_kg;
    return caught?.known === true ? caughtText(caught.value, true, app.say()).replace(/\u00A0.*/, '') : '–';
  };
  const edit = (field: readonly (string | number)[], change: (row: UnfinishedCatch) => void) =>
    props.state.edit(['catches', props.index, ...field], (check) => {
      const row = check.catches[props.index];
      if (row !== undefined) change(row);
    });
  const faultAt = (side: 'A' | 'B', box: CatchBox) =>
    props.state.faultAt('catches', props.index, side, box) ??
    (box === props.boxes[0] ? props.state.faultAt('catches', props.index, side) : null);
  const reading = (side: 'A' | 'B', box: CatchBox) => {
    const read = readBox(box, props.row[side][box], app.say());
    return read.ok ? read.reading : undefined;
  };
  const remove = () => {
    app.shop.pause();
    props.state.edit(['catches', 'removed'], (check) => void check.catches.splice(props.index, 1));
    app.shop.pause();
  };
  return (
    <>
      <tr data-catch={props.index} classList={{ left: props.row.leftOut !== undefined }}>
        <th scope="row">{props.index + 1}</th>
        <For each={['A', 'B'] as const}>
          {(side) => (
            <>
              <For each={props.boxes}>
                {(box) => (
                  <td class="num">
                    <TypedBox
                      bare
                      label={called(side, box)}
                      place={props.state.place('catches', props.index, side, box)}
                      column={`${side}.${box}`}
                      text={props.row[side][box]}
                      set={(text) => edit([side, box], (row) => put(row[side], box, text))}
                      fault={faultAt(side, box)}
                      saidBy={faults}
                      reading={reading(side, box)}
                    />
                  </td>
                )}
              </For>
              <Show when={props.netShown}>
                <td class="num net">{net(side)}</td>
              </Show>
            </>
          )}
        </For>
        <td class="num nw">
          <Show when={off()} fallback={<span class="faint">{props.row.leftOut === undefined ? '–' : 'left out'}</span>}>
            {(one) => <>{offRatioText(one().offRatio, app.say())}</>}
          </Show>
        </td>
        <td class="nw">
          <button
            type="button"
            class="plain"
            aria-pressed={props.row.leftOut !== undefined}
            aria-label={`Leave catch ${props.index + 1} out`}
            onClick={() => edit(['leftOut'], (row) => put(row, 'leftOut', row.leftOut === undefined ? '' : undefined))}
          >
            {props.row.leftOut === undefined ? 'Leave out' : 'Count it'}
          </button>{' '}
          <button type="button" class="plain" aria-label={`Remove catch ${props.index + 1}`} onClick={remove}>
            Remove
          </button>
        </td>
      </tr>
      <tr class="said" id={faults} hidden={said().length === 0 && props.row.leftOut === undefined}>
        <td colspan="12">
          <Show when={props.row.leftOut !== undefined}>
            <TypedBox
              words
              label={`Why catch ${props.index + 1} is left out`}
              place={props.state.place('catches', props.index, 'leftOut')}
              text={props.row.leftOut}
              set={(text) => edit(['leftOut'], (row) => put(row, 'leftOut', text ?? ''))}
              fault={null}
              placeholder="spilled, cup not empty, air in the line"
            />
          </Show>
          <For each={said()}>
            {({ severity, what }) => <p classList={{ bad: severity === 'blocks', warn: severity === 'warns' }}>{what}</p>}
          </For>
        </td>
      </tr>
    </>
  );
}
