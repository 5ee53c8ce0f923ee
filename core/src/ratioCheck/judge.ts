import type { RatioCheckRow } from '../file/ratioCheckRow.ts';
import { resolve } from '../file/resolve.ts';
import type { ShopFile } from '../file/shopFile.ts';
import type { Outcome, Place } from '../finding.ts';
import type { Say } from '../format.ts';
import type { Plan, Teeth } from '../plan.ts';
import { float } from '../ratio.ts';
import type { Hooks } from '../search/index.ts';
import { wantedOn } from './amounts.ts';
import { type BestAsMeasured, bestAsMeasured, type NoProposal } from './asMeasured.ts';
import { asMounted } from './asMounted.ts';
import { type SmallestCatch, smallestCatch } from './before.ts';
import { type CauseSaid, causesOf } from './causes/index.ts';
import { type Evaluation, evaluate } from './evaluate.ts';
import { deliveryTrend, type KeptCheck, keptChecks, offRatioTrend, samePumps, type Trend } from './history.ts';
import type { BySide } from './model.ts';
import { readCheck } from './readCheck.ts';
import { readTerms } from './terms.ts';

/** A check with all that follows from it. */
export interface Judged {
  readonly row: RatioCheckRow;
  readonly evaluation: Evaluation;
  /** Null where nothing was weighed, or where the material has no limits or lies on one. */
  readonly smallest: SmallestCatch | null;
  readonly causes: readonly CauseSaid[];
  /** What would be best with the deliveries as measured, or why nothing is proposed. */
  readonly proposal: BestAsMeasured | NoProposal | 'the machine has changed';
  /** This check is the last of each. */
  readonly delivery: BySide<Trend>;
  readonly offRatio: Trend;
}

/**
 * Judges one check among those that the file keeps.
 *
 * @param row    need not be in the file yet
 * @param place  of the check, for findings
 * @returns findings beside it where the catches are odd, only findings where they cannot be judged
 * @throws Cancelled  when asked to stop
 */
export function judge(file: ShopFile, row: RatioCheckRow, place: Place, say: Say, hooks: Hooks = {}): Outcome<Judged> {
  const read = readCheck(row, readTerms(row.terms), place);
  if (!read.ok) return read;
  const evaluation = evaluate(read.value);
  const { terms, scale } = evaluation.input;
  const plan = planOf(file, row, say);
  const earlier = keptChecks(file.ratioChecks.filter((one) => one.id !== row.id && one.date <= row.date && samePumps(one, row)));
  const now: KeptCheck = { row, evaluation };
  const least = (side: 'A' | 'B') => {
    const of = plan?.sides[side].pumps[plan.sides[side].fitted]?.leastDelivery;
    return of?.known ? float(of.value) : null;
  };
  const alike = earlier.filter((one) => isAlike(one.row, row));
  return {
    ok: true,
    findings: read.findings,
    value: {
      row,
      evaluation,
      smallest: evaluation.weighed && terms.limits !== null ? smallestCatch(wantedOn(terms, true), terms.limits, scale) : null,
      causes: causesOf(
        {
          evaluation,
          plan,
          teethBefore: teethBefore(file, row),
          earlier: earlier.map((one) => ({ date: one.row.date, evaluation: one.evaluation })),
        },
        say,
      ),
      proposal: plan === null ? 'the machine has changed' : bestAsMeasured(plan, evaluation, hooks),
      delivery: {
        A: deliveryTrend([...earlier, now], 'A', least('A')),
        B: deliveryTrend([...earlier, now], 'B', least('B')),
      },
      offRatio: offRatioTrend([...alike, now]),
    },
  };
}

/** The machine of the check as it was; null where it is gone, has changed its stages, or is no longer complete. */
function planOf(file: ShopFile, row: RatioCheckRow, say: Say): Plan | null {
  const resolved = resolve(file, { machine: row.machine, material: row.material }, say);
  return resolved.ok ? asMounted(resolved.value, row.mounted) : null;
}

function teethBefore(file: ShopFile, row: RatioCheckRow): readonly Teeth[] | null {
  const before = file.changeSheets.find(({ id }) => id === row.changeSheet)?.before;
  return before !== undefined && before.teeth.length === row.mounted.teeth.length ? before.teeth : null;
}

/** The same material through the same teeth. */
const isAlike = (a: RatioCheckRow, b: RatioCheckRow): boolean =>
  a.material === b.material &&
  a.mounted.teeth.length === b.mounted.teeth.length &&
  a.mounted.teeth.every(({ driver, driven }, index) => {
    const other = b.mounted.teeth[index];
    return other?.driver === driver && other.driven === driven;
  });
