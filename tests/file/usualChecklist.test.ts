import { describe, expect, test } from 'vitest';
import { MOST_CHECKLIST_LINES } from '../../core/src/file/machine.ts';
import { machineTrouble } from '../../core/src/file/machineTrouble.ts';
import { USUAL_CHECKLIST, withUsualLines } from '../../core/src/file/usualChecklist.ts';

const own = (count: number): readonly string[] => Array.from({ length: count }, (_, index) => `Own line ${index + 1}`);

describe('usual lines of a checklist [common practice, no source]', () => {
  test('they name the tank and heat-zone settings, degassing, the dryer, the shaft packing and the seal cup', () => {
    for (const word of ['tank', 'heat-zone', 'degas', 'dryer', 'shaft packing', 'seal cup'])
      expect(USUAL_CHECKLIST.filter((line) => line.toLowerCase().includes(word)).length, word).toBeGreaterThan(0);
  });

  test('withUsualLines example: all of them are added to an empty list', () => {
    expect(withUsualLines([])).toEqual({ lines: USUAL_CHECKLIST, message: '5 usual lines added.' });
  });

  test('what is there already, whatever its capitals, stays where it is and is not added again', () => {
    const [first = '', ...rest] = USUAL_CHECKLIST;
    const typed = first.toUpperCase().replace('.', '');
    expect(withUsualLines(['Own line', typed])).toEqual({
      lines: ['Own line', typed, ...rest.slice(0, 4)],
      message: '4 usual lines added.',
    });
    expect(withUsualLines(USUAL_CHECKLIST)).toEqual({ lines: USUAL_CHECKLIST, message: 'All usual lines are there already.' });
  });

  test('five lines leave room for one, six for none; what was left out is said', () => {
    const five = withUsualLines(own(5));
    expect(five.lines).toEqual([...own(5), USUAL_CHECKLIST[0]]);
    expect(five.message).toBe(`1 usual line added: the sheet has room for 6. Left out: ${USUAL_CHECKLIST.slice(1).join(' ')}`);
    const six = withUsualLines(own(6));
    expect(six.lines).toEqual(own(6));
    expect(six.message).toContain('No line added: the sheet has room for 6.');
  });

  test('as many lines as the file takes, each short enough for it', () => {
    expect(machineTrouble({ machine: { checklist: [...own(MOST_CHECKLIST_LINES)] } })).toBeNull();
    expect(machineTrouble({ machine: { checklist: [...own(MOST_CHECKLIST_LINES + 1)] } })).toBe(
      'the sheet has room for 6 lines of your own',
    );
    expect(machineTrouble({ machine: { checklist: [...USUAL_CHECKLIST] } })).toBeNull();
  });
});
