import { apart, type Check, notMade, type OptionSubject } from '../check.ts';
import { type DialEnd, type DialRange, dialRange, motorRange, percentOf } from '../dial.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { fixed, type Say } from '../format.ts';
import { type Plan, type Pump, SIDES, type SideName } from '../plan.ts';
import { float } from '../ratio.ts';

/** Speed limits of the pumps narrow the usable range of the dial; they block only where nothing is left of it. */
export const pumpSpeed: Check<OptionSubject> = {
  id: 'option.pumpSpeed',
  title: en`Pump speed`,
  worst: 'blocks',
  source: en`speed limits of the pumps and usable range of the motor, as given`,
  judge: ({ plan, pumps, teeth }) => {
    const { from, to } = dialRange(plan, { pumps, teeth });
    const judged = from.share.compare(to.share) > 0 ? nothingLeft(plan, from, to) : narrowing(motorRange(plan), { from, to });
    return [...judged, ...missing(plan, pumps)];
  },
};

/** The motor's own range is in order, so at least one end is a pump's. */
function nothingLeft({ motor }: Plan, from: DialEnd, to: DialEnd): readonly Judgement[] {
  return [
    {
      severity: 'blocks',
      where: from.where === motor.place ? to.where : from.where,
      what: (say) => {
        const [least, most] = apart(percentOf(from.share), percentOf(to.share), 1, (percent, places) => fixed(percent, places, say));
        return en`No setting of the dial is left: ${from.whose} wants ${least} % or more, ${to.whose} ${most} % or less.`;
      },
      figure: { value: float(percentOf(from.share)), unit: '%' },
      limit: { value: float(percentOf(to.share)), unit: '%' },
    },
  ];
}

function narrowing(usable: DialRange, left: DialRange): readonly Judgement[] {
  const ends = (['from', 'to'] as const).filter((end) => !left[end].share.equals(usable[end].share));
  const [end] = ends;
  if (end === undefined) return [];
  const words = ({ from, to }: DialRange, say: Say) =>
    en`${fixed(percentOf(from.share), 1, say)} to ${fixed(percentOf(to.share), 1, say)} %`;
  return [
    {
      severity: 'notes',
      where: left[end].where,
      what: (say) => en`The pump speeds leave ${words(left, say)} of the dial, where the motor allows ${words(usable, say)}.`,
      figure: { value: float(percentOf(left[end].share)), unit: '%' },
      limit: { value: float(percentOf(usable[end].share)), unit: '%' },
    },
  ];
}

function missing({ motor }: Plan, pumps: Readonly<Record<SideName, Pump>>): readonly Judgement[] {
  const ofPumps = SIDES.flatMap((side) => {
    const { speedFrom_rev_per_s: from, speedTo_rev_per_s: to, place } = pumps[side];
    if (from.known && to.known) return [];
    const what = from.known
      ? en`Pump ${side}: its highest speed is not given, and so not checked.`
      : to.known
        ? en`Pump ${side}: its lowest speed is not given, and so not checked.`
        : en`Pump ${side}: its speed limits are not given, and so not checked.`;
    return [notMade([...place, from.known ? 'speedTo' : 'speedFrom'], what)];
  });
  if (motor.usable.known) return ofPumps;
  return [...ofPumps, notMade([...motor.place, 'usable'], en`The usable range of the motor is not given; the whole dial was taken.`)];
}
