import { CAUTIONS, type Result, SCHEMA_VERSION } from '../../src/analysis/result/index.js';

/**
 * An invented result, for tests of what shows results: 10 s of sound, arc from 1 s to 9 s, six seconds
 * short-circuit and two globular. None of its figures was measured.
 */
export function sampleResult(changes: Partial<Result> = {}): Result {
  return {
    schemaVersion: SCHEMA_VERSION,
    tool: { name: 'arc-transfer', version: '9.9.9', host: 'test' },
    source: {
      path: 'invented.wav',
      sha256: 'ab'.repeat(32),
      kind: 'sound',
      format: 'wav',
      sampleRateHz: 44100,
      durationS: 10,
      channels: [{ name: 'channel 1', quantity: 'sound', unit: 'full-scale' }],
      notes: [{ code: 'invented-note', message: 'Channel 1 of 2 was taken.' }],
    },
    status: 'ok',
    statusReason: 'One mode held for most of the arc.',
    error: null,
    mode: 'short-circuit',
    confidence: 0.94,
    sourceProgramme: 'unknown',
    probabilities: { 'short-circuit': 0.94, globular: 0.04, spray: 0.01, 'pulsed-spray': 0.01 },
    shareOfArcTime: {
      'short-circuit': 0.75,
      globular: 0.25,
      spray: 0,
      'pulsed-spray': 0,
      undetermined: 0,
    },
    arcStretches: [{ startS: 1, endS: 9, openStart: false, openEnd: false }],
    segments: [
      { startS: 1, endS: 7, mode: 'short-circuit', confidence: 0.97 },
      { startS: 7, endS: 9, mode: 'globular', confidence: 0.6 },
    ],
    features: { eventRateHz: 124.3, shortCircuitRateHz: null, dropRateHz: null },
    quality: [{ code: 'clipping', share: 0.02, message: 'The loudest moments are cut off.' }],
    reasons: [
      {
        feature: 'eventRateHz',
        value: 124.3,
        unit: 'Hz',
        speaksFor: 'short-circuit',
        weight: 2,
        text: 'Sharp events come 124 times a second.',
      },
      {
        feature: 'crest',
        value: 3,
        unit: '1',
        speaksFor: 'globular',
        weight: -0.5,
        text: 'Few of them are far apart.',
      },
    ],
    crossCheck: null,
    settings: { fingerprint: '0123456789abcdef', values: { soundWindowS: 1 } },
    model: { id: 'sound', version: '1', fingerprint: 'fedcba9876543210', featureSet: 'sound/1' },
    steps: [{ step: 'read', detail: 'wav, channel 1' }],
    cautions: [...CAUTIONS],
    ...changes,
  };
}
