import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { damageIn } from '../../core/src/file/damage.ts';
import { demoText } from './shop.ts';

describe('where a damaged text goes wrong', () => {
  test('the example of its docstring', () => {
    expect(damageIn('{"teeth": 21,}')).toEqual({ line: 1, column: 14, expected: 'a name in quotation marks' });
  });
  test.each([
    ['{"a" 1}', 6, 'a colon'],
    ['{"a": }', 7, 'a value'],
    ['{"a": 01}', 7, 'a value'],
    ['{"a": .5}', 7, 'a value'],
    ['{"a": 1 "b": 2}', 9, 'a comma or a closing bracket'],
    ['{"a": [1, 2}', 12, 'a comma or a closing bracket'],
    ['{"a": [1,]}', 10, 'a value'],
    ['[', 2, 'a value or "]"'],
    ['{', 2, 'a name in quotation marks or "}"'],
    ["{'a': 1}", 2, 'a name in quotation marks or "}"'],
    ['{"a": "b}', 7, 'a value'],
    ['{"a": "\\x"}', 7, 'a value'],
    ['{"a": "\\u12G4"}', 7, 'a value'],
    ['{"a": tru}', 7, 'a value'],
    ['{} {}', 4, 'the end of the file'],
    ['{"a": {"b": [true, null, "c\\"d", -1.5e+3]}} x', 45, 'the end of the file'],
  ])('%s [ECMA-404]', (text, column, expected) => {
    expect(() => JSON.parse(text)).toThrow(SyntaxError);
    expect(damageIn(text)).toEqual({ line: 1, column, expected });
  });
  test('the line is the one that the engine names too, where it names a place', () => {
    const whole = JSON.stringify(JSON.parse(demoText()).machines[0], null, 1);
    let named = 0;
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.constantFrom('', '"', ',', '}', ']', ':', 'x', '0', '\n', '\\', '{'), (at, sign) => {
        const text = whole.slice(0, at) + sign + whole.slice(at + 1);
        const position = Number(/at position (\d+)/.exec(parseError(text))?.[1] ?? Number.NaN);
        fc.pre(!Number.isNaN(position));
        named += 1;
        expect(damageIn(text).line).toBe(text.slice(0, position).split('\n').length);
      }),
      { numRuns: 500 },
    );
    expect(named).toBeGreaterThan(100);
  });
  test('a text cut short is followed to its end, but for what it has only begun', () => {
    const whole = JSON.stringify(JSON.parse(demoText()).materials[0]);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: whole.length - 1 }), (end) => {
        const { line, column } = damageIn(whole.slice(0, end));
        const rest = whole.slice(column - 1, end);
        expect(line).toBe(1);
        expect(rest === '' || /^"/.test(rest) || /^[a-z]+$/.test(rest)).toBe(true);
      }),
    );
  });

  function parseError(text: string): string {
    try {
      JSON.parse(text);
      return '';
    } catch (error) {
      return error instanceof Error ? error.message : '';
    }
  }
});
