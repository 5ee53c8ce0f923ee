import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { ShaftLink } from '../../../../core/src/file/driveTree.ts';
import type { StageRow } from '../../../../core/src/file/machine.ts';
import { CountField } from '../../fields/index.tsx';
import { put } from '../../state/put.ts';
import { BOX, boxX, COLUMN, LEFT, PUMP_ROOM, RING, ROW, SHAFT_WIDTH, yOf } from './drawingSizes.ts';
import { Link, Pump, Shaft } from './driveMarks.tsx';
import { driveSentence } from './driveWords.ts';
import { type End, type MachineForm, type SlotAt, stageName } from './machineForm.ts';

/** Shafts as they turn one another, left to right from the motor, with a box for the teeth at every slot. */
export function DriveDrawing(props: { readonly form: MachineForm; readonly keys: (event: KeyboardEvent, slot: SlotAt) => void }) {
  const tree = () => props.form.tree();
  const width = () => LEFT + tree().columns * COLUMN - (COLUMN - SHAFT_WIDTH) + PUMP_ROOM;
  const height = () => yOf(tree().rows - 1) + ROW / 2 + 20;
  return (
    <div class="scrollx">
      <div class="tree" style={{ width: `${width()}px`, height: `${height()}px` }}>
        <svg width={width()} height={height()} role="img" aria-label={driveSentence(props.form.row(), tree())}>
          <For each={tree().shafts}>{(node) => <Shaft form={props.form} node={node} />}</For>
          <For each={tree().links}>{(link) => <Link form={props.form} link={link} />}</For>
          <For each={tree().pumps}>{(node) => <Pump form={props.form} node={node} />}</For>
          <Ring form={props.form} />
        </svg>
        <For each={tree().links.filter(({ stage }) => stage !== null)}>
          {(link) => (
            <>
              <TeethBox form={props.form} link={link} end="driver" keys={props.keys} />
              <TeethBox form={props.form} link={link} end="driven" keys={props.keys} />
            </>
          )}
        </For>
      </div>
    </div>
  );
}

interface BoxProps {
  readonly form: MachineForm;
  readonly link: ShaftLink;
  readonly end: End;
  readonly keys: (event: KeyboardEvent, slot: SlotAt) => void;
}

function TeethBox(props: BoxProps) {
  const at = (): SlotAt => ({ stage: props.link.stage ?? 0, end: props.end });
  const stage = () => props.form.row().stages[at().stage];
  const slot = (row: StageRow) => (props.end === 'driver' ? en`${stageName(row)} driver` : en`${stageName(row)} driven`);
  return (
    <Show when={stage()}>
      {(row) => (
        <fieldset
          class="box"
          aria-label={slot(row())}
          style={{ left: `${boxX(props.link, props.end)}px`, top: `${yOf(props.link.to.row) - BOX.height / 2}px` }}
          onFocusIn={() => props.form.pickSlot(at())}
          onKeyDown={(event) => props.keys(event, at())}
        >
          <CountField
            bare
            label={en`${slot(row())}, teeth`}
            place={props.form.place('stages', at().stage, props.end, 'teeth')}
            value={row()[props.end].teeth}
            least={5}
            most={400}
            set={(teeth) => props.form.editSlot(at(), ['teeth'], (slot) => put(slot, 'teeth', teeth))}
          />
        </fieldset>
      )}
    </Show>
  );
}

function Ring(props: { readonly form: MachineForm }) {
  const ringed = () => {
    const slot = props.form.slot();
    const link = props.form.tree().links.find(({ stage }) => stage !== null && stage === slot?.stage);
    return slot === null || link === undefined ? null : { x: boxX(link, slot.end), y: yOf(link.to.row) - BOX.height / 2 };
  };
  return (
    <Show when={ringed()}>
      {(at) => (
        <rect class="ring" x={at().x - RING} y={at().y - RING} width={BOX.width + 2 * RING} height={BOX.height + 2 * RING} rx={RING + 3} />
      )}
    </Show>
  );
}
