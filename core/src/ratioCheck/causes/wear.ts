import { en } from '../../en.ts';
import type { Say } from '../../format.ts';
import { SIDES, type SideName } from '../../plan.ts';
import { float } from '../../ratio.ts';
import type { MeasuredDelivery } from '../delivery.ts';
import { type Cause, type CauseSubject, likely, notLookedFor, possible, ruledOut } from './cause.ts';
import { shareText } from './words.ts';

interface Dated {
  readonly date: string;
  readonly delivery: MeasuredDelivery;
}

/** From so many checks on, a fall from each to the next is more than chance would often do. */
const FALLS = 3;

/** A pump that gives less from check to check. */
export const wear: Cause = {
  id: 'cause.wear',
  title: en`Wear`,
  within: en`wear`,
  source: en`intervals of both deliveries, apart or not; our choice of three checks for a steady fall`,
  why: en`A pump wears slowly and to one side: its delivery falls over months, while air and blockage come and go.`,
  judge(subject) {
    const lines = SIDES.map((side) => ({ side, points: pointsOf(subject, side) }));
    if (lines.every(({ points }) => points.length < 2))
      return notLookedFor(en`There is no earlier check of these pumps with a delivery to hold this one against.`);
    const fallen = lines.filter(({ points }) => isApart(points));
    const falling = lines.filter(({ points }) => isFalling(points));
    const told = fallen.length > 0 ? fallen : falling;
    const text = (say: Say) => told.map(({ side, points }) => en`Pump ${side} delivers less and less: ${listText(points, say)}.`).join(' ');
    const advice = en`Look at the pump, its drive and its filter before gearing for it, and watch the next check.`;
    if (fallen.length > 0) return likely((say) => `${text(say)} ${en`The fall is more than the catches leave open.`} ${advice}`);
    if (falling.length > 0) return possible((say) => `${text(say)} ${advice}`);
    return ruledOut((say) =>
      lines
        .flatMap(({ side, points }) => (points.length < 2 ? [] : [en`Pump ${side} delivers what it did: ${listText(points, say)}.`]))
        .join(' '),
    );
  },
};

function pointsOf({ evaluation, earlier }: CauseSubject, side: SideName): readonly Dated[] {
  const now = { date: en`now`, evaluation };
  return [...earlier, now].flatMap(({ date, evaluation: { delivery } }) => {
    const of = delivery[side];
    return of === null ? [] : [{ date, delivery: of }];
  });
}

/** Whether the last lies below the first by more than both leave open. */
function isApart(points: readonly Dated[]): boolean {
  const [first, last] = [points[0]?.delivery, points.at(-1)?.delivery];
  if (points.length < 2 || first?.uncertainty == null || last?.uncertainty == null) return false;
  return float(last.share.value) + last.uncertainty.value < float(first.share.value) - first.uncertainty.value;
}

const isFalling = (points: readonly Dated[]): boolean =>
  points.length >= FALLS &&
  points.slice(1).every(({ delivery }, index) => delivery.share.value.compare(points[index]?.delivery.share.value ?? 0) < 0);

/** The oldest and the newest few. */
const listText = (points: readonly Dated[], say: Say): string =>
  points
    .filter((_, index) => index === 0 || index >= points.length - 3)
    .map(({ date, delivery }) => `${shareText(delivery.share.value, say)} (${date})`)
    .join(', ');
