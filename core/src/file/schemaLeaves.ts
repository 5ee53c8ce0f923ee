import type { GenericSchema } from 'valibot';
import { isObject } from './fields.ts';
import { shopFile } from './shopFile.ts';

/** A field of the shop file that holds a value, with the steps to it; a row of a list is `*`. */
export interface SchemaLeaf {
  readonly steps: readonly string[];
  readonly schema: GenericSchema;
}

type Step = readonly [step: string, inner: GenericSchema];

const isSchema = (part: unknown): part is GenericSchema => isObject(part) && part.kind === 'schema';
const isQuantity = (entries: Readonly<Record<string, unknown>>): boolean => Object.keys(entries).join() === 'value,unit';

/** What stands in braces or brackets; where either of two shapes may stand, both. A value has no steps. */
function stepsOf(schema: GenericSchema): readonly Step[] {
  const parts: unknown = schema;
  if (!isObject(parts)) return [];
  const { pipe, wrapped, item, entries, getter } = parts;
  if (Array.isArray(pipe)) return pipe.filter(isSchema).flatMap(stepsOf);
  if (isSchema(wrapped)) return stepsOf(wrapped);
  if (isSchema(item)) return [['*', item]];
  if (isObject(entries) && !isQuantity(entries))
    return Object.entries(entries).filter((entry): entry is [string, GenericSchema] => isSchema(entry[1]));
  if (typeof getter !== 'function') return [];
  const shapes: readonly unknown[] = [getter({ fixed: {} }), getter({})];
  return shapes.filter(isSchema).flatMap(stepsOf);
}

const leavesUnder = (steps: readonly string[], schema: GenericSchema): readonly SchemaLeaf[] => {
  const inner = stepsOf(schema);
  return inner.length === 0 ? [{ steps, schema }] : inner.flatMap(([step, one]) => leavesUnder([...steps, step], one));
};

/**
 * Every field of the shop file that holds a value, in the order of the schema.
 *
 * @source our choice
 * @example schemaLeaves().map(({ steps }) => steps.join('.')).includes('machines.*.motor.speed')  // true
 */
export const schemaLeaves = (): readonly SchemaLeaf[] => leavesUnder([], shopFile);
