import { en } from './en.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import type { Gear, Pump, SideName } from './plan.ts';
import { type Fraction, float, whole } from './ratio.ts';
import { formula, inFloat, input, type Worked, work } from './working.ts';

/** Pressure angle of the gears, 20 degrees [common practice, no source]. */
export const PRESSURE_ANGLE = input(en`pressure angle, 20 degrees as usual`, Math.PI / 9, 'angle');

export const annulusDisplacement = formula({
  letter: 'V',
  written: 'π / 4 · (D^2 - d^2) · L',
  dimension: 'displacement',
  source: en`fluid-power-with-applications, ring between outside and inside diameter`,
  of: ({ D, d, L }: Record<'D' | 'd' | 'L', number>) => (Math.PI / 4) * (D ** 2 - d ** 2) * L,
});

export const centreDisplacement = formula({
  letter: 'V',
  written: 'π / 2 · b · (D^2 - a^2)',
  dimension: 'displacement',
  source: 'pump-workshop-sheet',
  of: ({ b, D, a }: Record<'b' | 'D' | 'a', number>) => (Math.PI / 2) * b * (D ** 2 - a ** 2),
});

/** One contact path at a time; grooves relieve what is trapped between two pairs of teeth. */
export const involuteDisplacement = formula({
  letter: 'V',
  written: '2 · π · b · m^2 · (z + 1 - (π · cos(α))^2 / 12)',
  dimension: 'displacement',
  source: 'gear-pump-kinematics',
  of: ({ b, m, z, α }: Record<'b' | 'm' | 'z' | 'α', number>) => 2 * Math.PI * b * m ** 2 * (z + 1 - (Math.PI * Math.cos(α)) ** 2 / 12),
});

/** The sizes out of which a displacement follows, form by form, the most exact first. */
const FORMS = [
  ['module_m', 'faceWidth_m'],
  ['outsideDiameter_m', 'centreDistance_m', 'faceWidth_m'],
  ['outsideDiameter_m', 'insideDiameter_m', 'faceWidth_m'],
] as const;

type Size = (typeof FORMS)[number][number];

/**
 * Displacement of a pump out of the sizes of its gears, by the most exact form that they allow: module and face width; else outside
 * diameter, centre distance and face width; else both diameters and face width.
 *
 * @returns cubic metres per revolution; not given where the sizes do not suffice
 * @source the three formulas; they differ by some 6 % among themselves
 * @example module 3 mm, 12 teeth, 20 mm wide  // 13.881 cc/rev
 */
export function displacementOf({ gear }: Pump, side: SideName): Given<Worked<number>> {
  if (!gear.known) return NOT_GIVEN;
  const { teeth, module_m, faceWidth_m, outsideDiameter_m, insideDiameter_m, centreDistance_m } = gear.value;
  if (!faceWidth_m.known) return NOT_GIVEN;
  const what = en`displacement of pump ${side} by its gears`;
  const size = (words: string, size_m: Fraction) => inFloat(input(words, size_m, 'length'));
  const face = size(en`face width`, faceWidth_m.value);
  if (module_m.known) {
    const z = inFloat(input(en`teeth of one gear`, whole(teeth), 'number'));
    return known(work(involuteDisplacement, what, { b: face, m: size('module', module_m.value), z, α: PRESSURE_ANGLE }));
  }
  if (!outsideDiameter_m.known) return NOT_GIVEN;
  const D = size(en`outside diameter`, outsideDiameter_m.value);
  if (centreDistance_m.known)
    return known(work(centreDisplacement, what, { b: face, D, a: size(en`centre distance`, centreDistance_m.value) }));
  if (!insideDiameter_m.known) return NOT_GIVEN;
  return known(work(annulusDisplacement, what, { D, d: size(en`inside diameter`, insideDiameter_m.value), L: face }));
}

/** How far the displacement by the gears lies above the one typed, as a share of the latter. */
export const aboveTypedShare = (byGears: Worked<number>, { displacement_m3_per_rev }: Pump): number =>
  byGears.value / float(displacement_m3_per_rev) - 1;

/**
 * The first size that is missing of the form that is nearest to complete; null where one is complete, and where none of the sizes is
 * given: most nameplates tell the displacement alone.
 */
export function sizeMissing(gear: Gear): Size | null {
  const missing = FORMS.map((form) => form.filter((size) => !gear[size].known));
  if (missing.every((sizes, form) => sizes.length === FORMS[form]?.length)) return null;
  const nearest = missing.reduce((fewest, sizes) => (sizes.length < fewest.length ? sizes : fewest));
  return nearest[0] ?? null;
}
