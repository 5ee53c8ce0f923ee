import { type Drift, type DriftLine, driftOf, FURTHEST_K, type Leaving, slipDrift } from '../drift.ts';
import { en } from '../en.ts';
import { capital, type Say, SENSE, signedPercentText } from '../format.ts';
import { type Build, type Plan, SIDES, type SideName } from '../plan.ts';
import { amountText } from '../shown.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

const WHOM = { A: en`A alone`, B: en`B alone`, both: en`A and B` } as const;

/** How the off-ratio moves with the temperature of the tanks, where it leaves the limits, and what pressure and viscosity do through slip. */
export function driftFacts(plan: Plan, build: Build, say: Say): FactGroup {
  const { lines, lacking } = driftOf(plan, build);
  return {
    id: 'drift',
    title: en`Drift with temperature and pressure`,
    facts: [
      ...lines.flatMap((line) => endFacts(line, say)),
      ...lines.flatMap((line) => leavingFacts(line, say)),
      ...SIDES.flatMap((side) => slipFacts(plan, build, side, say)),
      ...lackingFacts(lacking),
    ],
  };
}

/** At both ends of what is looked at. */
function endFacts({ heated, points }: DriftLine, say: Say): readonly Fact[] {
  return (['hotter', 'colder'] as const).flatMap((way): readonly Fact[] => {
    const wanted = way === 'hotter' ? FURTHEST_K : -FURTHEST_K;
    const point = points.find(({ step }) => step.value.equals(wanted));
    if (point === undefined) return [];
    const step = amountText(FURTHEST_K, 'temperatureDifference', say, -1);
    const what = way === 'hotter' ? en`off-ratio, ${WHOM[heated]} ${step} hotter` : en`off-ratio, ${WHOM[heated]} ${step} colder`;
    return [
      fact(`${way}${capital(heated)}`, point.offRatio, say, {
        what,
        figure: signedPercentText(point.offRatio.value, say),
        note: SENSE,
      }),
    ];
  });
}

function leavingFacts({ heated, leaves }: DriftLine, say: Say): readonly Fact[] {
  const one = (end: 'low' | 'high', leaving: Leaving | null): readonly Fact[] => {
    if (leaving === null) return [];
    const note = leaving.at_K.known ? en`at ${amountText(leaving.at_K.value, 'temperature', say)}` : '';
    const whom = WHOM[heated];
    const what = end === 'low' ? en`${whom} reaches the low limit at a step of` : en`${whom} reaches the high limit at a step of`;
    return [fact(`${end}${capital(heated)}`, leaving.step, say, { what, note, figure: stepText(leaving, say) })];
  };
  return [...one('low', leaves.low), ...one('high', leaves.high)];
}

function stepText({ step }: Leaving, say: Say): string {
  const text = amountText(step.value, 'temperatureDifference', say);
  return step.value.s > 0n && /[1-9]/.test(text) ? `+${text}` : text;
}

function slipFacts(plan: Plan, build: Build, side: SideName, say: Say): readonly Fact[] {
  const moved = slipDrift(plan, build, side);
  if (!moved.known) return [];
  const { value } = moved.value;
  const note = en`${SENSE}; by the most slip that is estimated`;
  return [fact(`slipDrift${side}`, moved.value, say, { figure: signedPercentText(side === 'A' ? value : value.neg(), say), note })];
}

function lackingFacts(lacking: Drift['lacking']): readonly Fact[] {
  if (lacking.length === 0) return [];
  const note = lacking.map(({ what }) => what).join(', ');
  return [{ id: 'lacking', what: en`drift with temperature`, figure: en`not given`, note, working: null }];
}
