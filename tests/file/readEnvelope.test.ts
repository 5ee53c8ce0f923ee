import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { LARGEST_FILE_BYTES, VERSION } from '../../core/src/file/envelope.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { refused } from './refusedFile.ts';
import { demoText, demoWith, lines } from './shop.ts';

describe('files of every release open without a word', () => {
  const folder = new URL('./files/', import.meta.url);
  const names = readdirSync(folder).filter((name) => name.endsWith('.ratiowright'));

  test('there are some of each version', () => {
    const versions = new Set(names.map((name) => Number(/^v(\d+)-/.exec(name)?.[1])));
    expect([...versions].sort()).toEqual(Array.from({ length: VERSION }, (_, index) => index + 1));
  });
  test.each(names)('%s', (name) => {
    const read = readShopFile(readFileSync(new URL(name, folder), 'utf8'));
    expect(lines(read.findings)).toEqual([]);
    expect(read.ok && read.value.version).toBe(VERSION);
  });
});

describe('what is not a shop file', () => {
  test.each([
    ['empty text', '', ': The file is empty.'],
    ['spaces only', ' \n', ': The file is empty.'],
    ['plain words', 'ratio 2:1', ': This is not a shop file, or it is damaged: line 1, column 1 should have a value.'],
    ['a list', '[]', ': This is not a shop file: it should hold an object in braces.'],
    ['a number', '12', ': This is not a shop file: it should hold an object in braces.'],
    ['nothing', 'null', ': This is not a shop file: it should hold an object in braces.'],
    ['a text cut short', '{\n  "format": "rati', ': The file is damaged: line 2, column 13 should have a value.'],
    [
      'a text that ends too early',
      '{\n  "version": 1',
      ': The file is damaged: line 2, column 15 should have a comma or a closing bracket.',
    ],
    ['a comma too many', '{\n  "format": 1,\n}', ': The file is damaged: line 3, column 1 should have a name in quotation marks.'],
    ['no format', '{}', 'format: This is not a shop file: its format should read "ratiowright shop file".'],
    [
      'another format',
      '{"format": "spreadsheet", "version": 1}',
      'format: This is not a shop file: its format should read "ratiowright shop file".',
    ],
    ['no version', '{"format": "ratiowright shop file"}', 'version: The version must be a whole number, 1 or more.'],
    ['a version in words', demoWith([['version'], '1']), 'version: The version must be a whole number, 1 or more.'],
    ['version 0', demoWith([['version'], 0]), 'version: The version must be a whole number, 1 or more.'],
    [
      'a newer version',
      demoWith([['version'], 7], [['machines'], 'in some new form']),
      `version: The file is version 7, this program reads up to version ${VERSION}: open it with a newer Ratiowright.`,
    ],
  ])('%s', (_what, text, line) => {
    expect(refused(text)).toEqual([line]);
  });
  test('more than the largest file', () => {
    expect(refused(' '.repeat(LARGEST_FILE_BYTES + 1))).toEqual([': The file is larger than 32 MB and was not read.']);
  });
  test('a byte order mark is let through', () => {
    expect(readShopFile(`\uFEFF${demoText()}`)).toEqual(readShopFile(demoText()));
  });
});
