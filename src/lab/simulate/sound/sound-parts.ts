import type { EventKind } from './event-kinds.js';

/** Gathers the sounds of one run: each kind of event by itself, or all in one. */
export class SoundParts {
  readonly rest: Float64Array;
  readonly parts: Partial<Record<EventKind, Float64Array>> = {};

  constructor(
    readonly count: number,
    /** Keep the kinds apart. */
    readonly apart: boolean,
  ) {
    this.rest = new Float64Array(count);
  }

  /** Where the sound of this kind of event is to be added. */
  of(kind: EventKind): Float64Array {
    if (!this.apart) return this.rest;
    let part = this.parts[kind];
    if (part === undefined) {
      part = new Float64Array(this.count);
      this.parts[kind] = part;
    }
    return part;
  }

  /** All series there are. */
  all(): Float64Array[] {
    return [this.rest, ...Object.values(this.parts)];
  }

  /** The sum of all. */
  whole(): Float64Array {
    const parts = Object.values(this.parts);
    if (parts.length === 0) return this.rest;
    const out = new Float64Array(this.rest);
    for (const part of parts) for (let i = 0; i < out.length; i++) out[i]! += part[i]!;
    return out;
  }
}
