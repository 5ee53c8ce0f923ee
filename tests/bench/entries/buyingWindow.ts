import { planWindowLevels, type Wheel } from '../../../core/src/buying/index.ts';
import type { Need } from '../../../core/src/buying/need.ts';
import { bought, withBought } from '../../../core/src/buying/parts.ts';
import { shopOf } from '../../../core/src/buying/shop.ts';
import { windowWorst } from '../../../core/src/buying/windowWorst.ts';
import { choicesOf } from '../../../core/src/choices.ts';
import type { Plan } from '../../../core/src/plan.ts';
import { exactText, type Fraction, ratioOf } from '../../../core/src/ratio.ts';
import { listReach, reachWithin } from '../../../core/src/search/index.ts';
import { diceOf } from '../../core/search/randomProblem.ts';
import { buyingPlan, rangeOf } from '../buyingShop.ts';
import type { Row } from '../report.ts';
import { timed } from '../timing.ts';
import type { Entry } from './entry.ts';

const SIZES = 60;
const MOST = 4;
const HAND = [12, 14, 17, 20, 23, 25, 30, 36];
const WINDOW = { low: ratioOf(1, 4), high: ratioOf(4, 1), tolerance: ratioOf(1, 100) };
/** Plans that are followed through the window one by one, for their rate. */
const SAMPLE = { quick: 40, full: 200 } as const;

/** So many of them are also listed ratio by ratio. */
const LISTED = 5;

/** The least that up to four of sixty parts leave of a window, beside following every plan through it. */
export const buyingWindow: Entry = {
  name: 'buyingWindow',
  run: ({ form }) => {
    const outcomes = ([1, 2] as const).map((stages) => {
      const plan = buyingPlan({ sizes: SIZES, stages, hand: HAND, limits: '1' }, MOST);
      const name = `window 1/4 to 4, up to ${MOST} of ${SIZES}, ${stages} ${stages === 1 ? 'stage' : 'stages'}`;
      const whole = timed(() => planWindowLevels(plan, WINDOW, { teeth: rangeOf(SIZES), mostPurchases: MOST }));
      const last = whole.value.levels.at(-1);
      const shop = shopOf(plan, { teeth: rangeOf(SIZES), mostPurchases: MOST });
      const needs = sampleNeeds(SAMPLE[form.name]);
      const follow = (need: Need) => windowWorst(shop, need, WINDOW, { tolerance: null, asked: false, hooks: {} }).offRatio;
      // nothing but pairs stands in the way here, so the rules need not be asked: the fastest way to follow a plan
      needs.slice(0, LISTED).map(follow);
      const sampled = timed(() => needs.map(follow));
      const every_ms = (sampled.ms / sampled.value.length) * planCount();
      const rows = [
        rowOf(`${name}, least of each number`, whole.ms, ''),
        rowOf(`${name}, every plan`, every_ms, `rate of ${sampled.value.length} plans times ${planCount()}`),
      ];
      const [first] = last?.plans ?? [];
      const least = last?.offRatio ?? null;
      const differences = [
        ...apart(`${name}, its plan`, least, first === undefined ? null : worstOf(plan, first)),
        ...needs
          .slice(0, LISTED)
          .flatMap((need, i) =>
            apart(`${name}, plan ${need.join()}`, sampled.value[i] ?? null, worstOf(plan, bought(shop.parts, need).wheels)),
          ),
        ...sampled.value.flatMap((off) =>
          off !== null && least !== null && off.compare(least) < 0 ? [`${name}: a plan leaves ${exactText(off)}`] : [],
        ),
      ];
      return {
        rows,
        differences,
        claim: {
          what: `every plan over ${name}`,
          figure: every_ms / whole.ms,
          least: 50,
          unit: 'x',
          note: 'every plan by its rate',
        } as const,
      };
    });
    return {
      rows: outcomes.flatMap(({ rows }) => rows),
      claims: outcomes.map(({ claim }) => claim),
      differences: outcomes.flatMap(({ differences }) => differences),
    };
  },
};

const apart = (what: string, found: Fraction | null, listed: Fraction | null): readonly string[] =>
  found !== null && listed !== null && found.equals(listed)
    ? []
    : [`${what}: ${found && exactText(found)}, listed ${listed && exactText(listed)}`];

/** By listing every ratio. */
function worstOf(plan: Plan, wheels: readonly Wheel[]): Fraction | null {
  const choices = choicesOf(withBought(plan, wheels, null));
  const list = listReach(choices.problem, choices.rules);
  return list && (reachWithin(list, WINDOW, 1).worst?.off ?? null);
}

function sampleNeeds(count: number): readonly Need[] {
  const dice = diceOf(1);
  return Array.from({ length: count }, () => Array.from({ length: MOST }, () => dice.between(0, SIZES - 1)).sort((a, b) => a - b));
}

/** Multisets of 0 to 4 of 60. */
const planCount = (): number => Array.from({ length: MOST + 1 }, (_, k) => k).reduce((sum, k) => sum + choose(SIZES + k - 1, k), 0);
const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k);

const rowOf = (name: string, ms: number, note: string): Row => ({
  name,
  raw: null,
  median_ms: ms,
  max_ms: ms,
  loops: null,
  twin: null,
  memory_MB: null,
  note,
});
