import { exactText, Fraction, ONE, whole, ZERO } from '../../../core/src/ratio.ts';
import type { Candidate, Effect, OpenStage, Option, Pair, PumpPair, Rules, SearchProblem } from '../../../core/src/search/index.ts';

export const anything: Rules = { admit: () => 0 };

/** Whole numbers from `first` to `last`. */
export const teethFrom = (first: number, last: number): readonly number[] => Array.from({ length: last - first + 1 }, (_, i) => first + i);

/** Every pair of a driver and a driven wheel; nothing counts as fitted unless said. */
export function stageOf(
  effect: Effect,
  drivers: readonly number[],
  driven: readonly number[] = drivers,
  fitted?: readonly [number, number],
): OpenStage {
  const pairs = drivers.flatMap((a) =>
    driven.map((b): Pair => {
      const changed = changes(fitted, [a, b]);
      return { driver: a, driven: b, changed, work: workFor(changed, (a + b) % 5), failed: 0 };
    }),
  );
  return { effect, pairs };
}

export function changes(fitted: readonly [number, number] | undefined, [a, b]: readonly [number, number]): 0 | 1 | 2 {
  const first = a !== fitted?.[0];
  const second = b !== fitted?.[1];
  return first && second ? 2 : first || second ? 1 : 0;
}

/** Twelve minutes a wheel; with it, by some whole number, a chain, a centre, both or neither. */
export const workFor = (changed: number, also: number): Fraction =>
  changed === 0 ? ZERO : whole(60 * (12 * changed + ([0, 10, 3, 13][also] ?? 10)));

export const onePump: readonly PumpPair[] = [{ ratio: ONE, changed: 0, work: ZERO, failed: 0, order: 0 }];

/** A plain train: ratio = product of driver / driven, no pumps to choose, no limits. */
export function trainProblem(wanted: Fraction | string, stages: readonly OpenStage[]): SearchProblem {
  return { stages, pumps: onePump, fixed: ONE, wanted: new Fraction(wanted), limits: null };
}

export function wheelsOf({ stages }: SearchProblem, { pairs }: Candidate): readonly Pair[] {
  return stages.flatMap((stage, s) => stage.pairs[pairs[s] ?? -1] ?? []);
}

/** Teeth of drivers and of driven wheels, each in ascending order: the same for every order of mounting. */
export function wheelSet(problem: SearchProblem, option: Candidate): string {
  const side = (of: (pair: Pair) => number) =>
    wheelsOf(problem, option)
      .map(of)
      .sort((a, b) => a - b)
      .join(' ');
  return `${side(({ driver }) => driver)} / ${side(({ driven }) => driven)}`;
}

/** One piece of each wheel in `stock` (listed twice: two pieces), and up to `purchases` more to buy. */
export function stockRule(problem: SearchProblem, stock: readonly number[], purchases = 0): Rules {
  return {
    admit: (candidate) => {
      const left = new Map<number, number>();
      for (const teeth of stock) left.set(teeth, (left.get(teeth) ?? 0) + 1);
      let missing = 0;
      for (const teeth of wheelsOf(problem, candidate).flatMap(({ driver, driven }) => [driver, driven])) {
        const pieces = left.get(teeth) ?? 0;
        if (pieces === 0) missing += 1;
        else left.set(teeth, pieces - 1);
      }
      return missing <= purchases ? missing : null;
    },
  };
}

/** An option as plain text and numbers, for comparing rows. */
export function row(option: Option | null) {
  return option && { ...option, ratio: exactText(option.ratio), offRatio: exactText(option.offRatio) };
}
