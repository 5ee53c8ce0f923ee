/** A point of a drawing: x to the right, y downwards. */
export interface Point {
  readonly x_m: number;
  readonly y_m: number;
}

export interface Circle {
  readonly centre: Point;
  readonly diameter_m: number;
}

/** The way round one wheel, from where the loop meets it to where it leaves. */
export interface Arc {
  readonly from: Point;
  readonly to: Point;
  readonly radius_m: number;
  /** More than half a turn. */
  readonly large: boolean;
}

/** A taut open loop: along one tangent, round the second wheel, back along the other tangent, round the first; clockwise as drawn. */
export interface Loop {
  readonly arcs: readonly [Arc, Arc];
}

/**
 * The exact course of a taut loop round two pitch circles: the two outer tangents, and the arcs between them.
 *
 * @param first, second  neither inside the other
 * @returns the arc round the second circle, then the arc round the first; null where one circle lies inside the other, so that there is no tangent
 * @source plane geometry: the common normal n of an outer tangent has n · u = (r1 - r2)/C along the line of centres u
 * @example circles of 20 and 10 mm diameter, 30 mm apart  // touched at 1/6 of each radius beyond its centre
 */
export function loopRound(first: Circle, second: Circle): Loop | null {
  const dx = second.centre.x_m - first.centre.x_m;
  const dy = second.centre.y_m - first.centre.y_m;
  const centres_m = Math.hypot(dx, dy);
  const r1_m = first.diameter_m / 2;
  const r2_m = second.diameter_m / 2;
  const along = (r1_m - r2_m) / centres_m;
  if (!(Math.abs(along) < 1)) return null;
  const across = Math.sqrt(1 - along * along);
  const touch = ({ centre }: Circle, radius_m: number, side: 1 | -1): Point => ({
    x_m: centre.x_m + (radius_m * (along * dx + side * across * dy)) / centres_m,
    y_m: centre.y_m + (radius_m * (along * dy - side * across * dx)) / centres_m,
  });
  return {
    arcs: [
      { from: touch(second, r2_m, 1), to: touch(second, r2_m, -1), radius_m: r2_m, large: r2_m > r1_m },
      { from: touch(first, r1_m, -1), to: touch(first, r1_m, 1), radius_m: r1_m, large: r1_m > r2_m },
    ],
  };
}
