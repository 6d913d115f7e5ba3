import type { Dice } from './dice.js';

/** Points a second of a slow curve: own choice, far above the fastest wander of a hand. */
const POINTS_PER_S = 200;

/** A quantity that wanders slowly around 0: the load, a hand, a gust. */
export class SlowCurve {
  private readonly points: Float32Array;

  /**
   * A sum of sines of random phase whose strength falls with frequency.
   *
   * @param size standard deviation of the curve
   * @param lowHz slowest movement
   * @param highHz fastest movement
   */
  constructor(dice: Dice, durationS: number, size: number, lowHz: number, highHz: number) {
    const count = Math.ceil(durationS * POINTS_PER_S) + 3;
    this.points = new Float32Array(count);
    const waves = 6;
    let power = 0;
    for (let w = 0; w < waves; w++) {
      const hz = dice.ratio(lowHz, highHz);
      const height = dice.between(0.4, 1) * (lowHz / hz) ** 0.4;
      const phase = dice.between(0, 2 * Math.PI);
      power += (height * height) / 2;
      const turn = (2 * Math.PI * hz) / POINTS_PER_S;
      for (let k = 0; k < count; k++) {
        this.points[k] = (this.points[k] as number) + height * Math.sin(phase + turn * k);
      }
    }
    const gain = size / Math.sqrt(power);
    for (let k = 0; k < count; k++) this.points[k] = (this.points[k] as number) * gain;
  }

  /** Value at a time in seconds; held beyond both ends. */
  at(timeS: number): number {
    const place = Math.min(Math.max(timeS * POINTS_PER_S, 0), this.points.length - 2);
    const k = Math.floor(place);
    const left = this.points[k] as number;
    return left + (place - k) * ((this.points[k + 1] as number) - left);
  }
}
