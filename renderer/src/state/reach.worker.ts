import { firstOption } from '../../../core/src/firstOption.ts';
import { type Plan, resolve } from '../../../core/src/index.ts';
import { quoteAdd } from '../../../core/src/quote/add.ts';
import { ONE, whole } from '../../../core/src/ratio.ts';
import type { Reach } from '../../../core/src/reach/figures.ts';
import { type Reachable, reachable } from '../../../core/src/reach/reach.ts';
import { windowAround } from '../../../core/src/reachWindow.ts';
import type { AskedReach, ReachReply, ReachRequest, SearchRequest } from './messages.ts';
import { revived } from './revive.ts';

/** Parts in which a window is counted whose ratios are too many to list. */
const BINS = 120;

const reply = (message: ReachReply) => postMessage(message);

let asked: Omit<SearchRequest, 'id'> | null = null;
/** What the machine can make, worked out when it is first asked. */
let known: Reachable | null = null;

/** A worker of its own, so that neither a search nor a try waits behind it. */
self.onmessage = ({ data }: MessageEvent<ReachRequest>) => {
  if (data.kind === 'plan') {
    asked = data;
    known = null;
    return;
  }
  const { id } = data;
  try {
    if (data.kind === 'reach') reply({ id, kind: 'reach', reach: reachFor(id, revived(data)) });
    else if (data.kind === 'add') reply({ id, kind: 'add', words: addFor(data.materials) });
    else reply({ id, kind: 'best', material: data.material, best: firstOption(planFor(data.material)) });
  } catch (error) {
    reply({ id, kind: 'fault', message: error instanceof Error ? error.message : String(error) });
  }
};

function planFor(material?: string): Plan {
  if (asked === null) throw new RangeError('a reach was asked for before there was a plan');
  const { file, selection, say } = asked;
  const plan = resolve(file, material === undefined ? selection : { ...selection, material }, say);
  if (!plan.ok) throw new RangeError('the plan does not resolve');
  return plan.value;
}

function reachFor(id: number, { window, around, tolerance }: AskedReach): Reach {
  let shown = -1;
  const progress = (done: number) => {
    const percent = Math.floor(100 * done);
    if (percent === shown) return;
    shown = percent;
    reply({ id, kind: 'progress', done });
  };
  known ??= reachable(planFor(), { progress });
  const wish = { tolerance, bins: BINS };
  if (window !== null) return known.within({ ...window, ...wish }, { progress });
  // Any window tells the ends of all that can be built.
  const { smallest, largest } = known.within({ low: ONE, high: whole(2), ...wish });
  const ends = [smallest, largest].flatMap((end) => (end === null ? [] : [end.aPerB]));
  const [first = ONE, ...more] = [...ends, ...around];
  return known.within({ ...windowAround([first, ...more]), ...wish }, { progress });
}

function addFor(materials: readonly string[]): readonly string[] {
  return asked === null
    ? []
    : quoteAdd(
        materials.map((material) => planFor(material)),
        asked.say,
      );
}
