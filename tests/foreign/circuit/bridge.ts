/** The bridge of liquid metal in a short circuit: how it thins and breaks. */

export interface BridgeSetting {
  densityKgM3: number;
  tensionNM: number;
  /** Current at which the pinch works as fast as surface tension, A. */
  pinchA: number;
  /** Bridge time over capillary time (own choice, drawn per arc). */
  slowness: number;
}

/** One bridge from touch to break. */
export class Bridge {
  /** 1 when full, 0 when gone. */
  neck: number;
  readonly incipient: boolean;
  private readonly timeS: number;
  private readonly pinchA: number;

  /** `luck` is this bridge's own factor; an incipient bridge starts thin. */
  constructor(set: BridgeSetting, radiusM: number, luck: number, incipient: boolean, thin: number) {
    // Capillary time sqrt(rho r^3 / gamma), plain dimensional analysis.
    const capillary = Math.sqrt((set.densityKgM3 * radiusM ** 3) / set.tensionNM);
    this.timeS = capillary * set.slowness * luck;
    this.pinchA = set.pinchA;
    this.neck = incipient ? thin : 1;
    this.incipient = incipient;
  }

  /** Thins the bridge; true when it breaks. A thin neck runs away. */
  step(i: number, dt: number): boolean {
    const drive = 0.5 + (i / this.pinchA) ** 2;
    this.neck -= ((dt / this.timeS) * drive) / (0.35 + this.neck);
    return this.neck <= 0.04;
  }

  /** Resistance of bridge and contacts: about 8 milliohm full, more when thin (own choice near the published 20 with leads). */
  get ohm(): number {
    return 0.007 + 0.0011 / Math.max(0.05, this.neck);
  }
}
