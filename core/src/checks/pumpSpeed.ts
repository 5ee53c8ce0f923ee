import { apart, type Check, notMade, type OptionSubject } from '../check.ts';
import type { Judgement, Place } from '../finding.ts';
import { fixed, type Say } from '../format.ts';
import type { Plan, Pump, SideName } from '../plan.ts';
import { type Fraction, float, ONE, whole, ZERO } from '../ratio.ts';
import { trainTurns } from '../train.ts';

const SIDES = ['A', 'B'] as const satisfies readonly SideName[];
const HUNDRED = whole(100);

/** Speed limits of the pumps narrow the usable range of the dial; they block only where nothing is left of it. */
export const pumpSpeed: Check<OptionSubject> = {
  id: 'option.pumpSpeed',
  title: 'Pump speed',
  worst: 'blocks',
  source: 'speed limits of the pumps and usable range of the motor, as given',
  why: 'Too slow a pump slips and pulses, too fast a one starves and wears.',
  judge: ({ plan, pumps, teeth }) => {
    const usable = usableRange(plan);
    const lowest = [usable.from];
    const highest = [usable.to];
    for (const side of SIDES) {
      const { speedFrom_rev_per_s: from, speedTo_rev_per_s: to, place } = pumps[side];
      const fullSpeed_rev_per_s = plan.motor.speed_rev_per_s.mul(trainTurns(plan, side, teeth));
      const end = (speed_rev_per_s: Fraction, field: string): End => ({
        dial_percent: speed_rev_per_s.div(fullSpeed_rev_per_s).mul(HUNDRED),
        whose: `pump ${side}`,
        where: [...place, field],
      });
      if (from.known) lowest.push(end(from.value, 'speedFrom'));
      if (to.known) highest.push(end(to.value, 'speedTo'));
    }
    const from = lowest.reduce((a, b) => (b.dial_percent.compare(a.dial_percent) > 0 ? b : a));
    const to = highest.reduce((a, b) => (b.dial_percent.compare(a.dial_percent) < 0 ? b : a));
    const judged = from.dial_percent.compare(to.dial_percent) > 0 ? nothingLeft(plan, from, to) : narrowing(usable, { from, to });
    return [...judged, ...missing(plan, pumps)];
  },
};

/** One end of what the dial may be set to, and who asks for it. */
interface End {
  readonly dial_percent: Fraction;
  readonly whose: string;
  readonly where: Place;
}

interface Range {
  readonly from: End;
  readonly to: End;
}

function usableRange({ motor }: Plan): Range {
  const { from, to } = motor.usable.known ? motor.usable.value : { from: ZERO, to: ONE };
  const end = (share: Fraction): End => ({ dial_percent: share.mul(HUNDRED), whose: 'the motor', where: motor.place });
  return { from: end(from), to: end(to) };
}

/** The motor's own range is in order, so at least one end is a pump's. */
function nothingLeft({ motor }: Plan, from: End, to: End): readonly Judgement[] {
  return [
    {
      severity: 'blocks',
      where: from.where === motor.place ? to.where : from.where,
      what: (say) => {
        const [least, most] = apart(from.dial_percent, to.dial_percent, 1, (dial_percent, places) => fixed(dial_percent, places, say));
        return `No setting of the dial is left: ${from.whose} wants ${least} % or more, ${to.whose} ${most} % or less.`;
      },
      figure: { value: float(from.dial_percent), unit: '%' },
      limit: { value: float(to.dial_percent), unit: '%' },
    },
  ];
}

function narrowing(usable: Range, left: Range): readonly Judgement[] {
  const ends = (['from', 'to'] as const).filter((end) => !left[end].dial_percent.equals(usable[end].dial_percent));
  const [end] = ends;
  if (end === undefined) return [];
  const words = ({ from, to }: Range, say: Say) => `${fixed(from.dial_percent, 1, say)} to ${fixed(to.dial_percent, 1, say)} %`;
  return [
    {
      severity: 'notes',
      where: left[end].where,
      what: (say) => `The pump speeds leave ${words(left, say)} of the dial, where the motor allows ${words(usable, say)}.`,
      figure: { value: float(left[end].dial_percent), unit: '%' },
      limit: { value: float(usable[end].dial_percent), unit: '%' },
    },
  ];
}

function missing({ motor }: Plan, pumps: Readonly<Record<SideName, Pump>>): readonly Judgement[] {
  const ofPumps = SIDES.flatMap((side) => {
    const { speedFrom_rev_per_s: from, speedTo_rev_per_s: to, place } = pumps[side];
    if (from.known && to.known) return [];
    const words = from.known ? 'its highest speed is' : to.known ? 'its lowest speed is' : 'its speed limits are';
    return [notMade([...place, from.known ? 'speedTo' : 'speedFrom'], `Pump ${side}: ${words} not given, and so not checked.`)];
  });
  if (motor.usable.known) return ofPumps;
  return [...ofPumps, notMade([...motor.place, 'usable'], 'The usable range of the motor is not given; the whole dial was taken.')];
}
