import { en } from '../../en.ts';
import type { FieldPage } from '../fieldLine.ts';

const search = (key: string): string => `machines.*.search.${key}`;

/** The Options page: what a search may use, how its list stands, and what can be tried. */
export const options: FieldPage = {
  title: en`Options`,
  lines: [
    {
      place: search('wheels'),
      name: en`Wheels`,
      means: en`Whether the search takes what is on the rack, may buy some, or takes any number of teeth.`,
      found: en`What you are ready to do for this change.`,
    },
    {
      place: search('purchases'),
      name: en`Most to buy`,
      means: en`How many wheels one option may need bought.`,
      found: en`What you are ready to buy.`,
    },
    {
      place: search('teeth'),
      name: en`Teeth, from – to`,
      means: en`Which wheels may be bought, or taken at all; empty: the limits of each slot.`,
      found: en`Catalogue of the sprockets you can get.`,
    },
    {
      place: search('anyPump'),
      name: en`Any pump the machine may carry`,
      means: en`Whether an option may change a pump for another of the list.`,
      found: en`Yes if you have those pumps at hand.`,
    },
    {
      place: search('openShared'),
      name: en`Change stages that both pumps share`,
      means: en`Whether wheels that turn both pumps may change: the speed then changes, the ratio does not.`,
      found: en`Yes where the flow, not the ratio, is out of range.`,
    },
    {
      place: search('asMeasured'),
      name: en`Count the measured delivery`,
      means: en`Whether the ratio counts what the pumps were measured to deliver, not their displacement alone.`,
      found: en`Yes after a stable ratio check.`,
    },
    {
      place: 'option-order',
      name: en`Order`,
      means: en`Closest first, least work first, or only options that no other beats in both.`,
      found: en`What matters more today: the ratio or the time.`,
    },
    {
      place: 'hide-blocked',
      name: en`Hide the blocked ones`,
      means: en`Leaves out what cannot be built as it stands.`,
      found: en`Show them to see what stands in the way.`,
    },
    {
      place: 'try-teeth',
      name: en`What would these teeth give?`,
      means: en`Any teeth, driver then driven, stage by stage; nothing is changed by it.`,
      found: en`Teeth you have in mind, as 23 25.`,
    },
    {
      place: 'try-ratio',
      name: en`Try a ratio`,
      means: en`Another ratio, written as the material’s own: what could be built near it. The material stays as it is.`,
      found: en`What you have in mind.`,
    },
    {
      place: 'try-ratio-slide',
      name: en`Slide of the tried ratio`,
      means: en`Moves the tried ratio a little at each step, more B to the left.`,
      found: en`Arrow keys move it too.`,
    },
  ],
};
