import { createEffect, createSignal, on, onCleanup } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { offRatioText, ratioText } from '../../../../core/src/index.ts';
import { offRatio } from '../../../../core/src/mixRatio.ts';
import { mountedText } from '../../../../core/src/mountedWords.ts';
import { insideWord } from '../../../../core/src/optionWords.ts';
import { ONE, ratioOf } from '../../../../core/src/ratio.ts';
import { useApp } from '../../state/app.ts';
import type { Near } from '../../state/tried.ts';

/** While the slide moves, speaking would only fall behind: the nearest is said once it rests. */
const RESTS_ms = 700;

export function NearSpoken(props: { readonly near: Near | null }) {
  const app = useApp();
  const [said, say] = createSignal('');
  createEffect(
    on(
      () => props.near,
      (near) => {
        const timer = setTimeout(() => say(near === null ? '' : nearestText(near)), RESTS_ms);
        onCleanup(() => clearTimeout(timer));
      },
    ),
  );
  return (
    <p class="heard" role="status">
      {said()}
    </p>
  );

  function nearestText({ plan, text, wanted, rows }: Near): string {
    const [first] = rows;
    if (first === undefined) return en`Nothing can be built near ${text}.`;
    const made = ratioOf(...first.bPerA);
    const place = insideWord(first.inside);
    return en`Nearest to ${text}: ${ratioText(ONE.div(made), app.say())}, ${offRatioText(offRatio(made, wanted), app.say(), 3)}${place === null ? '' : `, ${place}`}, ${mountedText(plan, first.first)}.`;
  }
}
