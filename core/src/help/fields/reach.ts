import { MOST_DAYS } from '../../calendar.ts';
import { en } from '../../en.ts';
import { CUSTOMER_LENGTH, NOTE_LENGTH } from '../../quote/quote.ts';
import { TOLERANCE, WINDOW_END } from '../../reachWindow.ts';
import { TEETH_RANGE } from '../../teethRange.ts';
import type { FieldPage } from '../fieldLine.ts';

/** The Reach page and its quote page. */
export const reach: FieldPage = {
  title: en`Reach and quote page`,
  lines: [
    {
      place: 'reach.low',
      name: en`Window from`,
      means: en`The lower end of the ratios that are looked at, by volume as run.`,
      found: en`The ratios your customers ask for; drag the rule, or type.`,
      limits: () => WINDOW_END,
    },
    {
      place: 'reach.high',
      name: en`Window to`,
      means: en`The upper end of the ratios that are looked at, by volume as run.`,
      found: en`The ratios your customers ask for; drag the rule, or type.`,
      limits: () => WINDOW_END,
    },
    {
      place: 'reach.tolerance',
      name: en`Tolerance`,
      means: en`How far off a target may be and still count as covered, either way.`,
      found: en`The usual limits of the materials.`,
      limits: () => TOLERANCE,
    },
    {
      place: 'buy-for',
      name: en`Plan purchases for`,
      means: en`Whether what is bought shall serve the ticked materials, or every ratio of the window.`,
      found: en`What the customer wants.`,
    },
    {
      place: 'reach.buy.material',
      name: en`Material to serve`,
      means: en`Whether the purchases shall bring this material inside its limits.`,
      found: en`What the customer runs.`,
    },
    {
      place: 'reach.buy.pumps',
      name: en`Pumps have to be bought too`,
      means: en`Whether a pump that is not fitted counts as one part to buy.`,
      found: en`No if the pumps of the list are in your store.`,
    },
    {
      place: 'reach.most',
      name: en`Parts to buy, at most`,
      means: en`How many parts a plan may buy.`,
      found: en`What you are ready to buy.`,
      limitsOf: 'machines.*.search.purchases',
    },
    {
      place: 'reach.teeth',
      name: en`Teeth to buy, from – to`,
      means: en`Which wheels may be bought; empty: as the machine says.`,
      found: en`Catalogue of the sprockets you can get.`,
      limits: () => TEETH_RANGE,
    },
    {
      place: 'quote.customer',
      name: en`Customer`,
      means: en`For whom the quote page is; it is printed.`,
      found: en`The inquiry.`,
      limits: () => en`at most ${CUSTOMER_LENGTH} characters`,
    },
    {
      place: 'quote.note',
      name: en`Note`,
      means: en`A line that is printed on the quote page.`,
      found: en`Your own words.`,
      limits: () => en`at most ${NOTE_LENGTH} characters`,
    },
    {
      place: 'quote.days',
      name: en`Holds for, days`,
      means: en`How long the quote holds; empty: until anything it rests on changes.`,
      found: en`The rule of your shop.`,
      limits: () => en`whole number, 1 to ${MOST_DAYS}`,
    },
  ],
};
