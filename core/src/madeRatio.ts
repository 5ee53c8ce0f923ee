import { numbered } from './blendFormula.ts';
import type { Build, Plan, SideName, Teeth } from './plan.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import { deliveredAsMeasured, ofBoth, ofPumps, ofWheels, trainTurns } from './train.ts';
import { type Formula, formula, type Input, input, type Worked, work } from './working.ts';

/** The ratio that is made, B per A by volume, as the product of what pumps and wheels put in. */
export interface MadeRatio {
  readonly pumps: Worked<Fraction>;
  readonly wheels: Worked<Fraction>;
  readonly made: Worked<Fraction>;
}

/**
 * The ratio that a build makes, with how it came about, down to displacements and teeth.
 *
 * @source kinematics: pump displacement times shaft speed, both from one motor
 * @example madeRatio(Bench 1 of the demo, 21 driving 30 teeth).made.value  // 7/20
 */
export function madeRatio(plan: Plan, { pumps, teeth }: Build): MadeRatio {
  const delivered = (side: SideName): Input<Fraction> => {
    const { displacement_m3_per_rev, delivery, asMeasured } = pumps[side];
    const D = input(`displacement of pump ${side}`, displacement_m3_per_rev, 'displacement');
    if (!delivery.known || !asMeasured) return D;
    const η = input(`delivery of pump ${side} as measured`, delivery.value.share, 'share');
    return work(deliveredAsMeasured, `what pump ${side} delivers in one turn`, { D, η });
  };
  const ofBothPumps = work(ofPumps, 'pumps, B over A', { a: delivered('A'), b: delivered('B') });
  const ofAllWheels = work(ofWheels, 'wheels, turns of B for one of A', { a: turns(plan, 'A', teeth), b: turns(plan, 'B', teeth) });
  const made = work(ofBoth, 'B per A by volume, made', { p: ofBothPumps, t: ofAllWheels });
  return { pumps: ofBothPumps, wheels: ofAllWheels, made };
}

/** Turns of a pump for one of the motor, stage by stage from the motor on. */
function turns(plan: Plan, side: SideName, teeth: readonly Teeth[]): Input<Fraction> {
  const { train } = plan.sides[side];
  const what = `turns of pump ${side} for one of the motor`;
  if (train.length === 0) return input(`${what}: they turn as one`, ONE, 'number');
  const put = train.flatMap((index, step) => {
    const pair = teeth[index];
    if (pair === undefined) throw new RangeError(`turns: stage ${index} has no teeth`);
    const name = plan.stages[index]?.name ?? String(index);
    return [
      [numbered('z', 2 * step), input(`teeth of ${name} driver`, whole(pair.driver), 'number')] as const,
      [numbered('z', 2 * step + 1), input(`teeth of ${name} driven`, whole(pair.driven), 'number')] as const,
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
    source: 'kinematics of the drive: driver over driven, stage by stage',
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
