/**
 * Speed of the network that listens, on one core: seconds of sound worked off in a second, by rate of the sound and
 * size of the blocks, and how much of it are resampling, features and layers. Arguments: folder with network.json
 * and network.bin, seconds of sound (default 60).
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createRandom } from '../../src/core/index.js';
import {
  FrontEnd,
  Resampler,
  readNetwork,
  StreamingNetwork,
} from '../../src/model/network/index.js';
import { Kernels } from '../../src/model/network/kernels.js';

const folder = process.argv[2] ?? 'fixtures/reference/network';
const seconds = Number(process.argv[3] ?? 60);
const header = JSON.parse(readFileSync(join(folder, 'network.json'), 'utf8'));
const network = readNetwork(header, readFileSync(join(folder, 'network.bin')));

function noise(rateHz: number): Float64Array {
  const random = createRandom('network bench');
  return Float64Array.from({ length: seconds * rateHz }, () => 0.1 * (random.next() - 0.5));
}

function timed(work: () => void): number {
  const start = process.cpuUsage();
  work();
  // Time of the processor, since other programs may share it.
  return process.cpuUsage(start).user / 1e6;
}

function inBlocks(
  samples: Float64Array,
  length: number,
  push: (block: Float64Array) => void,
): void {
  for (let at = 0; at < samples.length; at += length) push(samples.subarray(at, at + length));
}

console.log(
  `${(header.multiplyAddsPerS / 1e6).toFixed(2)} million multiply-adds a second of sound`,
);
for (const rateHz of [16000, 44100]) {
  const samples = noise(rateHz);
  for (const blockS of [0.1, 1.5, 10]) {
    const block = Math.round(blockS * rateHz);
    const parts = [0, 0, 0, 0];
    for (let round = 0; round < 2; round++) {
      parts[0] = timed(() => {
        const resampler = new Resampler(rateHz, 16000, Kernels.create());
        inBlocks(samples, block, (x) => resampler.push(x));
      });
      const low = noise(16000);
      parts[1] = timed(() => {
        const frontEnd = new FrontEnd(header.frontEnd);
        inBlocks(low, Math.round(blockS * 16000), (x) => frontEnd.push(x));
      });
      for (const simd of [true, false])
        parts[simd ? 2 : 3] = timed(() => {
          const ear = new StreamingNetwork(network, rateHz, { simd });
          inBlocks(samples, block, (x) => ear.push(x));
          ear.flush();
        });
    }
    const [resampling, features, whole, plain] = parts as [number, number, number, number];
    console.log(
      `${rateHz} Hz, blocks of ${blockS} s: ${(seconds / whole).toFixed(0)} times real time; ` +
        `${((1000 * whole) / seconds).toFixed(1)} ms a second of sound, ${((1000 * resampling) / seconds).toFixed(1)} of them ` +
        `resampling, ${((1000 * features) / seconds).toFixed(1)} features; ` +
        `${((1000 * plain) / seconds).toFixed(1)} ms without SIMD`,
    );
  }
}
