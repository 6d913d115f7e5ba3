import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decodeAdpcm, encodeAdpcm } from '../../../../src/apps/page/sounds/adpcm.js';
import {
  CHOICES,
  canDrill,
  DRILL_LENGTH,
  makeDrill,
  simulatedTruth,
  withDrill,
} from '../../../../src/apps/page/sounds/drill.js';
import type { Example } from '../../../../src/apps/page/sounds/examples.js';
import { createRandom, MODES } from '../../../../src/core/index.js';

describe('sounds kept in four bits a sample', () => {
  // By hand, from the steps 7, 16, 34: code 7 moves by 7>>3 + 7 + 3 + 1 = 11, then 16>>3 + 16 + 8 + 4 = 30; code 15 down
  // by 34>>3 + 34 + 17 + 8 = 63.
  it('follows the published rule', () => {
    const samples = decodeAdpcm(Uint8Array.of(0x77, 0x0f), 3);
    expect([...samples].map((one) => Math.round(32768 * one))).toEqual([11, 41, -22]);
  });

  // 4 bits a sample: some 20 dB below the sound is what the method leaves (common practice, no source).
  it('gives back a sound with noise 20 dB below it', () => {
    const sound = Float64Array.from({ length: 4000 }, (_, i) => 0.5 * Math.sin(i / 3));
    const back = decodeAdpcm(encodeAdpcm(sound), sound.length).subarray(200);
    const power = (values: Iterable<number>): number =>
      [...values].reduce((sum, one) => sum + one * one, 0);
    const noise = back.map((one, i) => one - (sound[i + 200] ?? 0));
    expect(10 * Math.log10(power(back) / power(noise))).toBeGreaterThan(20);
  });
});

describe('the example sounds', () => {
  const folder = 'src/apps/page/sounds';
  const bytes = readFileSync(`${folder}/examples.bin`);
  const examples = JSON.parse(readFileSync(`${folder}/examples.json`, 'utf8')) as Example[];

  it('are there for every mode, one after the other in one file', () => {
    expect(new Set(examples.map((one) => one.mode))).toEqual(new Set(MODES));
    let at = 0;
    for (const one of examples) {
      expect(one.from).toBe(at);
      at += one.bytes;
    }
    expect(bytes.length).toBe(at);
  });

  // Rejects silence, a sound that is told by its loudness, and marks that lie beside it.
  it.each(examples)('sounds: $mode, draw $draw', (one) => {
    const samples = decodeAdpcm(bytes.subarray(one.from, one.from + one.bytes), one.samples);
    const rms = Math.sqrt(samples.reduce((sum, value) => sum + value * value, 0) / samples.length);
    expect(rms).toBeGreaterThan(0.05);
    expect(rms).toBeLessThan(0.2);
    expect(Math.min(...one.marksS)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...one.marksS)).toBeLessThan(one.samples / one.rateHz);
  });
});

describe('a drill', () => {
  const pool = [
    { id: 'a', truth: 'short-circuit' },
    { id: 'b', truth: 'pulsed-spray' },
    { id: 'c', truth: 'pulsed-spray' },
    { id: 'd', truth: 'free-flight' },
  ] as const;

  it('has ten sounds, none twice in a row, and every answer comes about as often', () => {
    const counts = new Map<string, number>();
    for (let seed = 0; seed < 200; seed++) {
      const drill = makeDrill(pool, createRandom(`drill ${seed}`));
      expect(drill).toHaveLength(DRILL_LENGTH);
      drill.forEach(({ id, truth, answer }, k) => {
        expect(answer).toBeNull();
        if (k > 0) expect(drill[k - 1]?.id).not.toBe(id);
        counts.set(truth, (counts.get(truth) ?? 0) + 1);
      });
    }
    // Of 2000; where one sound alone has an answer it can't follow itself, so these come a little less often.
    for (const truth of new Set(pool.map((one) => one.truth)))
      expect(counts.get(truth)).toBeGreaterThan(500);
  });

  it('needs two modes to tell apart', () => {
    expect(canDrill(pool)).toBe(true);
    expect(canDrill(pool.slice(1, 3))).toBe(false);
    expect(makeDrill(pool.slice(1, 3), createRandom(1))).toEqual([]);
  });

  // Simulated drops are no proof of how real ones sound.
  it('never asks for globular against spray on simulated sounds', () => {
    expect(simulatedTruth('globular')).toBe(simulatedTruth('spray'));
    expect(CHOICES.simulated).not.toContain('globular');
    expect(CHOICES.simulated).not.toContain('spray');
    expect(CHOICES.own).toEqual(MODES);
  });

  it('counts by what it was, and leaves open questions out', () => {
    const before = { 'short-circuit': { asked: 2, right: 1 } };
    const after = withDrill(before, [
      { id: 'a', truth: 'short-circuit', answer: 'short-circuit' },
      { id: 'b', truth: 'pulsed-spray', answer: 'short-circuit' },
      { id: 'c', truth: 'pulsed-spray', answer: null },
    ]);
    expect(after).toEqual({
      'short-circuit': { asked: 3, right: 2 },
      'pulsed-spray': { asked: 1, right: 0 },
    });
    expect(before['short-circuit']).toEqual({ asked: 2, right: 1 });
  });
});
