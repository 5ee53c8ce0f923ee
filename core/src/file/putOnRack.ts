import { driveKind } from '../drives/index.ts';
import type { Given } from '../given.ts';
import { exactText, type Fraction, whole } from '../ratio.ts';
import type { TypedQuantity } from '../reading.ts';
import { si } from './problems.ts';
import type { PieceRow, RackRow } from './rack.ts';

/** A wheel that comes to the rack. */
export interface RackedWheel {
  readonly kind: string;
  readonly size: string;
  readonly teeth: number;
  readonly bore_m: Given<Fraction>;
  readonly keyway_m?: Given<Fraction>;
}

/**
 * Lays one wheel on the rack: one more in the row of its size, teeth and bore, else a row of its own, without part number and place.
 *
 * @param rack  of a checked shop file, to be changed
 */
export function putOnRack(rack: RackRow, wheel: RackedWheel): void {
  const { kind, size, teeth, bore_m, keyway_m } = wheel;
  const row = rack.pieces.find((piece) => isSame(piece, wheel));
  if (row !== undefined) {
    row.quantity += 1;
    return;
  }
  rack.pieces.push({
    id: freeId(rack, `${size}-${teeth}`.toLowerCase()),
    kind,
    size,
    teeth,
    quantity: 1,
    ...(bore_m.known && { bore: exactMillimetres(bore_m.value) }),
    ...(keyway_m?.known === true && { keyway: exactMillimetres(keyway_m.value) }),
  });
}

const isSame = (piece: PieceRow, { kind, size, teeth, bore_m }: RackedWheel): boolean =>
  piece.kind === kind &&
  driveKind(kind).sameSize(piece.size, size) &&
  piece.teeth === teeth &&
  sameBore(piece.bore, bore_m.known ? bore_m.value : null);

const sameBore = (typed: TypedQuantity | undefined, bore_m: Fraction | null): boolean =>
  typed === undefined ? bore_m === null : bore_m !== null && si('length', typed).equals(bore_m);

function freeId(rack: RackRow, wanted: string): string {
  const taken = new Set(rack.pieces.map((piece) => piece.id));
  if (!taken.has(wanted)) return wanted;
  for (let n = 2; ; n += 1) if (!taken.has(`${wanted}-${n}`)) return `${wanted}-${n}`;
}

/** Lossless: a bore is compared exactly, so it must come back as it was. */
function exactMillimetres(length_m: Fraction): TypedQuantity {
  const length = length_m.mul(whole(1000));
  const decimal = length.toString(12);
  return { value: decimal.includes('(') ? exactText(length) : decimal, unit: 'mm' };
}
