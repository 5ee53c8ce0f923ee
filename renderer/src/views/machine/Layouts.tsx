import { createMemo, For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { type DriveTree, driveTree } from '../../../../core/src/file/driveTree.ts';
import { useApp } from '../../state/app.ts';
import { LAYOUTS, type LayoutId, layoutOf } from '../../state/layouts.ts';
import type { MachineForm } from './machineForm.ts';

const DRAWN = (Object.keys(LAYOUTS) as LayoutId[]).map((id) => {
  const { shafts, stages, A, B } = layoutOf(id, []);
  return { id, title: LAYOUTS[id].title, tree: driveTree({ shafts, stages, A: { shaft: A }, B: { shaft: B } }) };
});

/** Five usual drives to begin with; one stop of the Tab key, arrows go from one to the next. */
export function Layouts(props: { readonly form: MachineForm }) {
  const app = useApp();
  const present = createMemo(() => props.form.tree().shape);
  const choose = (id: LayoutId) => {
    const machine = app.shop.snapshot()?.machines[app.machine()];
    const { shafts, stages, A, B } = layoutOf(id, machine?.stages ?? []);
    props.form.act(`layout.${id}`, (row) => {
      row.shafts = shafts;
      row.stages = stages;
      row.A.shaft = A;
      row.B.shaft = B;
    });
  };
  const stop = () =>
    Math.max(
      0,
      DRAWN.findIndex(({ tree }) => tree.shape === present()),
    );
  const arrows = (event: KeyboardEvent & { readonly currentTarget: HTMLElement }) => {
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (step === undefined) return;
    const buttons = [...event.currentTarget.querySelectorAll<HTMLElement>('button')];
    const at = buttons.findIndex((button) => button.matches(':focus'));
    buttons.at((at + step) % buttons.length)?.focus();
    event.preventDefault();
  };
  return (
    <div class="block">
      <div class="head">
        <h2 id="layouts">{en`Ready-made layouts`}</h2>
        <span class="faint">{en`replace the drive above; teeth, chains and limits stay where they can`}</span>
      </div>
      <div class="layouts" role="toolbar" aria-labelledby="layouts" onKeyDown={arrows}>
        <For each={DRAWN}>
          {({ id, title, tree }, index) => (
            <button
              type="button"
              class="layout"
              aria-pressed={tree.shape === present()}
              tabindex={index() === stop() ? 0 : -1}
              onClick={() => choose(id)}
            >
              <Sketch tree={tree} />
              <span>{title}</span>
            </button>
          )}
        </For>
      </div>
    </div>
  );
}

const COLUMN = 30;
const ROW = 22;
const LINE = { A: 'lineA', B: 'lineB', both: 'lineboth', neither: 'lineneither' } as const;

/** Shafts as bars, stages as lines, pumps as letters. */
function Sketch(props: { readonly tree: DriveTree }) {
  const x = (column: number) => 6 + column * COLUMN;
  const y = (row: number) => 10 + row * ROW;
  return (
    <svg width="92" height="46" aria-hidden="true">
      <For each={props.tree.links}>
        {({ from, to, turns }) => <line class={LINE[turns]} x1={x(from.column)} x2={x(to.column)} y1={y(to.row)} y2={y(to.row)} />}
      </For>
      <For each={props.tree.shafts}>
        {(node) => <line class="bar" x1={x(node.column)} x2={x(node.column)} y1={y(node.row) - 7} y2={y(node.lastRow) + 7} />}
      </For>
      <For each={props.tree.pumps}>
        {({ side, column, row }) => (
          <text class={side === 'A' ? 'ta' : 'tb'} x={x(column) + 5} y={y(row) + 4}>
            {side}
          </text>
        )}
      </For>
    </svg>
  );
}
