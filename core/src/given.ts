/** An input of a plan is known or not given: two different types, so that no stand-in number can slip in. */
export type Given<T> = { readonly known: true; readonly value: T } | { readonly known: false };

export const NOT_GIVEN: { readonly known: false } = { known: false };

export function known<T>(value: T): Given<T> {
  return { known: true, value };
}

/** A value that is absent in the file becomes `not given`; a present one goes through `read`. */
export function given<T, U>(value: T | undefined, read: (value: T) => U): Given<U> {
  return value === undefined ? NOT_GIVEN : known(read(value));
}

export function orNull<T>(input: Given<T>): T | null {
  return input.known ? input.value : null;
}
