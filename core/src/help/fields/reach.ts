import { MOST_DAYS } from '../../calendar.ts';
import { CUSTOMER_LENGTH, NOTE_LENGTH } from '../../quote/quote.ts';
import { readTolerance, readWindowEnd } from '../../reachWindow.ts';
import { readTeethRange } from '../../teethRange.ts';
import { expectedOf } from '../expected.ts';
import type { FieldPage } from '../fieldLine.ts';

const WINDOW = () => expectedOf(readWindowEnd('0'));

/** The Reach page and its quote page. */
export const reach: FieldPage = {
  title: 'Reach and quote page',
  lines: [
    {
      place: 'reach.low',
      name: 'Window from',
      means: 'The lower end of the ratios that are looked at, by volume as run.',
      found: 'The ratios your customers ask for; drag the rule, or type.',
      limits: WINDOW,
    },
    {
      place: 'reach.high',
      name: 'Window to',
      means: 'The upper end of the ratios that are looked at, by volume as run.',
      found: 'The ratios your customers ask for; drag the rule, or type.',
      limits: WINDOW,
    },
    {
      place: 'reach.tolerance',
      name: 'Tolerance',
      means: 'How far off a target may be and still count as covered, either way.',
      found: 'The usual limits of the materials.',
      limits: () => expectedOf(readTolerance('0')),
    },
    {
      place: 'buy-for',
      name: 'Plan purchases for',
      means: 'Whether what is bought shall serve the ticked materials, or every ratio of the window.',
      found: 'What the customer wants.',
    },
    {
      place: 'reach.buy.material',
      name: 'Material to serve',
      means: 'Whether the purchases shall bring this material inside its limits.',
      found: 'What the customer runs.',
    },
    {
      place: 'reach.buy.pumps',
      name: 'Pumps have to be bought too',
      means: 'Whether a pump that is not fitted counts as one part to buy.',
      found: 'No if the pumps of the list are in your store.',
    },
    {
      place: 'reach.most',
      name: 'Parts to buy, at most',
      means: 'How many parts a plan may buy.',
      found: 'What you are ready to buy.',
      limitsOf: 'machines.*.search.purchases',
    },
    {
      place: 'reach.teeth',
      name: 'Teeth to buy, from – to',
      means: 'Which wheels may be bought; empty: as the machine says.',
      found: 'Catalogue of the sprockets you can get.',
      limits: () => expectedOf(readTeethRange('1 to 400')),
    },
    {
      place: 'quote.customer',
      name: 'Customer',
      means: 'For whom the quote page is; it is printed.',
      found: 'The inquiry.',
      limits: () => `at most ${CUSTOMER_LENGTH} characters`,
    },
    {
      place: 'quote.note',
      name: 'Note',
      means: 'A line that is printed on the quote page.',
      found: 'Your own words.',
      limits: () => `at most ${NOTE_LENGTH} characters`,
    },
    {
      place: 'quote.days',
      name: 'Holds for, days',
      means: 'How long the quote holds; empty: until anything it rests on changes.',
      found: 'The rule of your shop.',
      limits: () => `whole number, 1 to ${MOST_DAYS}`,
    },
  ],
};
