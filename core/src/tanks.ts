import { en } from './en.ts';
import type { Setting } from './flow.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import { madeRatio } from './madeRatio.ts';
import { aPerB } from './mixRatio.ts';
import { type Build, type Plan, SIDES, type Side, type SideName } from './plan.ts';
import { type Fraction, most, ZERO } from './ratio.ts';
import { formula, input, type Worked, work } from './working.ts';

const usableVolume = formula({
  letter: 'u',
  written: 'max(f - l, 0)',
  dimension: 'volume',
  source: en`arithmetic`,
  of: ({ f, l }: Record<'f' | 'l', Fraction>) => most(f.sub(l), ZERO),
});

const timeToLowMark = formula({
  letter: 't',
  written: 'u / Q',
  dimension: 'time',
  source: en`definition of flow`,
  of: ({ u, Q }: Record<'u' | 'Q', Fraction>) => u.div(Q),
});

const fillToMatch = formula({
  letter: 'f',
  written: 'l + u · r',
  dimension: 'volume',
  source: en`arithmetic: what the other tank gives, in the ratio as made`,
  of: ({ l, u, r }: Record<'l' | 'u' | 'r', Fraction>) => l.add(u.mul(r)),
});

/** Which tank runs low first, whatever the dial says, and the fill of the other with which both run low together. */
export interface RunsLow {
  readonly first: SideName;
  readonly other: SideName;
  /** Of the other tank, which then stands no higher than now. */
  readonly fill: Worked<Fraction>;
  /** Both run low together as they are. */
  readonly together: boolean;
}

/**
 * What stands in a tank above its low mark; nothing where the fill lies below it.
 *
 * @returns cubic metres; not given where the fill or the mark is not
 * @source arithmetic
 * @example filled to 40 L, low mark 6 L  // 34 L
 */
export function aboveLowMark({ name, fill_m3, lowMark_m3 }: Side): Given<Worked<Fraction>> {
  if (!fill_m3.known || !lowMark_m3.known) return NOT_GIVEN;
  const f = input(en`fill of tank ${name}`, fill_m3.value, 'volume');
  return known(work(usableVolume, en`above the low mark of tank ${name}`, { f, l: input(en`low mark`, lowMark_m3.value, 'volume') }));
}

/**
 * How long a tank lasts at a setting of the dial.
 *
 * @param setting  with a flow above 0
 * @returns seconds; not given where the fill or the mark is not
 * @source definition of flow
 * @example 34 L at 685.8 cc/min  // 49.6 min
 */
export function lastsFor(plan: Plan, setting: Setting, side: SideName): Given<Worked<Fraction>> {
  const u = aboveLowMark(plan.sides[side]);
  return u.known ? known(work(timeToLowMark, en`tank ${side} to its low mark`, { u: u.value, Q: setting.flow[side] })) : NOT_GIVEN;
}

/**
 * Which tank runs low first, and how far the other need be filled so that both run low together.
 *
 * @returns not given where a fill or a mark is not, and where nothing stands above either mark
 * @source arithmetic: both sides flow in the ratio as made
 * @example A 40 and 6 L, B 20 and 4 L, B per A 23/50  // A first; fill B to 19.64 L
 */
export function runsLow(plan: Plan, build: Build): Given<RunsLow> {
  const [A, B] = SIDES.map((side) => aboveLowMark(plan.sides[side]));
  if (!A?.known || !B?.known || (A.value.value.equals(ZERO) && B.value.value.equals(ZERO))) return NOT_GIVEN;
  const { made } = madeRatio(plan, build);
  const order = A.value.value.mul(made.value).compare(B.value.value);
  const [first, other]: readonly [SideName, SideName] = order <= 0 ? ['A', 'B'] : ['B', 'A'];
  const { lowMark_m3 } = plan.sides[other];
  if (!lowMark_m3.known) return NOT_GIVEN;
  const fill = work(fillToMatch, en`fill of tank ${other} for both to run low together`, {
    l: input(en`low mark of tank ${other}`, lowMark_m3.value, 'volume'),
    u: (first === 'A' ? A : B).value,
    r: first === 'A' ? made : work(aPerB, en`A per B by volume, made`, { r: made }),
  });
  return known({ first, other, fill, together: order === 0 });
}
