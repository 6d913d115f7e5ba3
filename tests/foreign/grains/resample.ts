const ZEROS = 12;
const PHASES = 512;

/**
 * One half of a windowed sinc, `PHASES` points to a zero crossing, cut off at `pass` of the lower
 * rate.
 */
function kernel(pass: number): Float32Array {
  const table = new Float32Array(ZEROS * PHASES + 2);
  for (let k = 0; k < table.length; k++) {
    const x = k / PHASES;
    const w = Math.cos((Math.PI * Math.min(1, x / ZEROS)) / 2) ** 2;
    const a = Math.PI * x * pass;
    table[k] = w * pass * (a < 1e-9 ? 1 : Math.sin(a) / a);
  }
  return table;
}

const KERNEL = kernel(0.92);

/**
 * Brings samples to another rate with a windowed sinc; no delay, edges against zeros.
 *
 * @returns `round(length · toHz / fromHz)` samples
 */
export function resample(samples: Float32Array, fromHz: number, toHz: number): Float32Array {
  if (fromHz === toHz) return samples.slice();
  const out = new Float32Array(Math.round((samples.length * toHz) / fromHz));
  const step = fromHz / toHz;
  const narrow = Math.min(1, toHz / fromHz);
  const reach = ZEROS / narrow;
  const grid = PHASES * narrow;
  for (let n = 0; n < out.length; n++) {
    const centre = n * step;
    const from = Math.max(0, Math.ceil(centre - reach));
    const to = Math.min(samples.length - 1, Math.floor(centre + reach));
    let sum = 0;
    for (let k = from; k <= to; k++) {
      const place = Math.round(Math.abs(k - centre) * grid);
      sum += (samples[k] as number) * (KERNEL[place] as number);
    }
    out[n] = sum * narrow;
  }
  return out;
}
