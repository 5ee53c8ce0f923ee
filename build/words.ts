import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parseSync } from 'vite';
import { phraseOf } from '../core/src/en.ts';
import { schemaLeaves } from '../core/src/file/schemaLeaves.ts';
import { placeText } from '../core/src/finding.ts';

// The one dictionary of what the program says, gathered from the code.

const SCHEMA = 'core/src/file/shopFile.ts';
const ROOMS = ['core/src', 'core/cli', 'renderer/src', 'electron/src'];

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;

/** `en` or `plural(...)`, as a tag before a template. */
function isOurs(tag: unknown): boolean {
  if (!isNode(tag)) return false;
  return tag.type === 'CallExpression' ? isNode(tag.callee) && tag.callee.name === 'plural' : tag.name === 'en';
}

/** The phrases of one file, in the order in which they stand there. */
export function phrasesOf(place: string, code: string): readonly string[] {
  const found: string[] = [];
  const look = (node: unknown): void => {
    if (Array.isArray(node)) for (const one of node) look(one);
    if (!isNode(node)) return;
    if (node.type === 'TaggedTemplateExpression' && isOurs(node.tag)) {
      const { quasis } = node.quasi as { readonly quasis: readonly { readonly value: { readonly cooked: string } }[] };
      found.push(phraseOf(quasis.map(({ value }) => value.cooked)));
    }
    for (const value of Object.values(node)) if (typeof value === 'object') look(value);
  };
  const { program, errors } = parseSync(place, code);
  if (errors.length > 0) throw new Error(`${place}: ${errors[0]?.message}`);
  look(program);
  return [...new Set(found)];
}

/** What the keys of the shop file are called. */
const keysSaid = (): readonly string[] =>
  schemaLeaves()
    .flatMap(({ steps }) => steps)
    .filter((key) => /[a-z]/.test(key))
    .map((key) => placeText([key]));

/** Every phrase once, under the first file that says it, so that a translator sees what it is about. */
export function dictionary(root: string): Readonly<Record<string, Readonly<Record<string, string>>>> {
  const seen = new Set<string>();
  const files: Record<string, Record<string, string>> = {};
  for (const place of ROOMS.flatMap((room) => sourcesUnder(root, room))) {
    const said = phrasesOf(place, readFileSync(path.join(root, place), 'utf8'));
    const fresh = [...said, ...(place === SCHEMA ? new Set(keysSaid()) : [])].filter((phrase) => !seen.has(phrase));
    for (const phrase of fresh) seen.add(phrase);
    if (fresh.length > 0) files[place] = Object.fromEntries(fresh.map((phrase) => [phrase, phrase]));
  }
  return files;
}

const sourcesUnder = (root: string, room: string): readonly string[] =>
  readdirSync(path.join(root, room), { recursive: true, encoding: 'utf8' })
    .map((place) => `${room}/${place.replaceAll('\\', '/')}`)
    .filter((place) => /\.tsx?$/.test(place) && !place.endsWith('.d.ts'))
    .sort();
