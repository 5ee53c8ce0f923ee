import { en } from '../../en.ts';
import type { FieldPage } from '../fieldLine.ts';

const pump = (key: string): string => `machines.*.A|B.pumps.*.${key}`;
const PLAN = en`Drawing of the pump, or caliper on an opened one.`;

/** The pumps of the Machine page. */
export const pumps: FieldPage = {
  title: en`Pumps`,
  lines: [
    {
      place: pump('displacement'),
      name: en`Displacement`,
      means: en`Volume that the pump moves in one turn.`,
      found: en`Plate of the pump or its data sheet.`,
    },
    {
      place: pump('name'),
      name: en`Name of the pump`,
      means: en`What the pump is called; it is printed.`,
      found: en`Its plate, or your own words.`,
    },
    {
      place: pump('tolerance'),
      name: en`Tolerance of the pump`,
      means: en`How far, either way, the true displacement may be from the stated one.`,
      found: en`Data sheet of the pump; it enters the off-ratio budget.`,
    },
    {
      place: pump('speedFrom'),
      also: [pump('speedTo')],
      name: en`Speed from – to`,
      means: en`Turns a minute between which the pump may run with this kind of material.`,
      found: en`Data sheet of the pump; thick material lowers the upper end.`,
    },
    {
      place: 'machines.*.A|B.fitted',
      name: en`Fitted`,
      means: en`The pump that is on the machine now.`,
      found: en`Look at its plate.`,
    },
    {
      place: 'machines.*.A|B.shaft',
      name: en`Pump sits on`,
      means: en`The shaft that turns this pump.`,
      found: en`Follow the coupling on the machine.`,
    },
    {
      place: pump('pressureLimit'),
      name: en`Pressure limit`,
      means: en`The most pressure that the pump may work against.`,
      found: en`Plate or data sheet of the pump.`,
    },
    {
      place: pump('measuredDelivery'),
      name: en`Measured delivery`,
      means: en`What it delivers as a share of its displacement, with its uncertainty behind +-.`,
      found: en`From a ratio check, by its button, or from a test of the pump.`,
    },
    {
      place: pump('newDelivery'),
      name: en`Delivery when new`,
      means: en`What it delivered when it was new; wear is counted from it.`,
      found: en`First ratio check after fitting, or test report of the maker.`,
    },
    {
      place: pump('leastDelivery'),
      name: en`Least delivery`,
      means: en`Below this share the pump counts as worn.`,
      found: en`The rule of your shop, or the maker’s.`,
    },
    {
      place: pump('gear.teeth'),
      name: en`Teeth of one gear`,
      means: en`Teeth of one pump gear; pulses, and with its sizes displacement and slip, follow from them.`,
      found: en`Data sheet, or counted on an opened pump.`,
    },
    {
      place: pump('gear.module'),
      name: en`Module`,
      means: en`Pitch diameter of the gear divided by its teeth.`,
      found: en`Drawing of the pump.`,
    },
    { place: pump('gear.faceWidth'), name: en`Face width`, means: en`Width of the gear along its shaft.`, found: PLAN },
    { place: pump('gear.outsideDiameter'), name: en`Outside diameter`, means: en`Diameter over the tips of the teeth.`, found: PLAN },
    {
      place: pump('gear.insideDiameter'),
      name: en`Inside diameter`,
      means: en`Diameter at the bottom of the gaps between the teeth.`,
      found: PLAN,
    },
    { place: pump('gear.centreDistance'), name: en`Centre distance`, means: en`Distance of the two gear shafts.`, found: PLAN },
    {
      place: pump('gear.gapWidth'),
      name: en`Gap width`,
      means: en`Width of the gap that leaks, across the flow; slip is estimated with it.`,
      found: en`Drawing of the pump; leave it empty rather than guess.`,
    },
    {
      place: pump('gear.gapLength'),
      name: en`Gap length`,
      means: en`Way through the gap that leaks, along the flow.`,
      found: en`Drawing of the pump; leave it empty rather than guess.`,
    },
  ],
};
