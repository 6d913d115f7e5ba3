import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { analyseBoth, defaultSettings } from '../../../../src/analysis/index.js';
import { type Result, resultSchema } from '../../../../src/analysis/result/index.js';
import { isArcError } from '../../../../src/core/index.js';
import type { Recording } from '../../../../src/recording/index.js';
import { parseSetup } from '../../../../src/setup/index.js';
import { shippedRecording } from '../../../support/judge.js';

const MODELS = join(import.meta.dirname, '../../../../src/model/shipped');
const load = async (name: string): Promise<unknown> =>
  JSON.parse(readFileSync(join(MODELS, `${name}.json`), 'utf8'));

const UNITS = { sound: 'full-scale', voltage: 'V', current: 'A' } as const;
type Quantity = keyof typeof UNITS;

function recording(
  sampleRateHz: number,
  channels: readonly Float64Array[],
  quantities: readonly Quantity[],
): Recording {
  return {
    kind: quantities[0] === 'sound' ? 'sound' : 'electrical',
    format: 'made',
    sampleRateHz,
    channels: quantities.map((quantity) => ({ name: quantity, quantity, unit: UNITS[quantity] })),
    notes: [],
    async *blocks() {
      yield { startSample: 0, channels: [...channels] };
    },
  };
}

async function soundOf(name: string): Promise<Recording> {
  const { sampleRateHz, channels } = await shippedRecording(`${name}.wav`);
  return recording(sampleRateHz, channels, ['sound']);
}

async function traceOf(name: string): Promise<Recording> {
  const { sampleRateHz, channels } = await shippedRecording(`${name}.csv`);
  return recording(sampleRateHz, channels, ['voltage', 'current']);
}

async function both(
  sound: Recording,
  trace: Recording,
  more: { sharedClock?: boolean; setVoltage?: string } = {},
): Promise<Result> {
  const result = await analyseBoth(sound, trace, {
    setup: parseSetup(more.setVoltage ? { setVoltage: more.setVoltage } : {}),
    settings: defaultSettings(),
    loadModel: load,
    loadPooling: () => load('pooling'),
    path: 'run.wav',
    sha256: null,
    host: 'node',
    trace: { path: 'run.csv', sha256: null },
    sharedClock: more.sharedClock ?? false,
  });
  expect(resultSchema.safeParse(result).success).toBe(true);
  return result;
}

describe('analyseBoth', () => {
  it('fuses a sound and the trace of its run, with the figures of the trace', async () => {
    const result = await both(await soundOf('short-circuit'), await traceOf('short-circuit'), {
      sharedClock: true,
    });
    expect([result.status, result.mode, result.source.kind]).toEqual([
      'ok',
      'short-circuit',
      'sound',
    ]);
    const { companion, features } = result;
    expect(companion).toMatchObject({ fused: true, agreed: true, path: 'run.csv' });
    // Sound of a microphone within 3 m, as the demonstration recordings were drawn: 0 to 9 ms.
    expect(companion!.delayS).toBeGreaterThan(0);
    expect(companion!.delayS).toBeLessThan(0.01);
    // Arithmetic: 343.4 m/s.
    expect(companion!.distanceM).toBeCloseTo(companion!.delayS! * 343.4, 9);
    // Rejects a result that keeps the sound's figures only: sound has no volts.
    expect(features['meanVoltageV']).toBeGreaterThan(10);
    expect(result.sourceProgramme).not.toBe('unknown');
  });

  it('tells no distance without a stated clock', async () => {
    const result = await both(await soundOf('pulsed-spray'), await traceOf('pulsed-spray'));
    expect(result.companion).toMatchObject({ fused: true, distanceM: null });
    expect(result.companion!.delayS).not.toBeNull();
    expect(result.mode).toBe('pulsed-spray');
  });

  it('does not fuse two runs; different modes leave the answer open', async () => {
    const result = await both(await soundOf('short-circuit'), await traceOf('spray'));
    expect(result.companion).toMatchObject({
      fused: false,
      delayS: null,
      agreed: false,
      alone: { status: 'ok', mode: 'spray' },
    });
    expect([result.status, result.mode]).toEqual(['unsure', null]);
    expect(result.statusReason).toMatch(/do not seem to be of one run/);
    expect(result.source.notes.map((note) => note.code)).toContain('not-fused');
    // Rejects figures of a trace that was not taken as of this run.
    expect(result.features['meanVoltageV']).toBeUndefined();
  });

  it('is left with one witness by a dead trace and by a silent sound', async () => {
    const dead = recording(
      5000,
      [new Float64Array(20_000), new Float64Array(20_000)],
      ['voltage', 'current'],
    );
    const heard = await both(await soundOf('short-circuit'), dead);
    expect([heard.status, heard.mode]).toEqual(['ok', 'short-circuit']);
    expect(heard.companion).toMatchObject({ fused: false, alone: { status: 'no-arc' } });
    const silence = recording(16_000, [new Float64Array(64_000)], ['sound']);
    const seen = await both(silence, await traceOf('short-circuit'));
    expect([seen.status, seen.mode]).toEqual(['no-arc', null]);
    expect(seen.companion).toMatchObject({ fused: false, alone: { mode: 'short-circuit' } });
  });

  // Rejects a way from the set-up into the judgement.
  it('judges the same whatever voltage is set', async () => {
    const judge = async (setVoltage: string) => {
      const sound = await soundOf('short-circuit');
      return both(sound, await traceOf('short-circuit'), { setVoltage });
    };
    const [low, high] = [await judge('12'), await judge('38')];
    expect(low.probabilities).toEqual(high.probabilities);
    expect(low.segments).toEqual(high.segments);
    expect(low.companion).toEqual(high.companion);
  });

  it('refuses two of one kind', async () => {
    const code = async (work: Promise<unknown>) => {
      const error = await work.catch((one: unknown) => one);
      return isArcError(error) ? error.code : error;
    };
    const [sound, trace] = [await soundOf('spray'), await traceOf('spray')];
    expect(await code(both(sound, sound))).toBe('needs-sound-and-trace');
    expect(await code(both(trace, trace))).toBe('needs-sound-and-trace');
    expect(await code(both(trace, sound))).toBe('needs-sound-and-trace');
  });
});
