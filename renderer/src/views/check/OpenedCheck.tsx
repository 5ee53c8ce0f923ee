import { For, Show } from 'solid-js';
import { teethText, wantedText } from '../../../../core/src/checkPageWords.ts';
import { en } from '../../../../core/src/en.ts';
import type { CaughtRow } from '../../../../core/src/file/ratioCheckRow.ts';
import { offRatioText } from '../../../../core/src/index.ts';
import { SIDES } from '../../../../core/src/plan.ts';
import { caughtText } from '../../../../core/src/ratioCheck/causes/words.ts';
import { visible } from '../../../../core/src/visible.ts';
import { useApp } from '../../state/app.ts';
import type { Kept } from '../../state/keptChecks.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';

/** A kept check, read only, judged by the terms of its day. */
export function OpenedCheck(props: { readonly state: RatioCheckState; readonly opened: Kept; readonly print: () => void }) {
  const app = useApp();
  const row = () => props.opened.row;
  const sheet = () => app.shop.file?.changeSheets.find(({ id }) => id === row().changeSheet);
  const material = () => visible(app.shop.file?.materials.find(({ id }) => id === row().material)?.name ?? row().material);
  const remove = () => {
    props.state.remove(row().id);
    app.tell(en`The ratio check of ${row().date} is deleted. Undo, Ctrl Z, brings it back.`);
  };
  return (
    <>
      <div class="head">
        <h2>{en`Ratio check of ${row().date}`}</h2>
        <span class="faint">
          {sheet() === undefined ? en`what was fitted` : en`sheet ${visible(sheet()?.number ?? '')}`}: {teethText(row().mounted.teeth)},{' '}
          {material()}
        </span>
      </div>
      <p class="provedline">{visible(wantedText(row().terms))}</p>
      <Show when={row().by}>{(by) => <p>{en`Weighed by ${visible(by())}.`}</p>}</Show>
      <Show when={row().note}>{(note) => <p class="faint">{visible(note())}</p>}</Show>
      <p class="bar-of gap">
        <button type="button" class="pri" onClick={() => props.state.open(null)}>{en`Back to the new check`}</button>
        <button type="button" disabled={props.opened.evaluation === null} onClick={() => props.print()}>{en`Print check record`}</button>
        <button type="button" onClick={remove}>{en`Delete this check`}</button>
      </p>
      <CatchesRead kept={props.opened} />
      <For each={props.opened.findings}>{({ severity, what }) => <p classList={{ bad: severity === 'blocks' }}>{what}</p>}</For>
    </>
  );
}

function CatchesRead(props: { readonly kept: Kept }) {
  const app = useApp();
  const off = (index: number) => props.kept.evaluation?.counted.find(({ number }) => number === index + 1);
  return (
    <section class="catches" aria-labelledby="catchesread">
      <h2 id="catchesread">{en`Catches`}</h2>
      <section class="scrollx" tabindex="0" aria-label={en`Catches of this check`}>
        <table>
          <thead>
            <tr>
              <th scope="col">{en`Catch`}</th>
              <For each={SIDES}>
                {(side) => (
                  <th scope="col" class="num" classList={{ ca: side === 'A', cb: side === 'B' }}>
                    <b>{side}</b>
                  </th>
                )}
              </For>
              <th scope="col" class="num">{en`Off-ratio`}</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.kept.row.catches}>
              {(one, index) => (
                <tr>
                  <th scope="row">{index() + 1}</th>
                  <For each={SIDES}>{(side) => <td class="num">{writtenText(one[side])}</td>}</For>
                  <td class="num nw">
                    <Show when={off(index())} fallback={one.leftOut === undefined ? '–' : en`left out: ${visible(one.leftOut)}`}>
                      {(figures) => <>{offRatioText(figures().offRatio, app.say())}</>}
                    </Show>
                  </td>
                </tr>
              )}
            </For>
          </tbody>
          <Show when={props.kept.evaluation}>
            {(evaluation) => (
              <tfoot>
                <tr>
                  <td>{en`Mean`}</td>
                  <For each={SIDES}>
                    {(side) => <td class="num">{caughtText(evaluation().mean[side], evaluation().weighed, app.say())}</td>}
                  </For>
                  <td class="num nw new">{offRatioText(evaluation().offRatio.value, app.say())}</td>
                </tr>
              </tfoot>
            )}
          </Show>
        </table>
      </section>
    </section>
  );
}

/** As it was typed: net, or gross less tare, and a volume where it was read. */
function writtenText({ gross, tare, net, volume }: CaughtRow): string {
  const said = (of: { readonly value: string; readonly unit: string } | undefined) =>
    of === undefined ? '' : `${of.value}\u00A0${of.unit}`;
  const weight = net !== undefined ? said(net) : [said(gross), said(tare)].filter((text) => text !== '').join(' − ');
  return [weight, said(volume)].filter((text) => text !== '').join('; ') || '–';
}
