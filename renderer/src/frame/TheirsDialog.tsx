import { Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { clashes, type Difference } from '../../../core/src/file/differences.ts';
import { visible } from '../../../core/src/visible.ts';
import type { App } from '../state/app.ts';
import { ChangeList } from './ChangeList.tsx';
import { askIn } from './dialog.tsx';

export type TheirsChoice = 'mine' | 'theirs' | 'other' | 'back';

/** What both sides changed since the file was opened; null where it cannot be told. */
interface Met {
  readonly what: string;
  readonly theirs: readonly Difference[] | null;
  readonly mine: readonly Difference[] | null;
}

/** The file was changed by somebody else: shows what they and what you changed, and asks whose is to stay. */
export function askAboutTheirs(app: App, met: Met): Promise<TheirsChoice> {
  const both = clashes(met.theirs ?? [], met.mine ?? []);
  return askIn<TheirsChoice>('back', (answer) => (
    <>
      <h2 id="asked">
        <bdi>{visible(app.shop.name)}</bdi> {en`on the disk is not the file that was opened here`}
      </h2>
      <p>
        {met.what} {en`Nothing was written yet.`}
      </p>
      <section class="sides" tabindex="0" aria-label={en`Changes of both`}>
        <section aria-label={en`What they changed`}>
          <h2>{en`What they changed`}</h2>
          <Show when={met.theirs} fallback={<p class="faint">{en`It cannot be compared.`}</p>}>
            {(changes) => <ChangeList changes={changes()} both={both} />}
          </Show>
        </section>
        <section aria-label={en`What you changed`}>
          <h2>{en`What you changed`}</h2>
          <Show when={met.mine?.length} fallback={<p class="faint">{en`Nothing.`}</p>}>
            <ChangeList changes={met.mine ?? []} both={both} />
          </Show>
        </section>
      </section>
      <p class="bar-of gap">
        <button type="button" class="pri" onClick={() => answer('other')}>{en`Save mine under another name`}</button>
        <button type="button" onClick={() => answer('mine')}>{en`Keep mine, theirs set aside`}</button>
        <Show when={met.theirs}>
          <button type="button" onClick={() => answer('theirs')}>{en`Take theirs`}</button>
        </Show>
        <button type="button" onClick={() => answer('back')}>{en`Go back`}</button>
      </p>
    </>
  ));
}
