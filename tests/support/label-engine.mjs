// Stands for readers and analysis where only the handling of many files is tested. A file says what
// becomes of it: `arc <status>`, `doubt`, `broken`, `crash` (its thread ends), each with an optional
// number of milliseconds after it. Anything else is no recording. All results are invented.
import { appendFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { ArcError } from '../../dist/core/index.js';
import { openFileSource } from '../../dist/files/file-source.js';

const error = (code, name) =>
  new ArcError({ code, what: `${name} is of no use.`, expected: 'another', todo: 'Look.' });

const shares = (mode, share) => ({
  'short-circuit': mode === 'short-circuit' ? share : (1 - share) / 3,
  globular: mode === 'globular' ? share : (1 - share) / 3,
  spray: mode === 'spray' ? share : (1 - share) / 3,
  'pulsed-spray': mode === 'pulsed-spray' ? share : (1 - share) / 3,
});

export const ENGINE = {
  openSource: openFileSource,
  openRecording: async (source) => {
    const text = new TextDecoder().decode(await source.read(0, source.size));
    const [word, status = 'ok', pause = '0'] = text.trim().split(' ');
    if (process.env.LABEL_ENGINE_LOG)
      appendFileSync(process.env.LABEL_ENGINE_LOG, `${source.name}\n`);
    if (word === 'crash') process.exit(7);
    if (word === 'broken') throw error('bad-content', source.name);
    if (word !== 'arc' && word !== 'doubt') throw error('unknown-format', source.name);
    return {
      kind: 'sound',
      format: word === 'doubt' ? 'doubt' : status,
      sampleRateHz: 8000,
      channels: [{ name: 'channel 1', quantity: 'sound', unit: 'full-scale' }],
      notes: [],
      blocks: async function* () {
        await sleep(Number(pause));
        // 10 s of a ramp, so that a cut shows from where it was taken.
        for (let start = 0; start < 80_000; start += 20_000) {
          const samples = Float64Array.from({ length: 20_000 }, (_, i) => (start + i) / 100_000);
          yield { startSample: start, channels: [samples] };
        }
      },
    };
  },
  analyse: async (recording, { path, sha256, host, settings, setup, onEvent }) => {
    for await (const block of recording.blocks()) void block;
    const doubt = recording.format === 'doubt';
    const status = doubt ? 'ok' : recording.format;
    const judged = status === 'ok';
    const arc = status === 'ok' || status === 'unsure';
    for (let i = 0; i < 3; i++) {
      const probabilities = Float64Array.from(Object.values(shares('spray', 0.7)));
      const judgement = {
        startS: i,
        endS: i + 1,
        probabilities,
        novelty: 1,
        arcScore: 1,
        scores: probabilities,
      };
      onEvent?.({ type: 'window', window: { startS: i, endS: i + 1 }, judgement, arcOn: i > 0 });
    }
    const at = (startS, endS, mode, confidence) => ({ startS, endS, mode, confidence });
    return {
      schemaVersion: '1.0',
      tool: { name: 'arc-transfer', version: '9.9.9', host },
      source: {
        path,
        sha256,
        kind: 'sound',
        format: 'invented',
        sampleRateHz: 8000,
        durationS: 10,
        channels: recording.channels,
        notes: setup.notes,
      },
      status,
      statusReason: `Invented: ${status}.`,
      error: null,
      mode: judged ? 'spray' : null,
      confidence: judged ? 0.9 : null,
      sourceProgramme: 'unknown',
      probabilities: arc ? shares('spray', judged ? 0.9 : 0.4) : null,
      shareOfArcTime: judged ? { ...shares('spray', 1), undetermined: 0 } : null,
      arcStretches: arc ? [{ startS: 1, endS: 9, openStart: false, openEnd: false }] : [],
      segments: judged
        ? [at(1, 6, 'spray', 0.9), doubt ? at(6, 9, 'globular', 0.31) : at(6, 9, 'globular', 0.8)]
        : [],
      features: { meanVoltageV: setup.setVoltageV },
      quality: [],
      reasons: [],
      crossCheck: null,
      settings: { fingerprint: 'invented', values: { ...settings } },
      model: {
        id: 'invented',
        version: '1',
        fingerprint: 'fedcba9876543210',
        featureSet: 'sound/1',
      },
      steps: [],
      cautions: [],
    };
  },
};

export const modelsFingerprint = async () => process.env.LABEL_ENGINE_MODELS ?? 'invented models';
