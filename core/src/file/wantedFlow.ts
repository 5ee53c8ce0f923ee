import { en } from '../en.ts';
import type { Place } from '../finding.ts';
import { type Given, known, NOT_GIVEN } from '../given.ts';
import { mixtureDensity } from '../mixture.ts';
import type { Batch, Mix } from '../plan.ts';
import type { Fraction } from '../ratio.ts';
import { readAmount } from '../units.ts';
import { formula, type Input, input, work } from '../working.ts';
import type { MachineRow } from './machine.ts';
import { type Problems, reading, si } from './problems.ts';

const shotByVolume = formula({
  letter: 'Q',
  written: 'V / t',
  dimension: 'flow',
  source: en`definition`,
  of: ({ V, t }: Record<'V' | 't', Fraction>) => V.div(t),
});

const shotByMass = formula({
  letter: 'Q',
  written: 'm / (ρ · t)',
  dimension: 'flow',
  source: en`definition`,
  of: ({ m, ρ, t }: Record<'m' | 'ρ' | 't', Fraction>) => m.div(ρ.mul(t)),
});

/** The flow wanted of both sides together, as given or out of a shot; a shot by mass needs the density of the mix. */
export function wantedFlow({ wantedFlow: flow, wantedShot: shot }: MachineRow, mix: Mix): Given<Input<Fraction>> {
  if (flow !== undefined) return known(input(en`flow wanted`, si('flow', flow), 'flow'));
  if (shot === undefined) return NOT_GIVEN;
  const { dimension, value } = reading(readAmount(shot.amount));
  const t = input(en`time of the shot`, si('time', shot.time), 'time');
  if (dimension === 'volume') return known(work(shotByVolume, en`flow wanted`, { V: input(en`volume of the shot`, value, 'volume'), t }));
  const ρ = mixtureDensity(mix);
  return ρ.known ? known(work(shotByMass, en`flow wanted`, { m: input(en`mass of the shot`, value, 'mass'), ρ: ρ.value, t })) : NOT_GIVEN;
}

export function resolveBatch({ of, amount }: NonNullable<MachineRow['batch']>, place: Place): Batch {
  const { dimension, value } = reading(readAmount(amount));
  return { place, of, amount: dimension === 'mass' ? { kind: 'mass', mass_kg: value } : { kind: 'volume', volume_m3: value } };
}

/** A flow is wanted in one way only. */
export function checkWanted({ wantedFlow: flow, wantedShot: shot }: MachineRow, place: Place, problems: Problems): void {
  if (flow === undefined || shot === undefined) return;
  problems.add([...place, 'wantedShot'], en`a wanted flow and a wanted shot say the same thing twice: keep one of them`);
}
