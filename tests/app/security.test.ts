import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { brokenBuild, removeBuild, wholeBuild } from '../harness/broken.ts';
import { launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { BREAKS, NOT_SHOWN } from './securityBreaks.ts';
import { RULES, type Rule } from './securityRules.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** Starts a build, or the one that ships, and holds a rule against it. */
async function hold(rule: Rule, build?: string): Promise<void> {
  const app = await launch(browser, { ...rule.choices, ...(build === undefined ? {} : { build }) });
  try {
    await rule.holds(app);
  } finally {
    await app.close();
  }
}

const rules: readonly (readonly [string, Rule])[] = Object.values(RULES).map((rule) => [rule.what, rule]);

test.each(rules)('%s', (_what, rule) => hold(rule));

test('a copy of the build that is not broken keeps every rule, with the patience given to broken ones', async () => {
  const build = wholeBuild();
  for (const [, rule] of rules) await hold(rule, build);
  removeBuild(build);
});

describe('a build that is broken is found out', () => {
  test.each(BREAKS.map((one) => [one.what, one] as const))('%s', async (_what, { rule, ...change }) => {
    const build = brokenBuild(change);
    await expect(hold(RULES[rule], build)).rejects.toThrow();
    removeBuild(build);
  });
  test('there is a break for every rule, and every number of the checklist has a rule or is named as not shown here', () => {
    expect([...new Set(BREAKS.map(({ rule }) => rule))].sort()).toEqual(Object.keys(RULES).sort());
    const shown = rules.flatMap(([, { checklist }]) => checklist);
    const numbers = [...new Set([...shown, ...NOT_SHOWN.flatMap(({ checklist }) => checklist)])].sort((a, b) => a - b);
    expect(numbers).toEqual(Array.from({ length: 20 }, (_one, index) => index + 1));
  });
});
