import { en } from '../../en.ts';
import type { Word } from './word.ts';

/** Materials, ratios and what they are off. */
export const mix: readonly Word[] = [
  { word: 'AHEW', means: en`Grams of an amine hardener that hold one mole of the hydrogens that react.` },
  { word: en`as run`, means: en`At the temperatures at which the parts are metered, not those of the data sheet.` },
  {
    word: en`B-lean`,
    means: en`Less B comes than is wanted; the off-ratio is below zero.`,
  },
  { word: en`B-rich`, means: en`More B comes than is wanted; the off-ratio is above zero.` },
  {
    word: en`basis`,
    means: en`Whether a ratio counts weights or volumes. The two are not the same where the densities differ.`,
  },
  { word: en`batch`, means: en`What is to be made in one go.` },
  { word: en`density`, also: [en`densities`], means: en`Mass over volume, at a stated temperature.` },
  { word: en`drift`, means: en`How the ratio moves as temperature and pressure change, since thin parts slip more.` },
  { word: 'EEW', means: en`Grams of an epoxy resin that hold one mole of epoxide groups.` },
  { word: en`expansion`, means: en`By which share a volume grows for each degree.` },
  {
    word: en`index`,
    means: en`Isocyanate groups for a hundred groups that they react with; 105 is five per cent more isocyanate than needed.`,
  },
  {
    word: en`limits`,
    also: [en`limit`],
    means: en`What the data sheet allows. Exactly on the limit is inside.`,
  },
  {
    word: en`mix ratio`,
    also: [en`ratio`],
    means: en`How much of A comes for how much of B, by weight or by volume.`,
  },
  { word: 'NCO', also: ['% NCO'], means: en`Share of isocyanate groups in a part, by weight.` },
  {
    word: en`off-ratio`,
    means: en`How far B per A is from what is wanted: made over wanted, less one, in per cent. More B than asked is B-rich, less is B-lean.`,
  },
  {
    word: en`off-ratio budget`,
    also: [en`worst case`, en`likely`],
    means: en`How far off the ratio may be once pumps, densities and temperatures are not exactly as stated: all the worst way at once, and the likely sum of squares beside it.`,
  },
  {
    word: en`OH number`,
    means: en`Milligrams of potassium hydroxide that one gram of a polyol stands for; it tells how much of it reacts.`,
  },
  {
    word: en`premix`,
    also: [en`premixed`],
    means: en`To stir a third part into one tank before it is metered, since two pumps take two parts.`,
  },
  { word: en`shot`, means: en`So much material in so long.` },
  { word: en`stoichiometry`, means: en`The ratio at which nothing of either part is left over.` },
  { word: en`viscosity`, means: en`How thick a liquid is.` },
];
