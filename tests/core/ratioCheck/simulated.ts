import { pairsOf, ratioInterval } from '../../../core/src/ratioCheck/pairs.ts';
import { checkOf } from './someCheck.ts';

/** How catches of two pumps come about, as far as a ratio check sees it. */
export interface Simulation {
  readonly name: string;
  readonly catches: number;
  /** Means of what is really delivered, g. */
  readonly a_g: number;
  readonly b_g: number;
  /** Standard deviations from catch to catch, as shares: of the length of the run, which both sides have in common, and of each side. */
  readonly ofRun: number;
  readonly ofA: number;
  readonly ofB: number;
  /** Of the scale, as typed. */
  readonly step_g: string;
  readonly readings: 1 | 2;
}

/** Uniform from 0 to 1 [mulberry32, a public-domain generator; from memory]. */
export function uniformOf(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Share of simulated checks whose interval at 95 % holds the true ratio of the means. */
export function coverage(of: Simulation, checks: number, seed: number): number {
  const uniform = uniformOf(seed);
  // Box and Muller, Annals of Mathematical Statistics 29 (1958)
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  const step = Number(of.step_g);
  const places = Math.max(0, Math.ceil(-Math.log10(step)));
  const read = (weight_g: number) => step * Math.round(weight_g / step);
  let held = 0;
  for (let check = 0; check < checks; check += 1) {
    // where the true means lie between two steps of the scale is nobody's choice
    const [a_g, b_g] = [of.a_g + step * uniform(), of.b_g + step * uniform()];
    const weighed = (net_g: number): number => {
      if (of.readings === 1) return read(net_g);
      const tare_g = 10 + 5 * uniform();
      return read(tare_g + net_g) - read(tare_g);
    };
    const catches = Array.from({ length: of.catches }, () => {
      const run = of.ofRun * normal();
      const [a, b] = [weighed(a_g * (1 + run + of.ofA * normal())), weighed(b_g * (1 + run + of.ofB * normal()))];
      return [Number(a.toFixed(places)), Number(b.toFixed(places))] as const;
    });
    const { step_g, readings } = of;
    const interval = ratioInterval(pairsOf(checkOf({ wantedByWeight: '1/2', limits: null, catches, step: step_g, readings })), 0.95);
    const ratio = b_g / a_g;
    // no interval rules nothing out
    if (interval === null || (interval.from.value <= ratio && ratio <= interval.to.value)) held += 1;
  }
  return held / checks;
}

const plain = { a_g: 244, b_g: 102, ofRun: 0, ofA: 0.002, ofB: 0.002, step_g: '0.001', readings: 2 } as const;

/** Steps of the scale are small against the spread: the theory is exact here. */
export const FINE: readonly Simulation[] = [
  { ...plain, name: '3 catches, both sides spread by 0.2 %', catches: 3 },
  { ...plain, name: '3 catches, run by 1 %, sides by 0.1 %', catches: 3, ofRun: 0.01, ofA: 0.001, ofB: 0.001 },
  { ...plain, name: '4 catches, both sides by 5 %', catches: 4, ofA: 0.05, ofB: 0.05 },
  { ...plain, name: '5 catches, B ten times as wide as A', catches: 5, ofA: 0.001, ofB: 0.01 },
  { ...plain, name: '6 catches, small ones, run by 3 %', catches: 6, a_g: 40, b_g: 17, ofRun: 0.03 },
  { ...plain, name: '10 catches, A ten times as wide as B', catches: 10, ofA: 0.01, ofB: 0.001 },
  { ...plain, name: '10 catches, run by 2 %, B by 1 %', catches: 10, ofRun: 0.02, ofB: 0.01 },
];

/** Steps as wide as the spread or wider. */
export const COARSE: readonly Simulation[] = [
  { ...plain, name: '3 catches, spread as wide as the step', catches: 3, a_g: 50, b_g: 20, step_g: '0.1', ofA: 0.002, ofB: 0.005 },
  { ...plain, name: '10 catches, spread as wide as the step', catches: 10, a_g: 50, b_g: 20, step_g: '0.1', ofA: 0.002, ofB: 0.005 },
  {
    ...plain,
    name: '3 catches, spread a fifth of the step, gross and tare',
    catches: 3,
    a_g: 50,
    b_g: 20,
    step_g: '0.1',
    ofA: 0.0004,
    ofB: 0.001,
  },
  {
    ...plain,
    name: '10 catches, spread a fifth of the step, gross and tare',
    catches: 10,
    a_g: 50,
    b_g: 20,
    step_g: '0.1',
    ofA: 0.0004,
    ofB: 0.001,
  },
  {
    ...plain,
    name: '3 catches, spread a fifth of the step, tared',
    catches: 3,
    a_g: 50,
    b_g: 20,
    step_g: '0.1',
    ofA: 0.0004,
    ofB: 0.001,
    readings: 1,
  },
  {
    ...plain,
    name: '10 catches, spread a fifth of the step, tared',
    catches: 10,
    a_g: 50,
    b_g: 20,
    step_g: '0.1',
    ofA: 0.0004,
    ofB: 0.001,
    readings: 1,
  },
  {
    ...plain,
    name: '10 catches, spread a hundredth of the step, tared',
    catches: 10,
    a_g: 50,
    b_g: 20,
    step_g: '0.1',
    ofA: 0.00002,
    ofB: 0.00005,
    readings: 1,
  },
];
