/** Complex fast Fourier transform of one size, in place, radix 2. */
export class Fourier {
  private readonly cos: Float64Array;
  private readonly sin: Float64Array;
  private readonly swap: Uint32Array;

  /** @param size a power of 2 */
  constructor(readonly size: number) {
    this.cos = new Float64Array(size / 2);
    this.sin = new Float64Array(size / 2);
    for (let k = 0; k < size / 2; k++) {
      this.cos[k] = Math.cos((2 * Math.PI * k) / size);
      this.sin[k] = -Math.sin((2 * Math.PI * k) / size);
    }
    const bits = Math.log2(size);
    this.swap = new Uint32Array(size);
    for (let k = 0; k < size; k++) {
      let r = 0;
      for (let b = 0; b < bits; b++) r |= ((k >> b) & 1) << (bits - 1 - b);
      this.swap[k] = r;
    }
  }

  /** Sum of x[n]·exp(-2πi·n·k/size) for each k. */
  run(re: Float64Array, im: Float64Array): void {
    const n = this.size;
    for (let k = 0; k < n; k++) {
      const j = this.swap[k] as number;
      if (j <= k) continue;
      const a = re[k] as number;
      const b = im[k] as number;
      re[k] = re[j] as number;
      im[k] = im[j] as number;
      re[j] = a;
      im[j] = b;
    }
    for (let half = 1; half < n; half *= 2) {
      const stride = n / (2 * half);
      for (let j = 0; j < half; j++) {
        const c = this.cos[j * stride] as number;
        const s = this.sin[j * stride] as number;
        for (let k = j; k < n; k += 2 * half) {
          const m = k + half;
          const a = re[m] as number;
          const b = im[m] as number;
          const x = a * c - b * s;
          const y = a * s + b * c;
          re[m] = (re[k] as number) - x;
          im[m] = (im[k] as number) - y;
          re[k] = (re[k] as number) + x;
          im[k] = (im[k] as number) + y;
        }
      }
    }
  }
}
