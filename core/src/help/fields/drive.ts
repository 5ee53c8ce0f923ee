import { en } from '../../en.ts';
import { type FieldPage, FROM_LIST } from '../fieldLine.ts';

/** The drive of the Machine page: stages and slots. */
export const drive: FieldPage = {
  title: en`Drive`,
  lines: [
    {
      place: 'machines.*.stages.*.driver|driven.teeth',
      name: en`Teeth fitted`,
      means: en`Teeth of the sprocket that is on this shaft now.`,
      found: en`Stamped on the hub, or counted: mark one tooth and go round once.`,
    },
    {
      place: 'machines.*.stages.*.driver|driven.teethFrom',
      also: ['machines.*.stages.*.driver|driven.teethTo'],
      name: en`Teeth from – to`,
      means: en`The smallest and the largest sprocket that this place takes.`,
      found: en`The least by the hub and its bore, the most by the room around it; empty where nothing limits them.`,
    },
    {
      place: 'machines.*.stages.*.driver|driven.guard',
      name: en`Guard clears`,
      means: en`The largest diameter, chain on, that turns here without touching the guard.`,
      found: en`Ruler: twice the distance from the middle of the shaft to the nearest part of the guard, less the room you want.`,
    },
    {
      place: 'machines.*.stages.*.driver|driven.bore',
      name: en`Shaft bore`,
      means: en`Diameter of the shaft end that the sprocket sits on.`,
      found: en`Caliper on the shaft, or the number of the sprocket that fits.`,
    },
    {
      place: 'machines.*.stages.*.driver|driven.keyway',
      name: en`Keyway`,
      means: en`Width of the key; it is printed, not checked.`,
      found: en`Caliper on the key.`,
    },
    {
      place: 'machines.*.stages.*.driver|driven.mayChange',
      name: en`May be changed`,
      means: en`Whether a search may put another sprocket here.`,
      found: en`No for one that is welded, pinned, or out of reach.`,
    },
    {
      place: 'machines.*.stages.*.size',
      limits: FROM_LIST,
      name: en`Chain number`,
      means: en`The size of the chain; its pitch, width and strength follow from it.`,
      found: en`Stamped on a side plate; else measure 20 pitches with a ruler.`,
    },
    {
      place: 'machines.*.stages.*.kind',
      name: en`Drive kind`,
      means: en`What joins the two shafts.`,
      found: en`Look at the machine.`,
    },
    {
      place: 'machines.*.stages.*.pitches',
      name: en`Pitches fitted`,
      means: en`Links of the chain that is on now, inner and outer ones both counted.`,
      found: en`Count the rollers once round.`,
    },
    {
      place: 'machines.*.stages.*.centre',
      name: en`Centres from – to`,
      means: en`How near and how far apart the two shafts can be set; one figure where they are fixed.`,
      found: en`Ruler, middle to middle, with the slide at each of its ends.`,
    },
    {
      place: 'machines.*.stages.*.takeUp',
      name: en`Take-up`,
      means: en`How much slack the tensioner absorbs, counted in pitches of the chain.`,
      found: en`Move the tensioner from end to end: the chain it takes up, divided by the pitch.`,
    },
    {
      place: 'machines.*.stages.*.centreNow',
      name: en`Centre now`,
      means: en`Distance of the two shafts as they stand; the travel of a change is counted from it.`,
      found: en`Ruler, middle to middle of the shafts.`,
    },
    {
      place: 'machines.*.stages.*.name',
      name: en`Stage is called`,
      means: en`What the stage is called in lists and on the sheet.`,
      found: en`Your own words.`,
    },
    {
      place: 'machines.*.stages.*.offsetLink',
      name: en`Offset link accepted`,
      means: en`Whether an odd count of pitches may be made with a half link, at less load.`,
      found: en`The rule of your shop; most avoid it.`,
    },
  ],
};
