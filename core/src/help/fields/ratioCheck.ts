import { en } from '../../en.ts';
import type { FieldPage } from '../fieldLine.ts';

const check = (key: string): string => `unfinishedChecks.*.${key}`;
const kept = (key: string): string => `ratioChecks.*.${key}`;
const caught = (key: string) => ({ place: check(`catches.*.A|B.${key}`), limitsOf: kept(`catches.*.A|B.${key}`) }) as const;

/** The Ratio check page. */
export const ratioCheck: FieldPage = {
  title: en`Ratio check`,
  lines: [
    {
      place: check('changeSheet'),
      name: en`What is proved`,
      means: en`The change sheet, or what is on the machine now, that the catches are held against.`,
      found: en`Number at the head of the printed sheet.`,
    },
    {
      place: check('runBy'),
      name: en`A catch runs for`,
      means: en`Whether you count turns of the motor, or seconds.`,
      found: en`Turns are surer: both sides see the same number.`,
    },
    {
      place: check('turns'),
      limitsOf: kept('run.turns'),
      name: en`Turns of the motor`,
      means: en`Turns for each catch; the expected weights follow from it.`,
      found: en`Counter on the machine, or a mark on the shaft.`,
    },
    {
      place: check('time'),
      limitsOf: kept('run.time'),
      name: en`Seconds`,
      means: en`How long each catch runs.`,
      found: en`Stop watch or timer of the machine.`,
    },
    {
      place: check('dial'),
      limitsOf: kept('run.dial'),
      name: en`Dial`,
      means: en`Setting of the dial during the catches.`,
      found: en`Read it off the dial.`,
    },
    {
      place: check('step'),
      limitsOf: kept('scale.step'),
      name: en`Step of the scale`,
      means: en`The smallest difference that the scale shows; it widens the interval of the verdict.`,
      found: en`Last place of the display, or d on the plate of the scale.`,
    },
    {
      place: check('weighing'),
      name: en`Written down is`,
      means: en`Whether gross and tare are written, or net weights; gross and tare are two readings each.`,
      found: en`How you weigh.`,
    },
    {
      place: check('uncertainty'),
      limitsOf: kept('scale.uncertainty'),
      name: en`Scale uncertainty`,
      means: en`How far the scale itself may be out, at 95 %.`,
      found: en`Certificate of its calibration.`,
    },
    {
      place: check('confidence'),
      limitsOf: kept('confidence'),
      name: en`Confidence`,
      means: en`How sure the interval of the mean shall be; 95 % where it is empty.`,
      found: en`The rule of your shop or of the customer.`,
    },
    {
      place: check('date'),
      name: en`Weighed on`,
      means: en`The day of the catches; empty: today. Year, month, day.`,
      found: en`Calendar, as 2026-11-09.`,
    },
    { place: check('by'), name: en`Weighed by`, means: en`Who caught and weighed; it is printed.`, found: en`Name or initials.` },
    { place: check('note'), name: en`Note`, means: en`Anything worth knowing of this check; it is printed.`, found: en`Your own words.` },
    {
      place: check('volumes'),
      name: en`Volumes are read too`,
      means: en`Adds a column for the volume of each side, read off a cylinder.`,
      found: en`Yes where the density is in doubt.`,
    },
    { ...caught('gross'), name: en`Gross`, means: en`Cup and material of this side together.`, found: en`Scale, after the catch.` },
    { ...caught('tare'), name: en`Tare`, means: en`The empty cup of this side.`, found: en`Scale, before the catch.` },
    { ...caught('net'), name: en`Net`, means: en`Material of this side alone.`, found: en`Scale that was set to zero with the empty cup.` },
    {
      ...caught('volume'),
      name: en`Volume`,
      means: en`Volume of what was caught of this side.`,
      found: en`Measuring cylinder, read level.`,
    },
    {
      place: check('catches.*.leftOut'),
      name: en`Why it is left out`,
      means: en`The reason why a catch does not count; it is printed beside it.`,
      found: en`What went wrong: spilled, cup not empty, air in the line.`,
    },
  ],
};
