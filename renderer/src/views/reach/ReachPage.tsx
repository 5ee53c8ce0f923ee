import { createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { type MaterialReach, materialReach } from '../../../../core/src/materialReach.ts';
import { reachSentences } from '../../../../core/src/reachWords.ts';
import type { PageKey } from '../../help/pageKeys.ts';
import { useApp } from '../../state/app.ts';
import { createBuyable } from '../../state/buyable.ts';
import { type BuyingState, createBuying } from '../../state/buying.ts';
import { createGapChoice, type GapChoice } from '../../state/gapChoice.ts';
import { createReach, type ReachState } from '../../state/reach.ts';
import '../../style/reach.css';
import { listenForLetters } from '../options/letters.ts';
import { Buying } from './Buying.tsx';
import { GapDetails } from './GapDetails.tsx';
import { Gaps } from './Gaps.tsx';
import { Materials } from './Materials.tsx';
import { QuoteView } from './QuoteView.tsx';
import { ReachRule } from './ReachRule.tsx';
import { WindowFields } from './WindowFields.tsx';

/** Which ratios the machine can make, how far off any target is at worst, and where the shop's materials lie. */
export function ReachPage() {
  const app = useApp();
  const reach = createReach(app);
  const rows = createMemo((): readonly MaterialReach[] =>
    reach.materials().flatMap(({ id, plan }) => (plan === null ? [] : [materialReach(plan, reach.best(id) ?? null, app.say())])),
  );
  const buyable = createBuyable(app);
  const choice = createGapChoice(app, reach, buyable);
  const buying = createBuying(app, reach, buyable);
  const [quotes, setQuotes] = createSignal(false);
  const keeps = () => (app.shop.file?.quotePages ?? []).length > 0;
  const quote = () => (app.solution.plan()?.ok === true || keeps()) && setQuotes(true);
  onMount(() => onCleanup(listenForLetters({ Q: quote } satisfies Record<PageKey<'reach'>, () => void>)));
  return (
    <Show when={quotes()} fallback={<Rule reach={reach} rows={rows()} choice={choice} buying={buying} quote={quote} />}>
      <QuoteView reach={reach} rows={rows()} back={() => setQuotes(false)} />
    </Show>
  );
}

interface RuleProps {
  readonly reach: ReachState;
  readonly rows: readonly MaterialReach[];
  readonly choice: GapChoice;
  readonly buying: BuyingState;
  readonly quote: () => void;
}

function Rule(props: RuleProps) {
  const app = useApp();
  return (
    <main id="main" class="reach">
      <section aria-label={en`Reach`}>
        <h1 class="heard">{en`Reach`}</h1>
        <Show when={app.solution.plan()?.ok} fallback={<Incomplete quote={props.quote} />}>
          <WindowFields reach={props.reach} />
          <Said reach={props.reach} />
          <ReachRule reach={props.reach} rows={props.rows} choice={props.choice} />
          <p class="gap">
            <button type="button" class="pri" onClick={() => props.quote()}>
              {en`Make the quote page`} <kbd>Q</kbd>
            </button>
          </p>
          <div class="tables">
            <div class="pair">
              <Gaps reach={props.reach} rows={props.rows} choice={props.choice} />
              <GapDetails choice={props.choice} />
            </div>
            <Materials reach={props.reach} rows={props.rows} />
            <Buying reach={props.reach} buying={props.buying} />
          </div>
        </Show>
      </section>
    </main>
  );
}

/** What was kept can be printed again, whatever has become of the machine. */
function Incomplete(props: { readonly quote: () => void }) {
  const app = useApp();
  return (
    <>
      <p>{en`The plan is not complete yet: the Options page says what is missing.`}</p>
      <Show when={(app.shop.file?.quotePages ?? []).length > 0}>
        <p class="gap">
          <button type="button" onClick={() => props.quote()}>
            {en`Kept quote pages`} <kbd>Q</kbd>
          </button>
        </p>
      </Show>
    </>
  );
}

function Said(props: { readonly reach: ReachState }) {
  const app = useApp();
  const sentences = createMemo(() => {
    const found = props.reach.found();
    return found === null ? [] : reachSentences(found.reach, app.say());
  });
  return (
    <div class="said" role="status">
      <For each={sentences()}>{(sentence, index) => <p class={index() < 2 ? '' : 'faint'}>{sentence}</p>}</For>
    </div>
  );
}
