import { describe, expect, test } from 'vitest';
import { dictionary } from '../../build/words.ts';
import { falseMarks, saidAtTheTop, translationFaults, unmarkedOnScreen } from './phraseRules.ts';
import { filesUnder, ROOT, textOf } from './sources.ts';

const sources = (room: string) =>
  filesUnder(room, '.ts')
    .concat(filesUnder(room, '.tsx'))
    .filter((place) => !place.endsWith('.d.ts'));
const SAYING = ['core/src', 'core/cli', 'renderer/src', 'electron/src'].flatMap(sources);
/** The same in every language: the name of the program, with its licence. */
const NOT_WORDS: ReadonlySet<string> = new Set(['Ratiowright', 'Ratiowright · MIT']);

/** Code as it stands below, where `#{` begins a value of a template. */
const js = (code: string): string => code.replaceAll('#{', '\u0024{');

const ENGLISH = 'core/words/english.json';
const phrases = dictionary(ROOT);
const known = new Set(Object.values(phrases).flatMap((ofFile) => Object.keys(ofFile)));

test('the sources and their phrases are found', () => {
  expect(SAYING).toContain('core/src/checks/wrap.ts');
  expect(SAYING).toContain('renderer/src/frame/Band.tsx');
  expect(known.size).toBeGreaterThan(2000);
});

describe('words on the screen', () => {
  test('all stand in `en`', () => {
    const found = SAYING.filter((place) => place.endsWith('.tsx')).flatMap((place) => unmarkedOnScreen(place, textOf(place), NOT_WORDS));
    expect(found).toEqual([]);
  });
  test.each([
    ['text between tags', '<p>Wheels touch.</p>', 'Wheels touch.'],
    ['text beside a value', '<p>{count()} wheels</p>', 'wheels'],
    ['a text in braces', "<p>{'wheels'}</p>", 'wheels'],
    ['one of two texts', "<p>{is() ? en`yes` : 'no'}</p>", 'no'],
    ['a text that may stand there', "<p>{is() && 'wheels'}</p>", 'wheels'],
    ['a template', '<p>{`#{count()} wheels`}</p>', 'wheels'],
    ['text in a fragment', '<>Wheels</>', 'Wheels'],
    ['a title', '<b title="Wheels" />', 'Wheels'],
    ['a name for screen readers', "<b aria-label={is() ? 'Wheels' : undefined} />", 'Wheels'],
    ['a label', '<Box label={`Wheels of #{side}`} />', 'Wheels of'],
  ])('%s is found', (_what, code, text) => {
    expect(unmarkedOnScreen('a.tsx', js(`export const a = ${code};`))).toEqual([`a.tsx:1: ${text}`]);
  });
  test.each([
    ['phrases', '<p title={en`Wheels`}>{en`#{count()} wheels`}</p>'],
    ['the letter of a side, a dash, a figure', '<p title="A">B – {2}</p>'],
    ['what is no word for people', '<p class="wide" data-place="rack" role="status" />'],
    ['a value of which a text is asked', "<p>{name() === 'rack' ? en`Rack` : en`Wheels`}</p>"],
  ])('%s are not', (_what, code) => {
    expect(unmarkedOnScreen('a.tsx', js(`export const a = ${code};`))).toEqual([]);
  });
});

describe('the shell, which learns its language when it is ready', () => {
  test('says nothing at the top of a file', () => {
    expect(sources('electron/src').flatMap((place) => saidAtTheTop(place, textOf(place)))).toEqual([]);
  });
  test.each([
    ['a constant', 'const A = en`Open`;'],
    ['an entry of a table', 'export const T = { open: [en`Open`] };'],
    ['a number of things', 'const a = plural(2)`one|two`;'],
  ])('%s is found', (_what, code) => {
    expect(saidAtTheTop('a.ts', code)).toHaveLength(1);
  });
  test('what is said when it is asked for is not', () => {
    expect(saidAtTheTop('a.ts', 'const a = () => en`Open`; function b() { return { open: en`Open` }; }')).toEqual([]);
    expect(saidAtTheTop('a.ts', 'class A { b() { return plural(2)`one|two`; } }')).toEqual([]);
  });
});

describe('what is marked', () => {
  test('is a phrase', () => {
    expect(SAYING.flatMap((place) => falseMarks(place, textOf(place)))).toEqual([]);
  });
  test.each([
    ['markup', 'en`<b>#{a}</b>`'],
    ['markup', 'en`#{a} &nbsp; #{b}`'],
    ['a MIME type', 'en`text/csv`'],
    ['a format name', 'en`ratiowright shop file`'],
    ['a format name', 'en`.ratiowright`'],
    ['a unit', 'en`cc/rev`'],
    ['a unit', 'en`US gal`'],
    ['more than one line', 'en`one\\n`'],
    ['nothing that is said', 'en`#{a} : #{b}`'],
    ['forms of a number, without `plural`', 'en`one|two`'],
    ['one number of two forms', 'plural(2)`two`'],
  ])('%s is found: %s', (what, code) => {
    expect(falseMarks('a.ts', js(`const a = ${code};`)).map((fault) => fault.split(': ')[1])).toContain(what);
  });
  test('a phrase is not', () => {
    expect(falseMarks('a.ts', js('const a = [en`#{b} < #{c} pitches`, en`A & B`, en`in`, plural(2)`one wheel|#{2} wheels`];'))).toEqual([]);
  });
});

describe('the dictionary', () => {
  test('is what the code says: `npm run words`', () => {
    const kept = new Set(Object.values(JSON.parse(textOf(ENGLISH)) as typeof phrases).flatMap((ofFile) => Object.keys(ofFile)));
    expect({ lacking: [...known].filter((phrase) => !kept.has(phrase)), gone: [...kept].filter((phrase) => !known.has(phrase)) }).toEqual({
      lacking: [],
      gone: [],
    });
    expect(textOf(ENGLISH)).toBe(`${JSON.stringify(phrases, null, 2)}\n`);
  });
});

describe('translations', () => {
  test('say phrases of the program, with their values', () => {
    const files = filesUnder('core/words', '.json').filter((place) => place !== ENGLISH);
    expect(files.flatMap((place) => translationFaults(place.replace(/^.*\/|\.json$/g, ''), JSON.parse(textOf(place)), known))).toEqual([]);
  });

  const some = new Set(['rack', '{1} of {2}', 'one wheel|{1} wheels']);
  const faults = (said: Readonly<Record<string, unknown>>, language = 'pl') => translationFaults(language, { 'core/src/a.ts': said }, some);
  test('a sound one has no fault: values in another order, twice, forms as its language has them', () => {
    expect(
      faults({ rack: 'regał', '{1} of {2}': '{2}: {1} ({2})', 'one wheel|{1} wheels': 'jedno koło|{1} koła|{1} kół|{1} koła' }),
    ).toEqual([]);
    expect(faults({ 'one wheel|{1} wheels': '{1}個' }, 'ja')).toEqual([]);
    expect(faults({}, 'pt-BR')).toEqual([]);
  });
  test.each([
    ['a phrase that is not known', { racks: 'regały' }, 'no phrase of the program'],
    ['a key that every object has', { constructor: 'x' }, 'no phrase of the program'],
    ['a value left out', { '{1} of {2}': '{1}' }, 'lacks {2}'],
    ['a value that is not there', { '{1} of {2}': '{1} z {3}, {2}' }, 'has {3}, which the English phrase has not'],
    ['a value in a form that is not there', { 'one wheel|{1} wheels': '{2} koło|{1} koła' }, 'has {2}, which the English phrase has not'],
    ['more forms than its language has', { 'one wheel|{1} wheels': 'a|b|c|d|e' }, 'has 5 forms, and its language 4'],
    ['forms where there is no number', { rack: 'a|b' }, 'has forms of a number, and the English phrase has none'],
    ['nothing', { rack: ' ' }, 'nothing is said'],
    ['no text', { rack: 7 }, 'nothing is said'],
  ])('%s is found', (_what, said, fault) => {
    expect(faults(said)).toEqual([`pl, core/src/a.ts: ${fault}: ${Object.keys(said)[0]}`]);
  });
  test('a file named for no language is found', () => {
    expect(faults({}, 'pt_BR')).toEqual(['pt_BR: is no language as BCP 47 writes it']);
    expect(faults({}, 'pt-br')).toEqual(['pt-br: is no language as BCP 47 writes it']);
  });
});
