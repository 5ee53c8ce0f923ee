import { en } from './en.ts';
import type { Teeth } from './plan.ts';

/**
 * Teeth stage by stage, as people say them.
 *
 * @source our choice of words
 * @example teethText([{ driver: 23, driven: 25 }])  // '23 to 25'
 */
export const teethText = (teeth: readonly Teeth[]): string => teeth.map(({ driver, driven }) => en`${driver} to ${driven}`).join(', ');
