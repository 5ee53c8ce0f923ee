import type { FieldPage } from '../fieldLine.ts';

/** All that lies under the place comes with the answer. */
const UNDER_IT = () => '';
const SHEET = 'Data sheet of the material.';

/** The mix ratio and its limits on the Material page. */
export const material: FieldPage = {
  title: 'Material, ratio and limits',
  lines: [
    {
      place: 'pick.material',
      name: 'Material',
      means: 'The material that all pages work on.',
      found: 'The list holds the materials of this shop file; a new one is added beside it.',
    },
    { place: 'materials.*.name', name: 'Name of the material', means: 'What it is called; it is printed.', found: SHEET },
    { place: 'materials.*.note', name: 'Note', means: 'Anything worth knowing of the material.', found: 'Your own words.' },
    {
      place: 'materials.*.A|B|third|premix.name',
      name: 'Name of the part',
      means: 'Your name beside the letter, such as resin or hardener.',
      found: 'Label of the drum. Which part runs on side A differs between shops: look at the hoses.',
    },
    {
      place: 'materials.*.chemistry',
      name: 'The mix ratio is given',
      means: 'Whether the sheet prints a ratio, or the ratio comes from what reacts.',
      found: 'Take the printed ratio where there is one.',
      limits: UNDER_IT,
    },
    {
      place: 'materials.*.ratio.basis',
      name: 'The sheet counts',
      means: 'Whether the ratio counts weights or volumes; it is never guessed.',
      found: 'Data sheet: “by weight”, “pbw” or “by volume”. Ask the maker where it does not say.',
    },
    {
      place: 'materials.*.ratio.writing',
      name: 'and writes',
      means: 'Whether the sheet writes A to B, or the parts of B for 100 parts of A.',
      found: SHEET,
    },
    {
      place: 'materials.*.ratio.parts',
      name: 'A : B',
      means: 'The ratio as the sheet prints it, A first; three parts such as 4 : 1 : 1 where one is premixed.',
      found: 'Data sheet, as 100 : 38.9. Mind which part the sheet names first.',
    },
    {
      place: 'materials.*.ratio.perHundredA',
      name: 'B per 100 A',
      means: 'Parts of B for 100 parts of A.',
      found: 'Data sheet: “phr”, or parts per hundred.',
    },
    {
      place: 'materials.*.ratio.thirdInto',
      name: 'The third part is premixed into',
      means: 'The tank that the third part is stirred into before it is metered.',
      found: 'Data sheet, or how your shop does it.',
    },
    {
      place: 'materials.*.ratio.at',
      name: 'Volumes counted at',
      means: 'The temperature at which the volumes of the sheet hold.',
      found: 'Data sheet; often that of its densities.',
    },
    {
      place: 'materials.*.otherRatio.parts',
      also: ['materials.*.otherRatio.basis'],
      name: 'The ratio on the other basis',
      means: 'The second ratio, where the sheet prints both; it can stand in for the densities.',
      found: SHEET,
    },
    {
      place: 'materials.*.limits.low',
      name: 'Low limit',
      means: 'The lower end of what the sheet allows, counted as the definition beside it says.',
      found: 'Data sheet; −2 for ± 2 %. It need not be as far away as the upper end.',
    },
    {
      place: 'materials.*.limits.high',
      name: 'High limit',
      means: 'The upper end of what the sheet allows, counted as the definition beside it says.',
      found: 'Data sheet; 2 for ± 2 %.',
    },
    {
      place: 'materials.*.limits.definition',
      name: 'These limits are',
      means: 'What the ± of the sheet counts; the same figure allows very different ratios by each reading.',
      found: 'Data sheet. If it does not say, ask the maker; do not guess.',
    },
    {
      place: 'materials.*.cautions.*',
      name: 'Caution',
      means: 'A line of your own among the cautions of the change sheet.',
      found: 'Safety data sheet, and the rules of your shop.',
    },
    {
      place: 'list.text',
      name: 'List of materials',
      means: 'Many materials at once, one a row: name, ratio and basis must be there.',
      found: 'Copied out of a spreadsheet, or a CSV file.',
    },
    {
      place: 'list.limits',
      name: 'Limits without a definition',
      means: 'What limits of the list count, where the row does not say.',
      found: 'Whoever wrote the list; ask rather than guess.',
    },
  ],
};
