import { hannWindow, RealFft, windowEnergy } from '../../dsp/index.js';
import type { FrontEndSpec } from './document.js';

/**
 * Features of the network from sound at its rate, block by block: energy of each band and the largest squared
 * step between samples, a thousand times a second, each as the logarithm over its own mean in the blocks around it.
 * Level, distance and colour of a microphone fall out. A block is given once those ahead of it are there.
 */
export class FrontEnd {
  readonly channels: number;
  readonly #spec: FrontEndSpec;
  readonly #fft: RealFft;
  readonly #window: Float64Array;
  readonly #scale: number;
  readonly #power: Float64Array;
  #held: Float64Array;
  #count = 0;
  /** Energies of the frames not given yet, row by row; the last block may be unfinished. */
  #energies: Float64Array;
  #frames = 0;
  /** Sums over the frames of each block within reach. */
  readonly #sums: { sum: Float64Array; frames: number }[] = [];
  #firstBlock = 0;
  #given = 0;

  constructor(spec: FrontEndSpec) {
    this.#spec = spec;
    this.channels = spec.bands.length + 1;
    this.#fft = new RealFft(spec.window);
    this.#window = hannWindow(spec.window);
    this.#scale = 2 / (spec.window * windowEnergy(this.#window));
    this.#power = new Float64Array(spec.window / 2 + 1);
    this.#held = new Float64Array(4096);
    this.#energies = new Float64Array(1024 * this.channels);
  }

  /** Takes samples, full scale 1; gives feature vectors, one after the other. */
  push(samples: Float64Array): Float32Array {
    const need = this.#count + samples.length;
    if (need > this.#held.length) {
      const grown = new Float64Array(2 * need);
      grown.set(this.#held.subarray(0, this.#count));
      this.#held = grown;
    }
    this.#held.set(samples, this.#count);
    this.#count = need;
    const { window, hop } = this.#spec;
    let at = 0;
    for (; at + window <= this.#count; at += hop) this.#addFrame(at);
    this.#held.copyWithin(0, at, this.#count);
    this.#count -= at;
    return this.#give(false);
  }

  flush(): Float32Array {
    return this.#give(true);
  }

  #addFrame(at: number): void {
    const { bands, window, hop, blockFrames } = this.#spec;
    const { channels } = this;
    const start = this.#frames * channels;
    if (start + channels > this.#energies.length) {
      const grown = new Float64Array(2 * this.#energies.length);
      grown.set(this.#energies);
      this.#energies = grown;
    }
    const spectrum = this.#fft.transform(this.#held, at, this.#window);
    const power = this.#power;
    for (let k = 0; k < power.length; k++) {
      const re = spectrum[2 * k]!;
      const im = spectrum[2 * k + 1]!;
      power[k] = (re * re + im * im) * this.#scale;
    }
    const row = this.#energies.subarray(start, start + channels);
    for (let b = 0; b < bands.length; b++) {
      let sum = 0;
      for (let k = bands[b]![0]; k <= bands[b]![1]; k++) sum += power[k]!;
      row[b] = sum;
    }
    let steepest = 0;
    const middle = at + (window - hop) / 2;
    for (let i = middle; i < middle + hop; i++) {
      const step = this.#held[i]! - this.#held[i - 1]!;
      if (step * step > steepest) steepest = step * step;
    }
    row[channels - 1] = steepest;
    this.#frames++;
    let block = this.#sums.at(-1);
    if (block === undefined || block.frames === blockFrames) {
      block = { sum: new Float64Array(channels), frames: 0 };
      this.#sums.push(block);
    }
    for (let c = 0; c < channels; c++) block.sum[c]! += row[c]!;
    block.frames++;
  }

  /** Figures of the blocks whose surroundings are known; of all when it is the end. */
  #give(end: boolean): Float32Array {
    const { blockFrames, blocksAhead } = this.#spec;
    const { channels } = this;
    const blocks = this.#firstBlock + this.#sums.length;
    const whole = this.#sums.at(-1)?.frames === blockFrames ? blocks : blocks - 1;
    const to = end ? blocks : whole - blocksAhead;
    const frames = Math.max(0, Math.min((to - this.#given) * blockFrames, this.#frames));
    const out = new Float32Array(frames * channels);
    for (let f = 0; f < frames; f += blockFrames, this.#given++)
      this.#level(out, f, Math.min(frames, f + blockFrames));
    this.#energies.copyWithin(0, frames * channels, this.#frames * channels);
    this.#frames -= frames;
    const drop = this.#given - this.#spec.blocksBack - this.#firstBlock;
    if (drop > 0) {
      this.#sums.splice(0, drop);
      this.#firstBlock += drop;
    }
    return out;
  }

  #level(out: Float32Array, from: number, to: number): void {
    const { blocksBack, blocksAhead, relativeFloor, absoluteFloor } = this.#spec;
    const { channels } = this;
    const first = Math.max(0, this.#given - blocksBack - this.#firstBlock);
    const last = Math.min(this.#sums.length - 1, this.#given + blocksAhead - this.#firstBlock);
    for (let c = 0; c < channels; c++) {
      let sum = 0;
      let frames = 0;
      for (let b = first; b <= last; b++) {
        sum += this.#sums[b]!.sum[c]!;
        frames += this.#sums[b]!.frames;
      }
      const mean = sum / frames;
      const least = relativeFloor * mean + absoluteFloor;
      const below = mean + absoluteFloor;
      for (let i = from * channels + c; i < to * channels; i += channels)
        out[i] = Math.log((this.#energies[i]! + least) / below);
    }
  }
}
