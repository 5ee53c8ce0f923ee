import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fittedPumps, fittedTeeth, planOption, readShopFile, resolve } from '../../core/src/index.ts';
import { driveDrawing, wheelsOf } from '../../core/src/sheet/driveDrawing.ts';
import { nextRow } from '../../renderer/src/views/options/rowKeys.ts';
import { loopPath, screenDrive } from '../../renderer/src/views/options/screenDrive.ts';

const say = { decimal: '.', system: 'metric' } as const;

function drawingOf(machine: string, teeth: readonly (readonly [number, number])[]) {
  const file = readShopFile(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  if (!file.ok) throw new Error(JSON.stringify(file.findings));
  const plan = resolve(file.value, { machine, material: 'e12' }, say);
  if (!plan.ok) throw new Error(JSON.stringify(plan.findings));
  const lay = (pairs: ReturnType<typeof fittedTeeth>) => planOption(plan.value, fittedPumps(plan.value), pairs, say);
  return driveDrawing(plan.value, lay(teeth.map(([driver, driven]) => ({ driver, driven }))), lay(fittedTeeth(plan.value)));
}

const one = drawingOf('bench-1', [[23, 25]]);
const two = drawingOf('bench-2', [
  [27, 17],
  [20, 23],
]);

describe.each([
  ['one stage', one],
  ['two stages', two],
] as const)('%s', (_, drawing) => {
  test.each([200, 360, 560])('keeps within %i pixels, texts too', (width) => {
    const screen = screenDrive(drawing, width, say);
    for (const { centre, pitchDiameter_m } of drawing.stages.flatMap(wheelsOf)) {
      const { x, y } = screen.px(centre);
      const radius = (pitchDiameter_m / 2) * screen.px_per_m;
      expect(x - radius).toBeGreaterThanOrEqual(0);
      expect(x + radius).toBeLessThanOrEqual(width);
      expect(y - radius).toBeGreaterThanOrEqual(0);
      expect(y + radius).toBeLessThanOrEqual(screen.height);
    }
    for (const label of screen.labels) {
      expect(label.x).toBeGreaterThan(0);
      expect(label.x).toBeLessThan(width);
      expect(label.y).toBeLessThan(screen.height);
    }
  });
  test('the scale said is the scale drawn [CSS: 96 pixels to an inch of 25.4 mm]', () => {
    const screen = screenDrive(drawing, 360, say);
    for (const [index, stage] of drawing.stages.entries()) {
      const { from, to } = screen.dimensions[index] ?? { from: 0, to: 0 };
      expect((Math.abs(to - from) * 25.4) / 96 / 1000).toBeCloseTo((stage.centre_m ?? 0) / screen.scale, 9);
    }
  });
  test('a wider page never draws smaller', () => {
    const scales = [200, 360, 560, 900].map((width) => screenDrive(drawing, width, say).scale);
    expect(scales).toEqual(scales.toSorted((a, b) => b - a));
  });
});

test('what is new says what it replaces, what stays does not', () => {
  const words = screenDrive(two, 560, say).labels.map(({ words: text, isNew }) => [text, isNew]);
  expect(words).toContainEqual(['27 T, was 20', true]);
  expect(words).toContainEqual(['s2 20 T', false]);
  expect(words).toContainEqual(['23 T', false]);
});

test('a loop is a closed path of two lines and two arcs, each with the radius of its wheel', () => {
  const screen = screenDrive(one, 360, say);
  const [stage] = one.stages;
  if (stage === undefined || stage.loop === null) throw new Error('no loop');
  const path = loopPath(stage.loop, screen);
  expect(path).toMatch(/^M[^MLAZ]+L[^MLAZ]+A[^MLAZ]+L[^MLAZ]+A[^MLAZ]+Z$/);
  const radii = [...path.matchAll(/A([\d.]+) /g)].map(([, radius]) => Number(radius));
  const wheels = stage.ends.map(({ wheel }) => (wheel.pitchDiameter_m / 2) * screen.px_per_m).toReversed();
  radii.forEach((radius, index) => {
    expect(radius).toBeCloseTo(wheels[index] ?? 0, 1);
  });
});

test('arrows stay within the rows, other keys lead nowhere', () => {
  expect([nextRow('ArrowDown', 0, 3), nextRow('ArrowDown', 2, 3), nextRow('ArrowUp', 0, 3), nextRow('ArrowUp', 2, 3)]).toEqual([
    1, 2, 0, 1,
  ]);
  expect([nextRow('Home', 2, 3), nextRow('End', 0, 3), nextRow('Enter', 1, 3)]).toEqual([0, 2, null]);
});
