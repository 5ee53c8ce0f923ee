import type { FieldPage } from '../fieldLine.ts';

const check = (key: string): string => `unfinishedChecks.*.${key}`;
const kept = (key: string): string => `ratioChecks.*.${key}`;
const caught = (key: string) => ({ place: check(`catches.*.A|B.${key}`), limitsOf: kept(`catches.*.A|B.${key}`) }) as const;

/** The Ratio check page. */
export const ratioCheck: FieldPage = {
  title: 'Ratio check',
  lines: [
    {
      place: check('changeSheet'),
      name: 'What is proved',
      means: 'The change sheet, or what is on the machine now, that the catches are held against.',
      found: 'Number at the head of the printed sheet.',
    },
    {
      place: check('runBy'),
      name: 'A catch runs for',
      means: 'Whether you count turns of the motor, or seconds.',
      found: 'Turns are surer: both sides see the same number.',
    },
    {
      place: check('turns'),
      limitsOf: kept('run.turns'),
      name: 'Turns of the motor',
      means: 'Turns for each catch; the expected weights follow from it.',
      found: 'Counter on the machine, or a mark on the shaft.',
    },
    {
      place: check('time'),
      limitsOf: kept('run.time'),
      name: 'Seconds',
      means: 'How long each catch runs.',
      found: 'Stop watch or timer of the machine.',
    },
    {
      place: check('dial'),
      limitsOf: kept('run.dial'),
      name: 'Dial',
      means: 'Setting of the dial during the catches.',
      found: 'Read it off the dial.',
    },
    {
      place: check('step'),
      limitsOf: kept('scale.step'),
      name: 'Step of the scale',
      means: 'The smallest difference that the scale shows; it widens the interval of the verdict.',
      found: 'Last place of the display, or d on the plate of the scale.',
    },
    {
      place: check('weighing'),
      name: 'Written down is',
      means: 'Whether gross and tare are written, or net weights; gross and tare are two readings each.',
      found: 'How you weigh.',
    },
    {
      place: check('uncertainty'),
      limitsOf: kept('scale.uncertainty'),
      name: 'Scale uncertainty',
      means: 'How far the scale itself may be out, at 95 %.',
      found: 'Certificate of its calibration.',
    },
    {
      place: check('confidence'),
      limitsOf: kept('confidence'),
      name: 'Confidence',
      means: 'How sure the interval of the mean shall be; 95 % where it is empty.',
      found: 'The rule of your shop or of the customer.',
    },
    {
      place: check('date'),
      name: 'Weighed on',
      means: 'The day of the catches; empty: today. Year, month, day.',
      found: 'Calendar, as 2026-11-09.',
    },
    { place: check('by'), name: 'Weighed by', means: 'Who caught and weighed; it is printed.', found: 'Name or initials.' },
    { place: check('note'), name: 'Note', means: 'Anything worth knowing of this check; it is printed.', found: 'Your own words.' },
    {
      place: check('volumes'),
      name: 'Volumes are read too',
      means: 'Adds a column for the volume of each side, read off a cylinder.',
      found: 'Yes where the density is in doubt.',
    },
    { ...caught('gross'), name: 'Gross', means: 'Cup and material of this side together.', found: 'Scale, after the catch.' },
    { ...caught('tare'), name: 'Tare', means: 'The empty cup of this side.', found: 'Scale, before the catch.' },
    { ...caught('net'), name: 'Net', means: 'Material of this side alone.', found: 'Scale that was set to zero with the empty cup.' },
    { ...caught('volume'), name: 'Volume', means: 'Volume of what was caught of this side.', found: 'Measuring cylinder, read level.' },
    {
      place: check('catches.*.leftOut'),
      name: 'Why it is left out',
      means: 'The reason why a catch does not count; it is printed beside it.',
      found: 'What went wrong: spilled, cup not empty, air in the line.',
    },
  ],
};
