import { en } from '../../../core/src/en.ts';

/** Keys as a keyboard of the language has them, by the names that commands and the browser give them. */
export const KEY_WORDS: Readonly<Record<string, string>> = {
  Ctrl: en`Ctrl`,
  Alt: en`Alt`,
  Shift: en`Shift`,
  Enter: en`Enter`,
  Home: en`Home`,
  End: en`End`,
  Delete: en`Del`,
  Insert: en`Ins`,
};
