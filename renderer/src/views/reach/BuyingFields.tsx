import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { toleranceText, windowText } from '../../../../core/src/reachWords.ts';
import { readTeethRange } from '../../../../core/src/teethRange.ts';
import { Entry } from '../../fields/Entry.tsx';
import { CountField } from '../../fields/index.tsx';
import { useApp } from '../../state/app.ts';
import type { BuyingState } from '../../state/buying.ts';
import type { ReachState } from '../../state/reach.ts';

/** As many as a search takes on. */
const MOST = 8;

/** What purchases are planned for, and what may be bought. */
export function BuyingFields(props: { readonly reach: ReachState; readonly buying: BuyingState }) {
  const app = useApp();
  const asked = app.buyAsked;
  const window = () => {
    const shown = props.reach.window();
    return shown === null ? '' : windowText(shown, app.say());
  };
  const otherPumps = () => {
    const machine = app.shop.file?.machines[app.machine()];
    return machine !== undefined && (machine.A.pumps.length > 1 || machine.B.pumps.length > 1);
  };
  const basis = (whole: boolean, label: string) => (
    <label class="choice">
      <input type="radio" name="buy-for" checked={asked().whole === whole} onChange={() => app.askBuy({ ...asked(), whole })} />
      {label}
    </label>
  );
  return (
    <>
      <fieldset class="buyfor">
        <legend class="heard">{en`Plan purchases for`}</legend>
        {basis(false, en`these materials`)}
        {basis(true, en`the whole window, ${window()} within ${toleranceText(props.reach.tolerance(), app.say())}`)}
      </fieldset>
      <Show when={!asked().whole}>
        <fieldset class="ticks">
          <legend class="heard">{en`Materials that have limits`}</legend>
          <For each={props.buying.limited()}>
            {({ id, name }) => (
              <label class="choice">
                <input
                  type="checkbox"
                  data-tick={id}
                  name="reach.buy.material"
                  checked={props.buying.ticked(id)}
                  onChange={(event) => props.buying.tick(id, event.currentTarget.checked)}
                />
                {name}
              </label>
            )}
          </For>
        </fieldset>
      </Show>
      <Show when={otherPumps()}>
        <label class="choice">
          <input
            type="checkbox"
            name="reach.buy.pumps"
            checked={asked().pumps === true}
            onChange={(event) => app.askBuy({ ...asked(), pumps: event.currentTarget.checked })}
          />
          {en`Pumps that are not fitted have to be bought too, each as one part`}
        </label>
      </Show>
      <div class="buyfields">
        <CountField
          label={asked().pumps === true ? en`Parts to buy, at most` : en`Wheels to buy, at most`}
          place={['reach', 'most']}
          value={asked().most}
          least={1}
          most={MOST}
          width="4"
          whyNotEmpty={() => en`1 to ${MOST}`}
          set={(most) => most !== undefined && app.askBuy({ ...asked(), most })}
        />
        <Entry
          label={en`Teeth to buy, from – to`}
          place={['reach', 'teeth']}
          text={asked().teeth}
          width="18"
          placeholder={en`as the machine says`}
          take={(text) => {
            const read = readTeethRange(text);
            if (read.ok) app.askBuy({ ...asked(), teeth: text });
            return read.ok ? { ok: true } : read;
          }}
        />
        <div class="works">
          <Show
            when={props.buying.progress() !== null}
            fallback={
              <button type="button" disabled={props.buying.trouble() !== null} onClick={props.buying.plan}>{en`Plan purchases`}</button>
            }
          >
            <span class="faint nw">{en`planning, ${Math.floor(100 * (props.buying.progress() ?? 0))} %`}</span>
            <button type="button" onClick={props.buying.cancel}>{en`Cancel`}</button>
          </Show>
        </div>
      </div>
      <Show when={props.buying.trouble()}>{(trouble) => <p class="warn">{trouble()}</p>}</Show>
    </>
  );
}
