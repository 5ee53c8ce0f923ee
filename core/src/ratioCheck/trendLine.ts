import { studentQuantile } from './student.ts';

/** A straight line through measured points. */
export interface TrendLine {
  readonly at0: number;
  readonly slope: number;
  /** Standard deviation of the points about the line. */
  readonly deviation: number;
  readonly slopeDeviation: number;
  readonly at0Deviation: number;
  readonly degreesOfFreedom: number;
  readonly meanX: number;
  /** Sum of the squares of x about their mean. */
  readonly spreadX: number;
  readonly count: number;
}

/** One measured value at its place on the line of time. */
export interface TrendPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * Straight line of least squares.
 *
 * @returns null with fewer than three points, or where all stand at one place: then nothing tells how well it fits
 * @source NIST/SEMATECH e-Handbook 4.4.3.1; checked against the reference data set Norris
 */
export function trendLine(points: readonly TrendPoint[]): TrendLine | null {
  const count = points.length;
  if (count < 3) return null;
  const mean = (of: (point: TrendPoint) => number) => points.reduce((sum, point) => sum + of(point), 0) / count;
  const [meanX, meanY] = [mean(({ x }) => x), mean(({ y }) => y)];
  const spreadX = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  if (spreadX === 0) return null;
  const slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / spreadX;
  const rest = points.reduce((sum, { x, y }) => sum + (y - meanY - slope * (x - meanX)) ** 2, 0);
  const degreesOfFreedom = count - 2;
  const deviation = Math.sqrt(rest / degreesOfFreedom);
  return {
    at0: meanY - slope * meanX,
    slope,
    deviation,
    slopeDeviation: deviation / Math.sqrt(spreadX),
    at0Deviation: deviation * Math.sqrt(1 / count + meanX ** 2 / spreadX),
    degreesOfFreedom,
    meanX,
    spreadX,
    count,
  };
}

/** Where a line meets a limit. */
export interface Meeting {
  readonly x: number;
  /** Earliest and latest place that the points leave open; null where an end is open. */
  readonly from: number | null;
  readonly to: number | null;
}

/**
 * Where the line reaches a limit if it goes on as it did: the places at which the line, not a single value, is not told from the limit.
 *
 * @param confidence  above 0.5, below 1
 * @returns null where the line does not tell a slope at all, so that any place is as good
 * @source Fieller’s theorem for the place at which a line takes a value: (a + b x − L)² = t² s² (1/n + (x − x̄)² / S)
 */
export function meets(line: TrendLine, limit: number, confidence: number): Meeting | null {
  const { slope, slopeDeviation, at0, meanX, spreadX, count, deviation, degreesOfFreedom } = line;
  const t = studentQuantile(confidence, degreesOfFreedom);
  const g = slope ** 2 - (t * slopeDeviation) ** 2;
  if (slope === 0 || g <= 0) return null;
  // about the middle of the points, where both estimates are apart
  const distance = limit - (at0 + slope * meanX);
  const variance = (t * deviation) ** 2;
  const root = Math.sqrt(Math.max(0, variance * (g / count + distance ** 2 / spreadX)));
  const ends = [(slope * distance - root) / g, (slope * distance + root) / g].map((u) => meanX + u);
  return { x: meanX + distance / slope, from: Math.min(...ends), to: Math.max(...ends) };
}
