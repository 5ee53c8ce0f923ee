import type { FieldPage } from '../fieldLine.ts';

const pump = (key: string): string => `machines.*.A|B.pumps.*.${key}`;
const PLAN = 'Drawing of the pump, or caliper on an opened one.';

/** The pumps of the Machine page. */
export const pumps: FieldPage = {
  title: 'Pumps',
  lines: [
    {
      place: pump('displacement'),
      name: 'Displacement',
      means: 'Volume that the pump moves in one turn.',
      found: 'Plate of the pump or its data sheet.',
    },
    {
      place: pump('name'),
      name: 'Name of the pump',
      means: 'What the pump is called; it is printed.',
      found: 'Its plate, or your own words.',
    },
    {
      place: pump('tolerance'),
      name: 'Tolerance of the pump',
      means: 'How far, either way, the true displacement may be from the stated one.',
      found: 'Data sheet of the pump; it enters the off-ratio budget.',
    },
    {
      place: pump('speedFrom'),
      also: [pump('speedTo')],
      name: 'Speed from – to',
      means: 'Turns a minute between which the pump may run with this kind of material.',
      found: 'Data sheet of the pump; thick material lowers the upper end.',
    },
    {
      place: 'machines.*.A|B.fitted',
      name: 'Fitted',
      means: 'The pump that is on the machine now.',
      found: 'Look at its plate.',
    },
    {
      place: 'machines.*.A|B.shaft',
      name: 'Pump sits on',
      means: 'The shaft that turns this pump.',
      found: 'Follow the coupling on the machine.',
    },
    {
      place: pump('pressureLimit'),
      name: 'Pressure limit',
      means: 'The most pressure that the pump may work against.',
      found: 'Plate or data sheet of the pump.',
    },
    {
      place: pump('measuredDelivery'),
      name: 'Measured delivery',
      means: 'What it delivers as a share of its displacement, with its uncertainty behind +-.',
      found: 'From a ratio check, by its button, or from a test of the pump.',
    },
    {
      place: pump('newDelivery'),
      name: 'Delivery when new',
      means: 'What it delivered when it was new; wear is counted from it.',
      found: 'First ratio check after fitting, or test report of the maker.',
    },
    {
      place: pump('leastDelivery'),
      name: 'Least delivery',
      means: 'Below this share the pump counts as worn.',
      found: 'The rule of your shop, or the maker’s.',
    },
    {
      place: pump('gear.teeth'),
      name: 'Teeth of one gear',
      means: 'Teeth of one pump gear; pulses, and with its sizes displacement and slip, follow from them.',
      found: 'Data sheet, or counted on an opened pump.',
    },
    {
      place: pump('gear.module'),
      name: 'Module',
      means: 'Pitch diameter of the gear divided by its teeth.',
      found: 'Drawing of the pump.',
    },
    { place: pump('gear.faceWidth'), name: 'Face width', means: 'Width of the gear along its shaft.', found: PLAN },
    { place: pump('gear.outsideDiameter'), name: 'Outside diameter', means: 'Diameter over the tips of the teeth.', found: PLAN },
    {
      place: pump('gear.insideDiameter'),
      name: 'Inside diameter',
      means: 'Diameter at the bottom of the gaps between the teeth.',
      found: PLAN,
    },
    { place: pump('gear.centreDistance'), name: 'Centre distance', means: 'Distance of the two gear shafts.', found: PLAN },
    {
      place: pump('gear.gapWidth'),
      name: 'Gap width',
      means: 'Width of the gap that leaks, across the flow; slip is estimated with it.',
      found: 'Drawing of the pump; leave it empty rather than guess.',
    },
    {
      place: pump('gear.gapLength'),
      name: 'Gap length',
      means: 'Way through the gap that leaks, along the flow.',
      found: 'Drawing of the pump; leave it empty rather than guess.',
    },
  ],
};
