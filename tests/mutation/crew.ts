import { type ChildProcess, fork } from 'node:child_process';
import type { Order, PlacedMutant, Report } from './worker.ts';

/** What a process is started for: to learn, or for these mutants. */
export interface Task {
  readonly root: string;
  readonly mutants: readonly PlacedMutant[] | null;
  /** What their files read when they were drawn: one that is written meanwhile would no longer hold their places. */
  readonly texts: Readonly<Record<string, string>>;
}

export interface Member {
  /** The report on an order, or null where the process ended over it. */
  ask(order: Order): Promise<Report | null>;
}

/** Processes that stay warm from one order to the next. */
export interface Crew {
  /** Every piece of work by whichever process is free. */
  each<T>(pieces: readonly T[], work: (member: Member, piece: T) => Promise<void>): Promise<void>;
  dismiss(): void;
}

/** @param script  a file that takes a `Task` as its first message, then orders */
export function callCrew(script: string, task: Task, size: number): Crew {
  const children = new Set<ChildProcess>();
  const start = (): ChildProcess => {
    const child = fork(script, ['--worker'], { stdio: ['ignore', 'ignore', 'ignore', 'ipc'], serialization: 'advanced' });
    children.add(child);
    child.once('exit', () => children.delete(child));
    child.send(task);
    return child;
  };
  const hire = (): Member => {
    let child: ChildProcess | null = null;
    return {
      ask: (order) =>
        new Promise((tell) => {
          if (child === null || !children.has(child)) child = start();
          const asked = child;
          const ended = () => tell(null);
          asked.once('exit', ended);
          asked.once('message', (report: Report) => {
            asked.off('exit', ended);
            tell(report);
          });
          asked.send(order);
        }),
    };
  };
  const members = Array.from({ length: size }, hire);
  return {
    async each(pieces, work) {
      const left = [...pieces];
      await Promise.all(
        members.map(async (member) => {
          for (let piece = left.shift(); piece !== undefined; piece = left.shift()) await work(member, piece);
        }),
      );
    },
    dismiss() {
      for (const child of children) child.kill();
    },
  };
}
