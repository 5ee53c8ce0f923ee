import { createSignal, Index, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { MOST_CHECKLIST_LINES } from '../../../../core/src/file/machine.ts';
import { withUsualLines } from '../../../../core/src/file/usualChecklist.ts';
import { checklistSummary } from '../../../../core/src/machineSummary.ts';
import { TextField } from '../../fields/index.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { Fold } from './Fold.tsx';
import type { MachineForm } from './machineForm.ts';

/** The shop's own lines, as the change sheet prints them with a box to tick. */
export function ChecklistFields(props: { readonly form: MachineForm }) {
  const app = useApp();
  const [message, tell] = createSignal('');
  const lines = () => props.form.row().checklist ?? [];
  const write = (what: string, next: readonly string[]) => {
    tell('');
    props.form.act(`checklist.${what}`, (machine) => put(machine, 'checklist', next.length === 0 ? undefined : [...next]));
  };
  const add = () => {
    write('add', [...lines(), '']);
    app.goTo(props.form.place('checklist', lines().length - 1));
  };
  const addUsual = () => {
    const filled = withUsualLines(lines());
    if (filled.lines.length > lines().length) write('usual', filled.lines);
    tell(filled.message);
  };
  const move = (line: number, by: -1 | 1) => {
    const next = [...lines()];
    next.splice(line + by, 0, ...next.splice(line, 1));
    write('move', next);
    // The cursor goes with the line.
    app.goTo(props.form.place('checklist', line + by));
  };
  const remove = (line: number) => {
    write(
      'remove',
      lines().filter((_, index) => index !== line),
    );
    if (lines().length > 0) app.goTo(props.form.place('checklist', Math.min(line, lines().length - 1)));
  };
  return (
    <Fold title={en`Own checklist`} summary={checklistSummary(lines())} group="checklist">
      <ol class="ownlines">
        <Index each={lines()}>
          {(text, index) => (
            <li>
              <TextField
                bare
                label={en`Checklist line ${index + 1}`}
                place={props.form.place('checklist', index)}
                value={text()}
                hint={text().trim() === '' ? en`empty: not printed` : undefined}
                set={(next) =>
                  props.form.edit(['checklist', index], ({ checklist }) => {
                    if (checklist !== undefined) checklist[index] = next ?? '';
                  })
                }
              />
              <button
                type="button"
                aria-label={en`Move line ${index + 1} up`}
                disabled={index === 0}
                onClick={() => move(index, -1)}
              >{en`Up`}</button>
              <button
                type="button"
                aria-label={en`Move line ${index + 1} down`}
                disabled={index === lines().length - 1}
                onClick={() => move(index, 1)}
              >{en`Down`}</button>
              <button type="button" aria-label={en`Remove line ${index + 1}`} onClick={() => remove(index)}>{en`Remove`}</button>
            </li>
          )}
        </Index>
      </ol>
      <div class="bar-of">
        <Show
          when={lines().length < MOST_CHECKLIST_LINES}
          fallback={<span class="faint">{en`The sheet has room for ${MOST_CHECKLIST_LINES} lines of your own.`}</span>}
        >
          <button type="button" onClick={add}>{en`Add a line`}</button>
        </Show>
        <button type="button" onClick={addUsual}>{en`Add the usual lines`}</button>
      </div>
      <p class="hint" role="status">
        {message()}
      </p>
    </Fold>
  );
}
