import { Cancelled, type Candidate, type Hooks, type Rules } from './problem.ts';

/** Tells the caller how far the work is and asks whether to go on. */
export interface Pace {
  /** Throws `Cancelled` once the caller has asked for it. */
  readonly check: () => void;
  /** Begins one more pass over the whole range; the answer takes the share of that pass which is done. */
  readonly pass: () => (share: number) => void;
}

/** Nobody knows how many passes a search needs, so each takes this much of what is left of the bar. */
const SHARE_OF_REST = 0.8;

export function paceOf(hooks: Hooks): Pace {
  let shown = 0;
  let begun = 0;
  const check = (): void => {
    if (hooks.cancelled?.()) throw new Cancelled();
  };
  const pass = (): ((share: number) => void) => {
    const from = begun;
    begun = from + (1 - from) * SHARE_OF_REST;
    const to = begun;
    return (share) => {
      check();
      const done = from + (to - from) * share;
      if (done < shown + 0.01) return;
      shown = done;
      hooks.progress?.(done);
    };
  };
  return { check, pass };
}

/** The part of a longer job that begins at `from` and is `share` of it, as hooks of its own. */
export function partOf(hooks: Hooks, from: number, share: number): Hooks {
  const { progress, cancelled } = hooks;
  return {
    ...(progress === undefined ? {} : { progress: (done: number) => progress(from + share * done) }),
    ...(cancelled === undefined ? {} : { cancelled }),
  };
}

/** `admit` that also asks now and then whether to go on: one cell can hold millions of options. */
export function pacedAdmit(rules: Rules, check: () => void): (candidate: Candidate) => number | null {
  let calls = 0;
  return (candidate) => {
    calls += 1;
    if (calls % 1024 === 0) check();
    return rules.admit(candidate);
  };
}
