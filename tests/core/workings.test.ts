import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { optionFacts } from '../../core/src/facts/index.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { planOption } from '../../core/src/option.ts';
import type { Plan } from '../../core/src/plan.ts';
import { fittedPumps, fittedTeeth } from '../../core/src/train.ts';
import { workingText } from '../../core/src/workingText.ts';
import { say } from './planFixture.ts';
import { chainOf, expectPrinted } from './printedFormula.ts';

// What is printed as a formula must be what was computed: an expression library evaluates the printed text with the numbers put in.

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
  const shown = optionFacts(plan, option, say).flatMap(({ facts }) => facts.flatMap(({ working }) => working ?? []));
  const workings = shown.flatMap(chainOf);

  test('every printed formula gives the printed result [mathjs, npm]', () => {
    expect(workings.length).toBeGreaterThan(10);
    for (const worked of shown) expectPrinted(worked);
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
