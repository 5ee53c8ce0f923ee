import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { command, examples, ratiowright } from './run.ts';

const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-hostile-'));
const place = (name: string) => path.join(folder, name);
const demo = readFileSync(path.join(examples, 'demo.ratiowright'), 'utf8');
const ABOUT = ['--machine', 'bench-1', '--material', 'e12'];

/** What steers a terminal: all but our own line ends. */
const STEERING = /[\p{Bidi_Control}\u2028\u2029]|(?!\n)\p{Cc}/u;

function expectAnswered({ exit, out, err }: ReturnType<typeof ratiowright>): void {
  expect([0, 1, 2]).toContain(exit);
  expect(err).not.toMatch(/\n {4}at |fault of the program/);
  expect(exit === 2 && err === '').toBe(false);
  expect(out.replaceAll('\r\n', '\n').replace(/^\uFEFF/, '')).not.toMatch(STEERING);
  expect(err).not.toMatch(STEERING);
}

describe('a command line that nobody would write', () => {
  const words = fc.constantFrom(
    ...[
      'options',
      'reach',
      'sheet',
      'quote',
      'buy',
      'validate',
      'help',
      'demo.ratiowright',
      'four-gear.ratiowright',
      '.',
      '',
      '-',
      '--',
      '---',
      '-x',
      '--json=',
      '--__proto__',
      '--constructor=1',
      '--toString',
    ],
    ...[
      '--machine',
      'bench-1',
      '--material=e12',
      '--material',
      'e12',
      '--json',
      '--best',
      '--csv',
      '--count',
      '--rows',
      '--rows=0',
      '--rows=1e9',
      '--buy=9',
      '--teeth=5-400',
      '--teeth',
      '400-5',
      '--window=1:5',
      '--window=5:1',
    ],
    ...[
      '--window=1/0:2',
      '--tolerance=-1',
      '--option=0',
      '--try=1:0',
      '--try',
      '1e308:1',
      '--prices==',
      '--date=2026-02-30',
      '--out',
      '--paper=A3',
      '--inch',
      '--comma',
      '\u001B[31m',
      '\u202E',
      '9'.repeat(400),
      'x'.repeat(5000),
    ],
  );
  test('is answered with an exit code and a sentence, never with a trace', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            { weight: 9, arbitrary: words },
            fc.string({ maxLength: 6 }).filter((text) => !text.includes('\0')),
          ),
          { maxLength: 6 },
        ),
        (args) => {
          // what might write a page is tried where it can do no harm
          fc.pre(!args.some((word) => word.startsWith('--out') && word !== '--out'));
          expectAnswered(ratiowright(...args));
        },
      ),
      { numRuns: 60, seed: 3 },
    );
    expect(readdirSync(examples).sort()).toEqual(['demo.ratiowright', 'four-gear.ratiowright', 'three-pair.ratiowright']);
  });
});

describe('a file that is none', () => {
  const FILES: Readonly<Record<string, string | Buffer>> = {
    empty: '',
    zeros: Buffer.alloc(100_000),
    noise: Buffer.from(Array.from({ length: 50_000 }, (_, index) => (index * 7919) % 251)),
    picture: Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'),
    'UTF-16': Buffer.from(`\uFEFF${demo}`, 'utf16le'),
    half: demo.slice(0, demo.length / 2),
    'half a character': Buffer.from(demo).subarray(0, Buffer.from(demo).indexOf('°') + 1),
    brackets: '['.repeat(100_000),
    'a million rows': demo.replace(/"racks": \[/, `"racks": [${'{},'.repeat(1_000_000)}`),
  };
  test.each(Object.keys(FILES))('%s', (name) => {
    writeFileSync(place(name), FILES[name] ?? '');
    for (const word of ['validate', 'options']) {
      const ran = ratiowright(word, place(name));
      expectAnswered(ran);
      expect([ran.exit, ran.out]).toEqual([2, '']);
    }
    const list = ratiowright('reach', 'demo.ratiowright', '--machine', 'bench-1', '--best', '--materials-csv', place(name));
    expectAnswered(list);
    expect(list.exit).toBe(2);
  });
  test('one larger than any shop file is not read at all', () => {
    writeFileSync(place('large'), Buffer.alloc(33 * 1024 * 1024, ' '));
    expect(ratiowright('validate', place('large')).err).toMatch(/has 34603008 bytes; more than 33554432 are not read/);
  });
  test('a folder, a file that is not there, a name with a zero byte in it, and a page that cannot be written', () => {
    mkdirSync(place('folder.html'));
    for (const file of [folder, place('none'), place('none\u001B[2J')]) expectAnswered(ratiowright('validate', file));
    const ran = ratiowright('sheet', 'demo.ratiowright', ...ABOUT, '--out', place('folder.html'));
    expectAnswered(ran);
    expect([ran.exit, ran.err]).toEqual([2, expect.stringContaining('cannot be written')]);
  });
});

describe('what a file may not do to the terminal', () => {
  const NAME = '\u001B]0;owned\u0007\u001B[2J\u009B31m\u202E';
  const json = JSON.parse(demo) as {
    shop: { name: string };
    machines: { id: string; name: string }[];
    materials: { id: string; name: string }[];
  };
  json.shop.name = NAME;
  for (const row of [...json.machines, ...json.materials]) row.name = `${NAME}${row.id}`;
  writeFileSync(place('hostile.ratiowright'), JSON.stringify(json));
  writeFileSync(place('unknown.ratiowright'), demo.replace('"version": 1', `"version": 1, ${JSON.stringify(NAME)}: 1`));
  const WINDOW = ['--window', '1:5'];

  test.each([
    ['options', ...ABOUT],
    ['options', ...ABOUT, '--try', '100:40'],
    ['options', ...ABOUT, '--json', '--rows', '1'],
    ['reach', ...ABOUT, ...WINDOW],
    ['reach', ...ABOUT.slice(0, 2), '--best', '--csv'],
    ['reach', ...ABOUT.slice(0, 2), '--best', '--json'],
    ['quote', ...ABOUT, ...WINDOW],
    ['quote', ...ABOUT, ...WINDOW, '--json', '--customer', NAME],
    ['buy', ...ABOUT.slice(0, 2), '--teeth', '13-25', '--most', '1'],
    ['ratio-check', '--all'],
    ['ratio-check', '--all', '--csv'],
    ['ratio-check', '--check', 'check-0001'],
    ['ratio-check', '--check', 'check-0001', '--json'],
    ['validate'],
  ])('%s %s %s %s %s %s', (word, ...flags) => {
    for (const name of ['hostile', 'unknown']) {
      const ran = ratiowright(word, place(`${name}.ratiowright`), ...flags);
      expectAnswered(ran);
      expect(ran.exit).toBeLessThan(2);
      if (flags.includes('--json')) expect(JSON.parse(ran.out)).toBeInstanceOf(Object);
    }
  });
  test('nor may a flag', () => {
    expectAnswered(ratiowright(NAME, NAME, `--${NAME}`));
    expect(ratiowright('options', 'demo.ratiowright', '--machine', NAME).err).toContain('[U+001B]');
  });
});

test('whoever reads may stop before the end', async () => {
  // npm tells from where it was called, and paths are read from there
  const { INIT_CWD: _npm, ...env } = process.env;
  const ran = spawn(process.execPath, [command, 'options', 'demo.ratiowright', ...ABOUT, '--json'], { cwd: examples, env });
  let err = '';
  ran.stderr.on('data', (text) => {
    err += String(text);
  });
  ran.stdout.once('data', () => ran.stdout.destroy());
  const exit = await new Promise((resolve) => ran.on('close', resolve));
  expect([exit, err]).toEqual([0, '']);
});
