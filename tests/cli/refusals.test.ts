import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { examples, ratiowright } from './run.ts';

const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-cli-'));
const place = (name: string) => path.join(folder, name);
const demo = JSON.parse(readFileSync(path.join(examples, 'demo.ratiowright'), 'utf8'));

function fileWith(name: string, change: (json: typeof demo) => void): string {
  const json = structuredClone(demo);
  change(json);
  writeFileSync(place(name), JSON.stringify(json));
  return place(name);
}

describe('bad input: exit 2, all of it said on the error output, nothing written', () => {
  test('every wrong flag is named at once', () => {
    const ran = ratiowright('options', 'demo.ratiowright', '--rows', 'many', '--teeth', '40-13', '--colour', '--paper', 'A4', '--buy');
    expect(ran.exit).toBe(2);
    expect(ran.out).toBe('');
    for (const word of ['--rows', '--teeth', '--colour', '--paper', '--buy']) expect(ran.err).toContain(word);
  });
  test('an unknown command, no command and a missing file', () => {
    expect(ratiowright('calculate', 'demo.ratiowright').err).toContain('"calculate" is no command');
    expect(ratiowright('options').err).toContain('needs a shop file');
    const ran = ratiowright('options', place('not-there.ratiowright'));
    expect([ran.exit, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain('cannot be read');
  });
  test('a flag that is given twice, or with a value it does not take', () => {
    expect(ratiowright('options', 'demo.ratiowright', '--rows', '2', '--rows', '3').err).toContain('given twice');
    expect(ratiowright('options', 'demo.ratiowright', '--json=yes').err).toContain('takes no value');
  });
  test('which machine is meant must be said where there are two', () => {
    const ran = ratiowright('options', 'demo.ratiowright', '--material', 'e12');
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain('bench-1, bench-2');
    expect(ratiowright('options', 'demo.ratiowright', '--machine', 'bench-9', '--material', 'e12').err).toContain(
      'no machine with the id "bench-9"',
    );
  });
  test('all problems of a file together, each with its place', () => {
    const file = fileWith('faults.ratiowright', (json) => {
      json.machines[0].motor.speed.value = 'fast';
      json.machines[0].stages[0].driver.teeth = 2.5;
      json.materials[0].ratio.basis = 'mass';
      json.racks[0].pieces[3].size = '9Z';
      delete json.materials[1].A;
    });
    const ran = ratiowright('validate', file);
    expect([ran.exit, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain('machine 1, motor, speed');
    expect(ran.err).toContain('machine 1, stage 1, driver, teeth');
    expect(ran.err).toContain('material 1, ratio, basis');
    expect(ran.err).toContain('material 2, A');
  });
  test('a newer file is refused with both numbers', () => {
    const ran = ratiowright(
      'validate',
      fileWith('newer.ratiowright', (json) => {
        json.version = 7;
      }),
    );
    expect(ran.exit).toBe(2);
    expect(ran.err).toMatch(/version 7.*version 1/);
  });
  test('a page is never written over a shop file, nor where no option is chosen', () => {
    const args = ['--machine', 'bench-1', '--material', 'e12'];
    expect(ratiowright('sheet', 'demo.ratiowright', ...args, '--out', place('demo.ratiowright')).exit).toBe(2);
    expect(existsSync(place('demo.ratiowright'))).toBe(false);
    expect(ratiowright('sheet', 'demo.ratiowright', ...args).err).toContain('--out');
    const ran = ratiowright(
      'sheet',
      'demo.ratiowright',
      '--machine',
      'bench-1',
      '--material',
      'e12',
      '--rack',
      'main',
      '--option',
      '200',
      '--out',
      place('x.html'),
    );
    expect(ran.exit).toBe(0);
    expect(ratiowright('sheet', 'four-gear.ratiowright', '--option', '201', '--out', place('y.html')).exit).toBe(2);
    expect(existsSync(place('y.html'))).toBe(false);
  });
});

describe('validate and help', () => {
  test.each(['demo', 'four-gear', 'three-pair'])('%s is sound', (name) => {
    const ran = ratiowright('validate', `${name}.ratiowright`);
    expect([ran.exit, ran.err]).toEqual([0, '']);
    expect(ran.out).toContain('sound');
  });
  test('an unknown key opens with a warning', () => {
    const file = fileWith('newKey.ratiowright', (json) => {
      json.machines[0].colour = 'green';
    });
    const ran = ratiowright('validate', file, '--json');
    expect(ran.exit).toBe(0);
    expect(JSON.parse(ran.out).findings[0].where).toEqual(['machines', 0, 'colour']);
  });
  test('help names every command and flag', () => {
    const help = ratiowright('--help');
    expect(help.exit).toBe(0);
    for (const word of ['options', 'sheet', 'validate', '--machine', '--buy', '--teeth', '--any-pump', '--paper', '--json', 'Exit 2']) {
      expect(help.out).toContain(word);
    }
    expect(ratiowright().out).toBe(help.out);
  });
});
