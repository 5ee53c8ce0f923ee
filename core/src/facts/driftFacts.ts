import { percentOf } from '../dial.ts';
import { type DriftLine, driftOf, FURTHEST_K, type Leaving, slipDrift } from '../drift.ts';
import { type Say, signed } from '../format.ts';
import { type Build, type Plan, SIDES } from '../plan.ts';
import { amountText } from '../shown.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

const SENSE = '+ is B-rich';
const WHOM = { A: 'A alone', B: 'B alone', both: 'A and B' } as const;

/** How the off-ratio moves with the temperature of the tanks, where it leaves the limits, and what pressure and viscosity do through slip. */
export function driftFacts(plan: Plan, build: Build, say: Say): FactGroup {
  const { lines, lacking } = driftOf(plan, build);
  return {
    id: 'drift',
    title: 'Drift with temperature and pressure',
    facts: [
      ...lines.flatMap((line) => endFacts(line, say)),
      ...lines.flatMap((line) => leavingFacts(line, say)),
      ...SIDES.flatMap((side): readonly Fact[] => {
        const moved = slipDrift(plan, build, side);
        if (!moved.known) return [];
        const way = side === 'A' ? '+' : '−';
        const note = `${SENSE}; by the most slip that is estimated`;
        return [fact(`slipDrift${side}`, moved.value, say, { figure: `${way}${amountText(moved.value.value, 'share', say)}`, note })];
      }),
      ...(lacking.length === 0
        ? []
        : [
            {
              id: 'lacking',
              what: 'drift with temperature',
              figure: 'not given',
              note: lacking.map(({ what }) => what).join(', '),
              working: null,
            },
          ]),
    ],
  };
}

/** At both ends of what is looked at. */
function endFacts({ heated, points }: DriftLine, say: Say): readonly Fact[] {
  return (['hotter', 'colder'] as const).flatMap((word): readonly Fact[] => {
    const wanted = word === 'hotter' ? FURTHEST_K : -FURTHEST_K;
    const point = points.find(({ step }) => step.value.equals(wanted));
    if (point === undefined) return [];
    const what = `off-ratio, ${WHOM[heated]} ${amountText(FURTHEST_K, 'temperatureDifference', say, -1)} ${word}`;
    return [
      fact(`${word}${capital(heated)}`, point.offRatio, say, {
        what,
        figure: `${signed(percentOf(point.offRatio.value), 2, say)}\u00a0%`,
        note: SENSE,
      }),
    ];
  });
}

function leavingFacts({ heated, leaves }: DriftLine, say: Say): readonly Fact[] {
  const one = (end: 'low' | 'high', leaving: Leaving | null): readonly Fact[] => {
    if (leaving === null) return [];
    const note = leaving.at_K.known ? `at ${amountText(leaving.at_K.value, 'temperature', say)}` : '';
    const what = `${WHOM[heated]} reaches the ${end} limit at a step of`;
    return [fact(`${end}${capital(heated)}`, leaving.step, say, { what, note, figure: stepText(leaving, say) })];
  };
  return [...one('low', leaves.low), ...one('high', leaves.high)];
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

function stepText({ step }: Leaving, say: Say): string {
  const text = amountText(step.value, 'temperatureDifference', say);
  return step.value.s > 0n && /[1-9]/.test(text) ? `+${text}` : text;
}
