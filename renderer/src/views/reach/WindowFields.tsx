import { createUniqueId, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { visible } from '../../../../core/src/visible.ts';
import { Entry } from '../../fields/Entry.tsx';
import { useApp } from '../../state/app.ts';
import type { ReachState } from '../../state/reach.ts';

/** The window and the tolerance as typed, and how far the work on them is. */
export function WindowFields(props: { readonly reach: ReachState }) {
  const app = useApp();
  const taken = (trouble: string | null) => (trouble === null ? ({ ok: true } as const) : ({ ok: false, expected: trouble } as const));
  const heading = createUniqueId();
  return (
    <div class="windowfields">
      <fieldset aria-labelledby={heading}>
        <span id={heading} class="k">{en`Window, A : B by volume as run`}</span>
        <div class="ends">
          <Entry
            label={en`Window from`}
            bare
            place={['reach', 'low']}
            text={props.reach.text('low')}
            answered={props.reach.isAnswered('low')}
            take={(text) => taken(props.reach.type('low', text))}
          />
          <span>{en`to`}</span>
          <Entry
            label={en`Window to`}
            bare
            place={['reach', 'high']}
            text={props.reach.text('high')}
            answered={props.reach.isAnswered('high')}
            take={(text) => taken(props.reach.type('high', text))}
          />
          <span>: 1</span>
        </div>
      </fieldset>
      <Entry
        label={en`Tolerance, ± %`}
        place={['reach', 'tolerance']}
        text={props.reach.toleranceText()}
        take={(text) => taken(props.reach.typeTolerance(text))}
      />
      <div class="works">
        <Show
          when={props.reach.progress() !== null}
          fallback={
            <Show when={props.reach.found() === null || !props.reach.current()}>
              <button type="button" onClick={props.reach.again}>{en`Work it out`}</button>
            </Show>
          }
        >
          <span class="faint nw">{en`working it out, ${Math.floor(100 * (props.reach.progress() ?? 0))} %`}</span>
          <button type="button" onClick={props.reach.cancel}>{en`Cancel`}</button>
        </Show>
      </div>
      <p class="faint whose">{en`${visible(app.shop.file?.machines[app.machine()]?.name ?? '')}, with the wheels its search may use`}</p>
    </div>
  );
}
