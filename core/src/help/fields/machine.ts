import { en } from '../../en.ts';
import type { FieldPage } from '../fieldLine.ts';

/** The head of the Machine page. */
export const machine: FieldPage = {
  title: en`Machine and motor`,
  lines: [
    {
      place: 'pick.machine',
      name: en`Machine`,
      means: en`The machine that all pages work on.`,
      found: en`The list holds the machines of this shop file; a new one is added beside it.`,
    },
    {
      place: 'machines.*.name',
      name: en`Name of the machine`,
      means: en`What the shop calls it; it is printed.`,
      found: en`Your own words.`,
    },
    { place: 'machines.*.note', name: en`Note`, means: en`Anything worth knowing of the machine.`, found: en`Your own words.` },
    {
      place: 'machines.*.motor.speed',
      name: en`Motor speed`,
      means: en`Turns a minute of the shaft that drives the pumps, with the dial at 100 %.`,
      found: en`Name plate; behind a gearbox, the speed of its output shaft.`,
    },
    {
      place: 'machines.*.motor.usable',
      name: en`Usable range`,
      means: en`From where to where on the dial the motor may run for long.`,
      found: en`Manual of the drive; a motor without forced cooling often has a least speed.`,
    },
    {
      place: 'machines.*.motor.dialStep',
      name: en`Dial step`,
      means: en`The smallest change that the dial can be set to; a wanted flow is rounded to it.`,
      found: en`Turn the dial: the last place of its display, or one line of its scale.`,
    },
    {
      place: 'machines.*.motor.ratedTorque',
      name: en`Rated torque`,
      means: en`What the motor may give for long at the shaft that drives the pumps.`,
      found: en`Name plate or data sheet; behind a gearbox, that of its output shaft.`,
    },
    {
      place: 'machines.*.shafts.*.name',
      name: en`Shaft is called`,
      means: en`What the shaft is called in lists and on the sheet.`,
      found: en`Your own words, such as jackshaft.`,
    },
    {
      place: 'machines.*.rack',
      name: en`Rack of this machine`,
      means: en`The stock of sprockets that changes of this machine are made from.`,
      found: en`The list holds the racks of this shop file.`,
    },
    {
      place: 'machines.*.checklist.*',
      name: en`Checklist line`,
      means: en`A step of your own, printed on the change sheet with a box to tick.`,
      found: en`Your own rules for this machine.`,
    },
    { place: 'shop.name', name: en`Name of the shop`, means: en`Whose file this is; it is printed.`, found: en`Your own words.` },
    { place: 'shop.note', name: en`Note of the shop`, means: en`Anything worth knowing of the whole file.`, found: en`Your own words.` },
    {
      place: 'shop.invented',
      name: en`Invented example`,
      means: en`Whether the data is made up; every print then says so.`,
      found: en`Set in the example that comes with the program.`,
    },
  ],
};
