import { describe, expect, test } from 'vitest';
import { known } from '../../../core/src/given.ts';
import { Fraction, float } from '../../../core/src/ratio.ts';
import { causes, causesOf } from '../../../core/src/ratioCheck/causes/index.ts';
import { evaluate } from '../../../core/src/ratioCheck/evaluate.ts';
import type { Catch } from '../../../core/src/ratioCheck/model.ts';
import { demoPlan, evaluated, PAST } from './demoChecks.ts';
import { checkOf, grams, type SomeCheck } from './someCheck.ts';

const say = { decimal: '.', system: 'metric' } as const;

/** What one cause says of a check that stands alone. */
function said(id: string, check: ReturnType<typeof checkOf>) {
  const all = causesOf({ evaluation: evaluate(check), plan: null, teethBefore: null, earlier: [] }, say);
  const found = all.find(({ cause }) => cause === `cause.${id}`);
  if (found === undefined) throw new RangeError(`no cause ${id}`);
  return found;
}

test('every cause has a title, a source, a reason, and an id of its own', () => {
  expect(new Set(causes.map(({ id }) => id)).size).toBe(causes.length);
  for (const { id, title, source, why } of causes) expect([id, title, source, why].every((text) => text.length > 3)).toBe(true);
});

describe('catches that disagree', () => {
  const wild = { wantedByWeight: '44/100', limits: ['-5/100', '5/100'] } as const;

  test('four tries from 27 to 35 parts where 44 are wanted: they come before any sprocket', () => {
    const { state, what } = said('agree', checkOf({ ...wild, catches: [27, 30, 33, 35].map((b) => [100, b] as const) }));
    expect(state).toBe('likely');
    expect(what).toContain('range over 18.18\u00A0%');
    expect(what).toContain('limits lie 10.00\u00A0% apart');
    expect(what).toContain('No sprocket is proposed');
  });

  test('catches that repeat speak against it, one alone says nothing', () => {
    expect(
      said(
        'agree',
        checkOf({
          ...wild,
          catches: [
            [100, 44],
            [100, 44.1],
            [100, 44],
          ],
        }),
      ).state,
    ).toBe('ruled out');
    expect(said('agree', checkOf({ ...wild, catches: [[100, 44]] })).state).toBe('not looked for');
  });
});

describe('one side drifting', () => {
  const of = (catches: SomeCheck['catches']) => said('drift', checkOf({ wantedByWeight: '1/2', limits: ['-2/100', '2/100'], catches }));
  test('B falls from catch to catch: air or a side running short', () => {
    const { state, what } = of([
      [100, 50],
      [100, 49.4],
      [100.1, 48.9],
    ]);
    expect(state).toBe('likely');
    expect(what).toContain('Side B gives less from catch to catch: 50.0\u00A0g, 49.4\u00A0g, 48.9\u00A0g, 2.20\u00A0% in all');
  });
  test('A rises: still filling or clearing', () =>
    expect(
      of([
        [98, 50],
        [99, 50.1],
        [100, 50],
      ]).what,
    ).toContain('Side A gives more'));
  test('a fall within a quarter of the way to the limit is none, nor one that goes up and down', () => {
    expect(
      of([
        [100, 50],
        [100, 49.9],
        [100, 49.8],
      ]).state,
    ).toBe('ruled out');
    expect(
      of([
        [100, 50],
        [100, 48],
        [100, 49],
      ]).state,
    ).toBe('ruled out');
  });
  test('two catches tell no drift', () =>
    expect(
      of([
        [100, 50],
        [100, 40],
      ]).state,
    ).toBe('not looked for'));
  test('steps of the scale are no drift', () => {
    const coarse = checkOf({
      wantedByWeight: '1/2',
      limits: ['-2/100', '2/100'],
      step: '1',
      catches: [
        [100, 50],
        [100, 49],
        [100, 48],
      ],
    });
    expect(said('drift', coarse).state).toBe('ruled out');
  });
});

describe('one side short', () => {
  const worn = (B: number, more: Partial<SomeCheck> = {}) =>
    checkOf({
      wantedByWeight: '1/2',
      limits: ['-2/100', '2/100'],
      displacements: ['23.38', '11.69'],
      turns: '1',
      step: '0.001',
      catches: [
        [23.38, B],
        [23.38, B],
      ],
      ...more,
    });

  test('10.00 of 11.69 in theory: only B, 85.54 %, short of the 95 % of a new pump by 9.46 % of the displacement', () => {
    const { state, what } = said('shortSide', worn(10));
    expect(state).toBe('likely');
    expect(what).toContain('B 85.54\u00A0%');
    expect(what).toContain('only side B is short of 95.00\u00A0%, by 9.46\u00A0%');
    expect(what).toContain('sprockets would only hide it');
  });

  test('against what it delivered when new, 95 %: the ratio is off by 9.95 %, not by 14.5 [arithmetic: 0.85543 / 0.95 − 1]', () => {
    const check = worn(10);
    const B = evaluate(check).delivery.B?.share.value ?? new Fraction(0);
    expect(100 * (float(B) / 0.95 - 1)).toBeCloseTo(-9.9545, 4);
    const isNew = { ...check, terms: { ...check.terms, newDelivery: { A: known(new Fraction('0.95')), B: known(new Fraction('0.80')) } } };
    expect(said('shortSide', isNew).state).toBe('ruled out');
  });

  test('both short alike: speed, not ratio', () => {
    const { state, what } = said(
      'shortSide',
      worn(10, {
        catches: [
          [20, 10],
          [20, 10],
        ],
      }),
    );
    expect(state).toBe('possible');
    expect(what).toContain('Short on both sides points to the speed');
  });

  test('more than the whole is not possible', () =>
    expect(said('shortSide', worn(13)).what).toContain('more than the whole is not possible for B'));
  test('nobody counted', () => expect(said('shortSide', { ...worn(10), run: null }).state).toBe('not looked for'));
  test('a shortfall that the catches leave open is none', () => {
    expect(
      said(
        'shortSide',
        worn(11, {
          catches: [
            [23.38, 10.9],
            [23.38, 11.3],
          ],
        }),
      ).state,
    ).toBe('ruled out');
  });
});

describe('air, or a wrong density', () => {
  /** 2 to 1 by volume, 1.15 and 1.012 g/cm³; so much of B is air by volume. */
  const aired = (share: string) => {
    const check = checkOf({ wantedByWeight: '44/100', limits: ['-2/100', '2/100'], densities: ['1.15', '1.012'], catches: [[115, 50.6]] });
    const weight = grams('50.6').mul(new Fraction(1).sub(new Fraction(share)));
    const one: Catch = {
      sides: {
        A: { mass_kg: known(grams('115')), volume_m3: known(new Fraction(1, 10_000)) },
        B: { mass_kg: known(weight), volume_m3: known(new Fraction(1, 20_000)) },
      },
      leftOut: null,
    };
    return { ...check, catches: [one, one] as const };
  };

  test('4 % of air in B: 42.24 g where 44 are wanted, −4 % by weight, 0 % by volume [arithmetic: 44 × 0.96]', () => {
    const check = aired('0.04');
    const { offRatio, bPerA } = evaluate(check);
    expect(100 * float(bPerA.value)).toBeCloseTo(42.24, 10);
    expect(100 * float(offRatio.value)).toBeCloseTo(-4, 10);
    const { state, what } = said('air', check);
    expect(state).toBe('likely');
    expect(what).toContain('By volume the mix is 0.00\u00A0% off');
    expect(what).toContain('which 4.00\u00A0% of air by volume would do');
  });

  test('weight and volume agree', () => expect(said('air', aired('0.005')).state).toBe('ruled out'));
  test('nothing was read by volume', () => {
    expect(said('air', checkOf({ wantedByWeight: '1/2', limits: null, catches: [[100, 50]] })).state).toBe('not looked for');
  });
});

describe('sides swapped', () => {
  const of = (catches: SomeCheck['catches'], wantedByWeight = '1/2') =>
    said('swapped', checkOf({ wantedByWeight, limits: ['-2/100', '2/100'], catches }));
  test('B in the column of A', () =>
    expect(
      of([
        [50.2, 100],
        [50, 100],
      ]).state,
    ).toBe('likely'));
  test('as written', () =>
    expect(
      of([
        [100, 50],
        [100, 50],
      ]).state,
    ).toBe('ruled out'));
  test('far outside either way round: 30 to 100 is not 50 to 100, nor is 100 to 30', () =>
    expect(
      of([
        [100, 30],
        [100, 30.1],
      ]).state,
    ).toBe('ruled out'));
  test('inside either way round: nothing is claimed, and no reading is called outside [arithmetic: 1 / 0.95 and 1 over 0.95]', () => {
    const wide = checkOf({
      wantedByWeight: '95/100',
      limits: ['-8/100', '8/100'],
      catches: [
        [100, 100],
        [50, 50],
      ],
    });
    const { state, what } = said('swapped', wide);
    expect(state).toBe('ruled out');
    expect(what.replaceAll('\u00a0', ' ')).toBe(
      'The catches are inside the limits as written, 5.26 % B-rich, and with A and B changed over, 5.26 % B-rich.',
    );
  });
  test('1 to 1 does not tell', () =>
    expect(
      of(
        [
          [100, 102],
          [100, 102],
        ],
        '1',
      ).state,
    ).toBe('not looked for'));
});

describe('wrong basis', () => {
  const of = (catches: SomeCheck['catches'], densities: readonly [string, string] = ['1.15', '0.97']) =>
    said('basis', checkOf({ wantedByWeight: '40/100', limits: ['-2/100', '2/100'], densities, catches }));
  test('40 to 100 set up by volume: 33.74 g to 100 g [arithmetic: 40 × 0.97 / 1.15]', () => {
    const { state, what } = of([
      [100, 33.74],
      [100, 33.75],
    ]);
    expect(state).toBe('likely');
    expect(what).toContain('read by volume');
  });
  test('set up as meant', () =>
    expect(
      of([
        [100, 40],
        [100, 40.1],
      ]).state,
    ).toBe('ruled out'));
  test('densities that are alike do not tell', () =>
    expect(
      of(
        [
          [100, 40],
          [100, 40],
        ],
        ['1.0', '1.01'],
      ).state,
    ).toBe('not looked for'));
});

describe('wrong teeth fitted, U40 on Bench 1 of the invented example: the sheet says 21 to 30', () => {
  const plan = demoPlan();
  const judged = (catches: readonly (readonly [number, number])[], teethBefore: { driver: number; driven: number } | null = null) => {
    const subject = { evaluation: evaluated(plan, catches), plan, teethBefore: teethBefore && [teethBefore], earlier: [] };
    const found = causesOf(subject, say).find(({ cause }) => cause === 'cause.wrongTeeth');
    if (found === undefined) throw new RangeError('no such cause');
    return found;
  };
  /** What 20 turns give with other teeth: B by its share of turns. */
  const withTeeth = (driver: number, driven: number) => {
    const B = (101.9 * driver * 30) / (21 * driven);
    return [
      [244.3, B],
      [244.4, B + 0.1],
      [244.3, B - 0.1],
    ] as const;
  };

  test('the teeth of the sheet explain it', () => expect(judged(withTeeth(21, 30)).state).toBe('ruled out'));

  test('22 at the driver in place of 21', () => {
    const { state, what } = judged(withTeeth(22, 30));
    expect(state).toBe('possible');
    expect(what).toContain('With 22 teeth in place of 21 at s1 driver it would be ');
    expect(what).toContain('Count the teeth');
  });

  test('the teeth from before the change: it was not made', () => {
    const { state, what } = judged(withTeeth(24, 30), { driver: 24, driven: 30 });
    expect(state).toBe('likely');
    expect(what).toContain('Look whether the change was made');
  });

  test('catches that do not agree are not looked through', () => {
    const [, , third] = PAST;
    expect(judged(third.catches).state).toBe('not looked for');
  });

  test('a catch of which only the first figures of B are written reaches to where there is no B at all, and is looked through all the same', () => {
    const { state, what } = judged([[244.6, 1]]);
    expect(state).toBe('ruled out');
    expect(what).toContain('no other teeth of the rack explain it better');
  });
});

describe('wear, by the three past checks of the invented example', () => {
  const plan = demoPlan();
  const past = PAST.map(({ date, catches }) => ({ date, evaluation: evaluated(plan, catches) }));
  const judged = (count: number) => {
    const [earlier, now] = [past.slice(0, count - 1), past[count - 1]];
    if (now === undefined) throw new RangeError('no check');
    const found = causesOf({ evaluation: now.evaluation, plan, teethBefore: null, earlier }, say).find(
      ({ cause }) => cause === 'cause.wear',
    );
    if (found === undefined) throw new RangeError('no such cause');
    return found;
  };

  test('the first has nothing before it', () => expect(judged(1).state).toBe('not looked for'));
  test('99.65 to 98.97 %, each ± 0.38: they do not overlap by more than a hair, so nothing is claimed', () => {
    expect(judged(2).state).toBe('ruled out');
  });
  test('B falls from check to check, the last too uncertain to be apart: possible', () => {
    const { state, what } = judged(3);
    expect(state).toBe('possible');
    expect(what).toContain('Pump B delivers less and less: 99.65\u00A0% (2026-09-15), 98.97\u00A0% (2026-10-12), 98.02\u00A0% (now)');
  });
});

describe('wear of either pump, told by what the catches leave open [worked out by hand from the rule]', () => {
  const plan = demoPlan();
  const SOUND = [
    [244.4, 101.8],
    [244.3, 101.8],
    [244.4, 101.7],
  ] as const;
  const judged = (before: readonly (readonly [number, number])[], now: readonly (readonly [number, number])[]) => {
    const earlier = [{ date: '2026-09-15', evaluation: evaluated(plan, before) }];
    const subject = { evaluation: evaluated(plan, now), plan, teethBefore: null, earlier };
    const found = causesOf(subject, say).find(({ cause }) => cause === 'cause.wear');
    return found === undefined ? [] : [found.state, found.what.replaceAll('\u00a0', ' ')];
  };
  const timesOf = (a: number, b: number) => SOUND.map(([A, B]) => [A * a, B * b] as const);

  test('one of two that gives a twentieth less: likely, and only that pump is named', () => {
    const [state, what] = judged(SOUND, timesOf(1, 0.95));
    expect(state).toBe('likely');
    expect(what).toMatch(
      /^Pump B delivers less and less: 99\.\d\d % \(2026-09-15\), 94\.\d\d % \(now\)\. The fall is more than the catches leave open\. Look at the pump, its drive and its filter before gearing for it, and watch the next check\.$/,
    );
    expect(judged(SOUND, timesOf(0.95, 1))[1]).toMatch(/^Pump A delivers less and less: (?:99|100)\.\d\d % .* The fall is more/);
  });
  test('a single catch leaves everything open, whether it was the first or is the last', () => {
    const one = [[244.4, 101.8]] as const;
    const low = [[244.4, 96]] as const;
    for (const [before, now] of [
      [one, timesOf(1, 0.95)],
      [SOUND, low],
      [one, low],
    ] as const) {
      const [state, what] = judged(before, now);
      expect(state).toBe('ruled out');
      expect(what).toMatch(/^Pump A delivers what it did: [\d.]+ % \(2026-09-15\), [\d.]+ % \(now\)\. Pump B delivers what it did: /);
    }
  });
  test('more than before is no wear', () => expect(judged(timesOf(0.95, 0.95), SOUND)[0]).toBe('ruled out'));
});
