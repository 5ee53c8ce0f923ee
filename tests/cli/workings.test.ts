import { mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { input, type Worked } from '../../core/src/working.ts';
import { printedValue } from '../core/printedFormula.ts';
import { ratiowright } from './run.ts';

interface WorkingJson {
  readonly formula: string;
  readonly source: string;
  readonly valueSI: number;
  readonly put: Readonly<Record<string, { readonly what: string; readonly valueSI: number; readonly working?: WorkingJson }>>;
}
interface FigureJson {
  readonly what: string;
  readonly value?: number;
  readonly unit?: string;
  readonly text?: string;
  readonly note?: string;
  readonly working?: WorkingJson;
}
type Figures = Readonly<Record<string, Readonly<Record<string, FigureJson>>>>;
interface AnswerJson {
  readonly options: readonly { readonly figures: Figures }[];
}

const demo = ['demo.ratiowright', '--machine', 'bench-1', '--material', 'e12'] as const;
const jsonText = (...args: readonly string[]) => ratiowright('options', ...demo, '--rows', '1', '--json', ...args).out;
const figuresOf = (text: string): Figures => (JSON.parse(text) as AnswerJson).options[0]?.figures ?? {};

const bare = jsonText();
const worked = jsonText('--workings');

describe('figures of the best option in JSON: E12 on Bench 1, 23 to 25 [invented example, worked out apart from this program]', () => {
  const figures = figuresOf(bare);

  test('every group is there', () => {
    expect(Object.keys(figures)).toEqual(['mix', 'flow', 'load', 'budget', 'drift', 'pumps', 'tanks', 'work', 'stages']);
  });
  /** Half a unit of the last place. */
  const places = (printed: string) => printed.split('.')[1]?.length ?? 0;
  test.each([
    ['mix', 'offRatio', '-0.075', '%'],
    ['mix', 'perHundredA', '38.871', ''],
    ['mix', 'densityA', '1.14790', 'g/cm3'],
    ['flow', 'dial', '63.5', '%'],
    ['flow', 'total', '1001.3', 'cc/min'],
    ['flow', 'flowA', '685.8', 'cc/min'],
    ['flow', 'flowB', '315.5', 'cc/min'],
    ['flow', 'cost', '0.13', '%'],
    ['flow', 'speedB', '52.58', 'rpm'],
    ['load', 'motor', '7.55', 'N m'],
    ['load', 'motorShare', '16.8', '%'],
    ['load', 's1.countedPull', '40', 'N'],
    ['load', 's1.allowedPull', '2543', 'N'],
    ['budget', 'worst', '1.68', '%'],
    ['budget', 'likely', '0.79', '%'],
    ['budget', 'from', '-1.76', '%'],
    ['budget', 'to', '1.61', '%'],
    ['pumps', 'mixerPulsesA', '24.0', ''],
    ['pumps', 'mixerPulsesB', '18.4', ''],
    ['tanks', 'lastsA', '49.6', 'min'],
    ['tanks', 'fillTogether', '19.64', 'L'],
    ['work', 'total', '37', 'min'],
    ['stages', 's1.speed', '0.278', 'm/s'],
  ])('%s.%s is %s %s', (group, id, printed, unit) => {
    expect(figures[group]?.[id]).toMatchObject({ value: expect.closeTo(Number(printed), places(printed)), unit });
  });
  test('the verdict is a word', () => {
    expect(figures.budget?.verdict).toMatchObject({ text: 'inside with margin' });
  });
  test('numbers and words are the same for a shop that reads inches and commas', () => {
    expect(figuresOf(jsonText('--inch', '--comma'))).toEqual(figures);
  });
});

/** A working and all that it rests on, as an expression library is to evaluate it from nothing but this text. */
function steps(what: string, { formula, source, valueSI, put }: WorkingJson): readonly Worked<number>[] {
  const [letter = '', written = ''] = formula.split(' = ');
  const entries = Object.entries(put);
  return [
    {
      what,
      value: valueSI,
      dimension: 'number',
      formula: { letter, written, source },
      put: entries.map(([name, one]) => [name, input(one.what, one.valueSI, 'number')] as const),
    },
    ...entries.flatMap(([, one]) => (one.working === undefined ? [] : steps(one.what, one.working))),
  ];
}
const stepsOf = (figures: Figures) =>
  Object.values(figures).flatMap((group) =>
    Object.values(group).flatMap(({ what, working }) => (working === undefined ? [] : steps(what, working))),
  );

describe('options --json --workings', () => {
  const figures = figuresOf(worked);

  test('adds how each figure came about, and changes nothing else', () => {
    expect(bare).not.toContain('"working"');
    const stripped: unknown = JSON.parse(worked, (key, value) => (key === 'working' ? undefined : value));
    expect(stripped).toEqual(JSON.parse(bare));
  });
  test('every figure that is none as typed and no word has one, with its sources', () => {
    const without = Object.entries(figures).flatMap(([group, ids]) =>
      Object.entries(ids).flatMap(([id, { working }]) => (working === undefined ? [`${group}.${id}`] : [])),
    );
    expect(without).toEqual(['budget.verdict', 'budget.pumpA', 'budget.pumpB']);
    for (const { what, formula } of stepsOf(figures)) expect(formula.source.length, what).toBeGreaterThan(6);
  });
  test('the text alone is enough to work out every figure again [mathjs, npm]', () => {
    const all = stepsOf(figures);
    expect(all.length).toBeGreaterThan(150);
    for (const step of all) {
      const off = Math.abs(printedValue(step) - step.value);
      expect(off, `${step.what}: ${step.formula.written}`).toBeLessThanOrEqual(1e-9 * Math.abs(step.value) + 1e-15);
    }
  });
});

const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-workings-'));

/** A sheet as it is written. */
function sheetText(name: string, ...args: readonly string[]): string {
  const out = path.join(folder, name);
  const ran = ratiowright('sheet', ...demo, '--date', '2026-11-25', '--out', out, ...args);
  expect([ran.exit, ran.err]).toEqual([0, '']);
  return readFileSync(out, 'utf8');
}
/** What is read of a page, a line for each element. */
const readable = (html: string) =>
  html
    .replace(/<br>|<\/(?:div|b|h1|h2|p)>/g, '\n')
    .replace(/<[^>]+>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')
    .replaceAll('\u00a0', ' ');
const workingPagesOf = (html: string) => readable(html.slice(html.indexOf('<section class="work">')));

describe('sheet --workings', () => {
  const html = sheetText('with.html', '--workings');
  const pages = workingPagesOf(html);
  const lines = pages.split('\n').map((line) => line.trim());

  test('follows the sheet as further pages, and leaves the sheet as it is', () => {
    const plain = sheetText('without.html');
    expect(plain).not.toContain('<section class="work">');
    const before = html.slice(0, html.indexOf('<section class="work">'));
    expect(plain.startsWith(before)).toBe(true);
  });
  test('flow of A: Q = D · n with 12 cc/rev and 57.15 rpm is 685.8 cc/min, from the definition of displacement [arithmetic]', () => {
    const at = lines.findIndex((line) => /^\d+ flow of A: 685\.8 cc\/min/.test(line));
    expect(lines[at + 1]).toBe('Q = D · n');
    // 12 · 10⁻⁶ m³ at 0.9525 a second.
    expect(lines[at + 2]).toBe('Q = (1.2 × 10⁻⁵) · 0.9525 = 1.143 × 10⁻⁵ m³/s');
    expect(lines[at + 3]).toMatch(
      /^D = 12 cc\/rev = 1\.2 × 10⁻⁵ m³\/rev, displacement of pump A; n = 57\.15 rpm = 0\.9525 rev\/s, speed of pump A \(\d+\)$/,
    );
    expect(lines[at + 4]).toBe('Source: definition of displacement');
  });
  test('shows every formula that JSON gives, each with its source', () => {
    for (const { what, formula } of stepsOf(figuresOf(worked))) {
      expect(lines, what).toContain(`${formula.letter} = ${formula.written}`);
      expect(lines, what).toContain(`Source: ${formula.source}`);
    }
  });
  test('a shop with a decimal comma and inches reads its own numbers, and SI beside them', () => {
    const own = workingPagesOf(sheetText('own.html', '--workings', '--comma', '--inch'));
    // 685.8 cc/min over 16.387064 cc [NIST SP 811, exact, from memory].
    expect(own).toMatch(/flow of A: 41,8501 in³\/min \(1,143 × 10⁻⁵ m³\/s\)/);
    expect(own).not.toMatch(/\d\.\d+ (?:in|ft|lbf|mm|m³)/);
  });
});

test('--workings belongs to options, sheet and ratio-check: validate refuses it, and help says what it does', () => {
  const ran = ratiowright('validate', 'demo.ratiowright', '--workings');
  expect(ran.exit).toBe(2);
  expect(ran.err).toContain('--workings');
  expect(ratiowright('--help').out).toMatch(/--workings +with JSON: how each figure came about; on paper: as further pages/);
});

test('workings are half a megabyte an option: one unless more are asked for, and only in JSON', () => {
  const { options } = JSON.parse(ratiowright('options', ...demo, '--json', '--workings').out) as AnswerJson;
  expect(options).toHaveLength(1);
  const refused = ratiowright('options', ...demo, '--workings');
  expect(refused.exit).toBe(2);
  expect(refused.err).toContain('add --json');
});
