const RATE =
  /^(fs|f_?s(ample)?|sf|sr|fa|rate|(sample|sampling|samp)[ _-]?(rate|freq|frequency)([ _-]?hz)?|samplerate|samplingrate|abtastrate|rate[ _-]?hz|wf_rate)$/i;
const INTERVAL =
  /^(dt|t_?s|delta[ _-]?t|(sample|sampling)[ _-]?(interval|period|time)([ _-]?s)?|tstep|time[ _-]?step|wf_increment|tinterval)$/i;

/** A lone number in a file with its name: a scalar variable or an attribute. */
export interface Scalar {
  name: string;
  value: number;
}

/** The sampling rate among lone numbers, by their names (`fs`, `sample_rate`, `dt`, …). */
export function rateAmong(
  scalars: readonly Scalar[],
): { rateHz: number; from: string } | undefined {
  for (const { name, value } of scalars) {
    const base = name.split(/[/.@]/).at(-1) ?? name;
    if (!(value > 0) || !Number.isFinite(value)) continue;
    if (RATE.test(base)) return { rateHz: value, from: `${name} = ${value}` };
    if (INTERVAL.test(base)) return { rateHz: roundRate(1 / value), from: `${name} = ${value}` };
  }
  return undefined;
}

/** `dt = 0.0001` means 10,000 Hz, though 1 / 0.0001 need not be a whole number in binary. */
function roundRate(rateHz: number): number {
  const whole = Math.round(rateHz);
  return whole > 0 && Math.abs(rateHz / whole - 1) < 1e-12 ? whole : rateHz;
}
