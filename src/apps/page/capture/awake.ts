/** Keeps the screen on while recording, where the browser can; comes back after the page was hidden. */
export class Awake {
  #lock: WakeLockSentinel | null = null;
  #wanted = false;
  readonly #again = (): void => {
    if (document.visibilityState === 'visible') void this.#ask();
  };

  async start(): Promise<void> {
    this.#wanted = true;
    document.addEventListener('visibilitychange', this.#again);
    await this.#ask();
  }

  async stop(): Promise<void> {
    this.#wanted = false;
    document.removeEventListener('visibilitychange', this.#again);
    await this.#lock?.release().catch(() => {});
    this.#lock = null;
  }

  async #ask(): Promise<void> {
    if (!this.#wanted || !('wakeLock' in navigator)) return;
    // Refused on low battery: recording goes on all the same.
    this.#lock = await navigator.wakeLock.request('screen').catch(() => null);
  }
}
