import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  centreForPitches_m,
  chainOnDiameter_m,
  freeSpan_m,
  lengthInPitches,
  midSpanMovement_m,
  outsideDiameter_m,
  pitchDiameter_m,
  spareLength_m,
  speedRipple,
  wornLength_m,
  wrapAngle_rad,
} from '../../../core/src/drives/chainGeometry.ts';
import {
  loopSpeed,
  loopWorkings,
  pitchDiameterOf,
  pitchOf,
  pullLimit,
  rippleOf,
  slackOf,
  tableRow,
  wearOf,
  wheelWorkings,
} from '../../../core/src/drives/chainWorkings.ts';
import { inUnit } from '../../../core/src/format.ts';
import { CHAIN_SIZES } from '../../../core/src/tables/chainSizes.ts';
import { input, type Worked } from '../../../core/src/working.ts';
import examples from '../../sources/chain.json';
import { expectPrinted } from '../printedFormula.ts';

const inches = ({ value }: Worked<number>): number => Number(inUnit(value, 'length', 'in'));
const poundsForce = ({ value }: Worked<number>): number => Number(inUnit(value, 'force', 'lbf'));
const rpm = (speed_rpm: number) => input('speed', speed_rpm / 60, 'speed');

/** Half of the last digit as printed, and the last bit of a float beyond it. */
const halfDigit = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0) * (1 + 1e-9);
function expectDigits(value: number, printed: string): void {
  expect(Math.abs(value - Number(printed)), `${value} for ${printed}`).toBeLessThanOrEqual(halfDigit(printed));
}

describe('a sprocket', () => {
  const { speedRipple: ripples, inchDiameters, outsideDiameter, guardDiameters } = examples;

  test.each(Object.entries(ripples.printed))(
    `speed ripple of %s teeth, in per cent: %s [${ripples.source}, ${ripples.provenance}]`,
    (teeth, printed) => {
      expectDigits(100 * rippleOf(Number(teeth)).value, printed);
    },
  );

  const halfInch = inchDiameters.filter(({ pitch_in }) => pitch_in === '0.5');
  test.each(halfInch)('pitch diameter of $teeth teeth of chain 40: $printed in [$source, $provenance]', ({ teeth, printed }) => {
    expectDigits(inches(pitchDiameterOf('40', teeth)), printed);
  });

  test(`outside diameter of 25 teeth: 8.516 pitches, whatever the pitch [${outsideDiameter.source}, ${outsideDiameter.provenance}]`, () => {
    for (const size of ['25', '08B', '80'])
      expectDigits(wheelWorkings(size, outsideDiameter.teeth).outsideDiameter.value / pitchOf(size).value, outsideDiameter.printed);
  });

  test.each(Object.entries(guardDiameters.printed))(
    `%s teeth of chain 40, bare and with the chain on [${guardDiameters.source}, ${guardDiameters.provenance}; plates up to 0.95 p high: asme-b29.1]`,
    (teeth, printed) => {
      const wheel = wheelWorkings('40', Number(teeth));
      expectDigits(inches(wheel.outsideDiameter), printed.outsideDiameter);
      expectDigits(inches(wheel.runningDiameter), printed.chainOnDiameter);
    },
  );
});

describe('a chain round two sprockets', () => {
  test.each(examples.lengths)('$name, in chain 40 [$source, $provenance]', (example) => {
    const [driver = 0, driven = 0] = example.teeth;
    const pitch_m = pitchOf('40').value;
    const { length } = loopWorkings('40', driver, driven, Number(example.centre_pitches) * pitch_m);
    expectDigits(length.value, example.recomputedLength);
  });

  test('21 to 30 teeth of 08B at 256.53 mm: 66 pitches and 171.9 degrees of wrap [invented example, worked out apart from this program]', () => {
    const { length, wrap } = loopWorkings('08B', 21, 30, 0.25653);
    // The centre is rounded to 0.01 mm, so half of that at both free spans.
    expect(Math.abs(length.value - 66)).toBeLessThan(0.01 / 12.7);
    expectDigits((wrap.value * 180) / Math.PI, '171.9');
  });

  test('two like sprockets: half of each is wrapped, the spans are as long as the centre distance [geometry]', () => {
    const { length, wrap, span } = loopWorkings('40', 20, 20, 0.254);
    expect([length.value, wrap.value, span.value]).toEqual([
      expect.closeTo(20 + 40, 12),
      expect.closeTo(Math.PI, 12),
      expect.closeTo(0.254, 12),
    ]);
  });
});

describe('speed, pull, slack, wear', () => {
  test('17 teeth of chain 40 at 1000 rpm: 708.3 ft/min [asme-b29.1, N p n / 12, from memory]', () => {
    expectDigits(Number(inUnit(loopSpeed('40', 17, rpm(1000)).value, 'velocity', 'ft/min')), '708.3');
  });

  test('a seventh of the least tensile strength (common practice, no source): 3125 lbf of chain 40 [asme-b29.1]; 0.65 of it with an offset link', () => {
    expect(poundsForce(pullLimit('40', false))).toBeCloseTo(3125 / 7, 9);
    expect(poundsForce(pullLimit('40', true))).toBeCloseTo((0.65 * 3125) / 7, 9);
    expect(pullLimit('40', true).what).toContain('offset link');
  });
  test('08B: 17.8 kN [iso-606, table 1, from memory] allow 2543 N (a seventh: common practice, no source)', () => {
    expectDigits(pullLimit('08B', false).value, '2543');
  });

  test('4 % of a 452 mm span: 18.08 mm by hand are 0.482 mm of chain [4 to 6 %: chain-maker-answers, seen; spare length recomputed]', () => {
    const { movement, spare } = slackOf(input('free span', 0.452, 'length'), 0.04);
    expectDigits(1000 * movement.value, '18.08');
    expectDigits(1000 * spare.value, '0.482');
  });

  test('20 pitches of 1/2 in: 254.0 mm new, 257.81 mm worn by 1.5 % [chain-maker-answers, seen; definition]', () => {
    const { asNew, limit } = wearOf('40', 20, 0.015);
    expectDigits(1000 * asNew.value, '254.0');
    expectDigits(1000 * limit.value, '257.81');
    expect([asNew.what, limit.what]).toEqual(['20 pitches of a new chain', '20 pitches of a worn-out chain']);
  });
});

const size = fc.constantFrom(...CHAIN_SIZES.map(({ number }) => number));
const teeth = fc.integer({ min: 3, max: 150 });

describe('a working shows the number that the drive is laid out with', () => {
  test('diameters and ripple', () => {
    fc.assert(
      fc.property(size, teeth, (size, teeth) => {
        const wheel = wheelWorkings(size, teeth);
        const pitch_m = pitchOf(size).value;
        expect([wheel.pitchDiameter, wheel.outsideDiameter, wheel.runningDiameter, wheel.ripple].map(({ value }) => value)).toEqual([
          pitchDiameter_m(pitch_m, teeth),
          outsideDiameter_m(pitch_m, teeth),
          chainOnDiameter_m(pitch_m, teeth),
          speedRipple(teeth),
        ]);
        expect(pitchDiameterOf(size, teeth).value).toBe(wheel.pitchDiameter.value);
      }),
    );
  });

  test('length, wrap and span, whichever sprocket drives', () => {
    fc.assert(
      fc.property(size, teeth, teeth, fc.integer({ min: 1, max: 200 }), (size, driver, driven, more) => {
        const pitch_m = pitchOf(size).value;
        const centre_m = centreForPitches_m(pitch_m, driver, driven, Math.max(driver, driven) + more);
        if (centre_m === null) throw new Error('a whole count beyond the larger sprocket has a centre');
        const { length, wrap, span } = loopWorkings(size, driver, driven, centre_m);
        // The layout counts in pitches, the working in metres: the last bits may differ.
        for (const [shown, laidOut] of [
          [length.value, lengthInPitches(pitch_m, driver, driven, centre_m)],
          [wrap.value, wrapAngle_rad(pitch_m, driver, driven, centre_m)],
          [span.value, freeSpan_m(pitch_m, driver, driven, centre_m)],
        ] as const)
          expect(Math.abs(shown / laidOut - 1)).toBeLessThan(1e-9);
        expect(loopWorkings(size, driven, driver, centre_m).length.value).toBe(length.value);
      }),
    );
  });

  test('slack and wear', () => {
    fc.assert(
      fc.property(size, fc.integer({ min: 50, max: 3000 }), fc.integer({ min: 1, max: 8 }), (size, span_mm, percent) => {
        const { movement, spare } = slackOf(input('span', span_mm / 1000, 'length'), percent / 100);
        const movement_m = midSpanMovement_m(span_mm / 1000, percent / 100);
        expect([movement.value, spare.value]).toEqual([movement_m, spareLength_m(span_mm / 1000, movement_m)]);
        const worn = wearOf(size, span_mm, percent / 100);
        expect(worn.limit.value).toBe(wornLength_m(pitchOf(size).value, span_mm, percent / 100));
      }),
    );
  });
});

test('printed as computed [mathjs, npm]', () => {
  for (const [size, driver, driven] of [
    ['40', 17, 65],
    ['08B', 25, 23],
    ['05B', 13, 13],
  ] as const) {
    const wheel = wheelWorkings(size, driver);
    const loop = loopWorkings(size, driver, driven, 0.5);
    const slack = slackOf(loop.span, 0.06);
    const wear = wearOf(size, 20, 0.015);
    const limits = [pullLimit(size, false), pullLimit(size, true), loopSpeed(size, driver, rpm(57.15))];
    const all = [...Object.values(wheel), ...Object.values(loop), slack.movement, slack.spare, wear.asNew, wear.limit, ...limits];
    for (const worked of all) expectPrinted(worked);
  }
});

test('a number that is not in the table is a fault of the program, named as it was given', () => {
  expect(tableRow('no. 40').number).toBe('40');
  for (const work of [() => tableRow('42'), () => pitchOf('42'), () => pullLimit('42', false), () => loopWorkings('42', 20, 20, 0.3)])
    expect(work).toThrow(new RangeError('chain: 42 is not in the table'));
});
