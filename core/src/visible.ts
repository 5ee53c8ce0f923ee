/** Characters that steer a terminal, a line or the direction of reading, and halves of a character. */
const STEERS = /[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}\p{Cs}\uFEFF]/gu;
/** Tabs and line ends, also those of other systems. */
const BREAK = /[\t\n\v\f\r\u0085\p{Zl}\p{Zp}]/u;
const MOST_QUOTED = 80;

const codeOf = (character: string): string => `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;

/**
 * A text of the user's as it may stand in a line of ours: what would steer a terminal or turn the direction of reading is
 * written as its code, a tab or a line end as a space. A text without any of these is unchanged.
 *
 * @param text  any text, also one with halves of a character
 * @source ECMA-48 (control functions) and UAX #9 (directional formatting characters), as Unicode classes them: Cc, Bidi_Control
 * @example visible('E12\u001B[31m')  // 'E12[U+001B][31m'
 */
export const visible = (text: string): string =>
  text.replace(STEERS, (character) => (BREAK.test(character) ? ' ' : `[${codeOf(character)}]`));

/**
 * The text made visible, or its beginning with an ellipsis where it is longer than so many characters.
 *
 * @param most  1 or more
 * @source our choice
 * @example clip('Polyurethane', 5)  // 'Poly…'
 */
export function clip(text: string, most: number): string {
  // A character takes at most two places of a text, so what lies beyond is not looked at.
  const characters = [...visible(text.slice(0, 2 * most + 2))];
  const whole = characters.length <= most;
  return whole
    ? characters.join('')
    : `${characters
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
}

/**
 * What somebody wrote, as a sentence about it quotes it: visible, and cut where it is long.
 *
 * @param text  any text, of any length
 * @source our choice
 * @example quoted('08B')  // '"08B"'
 */
export const quoted = (text: string): string => `"${clip(text, MOST_QUOTED)}"`;
