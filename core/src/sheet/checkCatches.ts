import { en } from '../en.ts';
import type { CatchRow, CaughtRow } from '../file/ratioCheckRow.ts';
import { fixed, offRatioText, type Say, signedRangeText } from '../format.ts';
import { SIDES, type SideName } from '../plan.ts';
import { ONE, whole } from '../ratio.ts';
import { shareText } from '../ratioCheck/causes/words.ts';
import type { CatchFigures, Evaluation } from '../ratioCheck/evaluate.ts';
import type { Catch } from '../ratioCheck/model.ts';
import { fromSI } from '../units.ts';
import { NONE, partsPlaces, plainText } from './paperText.ts';
import type { WordTable } from './wordTable.ts';

type Written = keyof CaughtRow;
const WRITTEN: readonly Written[] = ['gross', 'tare', 'net', 'volume'];
const HEADS: Readonly<Record<Written, (side: SideName) => string>> = {
  gross: (side) => en`${side} gross`,
  tare: (side) => en`${side} tare`,
  net: (side) => en`${side} net`,
  volume: (side) => en`${side} volume`,
};

/**
 * The catches as they were written down, with what each says by itself; columns that hold nothing are left out, and
 * the reason why a catch does not count runs over the rest of its row.
 */
export function checkCatches(rows: readonly CatchRow[], evaluation: Evaluation, say: Say): WordTable {
  const { input, counted, weighed } = evaluation;
  const columns = SIDES.flatMap((side) =>
    WRITTEN.filter((key) => rows.some((row) => row[side][key] !== undefined || (key === 'net' && row[side].gross !== undefined))).map(
      (key) => ({ side, key }),
    ),
  );
  const steps = counted.some(({ byStep }) => byStep !== null);
  const heads = [
    en`Catch`,
    ...columns.map(({ side, key }) => HEADS[key](side)),
    weighed ? en`B per 100 A` : en`B per 100 A, vol.`,
    en`B of all`,
    en`Off-ratio`,
  ];
  return {
    heads: [...heads, ...(steps ? [en`By the scale’s step alone`] : [])],
    rows: rows.map((row, index) => {
      const caught = input.catches[index];
      const figures = counted.find(({ number }) => number === index + 1);
      const written = columns.map(({ side, key }) => cellOf(row, caught, side, key, say));
      return [String(index + 1), ...written, ...figureCells(figures, row.leftOut, steps, say)];
    }),
  };
}

function cellOf(row: CatchRow, caught: Catch | undefined, side: SideName, key: Written, say: Say): string {
  const typed = row[side][key];
  if (typed !== undefined) return `${typed.value}\u00A0${typed.unit}`;
  const { gross } = row[side];
  const net = caught?.sides[side].mass_kg;
  return key === 'net' && gross !== undefined && net?.known
    ? `${plainText(fromSI('mass', net.value, gross.unit), say)}\u00A0${gross.unit}`
    : NONE;
}

function figureCells(figures: CatchFigures | undefined, leftOut: string | undefined, steps: boolean, say: Say): readonly string[] {
  if (figures === undefined) return [en`left out: ${leftOut ?? ''}`];
  const parts = figures.bPerA.mul(whole(100));
  const { byStep } = figures;
  return [
    fixed(parts, partsPlaces(parts), say),
    shareText(figures.bPerA.div(figures.bPerA.add(ONE)), say),
    offRatioText(figures.offRatio, say),
    ...(steps ? [byStep === null ? NONE : signedRangeText(byStep.from, byStep.to, say)] : []),
  ];
}
