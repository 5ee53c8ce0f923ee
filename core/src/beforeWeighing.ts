import { countText, expectedTexts, smallestText, tooSmallText } from './checkPageWords.ts';
import type { UnfinishedCheck } from './file/unfinishedCheck.ts';
import type { Say } from './format.ts';
import { float } from './ratio.ts';
import { wantedOn } from './ratioCheck/amounts.ts';
import { smallestCatch } from './ratioCheck/before.ts';
import { type CheckBox, readBox } from './ratioCheck/boxes.ts';
import { type KeptCheck, pooledRepeatability } from './ratioCheck/history.ts';
import type { Proved } from './ratioCheck/proved.ts';
import { runOf, scaleOf, USUAL_CONFIDENCE } from './ratioCheck/readCheck.ts';
import { catchesToMake, toExpect } from './ratioCheck/toExpect.ts';
import { readQuantity } from './units.ts';

/** What to know before the first catch, in words; null where what it needs is not written yet. */
export interface BeforeWeighing {
  readonly expected: ReturnType<typeof expectedTexts> | null;
  readonly smallest: string | null;
  /** What is to be done where the catch would be smaller than that. */
  readonly small: string | null;
  readonly count: string | null;
}

/**
 * What the first catch should give, how large it has to be, and how many are worth making.
 *
 * @param earlier  kept checks of the machine, which show how catches spread
 * @source `toExpect`, `smallestCatch`, `catchesWorthMaking`
 */
export function beforeWeighing(
  check: UnfinishedCheck,
  { plan, terms, mounted }: Proved,
  earlier: readonly KeptCheck[],
  say: Say,
): BeforeWeighing {
  const value = (box: CheckBox & keyof UnfinishedCheck) => {
    const read = readBox(box, check[box], say);
    return read.ok ? read.value : undefined;
  };
  const [turns, time, dial] = [value('turns'), value('time'), value('dial')];
  const [step, uncertainty, confidence] = [value('step'), value('uncertainty'), value('confidence')];
  const run = runOf(check.runBy === 'turns' ? { ...(turns && { turns }) } : { ...(time && { time }), ...(dial && { dial }) }, terms);
  const scale = step === undefined ? null : scaleOf({ step, tared: check.weighing === 'tared', ...(uncertainty && { uncertainty }) });
  const expected = toExpect(plan, run);
  const smallest =
    scale !== null && terms.limits !== null && terms.densityBOverA.known ? smallestCatch(wantedOn(terms, true), terms.limits, scale) : null;
  const alike = earlier.filter(
    ({ row }) => row.material === plan.material.id && row.mounted.pumps.A === mounted.pumps.A && row.mounted.pumps.B === mounted.pumps.B,
  );
  const repeatability = pooledRepeatability(alike);
  const read = confidence && readQuantity('share', confidence);
  const by = { confidence: read?.ok === true ? float(read.value) : USUAL_CONFIDENCE, repeatability };
  const count = expected === null || scale === null ? undefined : catchesToMake(plan, expected, { scale, ...by });
  return {
    expected: expected && expectedTexts(expected, say),
    smallest: smallest && smallestText(smallest, say),
    small: expected && smallest && tooSmallText(expected, smallest),
    count: count === undefined ? null : countText(count, repeatability !== null),
  };
}
