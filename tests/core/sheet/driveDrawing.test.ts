import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DrawnStage, type DriveDrawing, wheelsOf } from '../../../core/src/sheet/driveDrawing.ts';
import { driveSvg } from '../../../core/src/sheet/driveSvg.ts';
import { type Loop, loopRound } from '../../../core/src/sheet/loop.ts';
import { bench, E12_ON_BENCH_1, inch, made, metric, pair, thirdStage, U40_ON_BENCH_2 } from './demoSheet.ts';

const circle = (x_m: number, diameter_m: number, y_m = 0) => ({ centre: { x_m, y_m }, diameter_m });

function required<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('missing');
  return value;
}

/** Both straight runs and the angle of each arc, from the points alone. */
function measured(loop: Loop) {
  const [second, first] = loop.arcs;
  const distance = (a: { x_m: number; y_m: number }, b: { x_m: number; y_m: number }) => Math.hypot(a.x_m - b.x_m, a.y_m - b.y_m);
  const angle_rad = ({ from, to, radius_m, large }: Loop['arcs'][number]) => {
    const less = 2 * Math.asin(Math.min(1, distance(from, to) / 2 / radius_m));
    return large ? 2 * Math.PI - less : less;
  };
  return { runs: [distance(first.to, second.from), distance(second.to, first.from)], angles_rad: [angle_rad(first), angle_rad(second)] };
}

describe('the loop round two circles', () => {
  test('radii 4 and 1, centres 5 apart: both tangents are 4 long [3-4-5 triangle]', () => {
    const { runs } = measured(required(loopRound(circle(0, 8), circle(5, 2))));
    expect(runs).toEqual([expect.closeTo(4, 12), expect.closeTo(4, 12)]);
  });

  test('diameters 20 and 10 mm, 30 mm apart: touched a sixth of each radius beyond its centre [plane geometry]', () => {
    const { arcs } = required(loopRound(circle(0, 0.02), circle(0.03, 0.01)));
    expect(arcs[1].to.x_m).toBeCloseTo(0.01 / 6, 12);
    expect(arcs[0].from.x_m).toBeCloseTo(0.03 + 0.005 / 6, 12);
  });

  test('every tangent stands square on both radii, every touching point lies on its circle, and the arcs make one turn [plane geometry]', () => {
    const size = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    const place = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(size, size, place, place, (d1, d2, x, y) => {
        fc.pre(Math.hypot(x, y) > Math.abs(d1 - d2) / 2 + 1e-3);
        const [a, b] = [circle(0, d1), circle(x, d2, y)];
        const loop = required(loopRound(a, b));
        const [second, first] = loop.arcs;
        for (const [at1, at2] of [
          [first.to, second.from],
          [first.from, second.to],
        ] as const) {
          const run = { x: at2.x_m - at1.x_m, y: at2.y_m - at1.y_m };
          expect(run.x * (at1.x_m - a.centre.x_m) + run.y * (at1.y_m - a.centre.y_m)).toBeCloseTo(0, 9);
          expect(run.x * (at2.x_m - b.centre.x_m) + run.y * (at2.y_m - b.centre.y_m)).toBeCloseTo(0, 9);
          expect(Math.hypot(at1.x_m - a.centre.x_m, at1.y_m - a.centre.y_m)).toBeCloseTo(d1 / 2, 12);
          expect(Math.hypot(at2.x_m - b.centre.x_m, at2.y_m - b.centre.y_m)).toBeCloseTo(d2 / 2, 12);
        }
        const { angles_rad } = measured(loop);
        expect(angles_rad.reduce((sum, angle) => sum + angle, 0)).toBeCloseTo(2 * Math.PI, 6);
      }),
    );
  });

  test('a circle inside the other has no tangent', () => expect(loopRound(circle(0, 8), circle(1, 2))).toBeNull());
});

describe('the drive in metres', () => {
  const { drawing, option } = made(E12_ON_BENCH_1);
  const [stage] = drawing.stages;

  test('Bench 1, 23 to 25: centres 253.97 mm, was 256.53 mm [invented example, worked out apart]', () => {
    expect(required(stage?.centre_m)).toBeCloseTo(0.25397, 5);
    expect(stage?.oldCentre_m).toBeCloseTo(0.25653, 5);
    const [driver, driven] = required(stage).ends;
    expect(driven.wheel.centre.x_m - driver.wheel.centre.x_m).toBeCloseTo(0.25397, 5);
  });

  test('the drawn tangents are the free span and the smaller arc is the wrap that the stage reckons with', () => {
    const { runs, angles_rad } = measured(required(stage?.loop));
    const loop = required(option.stages[0]?.fit.loop);
    expect(runs).toEqual([expect.closeTo(loop.span_m, 9), expect.closeTo(loop.span_m, 9)]);
    expect(Math.min(...angles_rad)).toBeCloseTo(loop.wrap_rad, 6);
  });

  test('what comes off is drawn where it sits now, with its own chain', () => {
    const [driver, driven] = required(stage).ends;
    expect([driver.off?.teeth, driven.off?.teeth]).toEqual([21, 30]);
    expect([driver.wheel.state, driver.off?.state]).toEqual(['new', 'off']);
    expect(required(driven.off).centre.x_m).toBeCloseTo(0.25653, 5);
    expect(stage?.oldLoop).not.toBeNull();
  });

  test('a stage that stays has nothing coming off', () => {
    const [first] = made({ selection: E12_ON_BENCH_1.selection }).drawing.stages;
    expect([first?.ends[0].off, first?.oldLoop, first?.oldCentre_m]).toEqual([null, null, null]);
  });
});

/** Names of stages from left to right, each with the side its driven shaft lies on. */
const order = ({ stages }: DriveDrawing): readonly string[] => {
  const at = ({ ends }: DrawnStage) => (ends[0].wheel.centre.x_m + ends[1].wheel.centre.x_m) / 2;
  return [...stages]
    .sort((a, b) => at(a) - at(b))
    .map(({ name, train, ends }) => `${name} ${train} ${ends[1].wheel.centre.x_m > ends[0].wheel.centre.x_m ? 'right' : 'left'}`);
};

describe('how stages are laid', () => {
  const selection = U40_ON_BENCH_2.selection;

  test('in line: each driven shaft to the right, on the shaft that drives the next', () => {
    const { drawing } = made(U40_ON_BENCH_2);
    expect(order(drawing)).toEqual(['s1 B right', 's2 B right']);
    expect(drawing.stages[1]?.ends[0].wheel.centre).toEqual(drawing.stages[0]?.ends[1].wheel.centre);
  });

  test('both from the motor shaft: A to the left, B to the right', () => {
    const { drawing } = made({
      selection,
      change: (file) => {
        const machine = bench(file, 'bench-2');
        machine.shafts = [
          { id: 'motor' },
          { id: 'a', turnedBy: { shaft: 'motor', stage: 's1' } },
          { id: 'b', turnedBy: { shaft: 'motor', stage: 's2' } },
        ];
        machine.A.shaft = 'a';
        machine.B.shaft = 'b';
      },
    });
    expect(order(drawing)).toEqual(['s1 A left', 's2 B right']);
  });

  test('A through two stages to the left, B to the right: stages are listed from left to right, as they are drawn', () => {
    const { drawing } = made({
      selection,
      change: (file) => {
        thirdStage(file);
        const machine = bench(file, 'bench-2');
        machine.shafts = [
          { id: 'motor' },
          { id: 'jack', turnedBy: { shaft: 'motor', stage: 's1' } },
          { id: 'a', turnedBy: { shaft: 'jack', stage: 's2' } },
          { id: 'b', turnedBy: { shaft: 'motor', stage: 's3' } },
        ];
        machine.A.shaft = 'a';
        machine.B.shaft = 'b';
      },
    });
    expect(order(drawing)).toEqual(['s2 A left', 's1 A left', 's3 B right']);
    expect(drawing.stages.map(({ name }) => name)).toEqual(['s2', 's1', 's3']);
  });

  test('parting at a jackshaft: what both share first, then B, then A from the jackshaft drawn again, clear of B', () => {
    const { drawing } = made({
      selection,
      change: (file) => {
        thirdStage(file);
        const machine = bench(file, 'bench-2');
        machine.shafts = [
          { id: 'motor' },
          { id: 'jack', turnedBy: { shaft: 'motor', stage: 's1' } },
          { id: 'b', turnedBy: { shaft: 'jack', stage: 's2' } },
          { id: 'a', turnedBy: { shaft: 'jack', stage: 's3' } },
        ];
        machine.A.shaft = 'a';
        machine.B.shaft = 'b';
      },
    });
    expect(order(drawing)).toEqual(['s1 shared right', 's2 B right', 's3 A right']);
    const edges = (wanted: boolean) => drawing.stages.filter(({ train }) => (train === 'A') === wanted).flatMap(wheelsOf);
    const right = Math.max(...edges(false).map(({ centre, runningDiameter_m }) => centre.x_m + runningDiameter_m / 2));
    const left = Math.min(...edges(true).map(({ centre, runningDiameter_m }) => centre.x_m - runningDiameter_m / 2));
    expect(left).toBeGreaterThan(right);
    expect(required(drawing.sameShaft)[0]).toEqual(drawing.stages[0]?.ends[1].wheel.centre);
    expect(required(drawing.sameShaft)[1]).toEqual(drawing.stages[2]?.ends[0].wheel.centre);
  });

  test('without a centre the wheels stand apart, with no loop, and the drawing says so', () => {
    const { drawing } = made({
      ...E12_ON_BENCH_1,
      change: (file) => {
        for (const stage of bench(file, 'bench-1').stages) {
          delete stage.centre;
          delete stage.centreNow;
          delete stage.pitches;
        }
      },
    });
    const [stage] = drawing.stages;
    const [driver, driven] = required(stage).ends;
    const gap_m = driven.wheel.centre.x_m - driver.wheel.centre.x_m - (driver.wheel.runningDiameter_m + driven.wheel.runningDiameter_m) / 2;
    expect(gap_m).toBeGreaterThan(0.01);
    expect(stage?.loop).toBeNull();
    expect(texts(driveSvg(drawing, metric))).toEqual(expect.arrayContaining(['centre', 'not given']));
  });

  test('no stage at all is said in words', () => {
    const { drawing } = made({
      selection: { machine: 'bench-1', material: 'l5' },
      change: (file) => {
        const machine = bench(file, 'bench-1');
        machine.stages = [];
        machine.shafts = [{ id: 'motor' }];
        machine.B.shaft = 'motor';
      },
    });
    expect(texts(driveSvg(drawing, metric))).toEqual(['Both pumps turn with the motor: no stage to draw.']);
  });
});

const texts = (svg: string): readonly string[] =>
  [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map(([, inside = '']) => inside.replace(/<[^>]*>/g, ''));
const stroke = (svg: string, tag: string): readonly string[] => [...svg.matchAll(new RegExp(`<${tag}[^>]*>`, 'g'))].map(([whole]) => whole);

describe('the picture', () => {
  const { drawing } = made(E12_ON_BENCH_1);
  const svg = driveSvg(drawing, metric);

  test('the scale is stated, and the centres on paper are the true ones over it', () => {
    expect(texts(svg)[0]).toMatch(/^Scale 1 : 5;/);
    const [first, second] = stroke(svg, 'circle')
      .filter((dot) => dot.includes('fill="#000"'))
      .map((dot) => Number(/cx="([\d.]+)"/.exec(dot)?.[1]));
    expect((required(second) - required(first)) / 4).toBeCloseTo(253.97 / 5, 1);
  });

  test('teeth in one row, new ones bold with what was there; the centre with what it was', () => {
    expect(texts(svg)).toEqual(expect.arrayContaining(['23 T was 21', '25 T was 30', '254.0\u00A0mm', 'was 256.5']));
    expect(svg).toContain('<tspan font-weight="600">23 T</tspan>');
  });

  test('inches where the shop reads inches', () =>
    expect(texts(driveSvg(drawing, inch))).toEqual(expect.arrayContaining(['9,999\u00A0in', 'was 10,100'])));

  test('one mark a tooth: four lengths of path to each, one of them drawn', () => {
    const marked = stroke(svg, 'circle').filter((wheel) => wheel.includes('pathLength'));
    expect(marked.map((wheel) => Number(/pathLength="(\d+)"/.exec(wheel)?.[1]) / 4)).toEqual([23, 25]);
  });

  test('B is dashed 7 4, what comes off dotted 1 3, and nothing is coloured', () => {
    expect(stroke(svg, 'path').filter((path) => path.includes('stroke-dasharray="7 4"'))).toHaveLength(1);
    expect(stroke(svg, 'path').filter((path) => path.includes('stroke-dasharray="1 3"'))).toHaveLength(1);
    expect(stroke(svg, 'circle').filter((path) => path.includes('stroke-dasharray="1 3"'))).toHaveLength(2);
    expect(new Set(svg.match(/#[0-9a-f]+(?=")/g))).toEqual(new Set(['#000']));
  });

  test('its name is a sentence with every stage, its teeth and its centres', () => {
    expect(svg).toContain('role="img" aria-label="Drive to scale 1 : 5: s1 to pump B, 23 to 25 teeth, centres 254.0\u00A0mm."');
  });

  test('it keeps within its box of 98 by 46 mm, whatever the wheels and the names [our choice of box]', () => {
    const teeth = fc
      .tuple(fc.integer({ min: 5, max: 120 }), fc.integer({ min: 5, max: 120 }))
      .map(([driver, driven]) => pair(driver, driven));
    fc.assert(
      fc.property(fc.array(teeth, { minLength: 3, maxLength: 3 }), fc.string({ maxLength: 200 }), (three, name) => {
        const long = made({
          selection: U40_ON_BENCH_2.selection,
          teeth: three,
          change: (file) => {
            thirdStage(file);
            for (const stage of bench(file, 'bench-2').stages) stage.name = name;
          },
        });
        const drawn = driveSvg(long.drawing, metric);
        const height_mm = Number(/height="([\d.]+)mm"/.exec(drawn)?.[1]);
        expect(drawn).toContain('width="98mm"');
        expect(height_mm).toBeLessThanOrEqual(46);
        for (const circleTag of stroke(drawn, 'circle')) {
          const [cx, r] = ['cx', 'r'].map((name_) => Number(new RegExp(`${name_}="([\\d.-]+)"`).exec(circleTag)?.[1]));
          expect(required(cx) - required(r)).toBeGreaterThanOrEqual(0);
          expect(required(cx) + required(r)).toBeLessThanOrEqual(392);
        }
      }),
      { numRuns: 25 },
    );
  });
});
