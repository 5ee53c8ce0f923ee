import { describe, expect, test } from 'vitest';
import { exactText, whole } from '../../core/src/ratio.ts';
import { demoPlan, E12, ONE, planned, STAGE } from './demoPlan.ts';
import { GONE, lines, smallest } from './shop.ts';

describe('what a plan is made of', () => {
  test('the demo on Bench 1, in SI and exact [units: NIST SP 811]', () => {
    const plan = demoPlan(E12);
    expect(lines(plan.findings)).toEqual([]);
    expect(exactText(plan.motor.speed_rev_per_s)).toBe('3/2');
    const { usable } = plan.motor;
    expect(usable.known && [usable.value.from, usable.value.to].map(exactText)).toEqual(['1/5', '1/1']);
    const [stage] = plan.stages;
    expect(stage).toMatchObject({
      id: 's1',
      kind: 'chain',
      size: '08B',
      turns: 'B',
      open: true,
      presentPitches: { known: true, value: 66 },
      centre: { known: true, value: { kind: 'window', least_m: 0.25, most_m: 0.263 } },
      takeUp_pitches: { known: true, value: 0.5 },
      offsetLinkAllowed: false,
      place: STAGE,
    });
    expect(stage?.driven.bore_m.known && exactText(stage.driven.bore_m.value)).toBe('1/40');
    expect(stage?.driven.guard_m).toEqual({ known: true, value: 0.162 });
    expect([plan.sides.A.train, plan.sides.B.train]).toEqual([[], [0]]);
    expect(plan.sides.A.component).toBe('E12 resin');
    expect(exactText(plan.sides.A.pumps[0].displacement_m3_per_rev)).toBe('3/250000');
    expect(plan.pieces).toHaveLength(28);
    expect(plan.minutes).toEqual({ sprocket_s: whole(720), chainLength_s: whole(600), centre_s: whole(180), pump_s: whole(5400) });
  });
  test('a line left blank is not printed [our choice]', () => {
    const plan = demoPlan(
      E12,
      [
        [...ONE, 'checklist'],
        ['', 'Seal cups full.', ' \u00A0'],
      ],
      [
        ['materials', 0, 'cautions'],
        ['  ', 'Keep dry.'],
      ],
    );
    expect([plan.checklist, plan.cautions]).toEqual([['Seal cups full.'], ['Keep dry.']]);
  });
  test('what is not given stays so, and starting values are ours [our choice]', () => {
    const plan = planned(smallest({ ratio: { basis: 'volume', parts: '2:1' } }), {});
    expect(plan.motor.usable).toEqual({ known: false });
    expect([plan.sides.A.component, plan.sides.A.pumps[0].name, plan.catchTurns, plan.checklist, plan.cautions]).toEqual([
      'A',
      'p',
      20,
      [],
      [],
    ]);
    expect(plan.minutes).toEqual({ sprocket_s: whole(720), chainLength_s: whole(600), centre_s: whole(180), pump_s: whole(5400) });
    const bare = demoPlan(E12, [[...STAGE, 'driver'], { teeth: 21 }], [[...STAGE, 'centre'], GONE], [[...STAGE, 'pitches'], GONE]);
    expect(bare.stages[0]).toMatchObject({ centre: { known: false }, presentPitches: { known: false } });
    expect(bare.stages[0]?.driver).toMatchObject({
      bore_m: { known: false },
      guard_m: { known: false },
      teethFrom: { known: false },
      mayChange: true,
    });
  });
  test('a bore typed in inches equals the same in millimetres, exactly [25.4 mm to the inch, by definition]', () => {
    const bore = (value: string, unit: string) => demoPlan(E12, [[...STAGE, 'driver', 'bore'], { value, unit }]).stages[0]?.driver.bore_m;
    expect(bore('1', 'in')).toEqual(bore('25.4', 'mm'));
    expect(bore('1', 'in')).not.toEqual(bore('25.41', 'mm'));
  });
  test('a fixed centre distance', () => {
    const [stage] = demoPlan(E12, [[...STAGE, 'centre'], { fixed: { value: '256.53', unit: 'mm' } }]).stages;
    expect(stage?.centre).toEqual({ known: true, value: { kind: 'fixed', centre_m: 0.25653 } });
  });
  test('a pump that a side may carry joins in once its displacement is known', () => {
    const pumps = [
      { id: 'pb8' },
      { id: 'pb6', displacement: { value: '6', unit: 'cc/rev' } },
      { id: 'pb9', displacement: { value: '9', unit: 'cc/rev' } },
    ];
    const { B } = demoPlan(E12, [[...ONE, 'B', 'pumps'], pumps]).sides;
    expect(B.pumps.map(({ id }) => id)).toEqual(['pb6', 'pb9']);
    expect(B.pumps[B.fitted]?.id).toBe('pb6');
    expect(B.pumps.map(({ place }) => place.at(-1))).toEqual([1, 2]);
  });
});
