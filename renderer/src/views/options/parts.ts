import { later } from '../later.ts';

// What the Options page shows only beside an answer, or when it is opened, comes after the page.

export const ChosenDrive = later(async () => (await import('./ChosenDrive.tsx')).ChosenDrive);
export const SearchFields = later(async () => (await import('./SearchFields.tsx')).SearchFields);
export const Tries = later(async () => (await import('./Tries.tsx')).Tries);

/** In the order in which they are seen. */
export const PARTS = [ChosenDrive, Tries, SearchFields] as const;
