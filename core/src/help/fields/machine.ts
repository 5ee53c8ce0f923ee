import type { FieldPage } from '../fieldLine.ts';

/** The head of the Machine page. */
export const machine: FieldPage = {
  title: 'Machine and motor',
  lines: [
    {
      place: 'pick.machine',
      name: 'Machine',
      means: 'The machine that all pages work on.',
      found: 'The list holds the machines of this shop file; a new one is added beside it.',
    },
    { place: 'machines.*.name', name: 'Name of the machine', means: 'What the shop calls it; it is printed.', found: 'Your own words.' },
    { place: 'machines.*.note', name: 'Note', means: 'Anything worth knowing of the machine.', found: 'Your own words.' },
    {
      place: 'machines.*.motor.speed',
      name: 'Motor speed',
      means: 'Turns a minute of the shaft that drives the pumps, with the dial at 100 %.',
      found: 'Name plate; behind a gearbox, the speed of its output shaft.',
    },
    {
      place: 'machines.*.motor.usable',
      name: 'Usable range',
      means: 'From where to where on the dial the motor may run for long.',
      found: 'Manual of the drive; a motor without forced cooling often has a least speed.',
    },
    {
      place: 'machines.*.motor.dialStep',
      name: 'Dial step',
      means: 'The smallest change that the dial can be set to; a wanted flow is rounded to it.',
      found: 'Turn the dial: the last place of its display, or one line of its scale.',
    },
    {
      place: 'machines.*.motor.ratedTorque',
      name: 'Rated torque',
      means: 'What the motor may give for long at the shaft that drives the pumps.',
      found: 'Name plate or data sheet; behind a gearbox, that of its output shaft.',
    },
    {
      place: 'machines.*.shafts.*.name',
      name: 'Shaft is called',
      means: 'What the shaft is called in lists and on the sheet.',
      found: 'Your own words, such as jackshaft.',
    },
    {
      place: 'machines.*.rack',
      name: 'Rack of this machine',
      means: 'The stock of sprockets that changes of this machine are made from.',
      found: 'The list holds the racks of this shop file.',
    },
    {
      place: 'machines.*.checklist.*',
      name: 'Checklist line',
      means: 'A step of your own, printed on the change sheet with a box to tick.',
      found: 'Your own rules for this machine.',
    },
    { place: 'shop.name', name: 'Name of the shop', means: 'Whose file this is; it is printed.', found: 'Your own words.' },
    { place: 'shop.note', name: 'Note of the shop', means: 'Anything worth knowing of the whole file.', found: 'Your own words.' },
    {
      place: 'shop.invented',
      name: 'Invented example',
      means: 'Whether the data is made up; every print then says so.',
      found: 'Set in the example that comes with the program.',
    },
  ],
};
