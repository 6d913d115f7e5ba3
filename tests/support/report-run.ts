import type { Result } from '../../src/analysis/result/index.js';
import type { RunView } from '../../src/apps/report/index.js';
import { EvidenceCollector } from '../../src/apps/view/evidence/index.js';
import { sampleResult } from './sample-result.js';

/**
 * An invented trace made by hand: 0 V and 0 A but for 22 V and 100 A from 1 s to 11 s, with a short
 * circuit of 4 ms (3 V, 200 A) every 20 ms from 1.1 s on: 495 of them, the last at 10.98 s.
 */
export const MADE = {
  rateHz: 10_000,
  durationS: 12,
  arc: { startS: 1, endS: 11 },
  firstShortS: 1.1,
  everyS: 0.02,
  shortS: 0.004,
  shorts: 495,
};

export function madeTrace(): { voltage: Float64Array; current: Float64Array } {
  const count = MADE.durationS * MADE.rateHz;
  const voltage = new Float64Array(count);
  const current = new Float64Array(count);
  for (let n = 0; n < count; n++) {
    const timeS = n / MADE.rateHz;
    if (timeS < MADE.arc.startS || timeS >= MADE.arc.endS) continue;
    // A small even ripple keeps the trace from being flat.
    const ripple = 0.2 * Math.sin(2 * Math.PI * 700 * timeS);
    const since = Math.round((timeS - MADE.firstShortS) * MADE.rateHz);
    const period = MADE.everyS * MADE.rateHz;
    const short = since >= 0 && since % period < MADE.shortS * MADE.rateHz;
    voltage[n] = (short ? 3 : 22) + ripple;
    current[n] = short ? 200 : 100;
  }
  return { voltage, current };
}

/** The view of that trace, with an invented result. */
export function madeRun(changes: Partial<Result> = {}, blockSamples = 4096): RunView {
  const { voltage, current } = madeTrace();
  const channels = [
    { name: 'U', quantity: 'voltage' as const, unit: 'V' as const },
    { name: 'I', quantity: 'current' as const, unit: 'A' as const },
  ];
  const result = sampleResult({
    arcStretches: [{ ...MADE.arc, openStart: false, openEnd: false }],
    segments: [
      { startS: 1, endS: 7, mode: 'short-circuit', confidence: 0.97 },
      { startS: 7, endS: 11, mode: 'globular', confidence: 0.6 },
    ],
    features: { shortCircuitRateHz: 50, meanVoltageV: 18.2 },
    ...changes,
  });
  const source = { kind: 'electrical' as const, sampleRateHz: MADE.rateHz, channels };
  result.source = { ...result.source, kind: 'electrical', durationS: MADE.durationS, channels };
  if (changes.source) result.source = { ...result.source, path: changes.source.path };
  const collector = new EvidenceCollector(source);
  for (let from = 0; from < voltage.length; from += blockSamples)
    collector.push([
      voltage.slice(from, from + blockSamples),
      current.slice(from, from + blockSamples),
    ]);
  return { result, evidence: collector.finish(result), placement: null, modelCard: {} };
}

/** Ten seconds of invented sound: noise that is loud 90 times a second. */
export function madeSound(): RunView {
  const rateHz = 16_000;
  const samples = new Float64Array(10 * rateHz);
  let seed = 1;
  for (let n = 0; n < samples.length; n++) {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    const beat = 0.5 + 0.5 * Math.cos((2 * Math.PI * 90 * n) / rateHz);
    samples[n] = (seed / 1073741824 - 1) * (0.05 + 0.3 * beat ** 6);
  }
  const channels = [{ name: 'channel 1', quantity: 'sound' as const, unit: 'full-scale' as const }];
  const result = sampleResult();
  const collector = new EvidenceCollector({ kind: 'sound', sampleRateHz: rateHz, channels });
  collector.push([samples]);
  return { result, evidence: collector.finish(result), placement: null, modelCard: {} };
}
