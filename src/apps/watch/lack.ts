/** What makes a watch useless though nothing fails: it is said, and raises the alarm where asked for. */
export const LACKS = ['signal-lost', 'unreadable', 'no-arc'] as const;
export type Lack = (typeof LACKS)[number];

/** Bytes without a readable row or sample for so long are said, s. */
const UNREADABLE_S = 5;

/** Notices that bytes come and nothing can be read. Asked often; answers once until samples come again. */
export class UnreadableWatch {
  #bytes = 0;
  #sinceMs = performance.now();
  #said = false;

  samples(bytes: number | null): void {
    this.#bytes = bytes ?? 0;
    this.#sinceMs = performance.now();
    this.#said = false;
  }

  /** Bytes that came in vain; undefined where there is nothing (new) to say. */
  lack(bytes: number | null): number | undefined {
    const vain = (bytes ?? 0) - this.#bytes;
    if (this.#said || vain === 0) return undefined;
    if (performance.now() - this.#sinceMs < 1000 * UNREADABLE_S) return undefined;
    this.#said = true;
    return vain;
  }
}

/** Notices that no arc burns for `afterS`; answers once for each pause. Times are s of the stream. */
export class NoArcWatch {
  readonly #afterS: number;
  #sinceS = 0;
  #said = false;

  constructor(afterS: number) {
    this.#afterS = afterS;
  }

  arc(timeS: number): void {
    this.#sinceS = timeS;
    this.#said = false;
  }

  /** Since when; undefined where there is nothing (new) to say. */
  lack(timeS: number): number | undefined {
    if (this.#said || timeS - this.#sinceS < this.#afterS) return undefined;
    this.#said = true;
    return this.#sinceS;
  }
}
