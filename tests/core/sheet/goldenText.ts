import type { ChangeSheet } from '../../../core/src/sheet/changeSheet.ts';
import { sheetLines } from '../../../core/src/sheet/sheetLines.ts';

/** A sheet as text to compare with; no-break spaces are shown as `~`. */
export const goldenText = (sheet: ChangeSheet): string => `${sheetLines(sheet).join('\n').replaceAll('\u00A0', '~')}\n`;
