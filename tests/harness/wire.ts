// What the calls of the contract carry and JSON does not, as JSON text. Both functions also run in the page, by their source: they call nothing outside themselves.

/** Throws on functions and symbols, as Electron's own messages do, and on what this stand-in does not carry. */
export function encode(values: readonly unknown[]): string {
  const walk = (value: unknown): unknown => {
    if (value === undefined) return { undefined: true };
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) return value.map(walk);
    if (Object.getPrototypeOf(value) !== Object.prototype) throw new TypeError(`the stand-in carries no ${value.constructor.name}`);
    return { entries: Object.entries(value).map(([key, part]) => [key, walk(part)]) };
  };
  return JSON.stringify(walk(structuredClone(values)));
}

export function decode(text: string): unknown[] {
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(walk);
    if (typeof value !== 'object' || value === null) return value;
    if (!('entries' in value) || !Array.isArray(value.entries)) return undefined;
    return Object.fromEntries(value.entries.map(([key, part]) => [key, walk(part)]));
  };
  const values: unknown[] = JSON.parse(text);
  return values.map(walk);
}
