import { readFileSync } from 'node:fs';
import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { optionFacts } from '../../core/src/facts/index.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { planOption } from '../../core/src/option.ts';
import type { Plan } from '../../core/src/plan.ts';
import { fittedPumps, fittedTeeth } from '../../core/src/train.ts';
import { isWorked, type Worked } from '../../core/src/working.ts';
import { workingText } from '../../core/src/workingText.ts';
import { say } from './planFixture.ts';

// What is printed as a formula must be what was computed. mathjs, an expression library from npm, evaluates the printed text with the
// numbers put in; our own code computed the value. All in SI.

/** The printed text as mathjs reads it; each letter becomes a plain name, longer ones first. */
function evaluated({ formula, put }: Worked): number {
  const letters = put.map(([letter]) => letter).sort((a, b) => b.length - a.length);
  const scope: Record<string, number> = {};
  let text = formula.written.replaceAll('·', '*').replaceAll('−', '-').replaceAll('π', 'pi');
  for (const [index, letter] of letters.entries()) {
    const escaped = letter.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
    text = text.replace(new RegExp(`(?<![\\p{L}_])${escaped}(?![\\p{L}\\p{N}_])`, 'gu'), `put_${index}_`);
    scope[`put_${index}_`] = Number(put.find(([name]) => name === letter)?.[1].value);
  }
  return Number(evaluate(text, scope));
}

/** A working and all that it rests on. */
function chain(worked: Worked): readonly Worked[] {
  return [worked, ...worked.put.flatMap(([, input]) => (isWorked(input) ? chain(input) : []))];
}

const EXAMPLES = ['demo', 'four-gear', 'three-pair'] as const;

function plansOf(name: string): readonly (readonly [string, Plan])[] {
  const read = readShopFile(readFileSync(new URL(`../examples/${name}.ratiowright`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(`${name} does not open`);
  return pairsOf(read.value).map(([machine, material]) => {
    const outcome = resolve(read.value, { machine, material }, say);
    if (!outcome.ok) throw new Error(outcome.findings.map(({ what }) => what).join('\n'));
    return [`${name}, ${machine}, ${material}`, outcome.value] as const;
  });
}

const pairsOf = (file: ShopFile) => file.machines.flatMap(({ id }) => file.materials.map((material) => [id, material.id] as const));

describe.each(EXAMPLES.flatMap(plansOf))('workings of what is fitted: %s', (_name, plan) => {
  const option = planOption(plan, fittedPumps(plan), fittedTeeth(plan), say);
  const facts = optionFacts(plan, option, say).flatMap((group) => group.facts);
  const workings = facts.flatMap(({ working }) => (working === null ? [] : chain(working)));

  test('every printed formula gives the printed result [mathjs, npm]', () => {
    expect(workings.length).toBeGreaterThan(10);
    for (const worked of workings) {
      const value = Number(worked.value);
      expect(Math.abs(evaluated(worked) - value), `${worked.what}: ${worked.formula.written}`).toBeLessThanOrEqual(
        1e-9 * Math.max(Math.abs(value), 1e-12),
      );
    }
  });

  test('every letter of a formula is put in, and nothing else is', () => {
    for (const { what, formula, put } of workings) {
      const words = formula.written.replace(
        /\b(?:sqrt|sin|cos|tan|asin|acos|atan|round|floor|ceil|min|max|abs)\b|π|\d(?:\.\d+)?(?:e-?\d+)?/g,
        ' ',
      );
      const letters = new Set(words.match(/\p{L}[\p{L}\p{N}₀-₉_]*/gu) ?? []);
      expect([...letters].sort(), what).toEqual([...new Set(put.map(([letter]) => letter))].sort());
    }
  });

  test('every working says its name, its numbers and where it comes from', () => {
    for (const worked of workings) {
      const text = workingText(worked, say);
      expect(worked.formula.source.length, worked.what).toBeGreaterThan(6);
      expect(text.numbers).not.toMatch(/NaN|undefined|Infinity/);
      expect(text.result).not.toMatch(/NaN|undefined|Infinity/);
      for (const { what } of text.put) expect(what.length, worked.what).toBeGreaterThan(0);
    }
  });
});
