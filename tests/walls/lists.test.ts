import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { optionChecks, pairChecks } from '../../core/src/checks/index.ts';
import { driveKinds } from '../../core/src/drives/index.ts';
import { CHECK_REASONS } from '../../core/src/help/checkReasons.ts';
import { codeOf, filesUnder, textOf } from './sources.ts';

const checks = [...pairChecks, ...optionChecks];
const nameOf = (id: string): string => id.split('.').at(-1) ?? id;
const namesUnder = (folder: string, ending: string) =>
  filesUnder(folder, ending)
    .map((place) => path.posix.basename(place, ending))
    .sort();

describe('checks', () => {
  test('every file of the folder is in a list once, under its own name, and has a test', () => {
    const files = namesUnder('core/src/checks', '.ts').filter((name) => name !== 'index');
    expect(checks.map(({ id }) => nameOf(id)).sort()).toEqual(files);
    expect(namesUnder('tests/core/checks', '.test.ts')).toEqual(files);
  });
  test.each(checks.map((check) => [check.id, check] as const))(
    '%s has an id of its own, a title, a source, and a reason in help',
    (id, check) => {
      expect(id).toMatch(/^(slot|stage|option)\.[a-z][A-Za-z]+$/);
      expect(checks.filter((other) => other.id === id)).toHaveLength(1);
      expect(textOf(`core/src/checks/${nameOf(id)}.ts`)).toContain(`id: '${id}'`);
      expect(check.title).toMatch(/^[A-Z].{3,}[^.]$/);
      for (const words of [check.source, CHECK_REASONS[id] ?? '']) expect(words.trim().length).toBeGreaterThan(10);
      expect(['blocks', 'warns', 'notes']).toContain(check.worst);
    },
  );
  test('help gives no reason for a check that there is not', () => {
    expect(Object.keys(CHECK_REASONS).sort()).toEqual(checks.map(({ id }) => id).sort());
  });
  test('what never blocks says so: the worst a file says is the worst it announces', () => {
    const said = (name: string): readonly string[] =>
      [...codeOf(`core/src/checks/${name}.ts`).matchAll(/'(blocks|warns|notes)'/g)].map(([, word]) => word ?? '');
    for (const { id, worst } of checks) {
      const order = ['blocks', 'warns', 'notes'];
      expect(order.indexOf(worst), id).toBe(Math.min(...said(nameOf(id)).map((word) => order.indexOf(word))));
    }
  });
  test('a bit for each check, and one is left for the sign', () => {
    expect(checks.length).toBeLessThanOrEqual(30);
  });
});

describe('drive kinds', () => {
  const offersAKind = (place: string): boolean => /export const \w+: DriveKind\b/.test(codeOf(place));

  test('every file that offers a kind is in the list, under its own name, and has a test', () => {
    const files = filesUnder('core/src/drives', '.ts')
      .filter(offersAKind)
      .map((place) => path.posix.basename(place, '.ts'));
    expect(files.length).toBeGreaterThan(0);
    expect(driveKinds.map(({ kind }) => kind).sort()).toEqual(files.sort());
    const tests = namesUnder('tests/core/drives', '.test.ts');
    for (const name of files)
      expect(
        tests.filter((one) => one.startsWith(name)),
        name,
      ).not.toEqual([]);
  });
  test.each(driveKinds.map((kind) => [kind.kind, kind] as const))(
    '%s has its words, its sizes and a source for smooth running',
    (_name, kind) => {
      for (const word of Object.values(kind.words)) expect(word).not.toBe('');
      expect(kind.sizes.length).toBeGreaterThan(0);
      for (const size of kind.sizes) expect([size, kind.size(size), kind.sameSize(size, size)]).toEqual([size, size, true]);
      expect(kind.smooth.source.length).toBeGreaterThan(10);
    },
  );
});
