/** The text of a number: long enough that a kill can fall into its writing, and such that half of it, or two mixed, are told apart. */
export function textOf(number) {
  const sign = String.fromCharCode(97 + (number % 26));
  return `${number} ${sign.repeat(400_000 + 997 * (number % 100))} ${number}\n`;
}

/** The number of a whole text; null where it is none. */
export function numberOf(text) {
  const number = Number(/^(\d+) /.exec(text)?.[1] ?? Number.NaN);
  return Number.isInteger(number) && text === textOf(number) ? number : null;
}
