import { createMemo, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { isBlocked, type Plan, type PlannedOption } from '../../../../core/src/index.ts';
import { fittedMount } from '../../../../core/src/optionList.ts';
import { productText } from '../../../../core/src/productText.ts';
import { useApp } from '../../state/app.ts';
import '../../style/chosenDrive.css';
import { Comparison } from './Comparison.tsx';
import { DriftCurve } from './DriftCurve.tsx';
import { Drive } from './Drive.tsx';
import { Facts } from './Facts.tsx';
import { Findings } from './Findings.tsx';
import { Stages } from './Stages.tsx';

interface Chosen {
  readonly plan: Plan;
  readonly option: PlannedOption;
  readonly fitted: PlannedOption;
}

/** The chosen option: drawn, multiplied out, judged and taken apart; the next step stands beneath. */
export function ChosenDrive(props: { readonly compares: boolean; readonly compare: (on: boolean) => void }) {
  const app = useApp();
  const chosen = createMemo((): Chosen | null => {
    const of = app.solution.answered();
    const option = app.solution.chosen();
    return of === null || option === null ? null : { plan: of.plan, option, fitted: app.solution.lay(fittedMount(of.plan)) };
  });
  return (
    <>
      <Show when={chosen()} fallback={<Nothing />}>
        {(of) => (
          <div class="chosen">
            <div class="head">
              <h2>{en`Drive after the change`}</h2>
              <Show when={isBlocked(of().option)}>
                <span class="bad">{en`blocked: not to be built as it stands`}</span>
              </Show>
            </div>
            <Drive plan={of().plan} option={of().option} fitted={of().fitted} />
            <p class="product">{productText(of().plan, of().option, app.say())}</p>
            <Show when={props.compares}>
              <Comparison plan={of().plan} option={of().option} fitted={of().fitted} />
            </Show>
            <Findings findings={of().option.findings} />
            <Stages plan={of().plan} option={of().option} fitted={of().fitted} />
            <DriftCurve plan={of().plan} option={of().option} />
            <Facts plan={of().plan} option={of().option} />
            <OfThePlan />
          </div>
        )}
      </Show>
      <Show when={chosen() !== null}>
        <div class="foot bar-of">
          <button type="button" class="pri" onClick={() => app.show('sheet')}>
            {en`Put on the sheet`} <kbd>P</kbd>
          </button>
          <button type="button" aria-pressed={props.compares} onClick={() => props.compare(!props.compares)}>
            {en`Compare with fitted`} <kbd>C</kbd>
          </button>
        </div>
      </Show>
    </>
  );
}

function Nothing() {
  const app = useApp();
  const words = () => {
    if (app.solution.answered() !== null)
      return en`Nothing can be built, so no drive is chosen. Choose a row to see what stands against it.`;
    return en`The drive is drawn once the machine and the material are complete.`;
  };
  return (
    <>
      <h2>{en`Drive after the change`}</h2>
      <p class="faint gap">{words()}</p>
      <OfThePlan />
    </>
  );
}

/** What had to be assumed or is missing, whatever the option. */
function OfThePlan() {
  const app = useApp();
  const findings = () => app.solution.answered()?.findings ?? [];
  return (
    <Show when={findings().length > 0}>
      <Findings title={en`Of the whole plan`} findings={findings()} />
    </Show>
  );
}
