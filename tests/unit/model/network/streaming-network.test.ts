import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/core/index.js';
import {
  FrontEnd,
  type NetworkHeader,
  readNetwork,
  StreamingNetwork,
} from '../../../../src/model/network/index.js';

interface Reference {
  samples: string;
  frames: number;
  someFrames: number[];
  figures: number[][];
  arcLogits: number[];
  weights: number[];
  outputs: number[];
}

/** A network and what PyTorch makes of a sound with it in double precision, from the weights as written. */
function given(folder: string) {
  const read = (name: string) =>
    readFileSync(new URL(`../../../../fixtures/${folder}/${name}`, import.meta.url));
  const header = JSON.parse(read('network.json').toString()) as NetworkHeader;
  const reference = JSON.parse(read('reference.json').toString()) as Reference;
  const bytes = Buffer.from(reference.samples, 'base64');
  const samples = Float64Array.from(
    { length: bytes.length / 2 },
    (_, i) => bytes.readInt16LE(2 * i) / 32768,
  );
  return { header, network: readNetwork(header, read('network.bin')), reference, samples };
}

/** Small, with drawn weights: bin/train/small_reference.py. */
const SMALL = given('reference/network');
/** The trained student: bin/train/export.py. */
const TRAINED = given('training/network');
const { samples } = SMALL;

function heard(
  blocks: Iterable<Float64Array>,
  rateHz = 16000,
  options = {},
  network = SMALL.network,
) {
  const ear = new StreamingNetwork(network, rateHz, options);
  const logits: number[] = [];
  for (const block of blocks) logits.push(...ear.push(block));
  logits.push(...ear.flush());
  return { ear, logits };
}

/** Cuts a sound into pieces of drawn lengths, some of them empty. */
function* pieces(sound: Float64Array, most: number, seed: string): Generator<Float64Array> {
  const random = createRandom(seed);
  for (let at = 0; at < sound.length; ) {
    const length = random.integer(0, most);
    yield sound.subarray(at, at + length);
    at += length;
  }
}

describe.each([
  ['small', SMALL],
  ['trained', TRAINED],
])('StreamingNetwork against PyTorch, %s network', (_, { header, network, reference, samples }) => {
  it('makes the same features', () => {
    const frontEnd = new FrontEnd(header.frontEnd);
    const rows = [...frontEnd.push(samples), ...frontEnd.flush()];
    expect(rows.length / frontEnd.channels).toBe(reference.frames);
    reference.someFrames.forEach((frame, k) => {
      reference.figures[k]!.forEach((figure, c) => {
        expect(Math.abs(rows[frame * frontEnd.channels + c]! - figure)).toBeLessThan(1e-4);
      });
    });
  });

  it.each([[true], [false]])('gives the same rows, weights and outputs, SIMD %s', (simd) => {
    const { ear, logits } = heard([samples], 16000, { simd }, network);
    expect(logits).toHaveLength(reference.arcLogits.length);
    logits.forEach((logit, k) => {
      expect(Math.abs(logit - reference.arcLogits[k]!)).toBeLessThan(1e-4);
    });
    ear.blocks.forEach((block, k) => {
      expect(Math.abs(block.arc + header.leastWeight - reference.weights[k]!)).toBeLessThan(1e-4);
    });
    ear.judge().forEach((output, k) => {
      expect(Math.abs(output - reference.outputs[k]!)).toBeLessThan(1e-4);
    });
  });
});

describe('StreamingNetwork, laws', () => {
  it.each([[16000], [44100], [8000], [22050], [48000], [44056]])(
    'hears the same at %i Hz whatever the size of the blocks',
    (rateHz) => {
      const whole = heard([samples], rateHz);
      for (const most of [7, 400, 9000]) {
        const cut = heard(pieces(samples, most, `pieces ${most}`), rateHz);
        expect(cut.logits).toEqual(whole.logits);
        expect(cut.ear.judge()).toEqual(whole.ear.judge());
      }
    },
  );

  it('hears the same without SIMD whatever the size of the blocks', () => {
    const plain = { simd: false };
    const whole = heard([samples], 16000, plain);
    const cut = heard(pieces(samples, 700, 'plain'), 16000, plain);
    expect(cut.logits).toEqual(whole.logits);
    expect(cut.ear.judge()).toEqual(whole.ear.judge());
  });

  it('does not hear level', () => {
    const soft = heard([samples.map((x) => x / 30)]);
    const loud = heard([samples]);
    soft.logits.forEach((logit, k) => {
      expect(Math.abs(logit - loud.logits[k]!)).toBeLessThan(0.02);
    });
  });

  it.each([0, 1, 63, 64, 300])('takes a sound of %i samples', (count) => {
    const { ear, logits } = heard([samples.subarray(0, count)]);
    expect(logits.length).toBe(
      count < 64 ? 0 : Math.ceil((Math.floor((count - 64) / 16) + 1) / 16),
    );
    for (const output of ear.judge()) expect(Number.isFinite(output)).toBe(true);
  });

  it('takes digital silence', () => {
    const { ear } = heard([new Float64Array(20000)]);
    for (const output of ear.judge()) expect(Number.isFinite(output)).toBe(true);
  });
});
