import { createMemo, For, Show } from 'solid-js';
import { driftOf } from '../../../../core/src/drift.ts';
import { driftCurve, heatedText, notTellingText } from '../../../../core/src/driftCurve.ts';
import { en } from '../../../../core/src/en.ts';
import { type Plan, type PlannedOption, signed } from '../../../../core/src/index.ts';
import { useApp } from '../../state/app.ts';
import '../../style/driftCurve.css';

const HEIGHT = 132;
/** Room for the figures at the left of the plot, as the style sheet keeps it. */
const LEFT = 44;

/** How the off-ratio moves with temperature: A solid, B dashed, both together dotted; limits in short dashes. */
export function DriftCurve(props: { readonly plan: Plan; readonly option: PlannedOption }) {
  const app = useApp();
  const curve = createMemo(() => driftCurve(props.plan, props.option, app.say()));
  const notTelling = () => notTellingText(driftOf(props.plan, props.option));
  return (
    <figure class="drift block" aria-label={en`Drift with temperature`}>
      <h3>{en`Drift with temperature`}</h3>
      <Show when={curve()}>
        {(of) => (
          <>
            <svg class="plot" height={HEIGHT + 58} role="img" aria-label={of().sentence}>
              <text class="f" x={-LEFT} y="12">{en`off-ratio in %, + is B-rich`}</text>
              <svg width="100%" y="22" height={HEIGHT} aria-hidden="true">
                <For each={of().up}>
                  {(mark) => (
                    <>
                      <line class="grid" x1="0" x2="100%" y1={`${mark.at}%`} y2={`${mark.at}%`} />
                      <text class="e" x="-6" y={`${mark.at}%`} dy="4">
                        {signed(mark.value, mark.places, app.say())}
                      </text>
                    </>
                  )}
                </For>
                <For each={of().across}>
                  {(mark) => (
                    <>
                      <line class="grid" x1={`${mark.at}%`} x2={`${mark.at}%`} y1="0" y2={HEIGHT + 4} />
                      <text class="m" x={`${mark.at}%`} y={HEIGHT + 18}>
                        {signed(mark.value, mark.places, app.say())}
                      </text>
                    </>
                  )}
                </For>
                <line class="run" x1="50%" x2="50%" y1="0" y2="100%" />
                <For each={of().limits}>{({ at }) => <line class="limit" x1="0" x2="100%" y1={`${at}%`} y2={`${at}%`} />}</For>
                <svg width="100%" height="100%" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
                  <For each={of().lines}>
                    {({ heated, path }) => <path class={`line ${heated}`} d={path} vector-effect="non-scaling-stroke" />}
                  </For>
                </svg>
              </svg>
              <text class="f e" x="100%" y={HEIGHT + 56}>
                {en`${of().unit} from the temperature each is run at`}
              </text>
            </svg>
            <ul class="key">
              <For each={of().lines}>
                {({ heated }) => (
                  <li>
                    <svg width="36" height="8" aria-hidden="true">
                      <line class={`line ${heated}`} x1="0" x2="36" y1="4" y2="4" />
                    </svg>
                    {heatedText(heated)}
                  </li>
                )}
              </For>
              <Show when={of().limitsText}>
                {(words) => (
                  <li>
                    <Show when={of().limits.length > 0}>
                      <svg width="36" height="8" aria-hidden="true">
                        <line class="limit" x1="0" x2="36" y1="4" y2="4" />
                      </svg>
                    </Show>
                    {words()}
                  </li>
                )}
              </Show>
            </ul>
          </>
        )}
      </Show>
      <Show when={notTelling()}>{(words) => <p class="faint">{words()}</p>}</Show>
    </figure>
  );
}
