import { parseSync } from 'vite';
import { phraseOf } from '../../core/src/en.ts';
import { DIMENSIONS } from '../../core/src/units.ts';
import { formsIn } from '../../core/words/dictionaries.ts';

// What holds of every phrase, read off the code and off the translations.

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;

/** What is found at the nodes of a file, each with those it stands in, the nearest last. */
function foundIn(place: string, code: string, look: (node: Node, around: readonly Node[]) => readonly string[]): readonly string[] {
  const found: string[] = [];
  const around: Node[] = [];
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(visit);
    if (!isNode(value)) return;
    found.push(...look(value, around).map((what) => `${place}:${code.slice(0, value.start).split('\n').length}: ${what}`));
    around.push(value);
    for (const inner of Object.values(value)) if (typeof inner === 'object') visit(inner);
    around.pop();
  };
  visit(parsed(place, code));
  return found;
}

function parsed(place: string, code: string): unknown {
  const { program, errors } = parseSync(place, code);
  if (errors[0] !== undefined) throw new Error(`${place}: ${errors[0].message}`);
  return program;
}

const quasisOf = (template: unknown): readonly string[] =>
  (isNode(template) ? (template.quasis as readonly { readonly value: { readonly cooked: string } }[]) : []).map(
    ({ value }) => value.cooked,
  );

/** `en` or `plural`, where a node is one of their templates. */
function tagOf(node: Node): 'en' | 'plural' | null {
  if (node.type !== 'TaggedTemplateExpression' || !isNode(node.tag)) return null;
  const { tag } = node;
  if (tag.name === 'en') return 'en';
  return tag.type === 'CallExpression' && isNode(tag.callee) && tag.callee.name === 'plural' ? 'plural' : null;
}

/** A word, as against the letter of a side and the signs of a figure. */
const WORD = /\p{L}{2,}/u;
const SPOKEN = new Set(['title', 'aria-label', 'placeholder', 'alt', 'label']);

/** Texts that an expression may come to, as they stand in the code and not through `en`. */
function plainTexts(node: unknown): readonly string[] {
  if (!isNode(node)) return [];
  if (node.type === 'Literal') return typeof node.value === 'string' ? [node.value] : [];
  if (node.type === 'TemplateLiteral') return quasisOf(node);
  if (node.type === 'JSXExpressionContainer') return plainTexts(node.expression);
  if (node.type === 'ConditionalExpression') return [...plainTexts(node.consequent), ...plainTexts(node.alternate)];
  return node.type === 'LogicalExpression' ? [...plainTexts(node.left), ...plainTexts(node.right)] : [];
}

/**
 * Words on the screen that no dictionary has.
 *
 * @param notWords  texts that are the same in every language
 */
export function unmarkedOnScreen(place: string, code: string, notWords: ReadonlySet<string> = new Set()): readonly string[] {
  return foundIn(place, code, (node, around) => {
    const parent = around.at(-1);
    const inElement = parent?.type === 'JSXElement' || parent?.type === 'JSXFragment';
    const name = isNode(node.name) ? node.name.name : null;
    const texts =
      node.type === 'JSXText'
        ? [String(node.value)]
        : node.type === 'JSXExpressionContainer' && inElement
          ? plainTexts(node)
          : node.type === 'JSXAttribute' && typeof name === 'string' && SPOKEN.has(name)
            ? plainTexts(node.value)
            : [];
    return texts.map((text) => text.trim()).filter((text) => WORD.test(text) && !notWords.has(text));
  });
}

/** Phrases that are said when their file is read. */
export function saidAtTheTop(place: string, code: string): readonly string[] {
  return foundIn(place, code, (node, around) =>
    tagOf(node) !== null && !around.some(({ type }) => /Function/.test(type)) ? [phraseOf(quasisOf(node.quasi))] : [],
  );
}

const UNITS = new Set(
  Object.values(DIMENSIONS)
    .flatMap((units) => units.map(({ name }) => name))
    .filter((name) => /[^a-z]/i.test(name)),
);
const NO_PHRASE: readonly (readonly [string, (phrase: string) => boolean])[] = [
  ['markup', (phrase) => /<\/?[a-z][\w-]*[\s>/]|&[a-z]+;/i.test(phrase)],
  ['a MIME type', (phrase) => /^(?:application|audio|font|image|multipart|text|video)\/[\w.+-]+$/.test(phrase)],
  ['a format name', (phrase) => /^\.?ratiowright\b/.test(phrase)],
  ['a unit', (phrase) => UNITS.has(phrase)],
  ['more than one line', (phrase) => /[\n\r\t]/.test(phrase)],
  ['nothing that is said', (phrase) => !/\p{L}/u.test(phrase.replace(/\{\d+\}/g, ''))],
];

/** Marked texts that are no phrases, and forms of a number that are not two in English. */
export function falseMarks(place: string, code: string): readonly string[] {
  return foundIn(place, code, (node) => {
    const tag = tagOf(node);
    if (tag === null) return [];
    const phrase = phraseOf(quasisOf(node.quasi));
    const forms = phrase.split('|').length;
    const faults = NO_PHRASE.filter(([, is]) => is(phrase)).map(([what]) => what);
    if (tag === 'en' && forms > 1) faults.push('forms of a number, without `plural`');
    if (tag === 'plural' && forms !== 2) faults.push('one number of two forms');
    return faults.map((what) => `${what}: ${phrase}`);
  });
}

const valuesIn = (phrase: string): readonly string[] => [...new Set(phrase.match(/\{\d+\}/g) ?? [])].sort();

/**
 * What is wrong with a translation; empty where nothing is.
 *
 * @param language  its file is named for
 * @param known     every English phrase
 */
export function translationFaults(language: string, translation: unknown, known: ReadonlySet<string>): readonly string[] {
  const canonical = ((): string | undefined => {
    try {
      return Intl.getCanonicalLocales(language)[0];
    } catch {
      return undefined;
    }
  })();
  if (canonical !== language) return [`${language}: is no language as BCP 47 writes it`];
  const most = 1 + Math.max(...[0, 1, 2, 3, 6, 11, 100, 1.5, 1_000_000].map(formsIn(language)));
  const files = Object.entries(typeof translation === 'object' && translation !== null ? translation : {});
  return files.flatMap(([file, phrases]: [string, unknown]) =>
    Object.entries(typeof phrases === 'object' && phrases !== null ? phrases : {}).flatMap(([phrase, said]: [string, unknown]) =>
      phraseFaults(phrase, said, most, known).map((what) => `${language}, ${file}: ${what}: ${phrase}`),
    ),
  );
}

function phraseFaults(phrase: string, said: unknown, mostForms: number, known: ReadonlySet<string>): readonly string[] {
  if (!known.has(phrase)) return ['no phrase of the program'];
  if (typeof said !== 'string' || said.trim() === '') return ['nothing is said'];
  const [wanted, given] = [valuesIn(phrase), valuesIn(said)];
  const strange = given.filter((value) => !wanted.includes(value));
  if (strange.length > 0) return [`has ${strange.join(' ')}, which the English phrase has not`];
  const isCounted = phrase.includes('|');
  const forms = said.split('|').length;
  // a form need not say every value: the one for one is often a word
  if (isCounted) return forms > mostForms ? [`has ${forms} forms, and its language ${mostForms}`] : [];
  const lost = wanted.filter((value) => !given.includes(value));
  if (lost.length > 0) return [`lacks ${lost.join(' ')}`];
  return forms > 1 ? ['has forms of a number, and the English phrase has none'] : [];
}
