import { en } from '../../en.ts';
import type { FieldPage } from '../fieldLine.ts';

/** All that lies under the place comes with the answer. */
const UNDER_IT = () => '';
const SHEET = en`Data sheet of the material.`;

/** The mix ratio and its limits on the Material page. */
export const material: FieldPage = {
  title: en`Material, ratio and limits`,
  lines: [
    {
      place: 'pick.material',
      name: en`Material`,
      means: en`The material that all pages work on.`,
      found: en`The list holds the materials of this shop file; a new one is added beside it.`,
    },
    { place: 'materials.*.name', name: en`Name of the material`, means: en`What it is called; it is printed.`, found: SHEET },
    { place: 'materials.*.note', name: en`Note`, means: en`Anything worth knowing of the material.`, found: en`Your own words.` },
    {
      place: 'materials.*.A|B|third|premix.name',
      name: en`Name of the part`,
      means: en`Your name beside the letter, such as resin or hardener.`,
      found: en`Label of the drum. Which part runs on side A differs between shops: look at the hoses.`,
    },
    {
      place: 'materials.*.chemistry',
      name: en`The mix ratio is given`,
      means: en`Whether the sheet prints a ratio, or the ratio comes from what reacts.`,
      found: en`Take the printed ratio where there is one.`,
      limits: UNDER_IT,
    },
    {
      place: 'materials.*.ratio.basis',
      name: en`The sheet counts`,
      means: en`Whether the ratio counts weights or volumes; it is never guessed.`,
      found: en`Data sheet: “by weight”, “pbw” or “by volume”. Ask the maker where it does not say.`,
    },
    {
      place: 'materials.*.ratio.writing',
      name: en`and writes`,
      means: en`Whether the sheet writes A to B, or the parts of B for 100 parts of A.`,
      found: SHEET,
    },
    {
      place: 'materials.*.ratio.parts',
      name: 'A : B',
      means: en`The ratio as the sheet prints it, A first; three parts such as 4 : 1 : 1 where one is premixed.`,
      found: en`Data sheet, as 100 : 38.9. Mind which part the sheet names first.`,
    },
    {
      place: 'materials.*.ratio.perHundredA',
      name: en`B per 100 A`,
      means: en`Parts of B for 100 parts of A.`,
      found: en`Data sheet: “phr”, or parts per hundred.`,
    },
    {
      place: 'materials.*.ratio.thirdInto',
      name: en`The third part is premixed into`,
      means: en`The tank that the third part is stirred into before it is metered.`,
      found: en`Data sheet, or how your shop does it.`,
    },
    {
      place: 'materials.*.ratio.at',
      name: en`Volumes counted at`,
      means: en`The temperature at which the volumes of the sheet hold.`,
      found: en`Data sheet; often that of its densities.`,
    },
    {
      place: 'materials.*.otherRatio.parts',
      also: ['materials.*.otherRatio.basis'],
      name: en`The ratio on the other basis`,
      means: en`The second ratio, where the sheet prints both; it can stand in for the densities.`,
      found: SHEET,
    },
    {
      place: 'materials.*.limits.low',
      name: en`Low limit`,
      means: en`The lower end of what the sheet allows, counted as the definition beside it says.`,
      found: en`Data sheet; −2 for ± 2 %. It need not be as far away as the upper end.`,
    },
    {
      place: 'materials.*.limits.high',
      name: en`High limit`,
      means: en`The upper end of what the sheet allows, counted as the definition beside it says.`,
      found: en`Data sheet; 2 for ± 2 %.`,
    },
    {
      place: 'materials.*.limits.definition',
      name: en`These limits are`,
      means: en`What the ± of the sheet counts; the same figure allows very different ratios by each reading.`,
      found: en`Data sheet. If it does not say, ask the maker; do not guess.`,
    },
    {
      place: 'materials.*.cautions.*',
      name: en`Caution`,
      means: en`A line of your own among the cautions of the change sheet.`,
      found: en`Safety data sheet, and the rules of your shop.`,
    },
    {
      place: 'list.text',
      name: en`List of materials`,
      means: en`Many materials at once, one a row: name, ratio and basis must be there.`,
      found: en`Copied out of a spreadsheet, or a CSV file.`,
    },
    {
      place: 'list.limits',
      name: en`Limits without a definition`,
      means: en`What limits of the list count, where the row does not say.`,
      found: en`Whoever wrote the list; ask rather than guess.`,
    },
  ],
};
