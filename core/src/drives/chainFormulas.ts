import { en } from '../en.ts';
import { formula } from '../working.ts';

// What is printed of a roller chain on two sprockets, written once. Letters as in the handbooks: p pitch, N teeth, D pitch diameter,
// C centre distance, b half the difference of the pitch diameters, a the angle between a free span and the line of centres, S free span.
// Scales do not matter: with p = 1 every length is counted in pitches.

type Put<Letters extends string> = Readonly<Record<Letters, number>>;

export const pitchDiameter = formula({
  letter: 'D',
  written: 'p / sin(π / N)',
  dimension: 'length',
  source: en`plane geometry: chord p of a regular polygon; iso-606, annex A`,
  of: ({ p, N }: Put<'p' | 'N'>) => p / Math.sin(Math.PI / N),
});

export const outsideDiameter = formula({
  letter: 'd',
  written: 'p · (0.6 + 1 / tan(π / N))',
  dimension: 'length',
  source: 'asme-b29.1',
  of: ({ p, N }: Put<'p' | 'N'>) => p * (0.6 + 1 / Math.tan(Math.PI / N)),
});

export const chainOnDiameter = formula({
  letter: 'd',
  written: 'D + 0.95 · p',
  dimension: 'length',
  source: en`asme-b29.1: plates of the roller link are at most 0.95 p high, half of that on each side of the pitch circle`,
  of: ({ D, p }: Put<'D' | 'p'>) => D + 0.95 * p,
});

export const halfDifference = formula({
  letter: 'b',
  written: 'abs(D₁ - D₂) / 2',
  dimension: 'length',
  source: en`plane geometry`,
  of: ({ 'D₁': driver, 'D₂': driven }: Put<'D₁' | 'D₂'>) => Math.abs(driver - driven) / 2,
});

export const spanAngle = formula({
  letter: 'a',
  written: 'asin(b / C)',
  dimension: 'angle',
  source: en`plane geometry`,
  of: ({ b, C }: Put<'b' | 'C'>) => Math.asin(b / C),
});

/** Factored, so that it keeps its digits where the smaller pitch circle all but touches the larger from inside. */
export const freeSpan = formula({
  letter: 'S',
  written: 'sqrt((C - b) · (C + b))',
  dimension: 'length',
  source: en`plane geometry: C cos a`,
  of: ({ b, C }: Put<'b' | 'C'>) => Math.sqrt((C - b) * (C + b)),
});

export const wrapAngle = formula({
  letter: 'w',
  written: 'π - 2 · a',
  dimension: 'angle',
  source: en`plane geometry; machine-elements, chain drives`,
  of: ({ a }: Put<'a'>) => Math.PI - 2 * a,
});

/** Both free spans, and what the larger sprocket wraps more than the smaller. */
export const beyondTeeth = formula({
  letter: 'X',
  written: '2 · S / p + abs(N₁ - N₂) · a / π',
  dimension: 'pitches',
  source: en`plane geometry: a chain on a sprocket counts one pitch for every tooth angle it lies on`,
  of: ({ S, p, 'N₁': driver, 'N₂': driven, a }: Put<'S' | 'p' | 'N₁' | 'N₂' | 'a'>) =>
    (2 * S) / p + (Math.abs(driver - driven) * a) / Math.PI,
});

export const chainLength = formula({
  letter: 'L',
  written: '(N₁ + N₂) / 2 + X',
  dimension: 'pitches',
  source: en`plane geometry: half of the teeth, and what lies beyond them`,
  of: ({ 'N₁': driver, 'N₂': driven, X }: Put<'N₁' | 'N₂' | 'X'>) => (driver + driven) / 2 + X,
});

export const chordalRipple = formula({
  letter: 'r',
  written: '1 - cos(π / N)',
  dimension: 'share',
  source: en`plane geometry: the chain's line lies between D/2 and D/2 cos(π/N) from the shaft`,
  of: ({ N }: Put<'N'>) => 1 - Math.cos(Math.PI / N),
});

export const chainSpeed = formula({
  letter: 'v',
  written: 'p · N · n',
  dimension: 'velocity',
  source: en`a turn moves as many pitches as the sprocket has teeth; asme-b29.1, supplementary information`,
  of: ({ p, N, n }: Put<'p' | 'N' | 'n'>) => p * N * n,
});

export const midSpanMovement = formula({
  letter: 'M',
  written: 'q · S',
  dimension: 'length',
  source: en`machinerys-handbook, from memory; chain-maker-answers`,
  of: ({ q, S }: Put<'q' | 'S'>) => q * S,
});

/** At a movement of 6 % of the span the terms left out are 0.2 % of it. */
export const spareLength = formula({
  letter: 'x',
  written: '8 · (M / 2)^2 / (3 · S)',
  dimension: 'length',
  source: en`arc length of a flat parabola with half the movement as its sag`,
  of: ({ M, S }: Put<'M' | 'S'>) => (8 * (M / 2) ** 2) / (3 * S),
});

export const newLength = formula({
  letter: 'l',
  written: 'k · p',
  dimension: 'length',
  source: en`definition of the pitch`,
  of: ({ k, p }: Put<'k' | 'p'>) => k * p,
});

export const wornLength = formula({
  letter: 'm',
  written: 'l · (1 + w)',
  dimension: 'length',
  source: en`handbook practice, from memory; chain-maker-answers: 1.5 % on fixed centres`,
  of: ({ l, w }: Put<'l' | 'w'>) => l * (1 + w),
});

export const allowedPull = formula({
  letter: 'L',
  written: 'B / 7',
  dimension: 'force',
  source: en`a seventh of the least tensile strength: common practice, no source`,
  of: ({ B }: Put<'B'>) => B / 7,
});

export const allowedPullWithOffset = formula({
  letter: 'L',
  written: '0.65 · B / 7',
  dimension: 'force',
  source: en`a seventh of the least tensile strength: common practice, no source; offset link 65 to 80 % of the chain: handbook practice, the worst taken`,
  of: ({ B }: Put<'B'>) => (0.65 * B) / 7,
});
