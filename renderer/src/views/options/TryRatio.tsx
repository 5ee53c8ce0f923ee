import { createSignal, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { offRatioText, ratioText } from '../../../../core/src/index.ts';
import { offRatio } from '../../../../core/src/mixRatio.ts';
import { ONE } from '../../../../core/src/ratio.ts';
import { MOST_STEPS, triedByVolume } from '../../../../core/src/triedRatio.ts';
import { visible } from '../../../../core/src/visible.ts';
import { useApp } from '../../state/app.ts';
import { createTried, type Tried } from '../../state/tried.ts';
import '../../style/tryRatio.css';
import { NearRatios } from './NearRatios.tsx';
import { NearSpoken } from './NearSpoken.tsx';

/** Another ratio on this machine, by text or by slide: what could be built near it. The material stays as it is. */
export function TryRatio(props: { readonly box: (open: () => void) => void }) {
  const [open, setOpen] = createSignal(false);
  let block: HTMLDetailsElement | undefined;
  props.box(() => {
    setOpen(true);
    block?.querySelector('input')?.focus();
  });
  return (
    <details ref={block} class="tryratio" open={open()} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {en`Try a ratio`} <kbd>R</kbd> <span class="faint">{en`what could be built near another one`}</span>
      </summary>
      <Show when={open()}>
        <Slide />
      </Show>
    </details>
  );
}

function Slide() {
  const app = useApp();
  const tried = createTried(app);
  const basis = () => {
    const plan = app.solution.plan();
    return plan?.ok === true ? plan.value.mix.sheet.basis : '';
  };
  const name = () => visible(app.shop.file?.materials[app.material()]?.name ?? en`the material`);
  let box: HTMLInputElement | undefined;
  const use = () => {
    tried.use();
    // The button has nothing more to do; whoever was on it stays where the ratio is.
    box?.focus();
  };
  return (
    <div class="tried">
      <div class="controls">
        <label for="try-ratio" class="k">
          {basis() === 'volume' ? en`Ratio by volume` : en`Ratio by weight`}
        </label>
        <input
          id="try-ratio"
          ref={box}
          type="text"
          size="14"
          autocomplete="off"
          spellcheck={false}
          aria-invalid={tried.reading()?.ok === false ? 'true' : undefined}
          aria-describedby="try-ratio-gives"
          value={tried.text()}
          onInput={(event) => tried.type(event.currentTarget.value)}
        />
        <span class="slide">
          <span class="faint">{en`more B`}</span>
          <input
            type="range"
            id="try-ratio-slide"
            aria-label={en`Slide the ratio, more B to the left`}
            aria-valuetext={tried.text()}
            min={-MOST_STEPS}
            max={MOST_STEPS}
            step="1"
            value={tried.steps()}
            onInput={(event) => tried.slide(event.currentTarget.valueAsNumber)}
          />
          <span class="faint">{en`less B`}</span>
        </span>
      </div>
      <div class="gives">
        <div>
          <output id="try-ratio-gives" for="try-ratio">
            <Gives tried={tried} name={name()} />
          </output>
          <button type="button" disabled={!tried.usable()} onClick={use}>
            {en`Use this ratio for ${name()}`}
          </button>
          <Show when={tried.notToUse()}>{(why) => <p class="faint">{why()}</p>}</Show>
        </div>
        <Show when={tried.near()}>{(near) => <NearRatios near={near()} behind={tried.behind()} />}</Show>
      </div>
      <NearSpoken near={tried.near()} />
    </div>
  );
}

/** What the text means by volume, and how far it is from the material's own; or what was expected. */
function Gives(props: { readonly tried: Tried; readonly name: string }) {
  const app = useApp();
  const words = () => {
    const [plan, read] = [app.solution.plan(), props.tried.reading()];
    if (plan?.ok !== true || read === null) return null;
    if (!read.ok) return read;
    const wanted = triedByVolume(plan.value, read.value);
    const e = offRatio(wanted, plan.value.mix.wantedBPerA);
    const own = e.n === 0n ? en`the ratio of ${props.name}` : en`${offRatioText(e, app.say())} against ${props.name}`;
    return { ok: true as const, said: en`${ratioText(ONE.div(wanted), app.say())} by volume as run, ${own}` };
  };
  return (
    <Show when={words()}>
      {(of) => {
        const bad = () => {
          const found = of();
          return found.ok ? null : found.expected;
        };
        const good = () => {
          const found = of();
          return found.ok ? found.said : '';
        };
        return (
          <Show when={bad()} fallback={good()}>
            <span class="bad">{bad()}</span>
          </Show>
        );
      }}
    </Show>
  );
}
