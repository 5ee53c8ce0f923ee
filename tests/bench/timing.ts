import { Cancelled, type Hooks } from '../../core/src/search/index.ts';

/** Some work done and how long it took. */
export interface Timed<T> {
  readonly value: T;
  readonly ms: number;
}

export function timed<T>(work: () => T): Timed<T> {
  const from_ms = performance.now();
  const value = work();
  return { value, ms: performance.now() - from_ms };
}

/** A search that takes longer than `most_ms` is stopped: null. */
export function timedWithin<T>(most_ms: number, search: (hooks: Hooks) => T): Timed<T> | null {
  const end_ms = performance.now() + most_ms;
  try {
    return timed(() => search({ cancelled: () => performance.now() > end_ms }));
  } catch (error) {
    if (error instanceof Cancelled) return null;
    throw error;
  }
}

export function median(list: readonly number[]): number {
  const sorted = [...list].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? Number.NaN) + upper) / 2;
}

/** Everything that nothing refers to any more is given back first, where Node runs with --expose-gc. */
export function used_MB(): number {
  globalThis.gc?.();
  return heldNow_MB();
}

export function heldNow_MB(): number {
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 1e6;
}
