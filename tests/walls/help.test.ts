import { expect, test } from 'vitest';
import { schemaLeaves } from '../../core/src/file/schemaLeaves.ts';
import { lineAt } from '../../core/src/help/fieldHelp.ts';
import { FIELD_PAGES } from '../../core/src/help/fields/index.ts';
import { begins } from '../../core/src/help/match.ts';
import { codeOf, filesUnder } from './sources.ts';

const views = filesUnder('renderer/src', '.tsx').filter((place) => !place.startsWith('renderer/src/help/'));
const source = views.map(codeOf).join('\n');
/** Tags of boxes, up to the next tag; a picker of files is pressed by a button beside it. */
const boxes = views.flatMap((place) =>
  [...codeOf(place).matchAll(/<(?:input|select|textarea)\b[^<]*/g)]
    .map(([tag]) => ({ place, tag }))
    .filter(({ tag }) => !tag.includes('type="file"')),
);
const NAME = /\b(?:name|id)="([^"]+)"/g;

/** Boxes that the shop file does not keep: those with a name of their own, and those with a place beside it. */
const names = new Set([
  ...boxes.filter(({ tag }) => !tag.includes('data-place')).flatMap(({ tag }) => [...tag.matchAll(NAME)].map(([, name = '']) => name)),
  ...[...source.matchAll(/place=\{\[((?:'\w+',? ?)+)\]\}/g)].map(([, steps = '']) => steps.replace(/[' ]/g, '').replaceAll(',', '.')),
]);

test('every box of the window has a place, or a name, under which help knows it', () => {
  expect(boxes.length).toBeGreaterThan(15);
  expect(boxes.filter(({ tag }) => !/data-place=|\b(?:name|id)="/.test(tag))).toEqual([]);
  expect(names.size).toBeGreaterThan(15);
  expect([...names].filter((name) => lineAt(name) === null)).toEqual([]);
});

test('no line of help is without its box or its field', () => {
  const leaves = schemaLeaves();
  const inFile = (place: string) => leaves.some(({ steps }) => begins(place, steps));
  // `form.place('newBore')`: beside what the file keeps.
  const inForm = (place: string) => new RegExp(`\\bplace\\([^)]*'${place.split('.').at(-1)}'\\)`).test(source);
  const orphans = FIELD_PAGES.flatMap(({ lines }) => lines).filter(({ place }) => !inFile(place) && !names.has(place) && !inForm(place));
  expect(orphans.map(({ place }) => place)).toEqual([]);
});
