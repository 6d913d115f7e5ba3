import type { DecodedSound, HostDecoder, PacketDecoder } from '../../../recording/index.js';

/** Samples an AAC decoder keeps to itself at the start; the browser's own delivers every frame. */
const CODEC = 'mp4a.40.2';

/** The browser's own AAC decoder, where it has one. Starting it rejects elsewhere. */
export function webCodecsDecoder(): HostDecoder {
  return {
    name: 'the decoder of this browser',
    codecs: ['aac'],
    async start({ description, sampleRateHz, channels }) {
      if (typeof AudioDecoder === 'undefined') throw new Error('no decoder in this browser');
      const config: AudioDecoderConfig = {
        codec: CODEC,
        sampleRate: sampleRateHz,
        numberOfChannels: channels,
        ...(description ? { description } : {}),
      };
      const { supported } = await AudioDecoder.isConfigSupported(config);
      if (!supported) throw new Error('AAC is not among the codecs of this browser');
      return run(config);
    },
  };
}

function run(config: AudioDecoderConfig): PacketDecoder {
  const decoded: AudioData[] = [];
  let failure: unknown;
  const decoder = new AudioDecoder({
    output: (data) => decoded.push(data),
    error: (error) => {
      failure = error;
    },
  });
  decoder.configure(config);
  let packets = 0;
  const take = (): DecodedSound | undefined => {
    if (failure) throw failure;
    return join(decoded.splice(0));
  };
  return {
    delayed: true,
    async push(packet) {
      const timestamp = Math.round((1e6 * packets++ * 1024) / config.sampleRate);
      decoder.decode(new EncodedAudioChunk({ type: 'key', timestamp, data: packet.slice() }));
      // Lets the decoder keep up, so that a long file does not pile up in memory.
      if (decoder.decodeQueueSize > 32)
        await new Promise((resolve) =>
          decoder.addEventListener('dequeue', resolve, { once: true }),
        );
      return take();
    },
    async flush() {
      await decoder.flush();
      return take();
    },
    close() {
      if (decoder.state !== 'closed') decoder.close();
      for (const data of decoded) data.close();
    },
  };
}

function join(parts: readonly AudioData[]): DecodedSound | undefined {
  const first = parts[0];
  if (!first) return undefined;
  const total = parts.reduce((sum, one) => sum + one.numberOfFrames, 0);
  const channels = Array.from({ length: first.numberOfChannels }, () => new Float32Array(total));
  let at = 0;
  for (const data of parts) {
    channels.forEach((samples, planeIndex) => {
      const target = samples.subarray(at, at + data.numberOfFrames);
      data.copyTo(target, { planeIndex, format: 'f32-planar' });
    });
    at += data.numberOfFrames;
    data.close();
  }
  return { sampleRateHz: first.sampleRate, channels };
}
