/**
 * Runs in the audio thread: hands the samples on as they come from the device, unchanged. Nothing is
 * decided here, so that no sample is lost to a slow step.
 */

/** What the audio thread offers; the DOM types do not describe it. */
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: typeof AudioWorkletProcessor): void;

const BLOCK = 4096;

class Capture extends AudioWorkletProcessor {
  #block = new Float32Array(BLOCK);
  #filled = 0;
  #out: MessagePort | undefined;
  #ended = false;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<{ to?: MessagePort; end?: true }>) => {
      if (data.to) this.#out = data.to;
      if (data.end) this.#end();
    };
  }

  process([input]: readonly (readonly Float32Array[])[]): boolean {
    const samples = input?.[0];
    if (samples && this.#out) this.#add(samples);
    return !this.#ended;
  }

  #add(samples: Float32Array): void {
    for (let from = 0; from < samples.length; ) {
      const part = samples.subarray(from, from + BLOCK - this.#filled);
      this.#block.set(part, this.#filled);
      this.#filled += part.length;
      from += part.length;
      if (this.#filled === BLOCK) this.#send();
    }
  }

  #send(): void {
    const samples = this.#block.slice(0, this.#filled);
    this.#out?.postMessage({ samples }, [samples.buffer]);
    this.#filled = 0;
  }

  #end(): void {
    if (this.#ended) return;
    this.#ended = true;
    this.#send();
    this.#out?.postMessage({ end: true });
  }
}

registerProcessor('capture', Capture);
