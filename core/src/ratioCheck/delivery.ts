import { en } from '../en.ts';
import type { SideName } from '../plan.ts';
import { type Fraction, float, ONE } from '../ratio.ts';
import { formula, type Input, input, type Worked, work } from '../working.ts';
import type { BySide, CatchRun, CheckInput } from './model.ts';
import { meansOf, type Pairs } from './pairs.ts';
import { studentQuantile } from './student.ts';

/** What a pump delivers of its displacement, as measured. */
export interface MeasuredDelivery {
  readonly share: Worked<Fraction>;
  /** ± of that share, same unit, with the confidence of the check; null with one catch. */
  readonly uncertainty: Worked<number> | null;
}

const volumetric = formula({
  letter: 'η',
  written: 'V / (D · i · n)',
  dimension: 'share',
  source: en`definition of volumetric efficiency: caught over what the displacement would give`,
  of: ({ V, D, i, n }: Record<'V' | 'D' | 'i' | 'n', Fraction>) => V.div(D.mul(i).mul(n)),
});

const volumeWeighed = formula({
  letter: 'V',
  written: 'm / ρ',
  dimension: 'volume',
  source: en`definition of density`,
  of: ({ m, ρ }: Record<'m' | 'ρ', Fraction>) => m.div(ρ),
});

const turnsInTime = formula({
  letter: 'n',
  written: 't · N',
  dimension: 'number',
  source: en`definition of speed`,
  of: ({ t, N }: Record<'t' | 'N', Fraction>) => t.mul(N),
});

const plusMinus = formula({
  letter: 'U',
  written: 't · sqrt(v) / x · η',
  dimension: 'share',
  source: en`interval of a mean [NIST/SEMATECH e-Handbook 1.3.5.2]`,
  of: ({ t, v, x, η }: Record<'t' | 'v' | 'x' | 'η', number>) => ((t * Math.sqrt(v)) / x) * η,
});

/** Turns of the motor in one catch. */
function motorTurns(run: NonNullable<CatchRun>): Input<Fraction> {
  if (run.by === 'turns') return input(en`turns of the motor for one catch`, run.motorTurns, 'number');
  return work(turnsInTime, en`turns of the motor for one catch`, {
    t: input(en`time of one catch`, run.time_s, 'time'),
    N: input(en`speed of the motor`, run.motor_rev_per_s, 'speed'),
  });
}

/**
 * What each pump delivered of its nominal displacement.
 *
 * @returns null for a side whose density is not given though it was weighed, and for both where nobody counted turns or seconds
 * @source definition of volumetric efficiency; Student's interval of a mean, with the steps of the scale in it
 * @example deliveriesOf(three catches of about 244.4 g of A, …).A  // 1.0001 ± 0.0026
 */
export function deliveriesOf(input: CheckInput, pairs: Pairs): BySide<MeasuredDelivery | null> {
  const of = (side: SideName) => (input.run === null ? null : deliveryOf(input, pairs, side, motorTurns(input.run)));
  return { A: of('A'), B: of('B') };
}

function deliveryOf({ terms, confidence }: CheckInput, pairs: Pairs, side: SideName, n: Input<Fraction>): MeasuredDelivery | null {
  const density = terms.density_kg_per_m3[side];
  if (pairs.weighed && !density.known) return null;
  const mean = pairs.mean[side];
  const caught = en`mean caught of ${side}`;
  const V =
    pairs.weighed && density.known
      ? work(volumeWeighed, en`volume caught of ${side}`, {
          m: input(caught, mean, 'mass'),
          ρ: input(en`density of ${side} as run`, density.value, 'density'),
        })
      : input(caught, mean, 'volume');
  const share = work(volumetric, en`delivery of pump ${side}`, {
    V,
    D: input(en`displacement of pump ${side}`, terms.displacement_m3_per_rev[side], 'displacement'),
    i: input(en`turns of pump ${side} for one of the motor`, terms.pumpTurns[side], 'number'),
    n,
  });
  return { share, uncertainty: uncertaintyOf(pairs, side, share, confidence) };
}

function uncertaintyOf(pairs: Pairs, side: SideName, share: Worked<Fraction>, confidence: number): Worked<number> | null {
  if (pairs.spread === null) return null;
  const means = meansOf(pairs, pairs.spread, pairs.count);
  return work(plusMinus, en`± of the delivery of pump ${side}`, {
    t: input(en`quantile of Student’s distribution`, studentQuantile(confidence, pairs.count - 1), 'number'),
    v: input(en`variance of the mean`, side === 'A' ? means.varianceA : means.varianceB, 'number'),
    x: input(en`mean caught`, side === 'A' ? means.a : means.b, 'number'),
    η: input(en`delivery`, float(share.value), 'share'),
  });
}

/**
 * Off-ratio that the deliveries alone put in beside teeth and displacements.
 *
 * @source definition of volumetric efficiency
 * @example deliveryOffRatio(1.0001, 0.9897)  // −1.04 %
 */
export const deliveryOffRatio = (A: Fraction, B: Fraction): Fraction => B.div(A).sub(ONE);
