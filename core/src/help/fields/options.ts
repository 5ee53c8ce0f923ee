import type { FieldPage } from '../fieldLine.ts';

const search = (key: string): string => `machines.*.search.${key}`;

/** The Options page: what a search may use, how its list stands, and what can be tried. */
export const options: FieldPage = {
  title: 'Options',
  lines: [
    {
      place: search('wheels'),
      name: 'Wheels',
      means: 'Whether the search takes what is on the rack, may buy some, or takes any number of teeth.',
      found: 'What you are ready to do for this change.',
    },
    {
      place: search('purchases'),
      name: 'Most to buy',
      means: 'How many wheels one option may need bought.',
      found: 'What you are ready to buy.',
    },
    {
      place: search('teeth'),
      name: 'Teeth, from – to',
      means: 'Which wheels may be bought, or taken at all; empty: the limits of each slot.',
      found: 'Catalogue of the sprockets you can get.',
    },
    {
      place: search('anyPump'),
      name: 'Any pump the machine may carry',
      means: 'Whether an option may change a pump for another of the list.',
      found: 'Yes if you have those pumps at hand.',
    },
    {
      place: search('openShared'),
      name: 'Change stages that both pumps share',
      means: 'Whether wheels that turn both pumps may change: the speed then changes, the ratio does not.',
      found: 'Yes where the flow, not the ratio, is out of range.',
    },
    {
      place: search('asMeasured'),
      name: 'Count the measured delivery',
      means: 'Whether the ratio counts what the pumps were measured to deliver, not their displacement alone.',
      found: 'Yes after a stable ratio check.',
    },
    {
      place: 'option-order',
      name: 'Order',
      means: 'Closest first, least work first, or only options that no other beats in both.',
      found: 'What matters more today: the ratio or the time.',
    },
    {
      place: 'hide-blocked',
      name: 'Hide the blocked ones',
      means: 'Leaves out what cannot be built as it stands.',
      found: 'Show them to see what stands in the way.',
    },
    {
      place: 'try-teeth',
      name: 'What would these teeth give?',
      means: 'Any teeth, driver then driven, stage by stage; nothing is changed by it.',
      found: 'Teeth you have in mind, as 23 25.',
    },
    {
      place: 'try-ratio',
      name: 'Try a ratio',
      means: 'Another ratio, written as the material’s own: what could be built near it. The material stays as it is.',
      found: 'What you have in mind.',
    },
    {
      place: 'try-ratio-slide',
      name: 'Slide of the tried ratio',
      means: 'Moves the tried ratio a little at each step, more B to the left.',
      found: 'Arrow keys move it too.',
    },
  ],
};
