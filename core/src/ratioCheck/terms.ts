import type { RatioCheckRow } from '../file/ratioCheckRow.ts';
import { type Given, given } from '../given.ts';
import type { Build, Plan, SideName } from '../plan.ts';
import { exactText, Fraction } from '../ratio.ts';
import { trainTurns } from '../train.ts';
import type { BySide, CheckTerms } from './model.ts';

/** The terms of a check that is made now, with what was on the machine. */
export function termsOf(plan: Plan, { pumps, teeth }: Build): CheckTerms {
  const { mix } = plan;
  const both = <T>(of: (side: SideName) => T): BySide<T> => ({ A: of('A'), B: of('B') });
  return {
    wantedBPerA: mix.wantedBPerA,
    limits: mix.limits,
    basis: mix.sheet.basis,
    written: mix.sheet.written,
    limitsWritten: mix.limitsWritten,
    density_kg_per_m3: mix.density_kg_per_m3,
    densityBOverA: mix.densityBOverA,
    displacement_m3_per_rev: both((side) => pumps[side].displacement_m3_per_rev),
    tolerance: both((side) => pumps[side].tolerance),
    newDelivery: both((side) => pumps[side].newDelivery),
    pumpTurns: both((side) => trainTurns(plan, side, teeth)),
    motorSpeed_rev_per_s: plan.motor.speed_rev_per_s,
  };
}

/** Terms as they are kept, every number exact. */
export function keptTerms(terms: CheckTerms): RatioCheckRow['terms'] {
  const pair = ({ A, B }: BySide<Fraction>) => ({ A: exactText(A), B: exactText(B) });
  const givenPair = ({ A, B }: BySide<Given<Fraction>>) => ({
    ...(A.known && { A: exactText(A.value) }),
    ...(B.known && { B: exactText(B.value) }),
  });
  return {
    wantedBPerA: exactText(terms.wantedBPerA),
    ...(terms.limits && { limits: { low: exactText(terms.limits.low), high: exactText(terms.limits.high) } }),
    basis: terms.basis,
    written: terms.written,
    ...(terms.limitsWritten !== null && { limitsWritten: terms.limitsWritten }),
    density: givenPair(terms.density_kg_per_m3),
    ...(terms.densityBOverA.known && { densityBOverA: exactText(terms.densityBOverA.value) }),
    displacement: pair(terms.displacement_m3_per_rev),
    tolerance: givenPair(terms.tolerance),
    newDelivery: givenPair(terms.newDelivery),
    pumpTurns: pair(terms.pumpTurns),
    motorSpeed: exactText(terms.motorSpeed_rev_per_s),
  };
}

/** The way back. */
export function readTerms(kept: RatioCheckRow['terms']): CheckTerms {
  const pair = ({ A, B }: { readonly A: string; readonly B: string }) => ({ A: new Fraction(A), B: new Fraction(B) });
  const one = (text: string | undefined): Given<Fraction> => given(text, (exact) => new Fraction(exact));
  const givenPair = (texts: { readonly A?: string; readonly B?: string }) => ({ A: one(texts.A), B: one(texts.B) });
  return {
    wantedBPerA: new Fraction(kept.wantedBPerA),
    limits: kept.limits === undefined ? null : { low: new Fraction(kept.limits.low), high: new Fraction(kept.limits.high) },
    basis: kept.basis,
    written: kept.written,
    limitsWritten: kept.limitsWritten ?? null,
    density_kg_per_m3: givenPair(kept.density),
    densityBOverA: one(kept.densityBOverA),
    displacement_m3_per_rev: pair(kept.displacement),
    tolerance: givenPair(kept.tolerance),
    newDelivery: givenPair(kept.newDelivery),
    pumpTurns: pair(kept.pumpTurns),
    motorSpeed_rev_per_s: new Fraction(kept.motorSpeed),
  };
}
