// The words for places in the shop file are our choice; a finding without its word cannot be found on the page.
import { expect, test } from 'vitest';
import { schemaLeaves } from '../../core/src/file/schemaLeaves.ts';
import { placeText } from '../../core/src/finding.ts';

const WORDS: readonly (readonly [key: string, word: string])[] = [
  ['machines', 'machine'],
  ['materials', 'material'],
  ['racks', 'rack'],
  ['stages', 'stage'],
  ['shafts', 'shaft'],
  ['pumps', 'pump'],
  ['pieces', 'piece'],
  ['changeSheets', 'change sheet'],
  ['quotePages', 'quote page'],
  ['ratioChecks', 'ratio check'],
  ['unfinishedChecks', 'unfinished ratio check'],
  ['centreNow', 'centre now'],
  ['takeUp', 'take-up'],
  ['offsetLink', 'offset link'],
  ['mayChange', 'may be changed'],
  ['teethFrom', 'least teeth'],
  ['teethTo', 'most teeth'],
  ['turnedBy', 'turned by'],
  ['speedFrom', 'least speed'],
  ['speedTo', 'most speed'],
  ['dialStep', 'dial step'],
  ['ratedTorque', 'rated torque'],
  ['usable', 'usable range'],
  ['runAt', 'run at'],
  ['at', 'at temperature'],
  ['secondDensity', 'second density'],
  ['perHundredA', 'B per 100 A'],
  ['thirdInto', 'third part into'],
  ['otherRatio', 'other ratio'],
  ['resinIn', 'resin in'],
  ['isocyanateIn', 'isocyanate in'],
  ['ingredients', 'ingredient'],
  ['by', 'described by'],
  ['hydrogens', 'active hydrogens'],
  ['catchTurns', 'turns a catch'],
  ['wantedFlow', 'wanted flow'],
  ['mixerVolume', 'mixer volume'],
  ['serviceFactor', 'service factor'],
  ['mechanicalEfficiency', 'mechanical efficiency'],
  ['lowMark', 'low mark'],
  ['wantedShot', 'wanted shot'],
  ['pressureLimit', 'pressure limit'],
  ['measuredDelivery', 'measured delivery'],
  ['newDelivery', 'delivery when new'],
  ['leastDelivery', 'least delivery'],
  ['catches', 'catch'],
  ['leftOut', 'left out'],
  ['faceWidth', 'face width'],
  ['gapWidth', 'gap width'],
  ['gapLength', 'gap length'],
  ['outsideDiameter', 'outside diameter'],
  ['insideDiameter', 'inside diameter'],
  ['centreDistance', 'centre distance'],
];

test.each(WORDS)('%s reads %s', (key, word) => {
  expect([placeText([key]), placeText(['machines', 0, key])]).toEqual([word, `machine 1, ${word}`]);
});

test('rows are counted from 1, and no place is the file', () => {
  expect(placeText(['machines', 0, 'stages', 1, 'driver', 'teeth'])).toBe('machine 1, stage 2, driver, teeth');
  expect(placeText([])).toBe('the file');
});

test('a word of its own, or the key, is there for every step of the schema', () => {
  for (const { steps } of schemaLeaves()) for (const step of steps) expect(placeText([step]), step).toMatch(/\S/);
});
