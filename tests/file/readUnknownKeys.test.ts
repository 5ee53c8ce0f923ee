import { describe, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/file/read.ts';
import type { Place } from '../../core/src/finding.ts';
import { MACHINE, MATERIAL, PIECE, SPEED, STAGE } from './refusedFile.ts';
import { type Change, demoText, demoWith, lines, opened } from './shop.ts';

describe('keys that this version does not know', () => {
  const warned = (...changes: readonly Change[]) => {
    const read = readShopFile(demoWith(...changes));
    expect(read.ok).toBe(true);
    for (const finding of read.findings) expect(finding).toMatchObject({ check: 'file.unknownKey', severity: 'warns' });
    return lines(read.findings);
  };
  const lost = (where: Place) =>
    `${where.join(' ')}: "${where.at(-1)}" is not known to this version; it will be lost when the file is saved.`;

  const UNKNOWN: readonly Place[] = [
    ['colour'],
    [...MACHINE, 'colour'],
    [...PIECE, 'bore', 'tolerance'],
    ['constructor'],
    [...MATERIAL, 'A', 'toString'],
  ];
  test.each(UNKNOWN.map((where) => [where.join(' '), where] as const))('open with a warning that names them: %s', (_what, where) => {
    expect(warned([where, 'green'])).toEqual([lost(where)]);
  });
  test('each is named where there are several', () => {
    const places: readonly Place[] = [
      ['shop', 'town'],
      [...SPEED, 'note'],
      [...STAGE, 'driver', 'hub'],
    ];
    expect([...warned(...places.map((where): Change => [where, 1]))].sort()).toEqual(places.map(lost).sort());
  });
  test('"__proto__" is a key like any other and changes nothing', () => {
    const text = demoText()
      .replace('{', '{ "__proto__": { "machines": [], "polluted": true },')
      .replace('"motor": {', '"motor": { "__proto__": 5,');
    const read = readShopFile(text);
    expect(lines(read.findings)).toEqual([lost(['__proto__']), lost([...MACHINE, 'motor', '__proto__'])]);
    expect(read.ok && read.value).toEqual(opened(demoText()));
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });
});
