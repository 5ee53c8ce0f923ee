import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { addStageBelow, removeStage } from '../../../../core/src/file/driveEdits.ts';
import { visible } from '../../../../core/src/visible.ts';
import type { PageKey } from '../../help/pageKeys.ts';
import { placeKey, useApp } from '../../state/app.ts';
import { DriveDrawing } from './DriveDrawing.tsx';
import type { MachineForm, SlotAt } from './machineForm.ts';
import { SlotDetails } from './SlotDetails.tsx';
import { StageDetails } from './StageDetails.tsx';

/** The drive, its teeth typed where they are drawn; below it what else is known of the ringed slot and its stage. */
export function Drive(props: { readonly form: MachineForm }) {
  const app = useApp();
  const form = () => props.form;
  const add = (shaft: string) => {
    form().act(`stage.add.${shaft}`, (machine) => void addStageBelow(machine, shaft));
    app.goTo(form().place('stages', form().row().stages.length - 1, 'driver', 'teeth'));
  };
  const remove = (stage: number) => {
    const id = form().row().stages[stage]?.id;
    if (id === undefined) return;
    form().act(`stage.remove.${id}`, (machine) => removeStage(machine, id));
    app.goTo(form().place('stages'));
  };
  const keys = (event: KeyboardEvent, slot: SlotAt) => {
    const shaft = shaftOf(slot);
    const keys: Readonly<Record<string, () => void>> = {
      Enter: () => document.querySelector<HTMLElement>('.details select, .details input')?.focus(),
      Insert: () => shaft !== undefined && add(shaft.id),
      'Shift+Delete': () => remove(slot.stage),
    } satisfies Record<PageKey<'drive'>, () => void>;
    const run = keys[`${event.shiftKey ? 'Shift+' : ''}${event.key}`];
    if (run === undefined) return;
    event.preventDefault();
    run();
  };
  /** The shaft a slot sits on. */
  const shaftOf = ({ stage, end }: SlotAt) => {
    const link = form()
      .tree()
      .links.find((one) => one.stage === stage);
    const node = end === 'driver' ? link?.from : link?.to;
    return node === undefined ? undefined : form().row().shafts[node.shaft];
  };
  const root = () =>
    form()
      .row()
      .shafts.find(({ turnedBy }) => turnedBy === undefined);
  return (
    <div class="block drive">
      <div class="head">
        <h2>{en`Drive`}</h2>
        <span class="faint">
          {en`type over a number;`} <kbd>{en`Tab`}</kbd> {en`next slot,`} <kbd>{en`Enter`}</kbd> {en`its details`}
        </span>
      </div>
      <DriveDrawing form={form()} keys={keys} />
      <Show
        when={form().slot()}
        fallback={
          <Show when={root()}>
            {(shaft) => (
              <button type="button" class="gap" data-place={placeKey(form().place('stages'))} onClick={() => add(shaft().id)}>
                {en`Add a stage below ${visible(shaft().name ?? shaft().id)}`}
              </button>
            )}
          </Show>
        }
      >
        {(slot) => (
          <div class="details">
            <StageDetails form={form()} stage={slot().stage} />
            <SlotDetails form={form()} slot={slot()} shaft={shaftOf(slot())} />
            <div class="bar-of gap">
              <Show when={shaftOf(slot())}>
                {(shaft) => (
                  <button type="button" onClick={() => add(shaft().id)}>
                    {en`Add a stage below ${visible(shaft().name ?? shaft().id)}`} <kbd>{en`Ins`}</kbd>
                  </button>
                )}
              </Show>
              <button type="button" onClick={() => remove(slot().stage)}>
                {en`Remove this stage`} <kbd>{en`Shift Del`}</kbd>
              </button>
            </div>
          </div>
        )}
      </Show>
    </div>
  );
}
