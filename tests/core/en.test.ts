import { afterEach, describe, expect, test, vi } from 'vitest';
import { type Dictionary, en, keyAsWord, phraseOf, plural, speak } from '../../core/src/en.ts';

const spoken = (phrases: Dictionary['phrases'], formOf: Dictionary['formOf'] = (count) => (count === 1 ? 0 : 1)): void =>
  speak({ language: 'xx', phrases, formOf });

afterEach(() => speak(null));

const wheels = (count: number, rack: string): string =>
  plural(count)`one wheel hangs on ${rack}|${count} wheels hang on ${rack}, all of ${count}`;

describe('without a dictionary', () => {
  test('a phrase is what it reads', () => {
    expect(en`Nothing is given.`).toBe('Nothing is given.');
    expect(en`${6} wheels touch ${'s1'}`).toBe('6 wheels touch s1');
  });
  test('an escaped character is read, as in any template', () => {
    expect(en`5\u00A0mm`).toBe('5\u00A0mm');
    expect(plural(2)`5\u00A0mm|6\u00A0mm`).toBe('6\u00A0mm');
  });
  test('one has its form, every other number the second', () => {
    expect(wheels(1, 'the rack')).toBe('one wheel hangs on the rack');
    expect(wheels(2, 'the rack')).toBe('2 wheels hang on the rack, all of 2');
    expect(wheels(0, 'the rack')).toBe('0 wheels hang on the rack, all of 0');
  });
  test('a phrase without a bar has one form', () => {
    expect(plural(1)`${1} of these`).toBe('1 of these');
    expect(plural(7)`${7} of these`).toBe('7 of these');
  });
});

describe('phraseOf', () => {
  test('values have their places, counted from 1', () => {
    expect(phraseOf(['', ' wheels touch ', ''])).toBe('{1} wheels touch {2}');
    expect(phraseOf(['Nothing is given.'])).toBe('Nothing is given.');
  });
});

describe('with a dictionary', () => {
  test('its phrase is said, the values in its own order, also twice or not at all', () => {
    spoken({ '{1} wheels touch {2}': '{2}: {1} ({2})', '{1} off': 'ab' });
    expect(en`${6} wheels touch ${'s1'}`).toBe('s1: 6 (s1)');
    expect(en`${'2 %'} off`).toBe('ab');
  });
  test('a phrase that it lacks is said in English, and so are the forms of a number, by the English rule', () => {
    spoken({}, () => 0);
    expect(en`${6} wheels touch ${'s1'}`).toBe('6 wheels touch s1');
    expect(wheels(5, 'A')).toBe('5 wheels hang on A, all of 5');
  });
  test('a phrase that is not one of its own is English, whatever every object has', () => {
    spoken({});
    expect(en`constructor`).toBe('constructor');
    expect(plural(1)`toString`).toBe('toString');
    expect(keyAsWord('constructor')).toBe('constructor');
  });
  test('a form for each number, as its language counts; any form may use any value', () => {
    const forms = 'jedno {1}|{2} kola {1}|{2} kol {1}';
    spoken({ 'one wheel hangs on {1}|{2} wheels hang on {3}, all of {4}': forms }, (count) => (count === 1 ? 0 : count < 5 ? 1 : 2));
    expect([1, 3, 8].map((count) => wheels(count, 'A'))).toEqual(['jedno A', '3 kola A', '8 kol A']);
  });
  test('a number whose form is left out has the last one', () => {
    spoken({ 'one wheel hangs on {1}|{2} wheels hang on {3}, all of {4}': '{2} auf {1}' }, () => 3);
    expect(wheels(8, 'A')).toBe('8 auf A');
  });
  test('braces, bars and dollars in a value are not read again', () => {
    const odd = '{1}|{2} $1 $& $`';
    expect(wheels(1, odd)).toBe(`one wheel hangs on ${odd}`);
    expect(wheels(2, odd)).toBe(`2 wheels hang on ${odd}, all of 2`);
    spoken({ '{1} and {2}': '{2} und {1}' });
    expect(en`${odd} and ${'{1}'}`).toBe(`{1} und ${odd}`);
  });
  test('a key is said by what the dictionary calls it, and as it is where it has no word', () => {
    spoken({ pressure: 'Druck' });
    expect(keyAsWord('pressure')).toBe('Druck');
    expect(keyAsWord('torque')).toBe('torque');
  });
  test('English is spoken again once there is none', () => {
    spoken({ pressure: 'Druck' });
    speak(null);
    expect(en`pressure`).toBe('pressure');
  });
});

describe('every key of the shop file', () => {
  test('is said in the language that is spoken, in words without capitals inside', async () => {
    const { schemaLeaves } = await import('../../core/src/file/schemaLeaves.ts');
    const { placeText } = await import('../../core/src/finding.ts');
    const keys = [...new Set(schemaLeaves().flatMap(({ steps }) => steps))].filter((key) => /[a-z]/.test(key));
    expect(keys).toContain('measuredDelivery');
    expect(keys.map((key) => placeText([key])).filter((words) => /[a-z][A-Z]/.test(words))).toEqual([]);

    const { dictionary } = await import('../../build/words.ts');
    const phrases = Object.values(dictionary(`${import.meta.dirname}/../..`)).flatMap((ofFile) => Object.keys(ofFile));
    vi.resetModules();
    const other = await import('../../core/src/en.ts');
    other.speak({ language: 'xx', phrases: Object.fromEntries(phrases.map((phrase) => [phrase, `<${phrase}>`])), formOf: () => 0 });
    const { placeText: placeIn } = await import('../../core/src/finding.ts');
    expect(keys.map((key) => placeIn([key])).filter((words) => !/^<.*>$/.test(words))).toEqual([]);
    expect(placeIn(['machines', 0, 'pressureLimit'])).toBe('<machine> 1, <pressure limit>');
  });
});
