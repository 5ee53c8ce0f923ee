import { type FigureKey, MEASURE_NAMES, measureOf } from '../../chemistry/measures.ts';
import type { FieldPage } from '../fieldLine.ts';

const row = (key: string): string => `materials.*.chemistry.A|B.ingredients.*.${key}`;

/** Each measure that has the figure, with its own limits. */
const limitsOf = (key: FigureKey) => (): string =>
  MEASURE_NAMES.flatMap((name) =>
    measureOf(name)
      .figures.filter((figure) => figure.key === key)
      .map(({ label, least, most, unit }) => `${label === name ? label : `${name}: ${label}`} ${least} to ${most} ${unit}`.trim()),
  ).join('; ');

/** The mix ratio from what reacts, on the Material page. */
export const chemistry: FieldPage = {
  title: 'Ratio from chemistry',
  lines: [
    {
      place: 'materials.*.chemistry.system',
      name: 'The material is',
      means: 'Which two kinds of parts react: epoxy with hardener, or isocyanate with polyol.',
      found: 'Data sheet or safety data sheet.',
    },
    {
      place: 'materials.*.chemistry.resinIn',
      name: 'The resin is in',
      means: 'The tank with the epoxy resin; it differs between shops, so it is asked.',
      found: 'Label of the drum, and where its hose leads.',
    },
    {
      place: 'materials.*.chemistry.isocyanateIn',
      name: 'The isocyanate is in',
      means: 'The tank with the isocyanate; it differs between countries, so it is asked.',
      found: 'Label of the drum, and where its hose leads.',
    },
    {
      place: 'materials.*.chemistry.index',
      name: 'Index, or % of stoichiometry',
      means: 'How many groups of the one part come to a hundred of the other; 100 is one to one.',
      found: 'Data sheet, or the formulator.',
    },
    { place: row('name'), name: 'Ingredient', means: 'What is weighed into the tank.', found: 'The recipe of the tank.' },
    {
      place: row('parts'),
      name: 'Parts by weight',
      means: 'How much of it is weighed in, against the others of this tank.',
      found: 'The recipe. It may stay empty where one ingredient is alone.',
    },
    {
      place: row('by'),
      name: 'Described by its',
      means: 'The figure by which its sheet says how much of it reacts; a filler has none.',
      found: 'Data sheet or certificate of the batch.',
    },
    {
      place: row('value'),
      name: 'Figure of what reacts',
      means: 'The figure itself, in the unit that stands at the box.',
      found: 'Certificate of the batch, else the middle of the range in the data sheet.',
      limits: limitsOf('value'),
    },
    {
      place: row('hydrogens'),
      name: 'Active hydrogens',
      means: 'Hydrogens of one molecule that react.',
      found: 'Structure in the data sheet: two for each −NH₂, one for each −NH−.',
      limits: limitsOf('hydrogens'),
    },
    {
      place: row('factor'),
      name: 'Groups counted, as a factor',
      means: 'What share of the anhydride groups is counted against one epoxide.',
      found: 'Data sheet, or the formulator.',
      limits: limitsOf('factor'),
    },
  ],
};
