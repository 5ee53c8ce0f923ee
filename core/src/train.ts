import { driveKind } from './drives/index.ts';
import { en } from './en.ts';
import { type Build, type Plan, type Pump, type SideName, stageAt, type Teeth, teethAt } from './plan.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import { type Formula, formula, type Input, input, numbered, work } from './working.ts';

const deliveredAsMeasured = formula({
  letter: 'V',
  written: 'D · η',
  dimension: 'displacement',
  source: en`definition of volumetric efficiency`,
  of: ({ D, η }: Record<'D' | 'η', Fraction>) => D.mul(η),
});

export const ofPumps = formula({
  letter: 'p',
  written: 'b / a',
  dimension: 'number',
  source: en`definition: what pump B delivers in one turn over what pump A does`,
  of: ({ a, b }: Record<'a' | 'b', Fraction>) => b.div(a),
});

export const ofWheels = formula({
  letter: 't',
  written: 'b / a',
  dimension: 'number',
  source: en`kinematics: turns of pump B for one turn of pump A`,
  of: ({ a, b }: Record<'a' | 'b', Fraction>) => b.div(a),
});

export const ofBoth = formula({
  letter: 'm',
  written: 'p · t',
  dimension: 'number',
  source: en`kinematics: displacement times speed, both pumps from one motor`,
  of: ({ p, t }: Record<'p' | 't', Fraction>) => p.mul(t),
});

/** Turns of a pump for one turn of the motor, exact. */
export function trainTurns(plan: Plan, side: SideName, teeth: readonly Teeth[]): Fraction {
  return plan.sides[side].train.reduce((turns, index) => {
    const { driver, driven } = teethAt(teeth, index);
    return turns.mul(driveKind(stageAt(plan, index).kind).turns(driver, driven));
  }, ONE);
}

/**
 * The same with how it came about, stage by stage from the motor on.
 *
 * @throws RangeError  where a stage of the train has no teeth
 * @source kinematics of the drive
 * @example turnsOf(Bench 1 of the demo, 'B', 21 driving 30 teeth).value  // 7/10
 */
export function turnsOf(plan: Plan, side: SideName, teeth: readonly Teeth[]): Input<Fraction> {
  const { train } = plan.sides[side];
  const what = en`turns of pump ${side} for one of the motor`;
  if (train.length === 0) return input(en`${what}: they turn as one`, ONE, 'number');
  const put = train.flatMap((index, step) => {
    const { driver, driven } = teethAt(teeth, index);
    const { name } = stageAt(plan, index);
    return [
      [numbered('z', 2 * step), input(en`teeth of ${name} driver`, whole(driver), 'number')] as const,
      [numbered('z', 2 * step + 1), input(en`teeth of ${name} driven`, whole(driven), 'number')] as const,
    ];
  });
  return work(turnsFormula(plan, side, teeth), what, Object.fromEntries(put));
}

function turnsFormula(plan: Plan, side: SideName, teeth: readonly Teeth[]): Formula<string, Fraction> {
  const { train } = plan.sides[side];
  return formula({
    letter: 'i',
    written: train.map((_, step) => `${numbered('z', 2 * step)} / ${numbered('z', 2 * step + 1)}`).join(' · '),
    dimension: 'number',
    source: en`kinematics of the drive: driver over driven, stage by stage`,
    of: (put: Readonly<Record<string, Fraction>>) => {
      const counted = (letter: string, otherwise: number) => put[letter]?.valueOf() ?? otherwise;
      const replaced = teeth.map((pair, index) => {
        const step = train.indexOf(index);
        if (step < 0) return pair;
        return { driver: counted(numbered('z', 2 * step), pair.driver), driven: counted(numbered('z', 2 * step + 1), pair.driven) };
      });
      return trainTurns(plan, side, replaced);
    },
  });
}

/**
 * Volume of B per volume of A that a drive delivers, from displacements, teeth and the deliveries that were measured.
 *
 * @returns exact; 1 over the `R = D_A n_A / (D_B n_B)` of the ratio A to B
 * @source kinematics: pump displacement times shaft speed, both from one motor
 */
export function madeBPerA(plan: Plan, pumps: Readonly<Record<SideName, Pump>>, teeth: readonly Teeth[]): Fraction {
  return ofBoth.of({ p: pumpRatio(pumps), t: sprocketRatio(plan, teeth) });
}

/** What a pump counts for in one turn: its displacement, times the delivery as measured where that is asked for. */
export const delivered_m3_per_rev = ({ displacement_m3_per_rev, delivery, asMeasured }: Pump): Fraction =>
  delivery.known && asMeasured ? deliveredAsMeasured.of({ D: displacement_m3_per_rev, η: delivery.value.share }) : displacement_m3_per_rev;

/** The same with how it came about. */
export function deliveredOf({ displacement_m3_per_rev, delivery, asMeasured }: Pump, side: SideName): Input<Fraction> {
  const D = input(en`displacement of pump ${side}`, displacement_m3_per_rev, 'displacement');
  if (!delivery.known || !asMeasured) return D;
  const η = input(en`delivery of pump ${side} as measured`, delivery.value.share, 'share');
  return work(deliveredAsMeasured, en`what pump ${side} delivers in one turn`, { D, η });
}

/** What the pumps put in: what B delivers in one turn over what A delivers. */
export const pumpRatio = (pumps: Readonly<Record<SideName, Pump>>): Fraction =>
  ofPumps.of({ a: delivered_m3_per_rev(pumps.A), b: delivered_m3_per_rev(pumps.B) });

/** What the teeth put in: turns of pump B for one turn of pump A; stages that both share cancel. */
export const sprocketRatio = (plan: Plan, teeth: readonly Teeth[]): Fraction =>
  ofWheels.of({ a: trainTurns(plan, 'A', teeth), b: trainTurns(plan, 'B', teeth) });

/** The teeth as fitted now, stage by stage. */
export const fittedTeeth = (plan: Plan): readonly Teeth[] =>
  plan.stages.map(({ driver, driven }) => ({ driver: driver.teeth, driven: driven.teeth }));

/** The pumps as fitted now. */
export function fittedPumps(plan: Plan): Readonly<Record<SideName, Pump>> {
  const fitted = (side: SideName) => plan.sides[side].pumps[plan.sides[side].fitted] ?? plan.sides[side].pumps[0];
  return { A: fitted('A'), B: fitted('B') };
}

/**
 * The pumps in words, as `pumpRatio` counts them.
 *
 * @source our choice
 * @example pumpsText(pumps)  // 'pumps as measured', where their measured delivery counts
 */
export const pumpsText = ({ A, B }: Build['pumps']): string =>
  [A, B].some(({ delivery, asMeasured }) => delivery.known && asMeasured) ? en`pumps as measured` : en`pumps`;
