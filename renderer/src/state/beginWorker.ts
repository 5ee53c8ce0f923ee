import { speakTheirs } from '../words.ts';

/** Starts a worker: it speaks the language of the window, and what it is asked before it can hear is kept and asked again. */
export function beginWorker(load: () => Promise<unknown>): void {
  const early: MessageEvent[] = [];
  self.onmessage = (message) => early.push(message);
  speakTheirs()
    .then(load)
    .then(() => {
      for (const message of early) self.onmessage?.(message);
    })
    .catch(reportError);
}
