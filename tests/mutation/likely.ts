import path from 'node:path';

/** Which test files are likely to notice a mutant, from what they did so far. It decides the order, never a verdict. */
export interface Likely {
  /** Of noticing a mutant of a source file; only compared with one another. */
  chance(place: string, file: string): number;
  /** The files in the order in which they were run, and which of them noticed it. */
  note(place: string, run: readonly string[], noticed: string | null): void;
}

/** What a test file named for a source file, and one that noticed a mutant of it before, count for in addition. */
const NAMED = 1;
const NOTICED = 0.5;

export function likelyFirst(): Likely {
  const tries = new Map<string, number>();
  const hits = new Map<string, number>();
  const add = (counts: Map<string, number>, key: string) => counts.set(key, (counts.get(key) ?? 0) + 1);
  return {
    chance(place, file) {
      const rate = ((hits.get(file) ?? 0) + 0.1) / ((tries.get(file) ?? 0) + 1);
      const named = path.basename(file, '.test.ts') === path.basename(place, '.ts') ? NAMED : 0;
      return rate + named + NOTICED * (hits.get(`${place} ${file}`) ?? 0);
    },
    note(place, run, noticed) {
      const asked = noticed === null ? run : run.slice(0, run.indexOf(noticed) + 1);
      for (const file of new Set(asked)) add(tries, file);
      if (noticed === null) return;
      add(hits, noticed);
      add(hits, `${place} ${noticed}`);
    },
  };
}
