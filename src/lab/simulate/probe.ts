import type { Random } from '../../core/index.js';
import { sampleAt, smooth } from './devices/filter.js';
import type { ProbeSpec } from './scenario.js';

/** Clean traces at the simulation step made into what a logger stores: lead drop, filter, noise, steps. */
export function measure(
  probe: ProbeSpec,
  clean: { voltageV: Float32Array; currentA: Float32Array; rateHz: number },
  rateHz: number,
  random: Random,
): { voltageV: Float64Array; currentA: Float64Array } {
  const count = Math.floor((clean.voltageV.length * rateHz) / clean.rateHz);
  const volts = new Float32Array(clean.voltageV);
  for (let i = 0; i < volts.length; i++) volts[i]! += probe.leadOhm * clean.currentA[i]!;
  const amps = new Float32Array(clean.currentA);
  const corner = Math.min(probe.antiAliasHz, 0.45 * clean.rateHz);
  const voltageV = sampleAt(smooth(volts, clean.rateHz, corner), clean.rateHz, rateHz, count);
  const currentA = sampleAt(smooth(amps, clean.rateHz, corner), clean.rateHz, rateHz, count);
  const phase = random.uniform(0, 2 * Math.PI);
  const stepV = (2 * probe.fullScaleV) / 2 ** probe.bits;
  const stepA = (2 * probe.fullScaleA) / 2 ** probe.bits;
  for (let i = 0; i < count; i++) {
    const hum = probe.humV * Math.sin(2 * Math.PI * probe.humHz * (i / rateHz) + phase);
    voltageV[i] = quantise(
      voltageV[i]! + hum + probe.noiseV * random.normal(),
      stepV,
      probe.fullScaleV,
    );
    const amp = currentA[i]! + probe.offsetA + probe.noiseA * random.normal();
    currentA[i] = quantise(amp, stepA, probe.fullScaleA);
  }
  return { voltageV, currentA };
}

function quantise(value: number, step: number, fullScale: number): number {
  const held = value > fullScale ? fullScale : Math.max(value, -fullScale);
  return Math.round(held / step) * step;
}
