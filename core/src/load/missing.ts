import { en } from '../en.ts';
import { type Place, placeText } from '../finding.ts';
import { fixed, type Say } from '../format.ts';
import type { Plan } from '../plan.ts';
import { SERVICE_FACTORS } from '../tables/serviceFactors.ts';

/** An input that a figure lacks: its field, and its name in a sentence. */
export interface Missing {
  readonly where: Place;
  readonly what: (say: Say) => string;
}

/** A figure that follows from inputs, or those of them that are not given. */
export type Derived<T> = { readonly known: true; readonly value: T } | { readonly known: false; readonly missing: readonly Missing[] };

/**
 * Fields of the file that are lacking, each with its name in a sentence.
 *
 * @param place   that they are fields of
 * @param whose   whose they are, as a sentence says it
 * @source our choice of words
 * @example lacking(place of the motor, ['ratedTorque'], 'the motor')  // 'rated torque of the motor'
 */
export const lacking = (place: Place, fields: readonly string[], whose: string): readonly Missing[] =>
  fields.map((field) => ({ where: [...place, field], what: () => en`${placeText([field])} of ${whose}` }));

/** The usual service factors, each with the load it goes with. */
export const serviceFactorsText = (say: Say): string =>
  SERVICE_FACTORS.map(({ load, serviceFactor }) => en`${fixed(serviceFactor, 1, say)} for ${load}`).join(', ');

/**
 * The service factor where it is not given, with what is usual; nothing where it is given.
 *
 * @source asme-b29.1, supplementary information, from memory
 * @example lackingServiceFactor(plan)  // 'service factor (usual with an electric motor: 1.0 for an even load, …)'
 */
export function lackingServiceFactor({ motor, serviceFactor }: Plan): readonly Missing[] {
  if (serviceFactor.known) return [];
  const machine = motor.place.slice(0, -1);
  return [
    { where: [...machine, 'serviceFactor'], what: (say) => en`service factor (usual with an electric motor: ${serviceFactorsText(say)})` },
  ];
}

/**
 * A sentence that names what is lacking, each field once.
 *
 * @param so  what could not be done, as a clause
 * @source our choice
 * @example missingText([pressure of A, pressure of A], 'the motor was not checked', say)  // 'Not given: pressure of A; so the motor was not checked.'
 */
export function missingText(missing: readonly Missing[], so: string, say: Say): string {
  return en`Not given: ${[...new Set(missing.map(({ what }) => what(say)))].join(', ')}; so ${so}.`;
}
