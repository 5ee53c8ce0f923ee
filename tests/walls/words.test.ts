import { execFileSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { filesUnder, ROOT, textOf } from './sources.ts';

const WRITTEN = /\.(?:ts|tsx|mjs|css|html|md|json|ratiowright|csv|svg|yml)$|^\.ci\/run$/;

/** What is kept of the project: all that git tracks or would; where git is not at hand, all that is written. */
function keptFiles(): readonly string[] {
  try {
    const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
      cwd: ROOT,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    return listed.split('\n').filter((place) => place !== '' && WRITTEN.test(place));
  } catch {
    return filesUnder('').filter((place) => WRITTEN.test(place));
  }
}

/** Put together here, so that this file does not hold them. */
const said = (...parts: readonly string[]): string => parts.join('');

const NOWHERE: readonly (readonly [string, RegExp])[] = [
  ['a path of one machine', new RegExp(said('/wo', 'rk/|/ho', 'me/\\w|/Us', 'ers/\\w|[A-Z]:\\\\Us', 'ers|/tmp/\\w|bash', '_jobs'))],
  [
    'where a figure was found rather than who printed it',
    new RegExp(said('\\btrans', 'cripts?\\b|\\bse', 'ed docu', 'ments?\\b|\\bshared', '/|\\bdemo-', 'scenario'), 'i'),
  ],
  ['work left undone', new RegExp(said('\\bTO', 'DO\\b|\\bFIX', 'ME\\b|\\bXX', 'X\\b|not ', 'implemented'))],
];
const IN_TESTS = new RegExp(said('\\.on', 'ly\\(|\\.sk', 'ip\\(|\\.to', 'do\\(|\\bx(?:it|test|describe)\\('));

const kept = keptFiles().filter((place) => !place.endsWith('package-lock.json'));

describe('words that no file holds', () => {
  test('the files are found', () => {
    expect(kept).toContain('core/src/ratio.ts');
    expect(kept.length).toBeGreaterThan(100);
  });
  test.each(NOWHERE)('%s', (_what, pattern) => {
    const lines = kept.flatMap((place) =>
      textOf(place)
        .split('\n')
        .flatMap((line, index) => (pattern.test(line) ? [`${place}:${index + 1}: ${line.trim()}`] : [])),
    );
    expect(lines).toEqual([]);
  });
  test('a test that is left out, or one that leaves out the others', () => {
    expect(kept.filter((place) => place.startsWith('tests/') && IN_TESTS.test(textOf(place)))).toEqual([]);
  });
});
