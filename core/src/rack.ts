import { driveKind } from './drives/index.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import { ENDS, type Piece, type Plan, type Slot, type Stage, type Teeth } from './plan.ts';
import type { Fraction } from './ratio.ts';

/** Where the wheel of a slot comes from in an option. */
export type Origin =
  | { readonly from: 'stays' }
  | { readonly from: 'rack'; readonly piece: Piece }
  | { readonly from: 'machine'; readonly slot: Slot }
  | { readonly from: 'bought' }
  | { readonly from: 'nowhere' };

/** Wheels of one stage, driver and driven. */
export interface Origins {
  readonly driver: Origin;
  readonly driven: Origin;
}

export interface Assignment {
  readonly origins: readonly Origins[];
  readonly purchases: number;
}

/** A slot that takes another wheel. */
export interface ChangedPlace {
  /** Of the stage, in the plan. */
  readonly index: number;
  readonly stage: Stage;
  readonly end: (typeof ENDS)[number];
  readonly slot: Slot;
  readonly teeth: number;
}

export function changedPlaces(plan: Plan, teeth: readonly Teeth[]): readonly ChangedPlace[] {
  return plan.stages.flatMap((stage, index) =>
    ENDS.flatMap((end) => {
      const wanted = teeth[index]?.[end] ?? stage[end].teeth;
      return wanted === stage[end].teeth ? [] : [{ index, stage, end, slot: stage[end], teeth: wanted }];
    }),
  );
}

/** Whether two slots want the same wheel but for its bore. */
export const sameWheelWanted = (a: ChangedPlace, b: ChangedPlace): boolean => a.teeth === b.teeth && sameSize(a.stage, b.stage);

/**
 * Says for every slot where its wheel comes from: as few slots without a wheel as there can be, and then as few purchases.
 *
 * Slots that want the same wheel share what there is of it. Those for which none may be bought come first, and each takes a piece of
 * its own bore before a blank one.
 */
export function assignPieces(plan: Plan, teeth: readonly Teeth[]): Assignment {
  const origins: { driver: Origin; driven: Origin }[] = plan.stages.map(() => ({ driver: { from: 'stays' }, driven: { from: 'stays' } }));
  const places = changedPlaces(plan, teeth);
  let purchases = 0;
  for (const first of places) {
    const sharing = places.filter((place) => sameWheelWanted(first, place));
    if (sharing[0] !== first) continue;
    const mayBuyOne = ({ slot }: ChangedPlace) => mayBuy(plan, slot, first.teeth);
    const rank = (place: ChangedPlace) => 2 * Number(mayBuyOne(place)) + Number(!place.slot.bore_m.known);
    const found = shareOut(
      [...sharing].sort((a, b) => rank(a) - rank(b)),
      supplyOf(plan, first, teeth),
    );
    for (const place of sharing) {
      const origin: Origin = found.get(place)?.origin ?? { from: mayBuyOne(place) ? 'bought' : 'nowhere' };
      if (origin.from === 'bought') purchases += 1;
      const stage = origins[place.index];
      if (stage !== undefined) stage[place.end] = origin;
    }
  }
  return { origins, purchases };
}

/** Pieces of one kind that could go on a slot: a row of the rack, or a wheel that this change takes off the machine. */
interface Supply {
  readonly bore_m: Given<Fraction>;
  readonly origin: Origin;
  readonly quantity: number;
}

function supplyOf(plan: Plan, { stage, teeth }: ChangedPlace, chosen: readonly Teeth[]): readonly Supply[] {
  const rack = plan.pieces
    .filter((piece) => sameWheel(piece, stage, teeth))
    .map((piece): Supply => ({ bore_m: piece.bore_m, origin: { from: 'rack', piece }, quantity: piece.quantity }));
  const takenOff = fittedElsewhere(plan, stage, teeth)
    .filter(({ index, end }) => chosen[index]?.[end] !== teeth)
    .map(({ slot }): Supply => ({ bore_m: slot.bore_m, origin: { from: 'machine', slot }, quantity: 1 }));
  return [...rack, ...takenOff];
}

/**
 * Gives each place a piece, in turn. One that finds none left may have another pass on what it holds, if something else suits that
 * one too (augmenting paths): so no other sharing out serves more places, and none that was served goes without later on.
 */
function shareOut(places: readonly ChangedPlace[], supplies: readonly Supply[]): ReadonlyMap<ChangedPlace, Supply> {
  const found = new Map<ChangedPlace, Supply>();
  const holders = (supply: Supply) => places.filter((place) => found.get(place) === supply);
  const serve = (place: ChangedPlace, tried: Set<Supply>): boolean => {
    const suits = supplies.filter(({ bore_m }) => suitsBore(bore_m, place.slot));
    const isFree = (supply: Supply) => holders(supply).length < supply.quantity;
    // A free piece of a noted bore, then one that is passed on, then the same of blank ones; else the rack first, as in the file.
    const inTurn = [...suits].sort((a, b) => Number(b.bore_m.known) - Number(a.bore_m.known) || Number(isFree(b)) - Number(isFree(a)));
    for (const supply of inTurn) {
      if (tried.has(supply)) continue;
      tried.add(supply);
      if (isFree(supply) || holders(supply).some((holder) => serve(holder, tried))) {
        found.set(place, supply);
        return true;
      }
    }
    return false;
  };
  for (const place of places) serve(place, new Set());
  return found;
}

/** The bore of the wheel that goes on; null where it stays, is bought or is not to be had. */
export function boreOf_m(origin: Origin): Given<Fraction> | null {
  if (origin.from === 'rack') return origin.piece.bore_m;
  return origin.from === 'machine' ? origin.slot.bore_m : null;
}

interface FittedWheel {
  readonly index: number;
  readonly end: (typeof ENDS)[number];
  readonly slot: Slot;
}

/** Wheels now on the machine that a change could take off and put elsewhere. */
function fittedElsewhere(plan: Plan, stage: Stage, teeth: number): readonly FittedWheel[] {
  return plan.stages.flatMap((other, index) =>
    other.open && sameSize(other, stage)
      ? ENDS.filter((end) => other[end].mayChange && other[end].teeth === teeth).map((end) => ({ index, end, slot: other[end] }))
      : [],
  );
}

interface Sized {
  readonly kind: string;
  readonly size: string;
}

/** Whether wheels of one size go where the other is asked for; one size may have several names. */
export const sameSize = (a: Sized, b: Sized): boolean =>
  a.kind === b.kind && (a.size === b.size || driveKind(a.kind).sameSize(a.size, b.size));

const sameWheel = (piece: Piece, stage: Stage, teeth: number): boolean => piece.teeth === teeth && sameSize(piece, stage);

export const sameBore = (a: Given<Fraction>, b: Given<Fraction>): boolean => a.known && b.known && a.value.equals(b.value);

/** A blank bore goes on any shaft, and on a shaft that is not given goes any bore. */
export const suitsBore = (bore_m: Given<Fraction>, slot: Slot): boolean =>
  !bore_m.known || !slot.bore_m.known || sameBore(bore_m, slot.bore_m);

/** Whether a wheel of these teeth may be bought for this slot. */
export function mayBuy(plan: Plan, slot: Slot, teeth: number): boolean {
  if (plan.choice.purchases === 0) return false;
  const { from, to } = buyRange(plan, slot);
  return from.known && to.known && from.value <= teeth && teeth <= to.value;
}

/** Teeth that may be bought for a slot: the range of the search, else the limits of the slot; not given where neither says. */
function buyRange(plan: Plan, slot: Slot): { readonly from: Given<number>; readonly to: Given<number> } {
  const range = plan.choice.teeth;
  if (plan.choice.purchases === 0) return { from: NOT_GIVEN, to: NOT_GIVEN };
  return range === null ? { from: slot.teethFrom, to: slot.teethTo } : { from: known(range.from), to: known(range.to) };
}

/** Bores of all wheels of this size and these teeth, on the rack or on the machine, whatever their number. */
export function boresOnHand_m(plan: Plan, stage: Stage, teeth: number): readonly Given<Fraction>[] {
  return [
    ...plan.pieces.filter((piece) => sameWheel(piece, stage, teeth)).map((piece) => piece.bore_m),
    ...fittedElsewhere(plan, stage, teeth).map(({ slot }) => slot.bore_m),
  ];
}

/** Every tooth count worth trying in a slot, ascending: the fitted one, what the rack and the machine hold, what may be bought. */
export function teethToTry(plan: Plan, stage: Stage, slot: Slot): readonly number[] {
  if (!stage.open || !slot.mayChange) return [slot.teeth];
  const teeth = new Set([slot.teeth]);
  const range = buyRange(plan, slot);
  if (range.from.known && range.to.known) for (let n = range.from.value; n <= range.to.value; n += 1) teeth.add(n);
  if (plan.choice.wheels !== 'any') {
    for (const piece of plan.pieces) if (sameWheel(piece, stage, piece.teeth)) teeth.add(piece.teeth);
    for (const other of plan.stages)
      for (const end of ENDS) if (fittedElsewhere(plan, stage, other[end].teeth).length > 0) teeth.add(other[end].teeth);
  }
  return [...teeth].sort((a, b) => a - b);
}
