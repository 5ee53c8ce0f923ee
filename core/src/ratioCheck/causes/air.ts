import { en } from '../../en.ts';
import { quantity, type Say, signedPercentText } from '../../format.ts';
import { offRatio } from '../../mixRatio.ts';
import { SIDES, type SideName } from '../../plan.ts';
import { type Fraction, ONE, ratioOf, ZERO } from '../../ratio.ts';
import type { BySide, Catch } from '../model.ts';
import { type Cause, likely, notLookedFor, ruledOut } from './cause.ts';
import { shareText } from './words.ts';

/** Less than this neither a cylinder nor a density sheet can tell. */
const TELLS = ratioOf(1, 100);

interface Weighed {
  readonly side: SideName;
  readonly found: Fraction;
  readonly typed: Fraction;
  /** Of the typed one; above zero where what was caught is lighter. */
  readonly lighter: Fraction;
}

/** Right by volume and wrong by weight: the pumps meter volume, and what they met was not what the sheet says. */
export const air: Cause = {
  id: 'cause.air',
  title: en`Air, or a wrong density`,
  within: en`air, or a wrong density`,
  source: en`definition of density; our choice of 1 % as what can be told`,
  why: en`Pumps meter volume. Where the volumes are right and the weights are not, air or a wrong density stands between them, and no sprocket cures either.`,
  judge({ evaluation: { input } }) {
    const both = input.catches.filter(({ leftOut, sides }) => leftOut === null && SIDES.every((side) => isBoth(sides[side])));
    if (both.length === 0)
      return notLookedFor(en`Read a catch in measuring cylinders as well as on the scale: weight beside volume tells air from wear.`);
    const { density_kg_per_m3, wantedBPerA } = input.terms;
    const mass = sumOf(both, 'mass_kg');
    const volume = sumOf(both, 'volume_m3');
    const sides = SIDES.flatMap((side): readonly Weighed[] => {
      const typed = density_kg_per_m3[side];
      if (!typed.known) return [];
      const found = mass[side].div(volume[side]);
      return [{ side, found, typed: typed.value, lighter: ONE.sub(found.div(typed.value)) }];
    });
    if (sides.length === 0) return notLookedFor(en`No density is given, so weight cannot be held against volume.`);
    const byVolume = offRatio(volume.B.div(volume.A), wantedBPerA);
    const off = sides.filter(({ lighter }) => lighter.abs().compare(TELLS) > 0);
    if (off.length === 0) return ruledOut((say) => en`Weight and volume agree: ${sides.map((one) => densityText(one, say)).join('; ')}.`);
    return likely(
      (say) =>
        en`By volume the mix is ${signedPercentText(byVolume, say)} off (+ is B-rich), by weight it is not the same: ${off.map((one) => `${densityText(one, say)}, ${meaning(one, say)}`).join('; ')}. Let the material settle or degas it, and check the density; sprockets would be the wrong cure.`,
    );
  },
};

const isBoth = ({ mass_kg, volume_m3 }: Catch['sides']['A']): boolean => mass_kg.known && volume_m3.known;

function sumOf(catches: readonly Catch[], what: 'mass_kg' | 'volume_m3'): BySide<Fraction> {
  const sum = (side: SideName) =>
    catches.reduce((total, { sides }) => {
      const of = sides[side][what];
      return of.known ? total.add(of.value) : total;
    }, ZERO);
  return { A: sum('A'), B: sum('B') };
}

const densityText = ({ side, found, typed }: Weighed, say: Say): string =>
  en`${side} weighs ${quantity(found, 'density', 'g/cm3', 4, say)} in the cup, ${quantity(typed, 'density', 'g/cm3', 4, say)} as typed`;

const meaning = ({ lighter }: Weighed, say: Say): string =>
  lighter.s > 0n
    ? en`which ${shareText(lighter, say)} of air by volume would do, or a wrong density`
    : en`${shareText(lighter.abs(), say)} heavier: the density typed, or the temperature, is wrong`;
