import { firstOption } from '../../../core/src/firstOption.ts';
import { quoteAdd } from '../../../core/src/quote/add.ts';
import { ONE, whole } from '../../../core/src/ratio.ts';
import type { Reach } from '../../../core/src/reach/figures.ts';
import { type Reachable, reachable } from '../../../core/src/reach/reach.ts';
import { windowAround } from '../../../core/src/reachWindow.ts';
import { answerBuy } from './buyAnswers.ts';
import type { AskedReach, BuyAnswer, BuyAsked, ReachAnswer, ReachAsked } from './messages.ts';
import { revived } from './revive.ts';
import { type Asks, serveJobs } from './serveJobs.ts';

/** Parts in which a window is counted whose ratios are too many to list. */
const BINS = 120;

type Progress = (done: number) => void;

/** Of the reach and of purchases; each is started by itself, so that none waits behind another, nor a search or a try behind them. */
serveJobs<ReachAsked | BuyAsked, ReachAnswer | BuyAnswer>((asks) => {
  const reachFor = reacherOf(asks);
  return (asked, progress) => {
    switch (asked.kind) {
      case 'reach':
        return { kind: 'reach', reach: reachFor(revived(asked), progress) };
      case 'best':
        return { kind: 'best', best: firstOption(asks.planFor({ material: asked.material })) };
      case 'add':
        return { kind: 'add', words: addFor(asks, asked.materials) };
      default:
        return answerBuy(asks, asked, progress);
    }
  };
});

function reacherOf({ planFor }: Asks): (asked: AskedReach, progress: Progress) => Reach {
  /** What the machine can make, worked out when it is first asked. */
  let known: Reachable | null = null;
  return ({ window, around, tolerance }, progress) => {
    known ??= reachable(planFor(), { progress });
    const wish = { tolerance, bins: BINS };
    if (window !== null) return known.within({ ...window, ...wish }, { progress });
    // Any window tells the ends of all that can be built.
    const { smallest, largest } = known.within({ low: ONE, high: whole(2), ...wish });
    const ends = [smallest, largest].flatMap((end) => (end === null ? [] : [end.aPerB]));
    const [first = ONE, ...more] = [...ends, ...around];
    return known.within({ ...windowAround([first, ...more]), ...wish }, { progress });
  };
}

const addFor = ({ planFor, request }: Asks, materials: readonly string[]): readonly string[] =>
  quoteAdd(
    materials.map((material) => planFor({ material })),
    request.say,
  );
