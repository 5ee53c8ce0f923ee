import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { PumpNode, ShaftLink, ShaftNode } from '../../../../core/src/file/driveTree.ts';
import { clip } from '../../../../core/src/visible.ts';
import { BOX, CHAIN_HALF, MOST_LETTERS, PUMP_WIDTH, SHAFT_HALF, SHAFT_WIDTH, xOf, yOf } from './drawingSizes.ts';
import { type MachineForm, stageName } from './machineForm.ts';

/** A shaft with its name, the motor shaft with its speed. */
export function Shaft(props: { readonly form: MachineForm; readonly node: ShaftNode }) {
  const row = () => props.form.row().shafts[props.node.shaft];
  const speed = () => props.form.row().motor.speed;
  return (
    <>
      <rect
        class="shaft"
        x={xOf(props.node.column)}
        y={yOf(props.node.row) - SHAFT_HALF}
        width={SHAFT_WIDTH}
        height={yOf(props.node.lastRow) - yOf(props.node.row) + 2 * SHAFT_HALF}
      />
      <text x={xOf(props.node.column)} y={yOf(props.node.row) - SHAFT_HALF - 8}>
        {clip(row()?.name ?? row()?.id ?? '', MOST_LETTERS + 8)}
      </text>
      <Show when={props.node.column === 0 && speed()}>
        {(typed) => (
          <text class="f" x={xOf(0) + 8} y={yOf(props.node.row) - 8}>
            {typed().value} {typed().unit}
          </text>
        )}
      </Show>
    </>
  );
}

const LINE = { A: 'lineA', B: 'lineB', both: 'lineboth', neither: 'lineneither' } as const;
const TURNS = { A: en`turns A`, B: en`turns B`, both: en`turns both`, neither: en`turns no pump` } as const;
const LETTER = { A: 'ta', B: 'tb', both: '', neither: 'f' } as const;

/** A chain is two runs between its boxes; a coupling is one bar. */
export function Link(props: { readonly form: MachineForm; readonly link: ShaftLink }) {
  const y = () => yOf(props.link.to.row);
  const from = () => xOf(props.link.from.column) + SHAFT_WIDTH;
  const to = () => xOf(props.link.to.column);
  const stage = () => (props.link.stage === null ? undefined : props.form.row().stages[props.link.stage]);
  return (
    <Show when={stage()} fallback={<line class="coupling" x1={from()} x2={to()} y1={y()} y2={y()} />}>
      {(row) => (
        <>
          <For each={[-CHAIN_HALF, CHAIN_HALF]}>
            {(run) => <line class={LINE[props.link.turns]} x1={from()} x2={to()} y1={y() + run} y2={y() + run} />}
          </For>
          <text x={from() + 6} y={y() + BOX.height / 2 + 18}>
            {clip(stageName(row()), MOST_LETTERS)}, <tspan class={LETTER[props.link.turns]}>{TURNS[props.link.turns]}</tspan>
          </text>
          <text class="f" x={from() + 6} y={y() + BOX.height / 2 + 34}>
            {row().pitches === undefined ? row().size : en`${row().size}, ${row().pitches} pitches`}
          </text>
        </>
      )}
    </Show>
  );
}

/** The pump on a shaft, told by its letter and the style of its line. */
export function Pump(props: { readonly form: MachineForm; readonly node: PumpNode }) {
  const side = () => props.form.row()[props.node.side];
  const fitted = () => side().pumps.find(({ id }) => id === side().fitted);
  const x = () => xOf(props.node.column) + SHAFT_WIDTH;
  const y = () => yOf(props.node.row);
  return (
    <>
      <line class="coupling" x1={x()} x2={x() + 14} y1={y()} y2={y()} />
      <rect
        class={props.node.side === 'A' ? 'pump lineA' : 'pump lineB'}
        x={x() + 14}
        y={y() - 18}
        width={PUMP_WIDTH}
        height="36"
        rx="18"
      />
      <text class={props.node.side === 'A' ? 'm letter ta' : 'm letter tb'} x={x() + 14 + PUMP_WIDTH / 2} y={y() + 5}>
        {props.node.side}
      </text>
      <Show when={fitted()?.displacement}>
        {(typed) => (
          <text class="f" x={x() + 6} y={y() + BOX.height / 2 + 18}>
            {typed().value} {typed().unit}
          </text>
        )}
      </Show>
    </>
  );
}
