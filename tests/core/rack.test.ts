import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StageRow } from '../../core/src/file/machine.ts';
import type { PieceRow } from '../../core/src/file/rack.ts';
import { type Given, known, NOT_GIVEN } from '../../core/src/given.ts';
import type { Plan, Teeth } from '../../core/src/plan.ts';
import { ENDS } from '../../core/src/plan.ts';
import { assignPieces, boresOnHand_m, mayBuy, teethToTry } from '../../core/src/rack.ts';
import { type Fraction, ratioOf } from '../../core/src/ratio.ts';
import { inLine, mm, pair, pieceRow, planOf, pumpRow, shopOf, stageRow } from './planFixture.ts';

const planWith = (stages: readonly StageRow[], pieces: readonly PieceRow[], selection = {}): Plan =>
  planOf(shopOf(inLine(stages), pieces), selection);

/** Where each wheel comes from, driver before driven, stage by stage. */
const from = (plan: Plan, teeth: readonly Teeth[]) =>
  assignPieces(plan, teeth).origins.flatMap((stage) => ENDS.map((end) => stage[end].from));
const parts = (plan: Plan, teeth: readonly Teeth[]) =>
  assignPieces(plan, teeth).origins.flatMap((stage) => ENDS.flatMap((end) => (stage[end].from === 'rack' ? [stage[end].piece.part] : [])));

const bored = (teeth: number, value: string) => ({ teeth, bore: mm(value) });

describe('where wheels come from [arithmetic on small racks]', () => {
  test('a swap of two wheels needs nothing from the rack', () => {
    const plan = planWith([stageRow(20, 30)], []);
    expect(from(plan, [pair(30, 20)])).toEqual(['machine', 'machine']);
    expect(assignPieces(plan, [pair(30, 20)]).purchases).toBe(0);
  });
  test('a wheel that comes off goes on in another stage', () => {
    const plan = planWith([stageRow(20, 30), stageRow(25, 25)], [pieceRow(40, 1)]);
    expect(from(plan, [pair(40, 30), pair(20, 25)])).toEqual(['rack', 'stays', 'machine', 'stays']);
  });
  test('stock does not include fitted pieces: one 30 is fitted, none is on the rack, a second one is not to be had', () => {
    const plan = planWith([stageRow(20, 30)], []);
    expect(from(plan, [pair(30, 30)])).toEqual(['nowhere', 'stays']);
  });
  test('wheels of a closed slot stay where they are, and so do those of a stage that both pumps share', () => {
    expect(from(planWith([stageRow(20, { teeth: 30, mayChange: false })], []), [pair(30, 30)])).toEqual(['nowhere', 'stays']);
    const behindFirst = { shaft: 'shaft-1', fitted: 'pump-a', pumps: [pumpRow('pump-a', '10')] };
    const machine = inLine([stageRow(30, 30), stageRow(20, 20)], { A: behindFirst });
    const shared = (openShared: boolean) => planOf(shopOf({ ...machine, search: { openShared } }));
    expect(from(shared(false), [pair(20, 30), pair(30, 20)]).slice(2)).toEqual(['nowhere', 'stays']);
    expect(from(shared(true), [pair(20, 30), pair(30, 20)]).slice(2)).toEqual(['machine', 'stays']);
  });
  test('duplicate rows add up', () => {
    const rows = [pieceRow(30, 1, { part: 'first' }), pieceRow(30, 1, { part: 'second' })];
    const plan = planWith([stageRow(20, 20), stageRow(20, 20)], rows);
    expect(parts(plan, [pair(30, 30), pair(20, 20)])).toEqual(['first', 'second']);
    expect(from(plan, [pair(30, 30), pair(30, 20)])).toEqual(['rack', 'rack', 'nowhere', 'stays']);
  });
  test('40 and 08A are one chain and one stock [iso-606 annex B, from memory]; 08B is another', () => {
    const stages = [stageRow(20, 20), stageRow(20, 20, { size: '08A' })];
    const one = planWith(stages, [pieceRow(30, 1, { size: '08A' })]);
    expect(from(one, [pair(30, 20), pair(30, 20)])).toEqual(['rack', 'stays', 'nowhere', 'stays']);
    const two = planWith(stages, [pieceRow(30, 1, { size: '08A' }), pieceRow(30, 1), pieceRow(30, 5, { size: '08B' })]);
    expect(from(two, [pair(30, 20), pair(30, 20)])).toEqual(['rack', 'stays', 'rack', 'stays']);
    expect(from(two, [pair(30, 30), pair(30, 20)])).toEqual(['rack', 'rack', 'nowhere', 'stays']);
  });
  test('a slot of known bore takes its own bore before a blank one, and leaves the blank to one that can use nothing else', () => {
    const rows = [pieceRow(30, 1, { part: 'blank' }), pieceRow(30, 1, { bore: mm('25'), part: '25' })];
    const plan = planWith([stageRow(bored(20, '25'), bored(20, '20'))], rows);
    expect(parts(plan, [pair(30, 20)])).toEqual(['25']);
    expect(parts(plan, [pair(30, 30)])).toEqual(['25', 'blank']);
  });
  test('a slot whose own bore is not given makes way for one that is pickier', () => {
    const rows = [pieceRow(30, 1, { bore: mm('25'), part: '25' }), pieceRow(30, 1, { bore: mm('20'), part: '20' })];
    expect(parts(planWith([stageRow(20, bored(20, '25'))], rows), [pair(30, 30)])).toEqual(['20', '25']);
  });
});

describe('buying', () => {
  test('what the rack lacks is bought where that is allowed', () => {
    const plan = planWith([stageRow(20, 20)], [pieceRow(30, 1)], { purchases: 2, teeth: { from: 25, to: 35 } });
    expect(from(plan, [pair(30, 30)])).toEqual(['rack', 'bought']);
    expect(assignPieces(plan, [pair(30, 30)]).purchases).toBe(1);
    expect(from(plan, [pair(36, 24)])).toEqual(['nowhere', 'nowhere']);
  });
  test('without a range the limits of the slot say what may be bought, and the one piece goes where none may', () => {
    const upTo = (teethTo: number) => ({ teeth: 20, teethFrom: 13, teethTo });
    const plan = planWith([stageRow(upTo(40), upTo(25))], [pieceRow(30, 1)], { purchases: 1 });
    expect(from(plan, [pair(30, 30)])).toEqual(['bought', 'rack']);
  });
  test('one that must find its wheel passes it on where another piece suits it, so that nothing is bought', () => {
    const rows = [pieceRow(30, 1, { bore: mm('25'), part: '25' }), pieceRow(30, 1, { bore: mm('20'), part: '20' })];
    const plan = planWith([stageRow({ teeth: 20, teethFrom: 13, teethTo: 25 }, { ...bored(20, '25'), teethFrom: 13, teethTo: 40 })], rows, {
      purchases: 1,
    });
    expect(parts(plan, [pair(30, 30)])).toEqual(['20', '25']);
    expect(assignPieces(plan, [pair(30, 30)]).purchases).toBe(0);
  });
});

test('teeth to try: fitted, on the rack (out of stock too) and on the machine, ascending', () => {
  const plan = planWith(
    [stageRow(20, 30), stageRow({ teeth: 25, mayChange: false }, 22)],
    [pieceRow(40, 0), pieceRow(18, 1), pieceRow(50, 1, { size: '50' })],
  );
  const [first, second] = plan.stages;
  if (first === undefined || second === undefined) throw new Error('two stages are expected');
  expect(teethToTry(plan, first, first.driver)).toEqual([18, 20, 22, 30, 40]);
  expect(teethToTry(plan, second, second.driver)).toEqual([25]);
  expect(boresOnHand_m(plan, first, 22)).toHaveLength(1);
  expect(boresOnHand_m(plan, first, 25)).toHaveLength(0);
});

describe('as few slots without a wheel as there can be, then as few purchases', () => {
  const bores: readonly Given<Fraction>[] = [known(ratioOf(1, 50)), known(ratioOf(1, 40)), NOT_GIVEN];
  const bore = fc.constantFrom(...bores);
  const size = fc.constantFrom('40', '08A', '08B');
  const teethOf = fc.integer({ min: 20, max: 21 });
  const limit = fc.constantFrom<Given<number>>(known(19), known(20), known(21));
  const slot = fc.record({
    teeth: teethOf,
    bore_m: bore,
    teethFrom: limit,
    teethTo: limit,
    mayChange: fc.constantFrom(true, true, true, false),
  });
  const stage = fc.record({ size, driver: slot, driven: slot });
  const piece = fc.record({ size, teeth: teethOf, bore_m: bore, quantity: fc.integer({ min: 0, max: 2 }) });
  const base = planWith([stageRow(20, 20), stageRow(20, 20), stageRow(20, 20)], [pieceRow(20, 1)]);
  const [anyPiece] = base.pieces;
  if (anyPiece === undefined) throw new Error('the rack holds one piece');

  const plans = fc
    .record({
      stages: fc.array(stage, { minLength: 3, maxLength: 3 }),
      pieces: fc.array(piece, { maxLength: 5 }),
      purchases: fc.constantFrom(0, 1, Number.POSITIVE_INFINITY),
      range: fc.constantFrom(null, { from: 20, to: 21 }),
    })
    .map(
      ({ stages, pieces, purchases, range }): Plan => ({
        ...base,
        stages: base.stages.map((one, index) => {
          const drawn = stages[index];
          return drawn === undefined
            ? one
            : { ...one, size: drawn.size, driver: { ...one.driver, ...drawn.driver }, driven: { ...one.driven, ...drawn.driven } };
        }),
        pieces: pieces.map((one) => ({ ...anyPiece, ...one })),
        choice: { ...base.choice, purchases, teeth: range },
      }),
    );
  const chosen = fc.array(fc.record({ driver: teethOf, driven: teethOf }), { minLength: 3, maxLength: 3 });
  /** A slot that may not change keeps its wheel, as in every search. */
  const allowed = (plan: Plan, teeth: readonly Teeth[]): readonly Teeth[] =>
    plan.stages.map(({ driver, driven }, index) =>
      pair(
        driver.mayChange ? (teeth[index]?.driver ?? driver.teeth) : driver.teeth,
        driven.mayChange ? (teeth[index]?.driven ?? driven.teeth) : driven.teeth,
      ),
    );

  test('no way of sharing out the wheels does better [slow twin: every way is tried]', () => {
    let contested = 0;
    fc.assert(
      fc.property(plans, chosen, (plan, drawn) => {
        const teeth = allowed(plan, drawn);
        const found = assignPieces(plan, teeth);
        const origins = found.origins.flatMap((one) => ENDS.map((end) => one[end]));
        const best = fewest(plan, teeth);
        expect({ without: origins.filter((one) => one.from === 'nowhere').length, bought: found.purchases }).toEqual(best);
        expect(origins.filter((one) => one.from === 'bought').length).toBe(found.purchases);
        if (best.bought > 0 && origins.some((one) => one.from === 'rack')) contested += 1;
      }),
      { numRuns: 3000 },
    );
    expect(contested).toBeGreaterThan(100);
  });
  test('no piece is given twice, every piece suits its slot, and only what changes takes one', () => {
    fc.assert(
      fc.property(plans, chosen, (plan, drawn) => {
        const teeth = allowed(plan, drawn);
        const { origins } = assignPieces(plan, teeth);
        const taken = new Map<object, number>();
        plan.stages.forEach((one, index) => {
          for (const end of ENDS) {
            const origin = origins[index]?.[end];
            const wanted = teeth[index]?.[end];
            expect(origin?.from === 'stays').toBe(wanted === one[end].teeth);
            if (origin?.from !== 'rack' && origin?.from !== 'machine') continue;
            const wheel = origin.from === 'rack' ? origin.piece : origin.slot;
            taken.set(wheel, (taken.get(wheel) ?? 0) + 1);
            expect(wheel.teeth).toBe(wanted);
            expect(suits(wheel.bore_m, one[end].bore_m)).toBe(true);
          }
        });
        for (const [wheel, count] of taken) expect(count).toBeLessThanOrEqual('quantity' in wheel ? Number(wheel.quantity) : 1);
      }),
      { numRuns: 1000 },
    );
  });
});

const suits = (wheel: Given<Fraction>, shaft: Given<Fraction>): boolean => !wheel.known || !shaft.known || wheel.value.equals(shaft.value);
/** The two names of one chain that are drawn; 08B is another. */
const chainOf = (size: string): string => (size === '08A' ? '40' : size);

/** Every wheel one by one, every slot one by one, every way of giving the one to the other. */
function fewest(plan: Plan, teeth: readonly Teeth[]): { without: number; bought: number } {
  const slots = plan.stages.flatMap((stage, index) =>
    ENDS.map((end) => ({
      size: chainOf(stage.size),
      slot: stage[end],
      wanted: teeth[index]?.[end] ?? 0,
      open: stage.open && stage[end].mayChange,
    })),
  );
  const changed = slots.filter(({ slot, wanted }) => slot.teeth !== wanted);
  const wheels = [
    ...plan.pieces.flatMap((piece) => Array.from({ length: piece.quantity }, () => ({ ...piece, size: chainOf(piece.size) }))),
    ...changed.filter(({ open }) => open).map(({ size, slot }) => ({ size, teeth: slot.teeth, bore_m: slot.bore_m })),
  ];
  const place = (index: number, free: readonly (typeof wheels)[number][]): { without: number; bought: number } => {
    const one = changed[index];
    if (one === undefined) return { without: 0, bought: 0 };
    const rest = place(index + 1, free);
    const buys = mayBuy(plan, one.slot, one.wanted);
    let best = buys ? { ...rest, bought: rest.bought + 1 } : { ...rest, without: rest.without + 1 };
    free.forEach((wheel, at) => {
      if (wheel.size !== one.size || wheel.teeth !== one.wanted || !suits(wheel.bore_m, one.slot.bore_m)) return;
      const tried = place(index + 1, free.toSpliced(at, 1));
      if (tried.without < best.without || (tried.without === best.without && tried.bought < best.bought)) best = tried;
    });
    return best;
  };
  return place(0, wheels);
}
