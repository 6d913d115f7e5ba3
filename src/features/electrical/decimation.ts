/** How an arc interval is cut into slots: the unit of work, of bookkeeping and of the delay of run figures. */
export interface SlotPlan {
  sampleRateHz: number;
  /** Samples averaged into one of the slow trace. */
  factor: number;
  /** Rate of the slow trace: 5 kHz or a little beside it, or the full rate below 7.5 kHz. */
  slowRateHz: number;
  slowSamples: number;
  samples: number;
  seconds: number;
  /** Slots a window and a hop; windows and hops are whole slots. */
  windowSlots: number;
  hopSlots: number;
}

/** Plans slots of about 50 ms that divide hop and window as evenly as whole samples allow. */
export function planSlots(sampleRateHz: number, windowS: number, hopS: number): SlotPlan {
  const factor = Math.max(1, Math.round(sampleRateHz / 5000));
  const slowRateHz = sampleRateHz / factor;
  const hopSlots = Math.max(1, Math.round(hopS / 0.05));
  const slowSamples = Math.max(1, Math.round((hopS / hopSlots) * slowRateHz));
  const samples = slowSamples * factor;
  const seconds = samples / sampleRateHz;
  const windowSlots = Math.max(1, Math.round(windowS / seconds));
  return { sampleRateHz, factor, slowRateHz, slowSamples, samples, seconds, windowSlots, hopSlots };
}

/** Means of consecutive groups of `factor` samples. */
export function blockMeans(values: Float64Array, factor: number): Float64Array {
  const out = new Float64Array(Math.floor(values.length / factor));
  let n = 0;
  for (let k = 0; k < out.length; k++) {
    let sum = 0;
    for (let j = 0; j < factor; j++) sum += values[n++]!;
    out[k] = sum / factor;
  }
  return out;
}
