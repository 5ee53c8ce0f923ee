import os from 'node:os';

/** The machine in words that name nobody's. */
export function machineText(): string {
  const cores = os.availableParallelism();
  return `${cores} ${cores === 1 ? 'core' : 'cores'}, ${process.arch}, ${process.platform}, Node ${process.versions.node.split('.')[0]}; one thread; others may have used the machine.`;
}
