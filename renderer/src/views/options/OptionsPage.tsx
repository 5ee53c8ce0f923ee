import { createSignal, onCleanup, onMount, Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { en } from '../../../../core/src/en.ts';
import { offRatioText, ratioText } from '../../../../core/src/index.ts';
import { insideWord } from '../../../../core/src/optionWords.ts';
import { ONE } from '../../../../core/src/ratio.ts';
import { teethText } from '../../../../core/src/teethWords.ts';
import type { PageKey } from '../../help/pageKeys.ts';
import { useApp } from '../../state/app.ts';
import '../../style/options.css';
import { Head } from './Head.tsx';
import { HideBlocked } from './HideBlocked.tsx';
import { listenForLetters } from './letters.ts';
import { OptionTable } from './OptionTable.tsx';
import { Order } from './Order.tsx';
import { createOptionLines } from './optionLines.ts';
import { ChosenDrive, PARTS, Tries } from './parts.ts';
import { SearchSettings } from './SearchSettings.tsx';

/** Every way to build the ratio, best first, and beside it the one that was chosen. */
export function OptionsPage() {
  const app = useApp();
  const lines = createOptionLines(app);
  const [compares, compare] = createSignal(false);
  let tryBox: HTMLInputElement | undefined;
  let tryRatio: (() => void) | undefined;
  let side: HTMLElement | undefined;
  onMount(() => {
    for (const part of PARTS) part.load().catch((error: unknown) => app.tell(en`A part of the page could not be loaded: ${String(error)}`));
    const stop = listenForLetters({
      P: () => app.solution.chosen() !== null && app.show('sheet'),
      B: () => lines.hideBlocked(!lines.hidesBlocked()),
      C: () => compare(!compares()),
      O: () => lines.nextOrder(),
      R: () => tryRatio?.(),
      T: () => tryBox?.focus(),
      W: () => showWorkings(side),
    } satisfies Record<PageKey<'options'>, () => void>);
    onCleanup(stop);
  });
  const heard = () => {
    const chosen = app.solution.chosen();
    if (chosen === null) return '';
    const teeth = teethText(chosen.teeth);
    const place = insideWord(chosen.inside);
    return en`Chosen: ${teeth}, ${ratioText(ONE.div(chosen.bPerA), app.say())}, ${offRatioText(chosen.offRatio, app.say(), 3)}${place === null ? '' : `, ${place}`}`;
  };
  return (
    <main id="main" class="two options">
      <section class="listing" aria-label={en`Options`}>
        <Head />
        <div class="settingsrow">
          <SearchSettings />
          <div class="listed">
            <Order lines={lines} />
            <HideBlocked lines={lines} />
          </div>
        </div>
        <Show when={app.solution.answered()}>
          <OptionTable lines={lines} />
          <Dynamic
            component={Tries.get()}
            box={(element: HTMLInputElement) => (tryBox = element)}
            ratio={(open: () => void) => (tryRatio = open)}
          />
        </Show>
        <p class="heard" role="status">
          {heard()}
        </p>
      </section>
      <section ref={(element) => (side = element)} class="side" aria-label={en`Chosen drive`}>
        <Dynamic component={ChosenDrive.get()} compares={compares()} compare={compare} />
      </section>
    </main>
  );
}

/** Opens every group of figures and goes to the first, or closes them all again. */
function showWorkings(side: HTMLElement | undefined) {
  const groups = [...(side?.querySelectorAll<HTMLDetailsElement>('.figures > details') ?? [])];
  const open = !groups.every((group) => group.open);
  for (const group of groups) group.open = open;
  if (open) groups[0]?.querySelector('summary')?.focus();
}
