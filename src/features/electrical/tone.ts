/**
 * Power (half the squared amplitude) of a steady tone of exactly `hz` in the samples, Hann-weighted.
 * An event train with jitter has hardly any; a line of the mains or of a clocked source has all of it.
 */
export function tonePower(values: Float64Array, sampleRateHz: number, hz: number): number {
  const size = values.length;
  if (size === 0) return Number.NaN;
  let mean = 0;
  for (let n = 0; n < size; n++) mean += values[n]!;
  mean /= size;
  const step = (2 * Math.PI * hz) / sampleRateHz;
  const turn = (2 * Math.PI) / size;
  // Rotations instead of a sine a sample; 2,500 turns lose about 1e-13.
  const [cs, ss, ct, st] = [Math.cos(step), Math.sin(step), Math.cos(turn), Math.sin(turn)];
  let [c, s, wc, ws] = [1, 0, 1, 0];
  let re = 0;
  let im = 0;
  for (let n = 0; n < size; n++) {
    const weighted = (values[n]! - mean) * (0.5 - 0.5 * wc);
    re += weighted * c;
    im += weighted * s;
    const c2 = c * cs - s * ss;
    s = s * cs + c * ss;
    c = c2;
    const wc2 = wc * ct - ws * st;
    ws = ws * ct + wc * st;
    wc = wc2;
  }
  const amplitude = (2 * Math.hypot(re, im)) / (size * 0.5);
  return (amplitude * amplitude) / 2;
}

/** Nearest multiple of 50 or 60 Hz, when it lies within `withinHz`; NaN otherwise. */
export function mainsMultipleNear(hz: number, withinHz: number): number {
  for (const mains of [50, 60]) {
    const multiple = Math.max(1, Math.round(hz / mains)) * mains;
    if (Math.abs(multiple - hz) <= withinHz) return multiple;
  }
  return Number.NaN;
}
