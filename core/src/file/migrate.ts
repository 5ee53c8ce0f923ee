/** One step of the file's history: turns the plain JSON of a version into that of the next. A released step is never edited. */
export type Migration = (json: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/** Step i turns version i + 1 into version i + 2. Version 1 is the first, so there is none yet. */
export const migrations: readonly Migration[] = [];
