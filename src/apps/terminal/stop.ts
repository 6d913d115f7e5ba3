/** Whether a stop was asked for. */
export interface Stop {
  stopped(): boolean;
  /** Called once, when a stop is asked for. */
  onStop(listener: () => void): void;
  release(): void;
}

/**
 * Ctrl+C or a scheduler's TERM asks for a stop: what is under way is finished and written down. A
 * second one ends the process at once, which loses no more than that.
 */
export function onStopSignal(): Stop {
  let stopped = false;
  const listeners: (() => void)[] = [];
  const signals = ['SIGINT', 'SIGTERM'] as const;
  const stop = (): void => {
    stopped = true;
    release();
    for (const listener of listeners) listener();
  };
  const release = (): void => {
    for (const signal of signals) process.off(signal, stop);
  };
  for (const signal of signals) process.on(signal, stop);
  return { stopped: () => stopped, onStop: (listener) => void listeners.push(listener), release };
}
