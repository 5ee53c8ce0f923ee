import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  centreForPitches_m,
  chainOnDiameter_m,
  freeSpan_m,
  lengthInPitches,
  meetingCycle,
  midSpanMovement_m,
  outsideDiameter_m,
  pitchDiameter_m,
  spareLength_m,
  speedRipple,
  wornLength_m,
  wrapAngle_rad,
} from '../../../core/src/drives/chainGeometry.ts';
import examples from '../../sources/chain.json';

const DEGREES = 180 / Math.PI;

/** A taut centre that must exist; fails the test otherwise. */
function tautCentre_m(pitch_m: number, driver: number, driven: number, pitches: number): number {
  const centre_m = centreForPitches_m(pitch_m, driver, driven, pitches);
  if (centre_m === null) throw new Error(`${pitches} pitches should go round ${driver} and ${driven} teeth`);
  return centre_m;
}

/** Half of the last digit as printed. */
function halfDigit(printed: string): number {
  return 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0);
}

function expectPrinted(actual: number, printed: string, within?: string): void {
  const tolerance = within === undefined ? halfDigit(printed) : Number(within);
  // The last bit of a float must not decide a figure that lies on the edge.
  expect(Math.abs(actual - Number(printed)), `${actual} for ${printed}`).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
}

describe('sprocket diameters', () => {
  const { pitchDiameters, unitDiameters, outsideDiameter, inchDiameters, guardDiameters } = examples;

  test(`pitch diameter, 1 inch pitch, 8 to 152 teeth [${pitchDiameters.source}, ${pitchDiameters.provenance}]`, () => {
    const rows = Object.entries(pitchDiameters.printed);
    expect(rows).toHaveLength(145);
    for (const [teeth, printed] of rows) expectPrinted(pitchDiameter_m(0.0254, Number(teeth)) * 1000, printed);
  });

  test.each(Object.entries(unitDiameters.printed))(
    `pitch and outside diameter in pitches, %s teeth [${unitDiameters.source}, ${unitDiameters.provenance}]`,
    (teeth, printed) => {
      expectPrinted(pitchDiameter_m(1, Number(teeth)), printed.pitchDiameter);
      expectPrinted(outsideDiameter_m(1, Number(teeth)), printed.outsideDiameter);
    },
  );

  test(`outside diameter in pitches, 25 teeth [${outsideDiameter.source}, ${outsideDiameter.provenance}]`, () => {
    expectPrinted(outsideDiameter_m(1, outsideDiameter.teeth), outsideDiameter.printed);
  });

  for (const { teeth, pitch_in, printed, source, provenance } of inchDiameters) {
    test(`pitch diameter, ${teeth} teeth of ${pitch_in} in → ${printed} in [${source}, ${provenance}]`, () => {
      expectPrinted(pitchDiameter_m(Number(pitch_in), teeth), printed);
    });
  }

  test.each(Object.entries(guardDiameters.printed))(
    `%s teeth of 1/2 in: outside diameter as listed, and with the plates on [${guardDiameters.source}, ${guardDiameters.provenance}]`,
    (teeth, printed) => {
      expectPrinted(outsideDiameter_m(0.5, Number(teeth)), printed.outsideDiameter);
      expectPrinted(chainOnDiameter_m(0.5, Number(teeth)), printed.chainOnDiameter);
    },
  );

  test('60 bare teeth pass a 10 inch guard, with the chain on they rub; 36 pass [asme-b29.1: plates at most 0.95 p high, seen]', () => {
    expect(outsideDiameter_m(0.5, 60)).toBeLessThan(10);
    expect(chainOnDiameter_m(0.5, 60)).toBeGreaterThan(10);
    expect(chainOnDiameter_m(0.5, 36)).toBeLessThan(10);
  });
});

describe('length and centre distance', () => {
  const { centreFactors } = examples;

  for (const example of examples.lengths) {
    test(`${example.name} [${example.source}, ${example.provenance}]`, () => {
      const [driver = 0, driven = 0] = example.teeth;
      const length = lengthInPitches(1, driver, driven, Number(example.centre_pitches));
      expectPrinted(length, example.printedLength.pitches, example.printedLength.within);
      expectPrinted(length, example.recomputedLength);
      const centre = tautCentre_m(1, driver, driven, example.count);
      if (example.printedCentre_pitches) expectPrinted(centre, example.printedCentre_pitches.pitches, example.printedCentre_pitches.within);
      if (example.recomputedCentre_pitches) expectPrinted(centre, example.recomputedCentre_pitches);
      if (example.printedWrap_deg) {
        expectPrinted(wrapAngle_rad(1, driver, driven, centre) * DEGREES, example.printedWrap_deg.deg, example.printedWrap_deg.within);
      }
    });
  }

  test('25 and 72 teeth of 19.05 mm: pitch diameters 152 and 436.7 mm [machine-design-text, example 21.2, from memory]', () => {
    expectPrinted(pitchDiameter_m(19.05, 25), '152');
    expectPrinted(pitchDiameter_m(19.05, 72), '436.7');
  });

  test('centre distance in inches: 17/65 teeth, 122 of 3/4 in → 29.825, 104 of 1/2 in → 15.272 [machine-elements, from memory and seen]', () => {
    // The book uses the short series: up to 0.003 in above the exact distance.
    expectPrinted(tautCentre_m(0.75, 17, 65, 122), '29.825', '0.003');
    expectPrinted(tautCentre_m(0.5, 17, 65, 104), '15.272', '0.003');
  });

  test.each(Object.entries(centreFactors.printed))(
    `factor f4 at (X - z1)/(z2 - z1) = %s is %s [${centreFactors.source}, ${centreFactors.provenance}]`,
    (argument, printed) => {
      // The factor is that of two circles of circumference N p; at 100 and 200 teeth the polygon differs by 4e-7.
      const [small, large] = [100, 200];
      const pitches = Math.round(small + Number(argument) * (large - small));
      const factor = tautCentre_m(1, small, large, pitches) / (2 * pitches - small - large);
      expectPrinted(factor, printed, centreFactors.within);
    },
  );

  test('20/63 teeth of 1/2 in, 114 or 116 pitches instead of 114.80: the shaft moves 5.21 mm in or 7.73 mm out [recomputed apart from this code]', () => {
    expectPrinted(tautCentre_m(12.7, 20, 63, 114), '451.99249');
    expectPrinted(tautCentre_m(12.7, 20, 63, 116), '464.92711');
    expectPrinted(tautCentre_m(12.7, 20, 63, 114) - 36 * 12.7, '-5.20751');
    expectPrinted(tautCentre_m(12.7, 20, 63, 116) - 36 * 12.7, '7.72711');
  });

  test('52/18 becomes 52/16 on 100 pitches: almost one pitch shorter; the same, two fewer or one fewer [recomputed apart from this code]', () => {
    const centre_mm = 406.93;
    expectPrinted(lengthInPitches(12.7, 52, 16, centre_mm) - lengthInPitches(12.7, 52, 18, centre_mm), '-0.88876');
    // The typed centre is rounded to 0.01 mm, so a shift is known to half of that.
    expectPrinted(tautCentre_m(12.7, 52, 16, 100) - centre_mm, '5.73476', '0.005');
    expectPrinted(tautCentre_m(12.7, 52, 16, 98) - centre_mm, '-7.17409', '0.005');
    expectPrinted(tautCentre_m(12.7, 52, 16, 99) - centre_mm, '-0.71796', '0.005');
  });

  test.each([
    [49, 17, 2, '1.39216'],
    [48, 18, 2, '2.02308'],
    [43, 15, 6, '2.61122'],
    [40, 16, 8, '-2.73485'],
  ])(
    '53/17 on 100 pitches becomes %i/%i: %i pitches fewer move the shaft least, by %s mm [recomputed apart from this code]',
    (driver, driven, fewer, shift) => {
      const shift_mm = (removed: number): number => tautCentre_m(12.7, driver, driven, 100 - removed) - 406.22;
      expectPrinted(shift_mm(fewer), shift, '0.005');
      const least = [0, 2, 4, 6, 8, 10, 12].sort((a, b) => Math.abs(shift_mm(a)) - Math.abs(shift_mm(b)))[0];
      expect(least).toBe(fewer);
    },
  );
});

describe('wrap, ripple, slack, wear', () => {
  const { speedRipple: ripples } = examples;

  test('3:1 with the pitch circles touching still wraps 120 degrees [rule: machine-elements, p. 295, seen; figures recomputed apart from this code]', () => {
    const touching = (pitchDiameter_m(12.7, 17) + pitchDiameter_m(12.7, 51)) / 2;
    expectPrinted(wrapAngle_rad(12.7, 17, 51, touching) * DEGREES, '120.25152');
    expectPrinted(wrapAngle_rad(12.7, 17, 51, 30 * 12.7) * DEGREES, '159.25682');
  });

  test.each(Object.entries(ripples.printed))(
    `speed ripple, %s teeth → %s %% [${ripples.source}, ${ripples.provenance}]`,
    (teeth, printed) => {
      expectPrinted(speedRipple(Number(teeth)) * 100, printed);
    },
  );

  test('4 % of a 452 mm span: 18.08 mm by hand is under half a millimetre of chain [4 to 6 %: chain-maker-answers, seen; spare length recomputed]', () => {
    expectPrinted(midSpanMovement_m(452, 0.04), '18.08');
    expectPrinted(spareLength_m(452, 18.08), '0.48213');
  });

  test('the spare length is the arc of the parabola, within 0.2 % for a movement of 6 % [arc summed in 100,000 chords]', () => {
    const [span, movement, chords] = [452, 27.12, 100_000];
    const height = (x: number): number => 4 * (movement / 2) * (x / span) * (1 - x / span);
    let arc = 0;
    for (let i = 0; i < chords; i += 1) {
      arc += Math.hypot(span / chords, height(((i + 1) * span) / chords) - height((i * span) / chords));
    }
    const relative = spareLength_m(span, movement) / (arc - span) - 1;
    expect(relative).toBeGreaterThan(0);
    expect(relative).toBeLessThan(0.0023);
  });

  test('20 pitches of 1/2 in, worn 1.5 %, measure 257.81 mm; 258.3 mm is past it [1.5 %: chain-maker-answers, seen; definition]', () => {
    expectPrinted(wornLength_m(12.7, 20, 0), '254.0');
    expectPrinted(wornLength_m(12.7, 20, 0.015), '257.81');
    expectPrinted(wornLength_m(12.7, 20, 0.0169291), '258.300');
    expect(wornLength_m(12.7, 20, 0.015)).toBeLessThan(258.3);
  });

  test('96 pitches on 15 or 14 teeth: the same tooth meets the same link after 32 or 48 turns [britannica-1911, hunting tooth, seen]', () => {
    expect(meetingCycle(96, 15)).toEqual({ sprocketTurns: 32, chainLoops: 5 });
    expect(meetingCycle(96, 14)).toEqual({ sprocketTurns: 48, chainLoops: 7 });
  });

  test('the meeting cycle is what marking the teeth one by one finds [count]', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 200 }), fc.integer({ min: 3, max: 80 }), (pitches, teeth) => {
        let met = 1;
        while (met % pitches !== 0 || met % teeth !== 0) met += 1;
        expect(meetingCycle(pitches, teeth)).toEqual({ sprocketTurns: met / teeth, chainLoops: met / pitches });
      }),
    );
  });
});

const pitch_m = fc.constantFrom(0.00635, 0.008, 0.009525, 0.0127, 0.015875, 0.01905, 0.0254);
const teeth = fc.integer({ min: 3, max: 150 });
/** Even in size, where `fc.double` would mostly draw next to nothing. */
const upTo = (max: number) => fc.integer({ min: 0, max: 1_000_000 }).map((drawn) => (drawn / 1_000_000) * max);
/** Two sprockets whose pitch circles are clear of each other by some pitches. */
const drive = fc.record({ pitch_m, driver: teeth, driven: teeth, clear: upTo(120) }).map((drawn) => ({
  ...drawn,
  centre_m: (pitchDiameter_m(drawn.pitch_m, drawn.driver) + pitchDiameter_m(drawn.pitch_m, drawn.driven)) / 2 + drawn.clear * drawn.pitch_m,
}));

/**
 * A belt round two circles has the length of the integral of its support function, here summed over directions; which circle
 * supports it tells the wraps, and what the arcs leave is straight. No tangent, no arc sine.
 */
function summedBelt(small: number, large: number, centre: number): { smallWrap: number; straight: number } {
  const steps = 400_000;
  let belt = 0;
  let onSmall = 0;
  for (let i = 0; i < steps; i += 1) {
    const support = small + centre * Math.cos(((i + 0.5) * 2 * Math.PI) / steps);
    if (support > large) onSmall += 1;
    belt += Math.max(support, large);
  }
  const step = (2 * Math.PI) / steps;
  const smallWrap = onSmall * step;
  return { smallWrap, straight: belt * step - small * smallWrap - large * (2 * Math.PI - smallWrap) };
}

describe('laws', () => {
  test('length, wrap and span agree with a belt summed over all directions [numeric integration]', () => {
    fc.assert(
      fc.property(drive, ({ pitch_m, driver, driven, centre_m }) => {
        const [few, many] = [Math.min(driver, driven), Math.max(driver, driven)];
        const radius_m = (teeth: number): number => pitch_m / Math.sin(Math.PI / teeth) / 2;
        const { smallWrap, straight } = summedBelt(radius_m(few), radius_m(many), centre_m);
        const length = straight / pitch_m + (few * smallWrap) / (2 * Math.PI) + many * (1 - smallWrap / (2 * Math.PI));
        // A direction counted to the wrong circle shifts the wrap by one step of 2π/400,000 on either side.
        expect(Math.abs(wrapAngle_rad(pitch_m, driver, driven, centre_m) - smallWrap)).toBeLessThan(4e-5);
        expect(Math.abs(2 * freeSpan_m(pitch_m, driver, driven, centre_m) - straight) / pitch_m).toBeLessThan(1e-3);
        expect(Math.abs(lengthInPitches(pitch_m, driver, driven, centre_m) - length)).toBeLessThan(1e-4);
      }),
      { numRuns: 40 },
    );
  });

  test('a longer centre distance takes a longer chain, once the pitch circles are clear', () => {
    fc.assert(
      fc.property(drive, upTo(1), ({ pitch_m, driver, driven, centre_m }, more) => {
        expect(lengthInPitches(pitch_m, driver, driven, centre_m + 1e-6 + more)).toBeGreaterThan(
          lengthInPitches(pitch_m, driver, driven, centre_m),
        );
      }),
    );
  });

  test('the centre for a length is the centre it was measured at', () => {
    fc.assert(
      fc.property(drive, ({ pitch_m, driver, driven, centre_m }) => {
        const length = lengthInPitches(pitch_m, driver, driven, centre_m);
        expect(tautCentre_m(pitch_m, driver, driven, length) / centre_m - 1).toBeCloseTo(0, 11);
      }),
    );
  });

  test('every whole count beyond the larger sprocket has a taut centre of that very length; no smaller count has one', () => {
    fc.assert(
      fc.property(pitch_m, teeth, teeth, fc.integer({ min: 1, max: 300 }), (pitch_m, driver, driven, more) => {
        const larger = Math.max(driver, driven);
        const centre_m = tautCentre_m(pitch_m, driver, driven, larger + more);
        expect(Math.abs(lengthInPitches(pitch_m, driver, driven, centre_m) - larger - more)).toBeLessThan(1e-11);
        expect(centreForPitches_m(pitch_m, driver, driven, larger)).toBeNull();
        expect(centreForPitches_m(pitch_m, driver, driven, Math.max(1, larger - more))).toBeNull();
      }),
    );
  });

  test('the taut centre is what halving an interval finds, to 1e-14 [bisection]', () => {
    fc.assert(
      fc.property(teeth, teeth, fc.integer({ min: 1, max: 300 }), (driver, driven, more) => {
        const pitches = Math.max(driver, driven) + more;
        let low = Math.abs(1 / Math.sin(Math.PI / driver) - 1 / Math.sin(Math.PI / driven)) / 2 + 1e-12;
        let high = pitches;
        for (let i = 0; i < 80; i += 1) {
          const middle = (low + high) / 2;
          if (lengthInPitches(1, driver, driven, middle) < pitches) low = middle;
          else high = middle;
        }
        // The length itself is a float of a few hundred: its last bit is what the bisection can see.
        expect(Math.abs(tautCentre_m(1, driver, driven, pitches) - high)).toBeLessThan(1e-14 * Math.max(high, pitches) * 4);
      }),
      { numRuns: 500 },
    );
  });

  test('equal sprockets: half of what is beyond their teeth, exactly', () => {
    fc.assert(
      fc.property(teeth, fc.integer({ min: 1, max: 300 }), (teeth, more) => {
        expect(centreForPitches_m(1, teeth, teeth, teeth + more)).toBe(more / 2);
      }),
    );
  });

  test('driver and driven may change places without changing a bit', () => {
    fc.assert(
      fc.property(drive, fc.integer({ min: 1, max: 300 }), ({ pitch_m, driver, driven, centre_m }, more) => {
        const pitches = Math.max(driver, driven) + more;
        expect(lengthInPitches(pitch_m, driven, driver, centre_m)).toBe(lengthInPitches(pitch_m, driver, driven, centre_m));
        expect(centreForPitches_m(pitch_m, driven, driver, pitches)).toBe(centreForPitches_m(pitch_m, driver, driven, pitches));
        expect(wrapAngle_rad(pitch_m, driven, driver, centre_m)).toBe(wrapAngle_rad(pitch_m, driver, driven, centre_m));
        expect(freeSpan_m(pitch_m, driven, driver, centre_m)).toBe(freeSpan_m(pitch_m, driver, driven, centre_m));
      }),
    );
  });
});

describe('the door', () => {
  test('examples of the docstrings', () => {
    expect(pitchDiameter_m(0.0127, 17)).toBeCloseTo(0.069116, 6);
    expect(outsideDiameter_m(0.0127, 60)).toBeCloseTo(0.24995, 6);
    expect(chainOnDiameter_m(0.0127, 60)).toBeCloseTo(0.254728, 6);
    expect(lengthInPitches(0.0127, 17, 34, 0.3175)).toBeCloseTo(75.7931, 4);
    expect(centreForPitches_m(0.0127, 17, 34, 76)).toBeCloseTo(0.318822, 6);
    expect(wrapAngle_rad(0.0127, 17, 51, 0.381)).toBeCloseTo(2.77956, 5);
    expect(freeSpan_m(0.0127, 17, 34, 0.3175)).toBeCloseTo(0.315646, 6);
    expect(speedRipple(17)).toBeCloseTo(0.017027, 6);
    expect(midSpanMovement_m(0.452, 0.04)).toBeCloseTo(0.01808, 10);
    expect(spareLength_m(0.452, 0.01808)).toBeCloseTo(0.00048213, 8);
    expect(wornLength_m(0.0127, 20, 0.015)).toBeCloseTo(0.25781, 10);
    expect(meetingCycle(96, 15)).toEqual({ sprocketTurns: 32, chainLoops: 5 });
  });

  test.each([
    ['teeth', () => pitchDiameter_m(0.0127, 2)],
    ['teeth', () => outsideDiameter_m(0.0127, 17.5)],
    ['teeth', () => speedRipple(Number.NaN)],
    ['pitch_m', () => pitchDiameter_m(0, 17)],
    ['pitch_m', () => centreForPitches_m(Number.POSITIVE_INFINITY, 17, 34, 76)],
    ['pitches', () => centreForPitches_m(0.0127, 17, 34, -2)],
    ['centre_m', () => lengthInPitches(0.0127, 17, 17, 0)],
    ['centre_m', () => wrapAngle_rad(0.0127, 17, 60, 0.05)],
    ['elongation', () => wornLength_m(0.0127, 20, -0.01)],
    ['span_m', () => spareLength_m(-1, 0.01)],
  ])('an argument outside its limits is named: %s', (name, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(name);
  });
});
