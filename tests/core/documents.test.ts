// Golden documents of the invented example: documented JSON, help, and the words of the pages. They catch changes; what is true of
// the figures is tested apart.
import { describe, expect, test } from 'vitest';
import { bestOptionLines, bestOptionsJson, type Target } from '../../core/src/bestOptions.ts';
import {
  measuredRatioText,
  smallestText,
  spreadText,
  teethText,
  unstableText,
  verdictRuleText,
  wantedText,
} from '../../core/src/checkPageWords.ts';
import { comparison } from '../../core/src/comparison.ts';
import { driftCurve } from '../../core/src/driftCurve.ts';
import { SCRIPT_SAY } from '../../core/src/figuresJson.ts';
import { knownRatioOf } from '../../core/src/file/mixOf.ts';
import { firstOption } from '../../core/src/firstOption.ts';
import { CHECK_REASONS } from '../../core/src/help/checkReasons.ts';
import { limitsOf } from '../../core/src/help/fieldHelp.ts';
import { FIELD_PAGES } from '../../core/src/help/fields/index.ts';
import { FIRST_CHANGE } from '../../core/src/help/firstChange.ts';
import { PAGE_HELP, START_HELP } from '../../core/src/help/pageHelp.ts';
import { WORDS } from '../../core/src/help/words/index.ts';
import { type Answer, answer, answerJson } from '../../core/src/index.ts';
import { buildOf, mountedOf } from '../../core/src/layOut.ts';
import { materialReach } from '../../core/src/materialReach.ts';
import { SIDES } from '../../core/src/plan.ts';
import { productText } from '../../core/src/productText.ts';
import { exactText, Fraction, ratioOf, whole } from '../../core/src/ratio.ts';
import {
  deliveryText,
  furtherText,
  intervalBasis,
  meetingText,
  proposalText,
  verdictHead,
  verdictReason,
} from '../../core/src/ratioCheckWords.ts';
import { reachOf } from '../../core/src/reach/reach.ts';
import { reachJson } from '../../core/src/reachJson.ts';
import { reachSentences } from '../../core/src/reachWords.ts';
import { chemistrySentences, formRows, formText, limitsText, ratioSentence, wrongBasisText } from '../../core/src/sheetForms.ts';
import { stageFacts } from '../../core/src/stageFacts.ts';
import { meetingTexts, trendTable } from '../../core/src/trendTable.ts';
import { recorded } from './sheet/demoRecord.ts';
import { demoFile, demoPlan, E12_ON_BENCH_1, inch, made, metric, U40_ON_BENCH_2 } from './sheet/demoSheet.ts';

const golden = (name: string): string => `../golden/${name}.txt`;
const inFull = (_: string, value: unknown): unknown => (value instanceof Fraction ? exactText(value) : value);
const text = (json: unknown): string => `${JSON.stringify(json, inFull, 1).replaceAll('\u00a0', '~')}\n`;

describe('documented JSON', () => {
  /** The first of everything that is listed, with fewer figures where they fill the page. */
  function optionsOf(machine: string, material: string): Answer {
    const found = answer(demoFile(), { selection: { machine, material, anyPump: true }, say: SCRIPT_SAY });
    if (!found.ok) throw new Error(found.findings[0].what);
    const { options, best, tradeOff, blocked } = found.value;
    return {
      ...found.value,
      options: options.slice(0, 1),
      best: best.slice(0, 1),
      tradeOff: tradeOff.slice(0, 0),
      blocked: { ...blocked, options: blocked.options.slice(0, 1) },
    };
  }
  test.each([
    ['bench-1', 'e12'],
    ['bench-2', 'u40'],
  ])('options on %s for %s', async (machine, material) => {
    await expect(text(answerJson(optionsOf(machine, material)))).toMatchFileSnapshot(golden(`json-options-${machine}-${material}`));
  });

  test('the reach of Bench 1 from 4 to 5', async () => {
    const plan = demoPlan({ selection: { machine: 'bench-1', material: 'e12' } });
    const reach = reachOf(plan, { low: whole(4), high: whole(5), tolerance: ratioOf(1, 50), bins: 4 });
    await expect(text({ json: reachJson(plan, reach), said: reachSentences(reach, metric) })).toMatchFileSnapshot(
      golden('json-reach-bench-1'),
    );
  });

  test('every material with its best option, as JSON and as the cells of a table', async () => {
    const targets = demoFile().materials.map(({ id, name }): Target => {
      const plan = demoPlan({ selection: { machine: 'bench-2', material: id } });
      return { id, name, plan, best: firstOption(plan) };
    });
    const all = [...targets, { id: 'x', name: 'Lacking', plan: null, missing: ['The ratio is not given.'] }];
    const found = { json: bestOptionsJson(all, metric), lines: bestOptionLines(all, inch) };
    await expect(text(found)).toMatchFileSnapshot(golden('json-best-options-bench-2'));
  });
});

test('help: every box with its limits, every page, word, check and step', async () => {
  const lines = FIELD_PAGES.map((page) => ({
    title: page.title,
    lines: page.lines.map((line) => ({ ...line, limits: limitsOf(line, metric) })),
  }));
  const steps = FIRST_CHANGE.map(({ page, place, what }) => ({ page, place, what }));
  const help = { lines, pages: [START_HELP, PAGE_HELP], words: WORDS, checks: CHECK_REASONS, steps };
  await expect(text(help)).toMatchFileSnapshot(golden('help'));
});

describe('the words of the pages', () => {
  test.each([
    ['bench-1', made(E12_ON_BENCH_1), metric],
    ['bench-2', made({ ...U40_ON_BENCH_2, say: inch }), inch],
  ] as const)('option and stages on %s', async (machine, { plan, option, fitted }, say) => {
    const found = {
      limits: plan.mix.limits && limitsText(plan.mix.limits, say),
      product: productText(plan, option, say),
      stages: option.stages.map((stage, index) => stageFacts(plan, stage, fitted.stages[index] ?? stage, say)),
      comparison: comparison(plan, fitted, option, say),
      reach: materialReach(plan, mountedOf(option), say),
      drift: driftCurve(plan, buildOf(plan, mountedOf(option)), say),
    };
    await expect(text(found)).toMatchFileSnapshot(golden(`words-${machine}`));
  });

  test('every material in every form', async () => {
    const file = demoFile();
    const found = file.materials.map((_, index) => {
      const say = index === 1 ? inch : metric;
      const ratio = knownRatioOf(file, index, say) ?? expect.unreachable();
      return {
        ratio: ratioSentence(ratio, say),
        forms: formRows(ratio).map((row) => [row.label, ...[row.mostB, row.wanted, row.leastB].map((value) => formText(row, value, say))]),
        chemistry: ratio.chemistry && chemistrySentences(ratio.chemistry, say),
        wrongBasis: wrongBasisText(ratio, say),
      };
    });
    await expect(text(found)).toMatchFileSnapshot(golden('words-materials'));
  });

  test('what each kept ratio check says', async () => {
    const found = [0, 1, 2].map((index) => {
      const say = index === 1 ? inch : metric;
      const { judged } = recorded({ index, say });
      const { evaluation, smallest, proposal, row } = judged;
      return {
        head: verdictHead(evaluation.verdict),
        reason: verdictReason(evaluation, say),
        basis: intervalBasis(evaluation, say),
        further: evaluation.further && furtherText(evaluation.further, evaluation.weighed, say),
        delivery: SIDES.map((side) => evaluation.delivery[side] && deliveryText(evaluation.delivery[side], say)),
        proposal: proposalText(proposal, say),
        meetings: [meetingText(judged.offRatio, say), ...meetingTexts(judged, say)],
        trend: trendTable(judged, say),
        ratio: measuredRatioText(evaluation, say),
        spread: spreadText(evaluation, say),
        rule: verdictRuleText(evaluation, say),
        unstable: unstableText(evaluation),
        wanted: wantedText(evaluation.input.terms),
        teeth: teethText(row.mounted.teeth),
        smallest: smallest && smallestText(smallest, say),
        causes: judged.causes,
      };
    });
    await expect(text(found)).toMatchFileSnapshot(golden('words-checks'));
  });
});
