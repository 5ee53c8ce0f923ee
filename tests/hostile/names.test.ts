import { describe, expect, test } from 'vitest';
import { readFlags } from '../../core/cli/flags.ts';
import { optionsText } from '../../core/cli/optionsText.ts';
import { quoteText } from '../../core/cli/quoteText.ts';
import { sheetPage } from '../../core/cli/sheetPage.ts';
import { answer } from '../../core/src/answer.ts';
import { bestOptionsCsv, bestOptionsTabbed } from '../../core/src/bestOptionsCsv.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import { firstOption } from '../../core/src/firstOption.ts';
import { answerJson } from '../../core/src/json.ts';
import { withShortNames } from '../../core/src/sheet/paperText.ts';
import { clip, quoted, visible } from '../../core/src/visible.ts';
import { say } from '../file/shop.ts';
import { HOSTILE, hostileDemo, STEERING } from './hostileDemo.ts';

describe('names that hold what no name should', () => {
  const file = hostileDemo();
  const call = (...args: readonly string[]) => {
    const read = readFlags(args);
    if (read.kind !== 'call') throw new Error('no call');
    return read.call;
  };
  const about = ['demo.ratiowright', '--machine', 'bench-1', '--material', 'e12'];
  const found = answer(file, { selection: { machine: 'bench-1', material: 'e12' }, say });
  if (!found.ok) throw new Error('no answer');
  const [first] = found.value.options;
  if (first === undefined) throw new Error('no option');

  test('the file keeps them as they were typed', () => {
    expect(file.machines[0]?.name).toBe(`${HOSTILE}Bench 1`);
  });
  test('a change sheet shows them as codes, and no markup of theirs stands in it', () => {
    const page = sheetPage(found.value, first, call('sheet', ...about, '--number', HOSTILE, '--out', 'a.html', '--workings'));
    expect(page).toContain('[U+202E][U+001B][31mX');
    expect(page).not.toMatch(STEERING);
    expect(page).not.toContain('<b>&"');
  });
  test('so does a quote page, on paper and as lines', () => {
    const window = call('quote', ...about, '--window', '1:5').window;
    if (window === null) throw new Error('no window');
    const quote = quoteText(
      file,
      window,
      call('quote', ...about, '--window', '1:5', '--customer', HOSTILE, '--note', HOSTILE, '--number', HOSTILE),
    );
    if (!quote.ok) throw new Error('no quote');
    for (const text of [quote.value.html(), quote.value.text]) {
      expect(text).toContain('[U+202E][U+001B][31mX');
      expect(text).not.toMatch(STEERING);
    }
    expect(quote.value.html()).not.toContain('<b>&"');
  });
  test('lists, findings, JSON and tables carry none of them', () => {
    expect(optionsText(found.value, 12, 'closest', say)).not.toMatch(STEERING);
    expect(JSON.stringify(answerJson({ ...found.value, options: [first] }, true))).not.toMatch(STEERING);
    const targets = file.materials.flatMap(({ id }) => {
      const plan = resolve(file, { machine: 'bench-1', material: id }, say);
      return plan.ok ? [{ id, name: plan.value.material.name, plan: plan.value, best: firstOption(plan.value) }] : [];
    });
    expect(targets.length).toBeGreaterThan(0);
    expect(bestOptionsCsv(targets, say).replaceAll('\r\n', '\n')).not.toMatch(STEERING);
    expect(bestOptionsTabbed(targets, say).replaceAll('\r\n', '\n').replaceAll('\t', '')).not.toMatch(STEERING);
  });
  test('a name with signs that mean something in a replacement is cut like any other', () => {
    const name = '$& $1 $$ nnnnnnnnnnnnnnnnnnnn';
    const { plan } = found.value;
    const named = { ...plan, stages: plan.stages.map((stage) => ({ ...stage, name })) };
    expect(withShortNames(named, `${name} driver clears.`)).toBe('$& $1 $$ nnnnnnnnnn… driver clears.');
  });
});

describe('visible', () => {
  test('the examples of its docstrings', () => {
    expect(visible('E12\u001B[31m')).toBe('E12[U+001B][31m');
    expect(clip('Polyurethane', 5)).toBe('Poly…');
    expect(quoted('08B')).toBe('"08B"');
  });
  test('all of the C0 and C1 control functions [ECMA-48: 00 to 1F, 7F and 80 to 9F, from memory] and the marks of direction [UAX #9, table 1: 061C, 200E, 200F, 202A to 202E, 2066 to 2069, from memory]', () => {
    const range = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, index) => from + index);
    const steering = [...range(0, 0x1f), ...range(0x7f, 0x9f), 0x61c, 0x200e, 0x200f, ...range(0x202a, 0x202e), ...range(0x2066, 0x2069)];
    const breaks = new Set([9, 10, 11, 12, 13, 0x85]);
    for (const code of steering)
      expect(visible(`a${String.fromCharCode(code)}b`)).toBe(
        breaks.has(code) ? 'a b' : `a[U+${code.toString(16).toUpperCase().padStart(4, '0')}]b`,
      );
  });
  test.each(['', 'Bench 1', '5 °C, −2,5 %', 'שרף', 'راتنج', 'смола', '樹脂', 'é', '👩‍🔧', '\u00A0', 'a\u200Cb'])(
    '"%s" stays as it is',
    (text) => {
      expect(visible(text)).toBe(text);
    },
  );
  test('a text cut in the middle of a wide character shows no half of it', () => {
    for (let most = 1; most < 9; most++) expect(clip('🜂🜃🜄🜁🜂🜃🜄🜁', most)).not.toMatch(/\p{Cs}|U\+D8/u);
  });
});
