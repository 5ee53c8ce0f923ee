import { type FieldPage, FROM_LIST } from '../fieldLine.ts';

/** The drive of the Machine page: stages and slots. */
export const drive: FieldPage = {
  title: 'Drive',
  lines: [
    {
      place: 'machines.*.stages.*.driver|driven.teeth',
      name: 'Teeth fitted',
      means: 'Teeth of the sprocket that is on this shaft now.',
      found: 'Stamped on the hub, or counted: mark one tooth and go round once.',
    },
    {
      place: 'machines.*.stages.*.driver|driven.teethFrom',
      also: ['machines.*.stages.*.driver|driven.teethTo'],
      name: 'Teeth from – to',
      means: 'The smallest and the largest sprocket that this place takes.',
      found: 'The least by the hub and its bore, the most by the room around it; empty where nothing limits them.',
    },
    {
      place: 'machines.*.stages.*.driver|driven.guard',
      name: 'Guard clears',
      means: 'The largest diameter, chain on, that turns here without touching the guard.',
      found: 'Ruler: twice the distance from the middle of the shaft to the nearest part of the guard, less the room you want.',
    },
    {
      place: 'machines.*.stages.*.driver|driven.bore',
      name: 'Shaft bore',
      means: 'Diameter of the shaft end that the sprocket sits on.',
      found: 'Caliper on the shaft, or the number of the sprocket that fits.',
    },
    {
      place: 'machines.*.stages.*.driver|driven.keyway',
      name: 'Keyway',
      means: 'Width of the key; it is printed, not checked.',
      found: 'Caliper on the key.',
    },
    {
      place: 'machines.*.stages.*.driver|driven.mayChange',
      name: 'May be changed',
      means: 'Whether a search may put another sprocket here.',
      found: 'No for one that is welded, pinned, or out of reach.',
    },
    {
      place: 'machines.*.stages.*.size',
      limits: FROM_LIST,
      name: 'Chain number',
      means: 'The size of the chain; its pitch, width and strength follow from it.',
      found: 'Stamped on a side plate; else measure 20 pitches with a ruler.',
    },
    {
      place: 'machines.*.stages.*.kind',
      name: 'Drive kind',
      means: 'What joins the two shafts.',
      found: 'Look at the machine.',
    },
    {
      place: 'machines.*.stages.*.pitches',
      name: 'Pitches fitted',
      means: 'Links of the chain that is on now, inner and outer ones both counted.',
      found: 'Count the rollers once round.',
    },
    {
      place: 'machines.*.stages.*.centre',
      name: 'Centres from – to',
      means: 'How near and how far apart the two shafts can be set; one figure where they are fixed.',
      found: 'Ruler, middle to middle, with the slide at each of its ends.',
    },
    {
      place: 'machines.*.stages.*.takeUp',
      name: 'Take-up',
      means: 'How much slack the tensioner absorbs, counted in pitches of the chain.',
      found: 'Move the tensioner from end to end: the chain it takes up, divided by the pitch.',
    },
    {
      place: 'machines.*.stages.*.centreNow',
      name: 'Centre now',
      means: 'Distance of the two shafts as they stand; the travel of a change is counted from it.',
      found: 'Ruler, middle to middle of the shafts.',
    },
    {
      place: 'machines.*.stages.*.name',
      name: 'Stage is called',
      means: 'What the stage is called in lists and on the sheet.',
      found: 'Your own words.',
    },
    {
      place: 'machines.*.stages.*.offsetLink',
      name: 'Offset link accepted',
      means: 'Whether an odd count of pitches may be made with a half link, at less load.',
      found: 'The rule of your shop; most avoid it.',
    },
  ],
};
