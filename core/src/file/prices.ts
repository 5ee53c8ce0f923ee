import * as v from 'valibot';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import type { Place } from '../finding.ts';
import { readPrice } from '../price.ts';
import { id, kind, line, list, NUMBER, readable, row, teeth } from './fields.ts';
import type { Problems } from './problems.ts';

const range = { kind, size: line, from: teeth, to: teeth };
const RANGED = row(range);
const priceRow = row({ id, ...range, price: readable(NUMBER, readPrice) });

/** What a wheel of each size costs by its teeth, both ends counted in. */
export const prices = list(priceRow);

export type PriceRow = v.InferOutput<typeof priceRow>;

type Ranged = v.InferOutput<typeof RANGED>;

/**
 * The row that gives some of the same wheels a price already.
 *
 * @source our choice: a wheel has one price
 */
export const samePriced = <T extends Ranged>(rows: readonly T[], one: Ranged): T | undefined =>
  rows.find(
    (other) =>
      other.kind === one.kind && driveKind(one.kind).sameSize(other.size, one.size) && other.from <= one.to && one.from <= other.to,
  );

/** What the schema cannot see: a range the wrong way round, and a wheel that two rows give a price. */
export function checkPrices(rows: readonly unknown[], place: Place, problems: Problems): void {
  const sizes: Ranged[][] = [];
  rows.forEach((one, index) => {
    const read = v.safeParse(RANGED, one);
    // A size that is not known is said with the references.
    if (!read.success || driveKind(read.output.kind).size(read.output.size) === null) return;
    const at = [...place, index, 'from'];
    const { kind, size, from, to } = read.output;
    const before = sizes.find(([other]) => other?.kind === kind && driveKind(kind).sameSize(other.size, size)) ?? [];
    if (from > to) problems.add(at, en`the teeth run from ${from} to ${to}: the first must not be larger`);
    else if (before.some((other) => other.from <= to && from <= other.to))
      problems.add(at, en`${size}, ${from} to ${to} teeth: some of these have a price already`);
    else if (before.push(read.output) === 1) sizes.push(before);
  });
}
