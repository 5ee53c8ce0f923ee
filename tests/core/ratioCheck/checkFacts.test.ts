import { describe, expect, test } from 'vitest';
import { checkFacts } from '../../../core/src/ratioCheck/checkFacts.ts';
import { judge } from '../../../core/src/ratioCheck/judge.ts';
import { expectPrinted } from '../printedFormula.ts';
import { demoFile } from './demoChecks.ts';

const SAY = { decimal: '.', system: 'metric' } as const;

describe('every printed formula of a ratio check says what was computed [mathjs]', () => {
  test.each([0, 1, 2])('check %i of the invented example', (index) => {
    const file = demoFile();
    const row = file.ratioChecks[index];
    if (row === undefined) throw new Error('no check');
    const judged = judge(file, row, [], SAY);
    if (!judged.ok) throw new Error(judged.findings[0].what);
    const facts = checkFacts(judged.value, SAY).flatMap((group) => group.facts);
    expect(facts.map(({ id }) => id)).toEqual([
      'bPerA',
      'offRatio',
      'from',
      'to',
      'shareA',
      'uncertaintyA',
      'shareB',
      'uncertaintyB',
      'A',
      'B',
    ]);
    for (const { working } of facts) if (working !== null) expectPrinted(working);
  });
});

test('one catch has neither interval nor uncertainty to work out', () => {
  const file = demoFile();
  const [row] = file.ratioChecks;
  if (row === undefined) throw new Error('no check');
  const judged = judge(file, { ...row, catches: row.catches.slice(0, 1) }, [], SAY);
  if (!judged.ok) throw new Error(judged.findings[0].what);
  expect(checkFacts(judged.value, SAY).map(({ id }) => id)).toEqual(['ratio', 'delivery', 'smallest']);
});
