import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import {
  adtsHeader,
  type DecodedSound,
  type HostDecoder,
  type PacketDecoder,
} from '../recording/index.js';

/**
 * The system's ffmpeg as a decoder of AAC. It gets packets on a pipe and never sees a file or the network.
 * Starting it rejects where there is no ffmpeg; nothing is looked for before that.
 */
export function ffmpegDecoder(command = 'ffmpeg'): HostDecoder {
  return {
    name: 'ffmpeg of this machine',
    codecs: ['aac'],
    async start({ description }) {
      if (!description || !adtsHeader(description, 0)) throw new Error('not expressible as ADTS');
      return pipeDecoder(await startFfmpeg(command), (packet) =>
        adtsHeader(description, packet.length),
      );
    },
  };
}

function startFfmpeg(command: string): Promise<ChildProcessWithoutNullStreams> {
  const quiet = ['-hide_banner', '-nostdin', '-v', 'error', '-threads', '1'];
  const input = ['-f', 'aac', '-probesize', '32', '-analyzeduration', '0', '-i', 'pipe:0'];
  // The plainest container that states rate and channels: only the decoder knows both for certain.
  const output = ['-c:a', 'pcm_f32be', '-f', 'au', 'pipe:1'];
  return new Promise((resolve, reject) => {
    const child = spawn(command, [...quiet, ...input, ...output], { stdio: 'pipe' });
    child.once('spawn', () => resolve(child));
    child.once('error', reject);
  });
}

function pipeDecoder(
  child: ChildProcessWithoutNullStreams,
  header: (packet: Uint8Array) => Uint8Array | undefined,
): PacketDecoder {
  const output = auParser();
  let failure: Error | undefined;
  const closed = new Promise<void>((resolve) => {
    child.on('close', () => resolve());
    child.on('error', (error) => {
      failure = error;
      resolve();
    });
  });
  child.stdout.on('data', (data: Buffer) => output.add(data));
  child.stderr.resume();
  // A child that ends early breaks the pipe; what it decoded is still delivered.
  child.stdin.on('error', () => {});
  return {
    delayed: true,
    async push(packet) {
      const head = header(packet);
      if (!head) throw new Error('packet too long for ADTS');
      if (failure) throw failure;
      const flowing = child.stdin.write(Buffer.concat([head, packet]));
      if (!flowing)
        await Promise.race([new Promise((done) => child.stdin.once('drain', done)), closed]);
      return output.take();
    },
    async flush() {
      child.stdin.end();
      await closed;
      return output.take();
    },
    close() {
      child.kill();
    },
  };
}

/** Parts a stream in the AU format (24-byte head or longer, then big-endian floats) into whole frames. */
function auParser(): { add(data: Buffer): void; take(): DecodedSound | undefined } {
  let waiting: Buffer[] = [];
  let head: { sampleRateHz: number; channels: number } | undefined;
  return {
    add: (data) => waiting.push(data),
    take() {
      let bytes = waiting.length === 1 ? waiting[0]! : Buffer.concat(waiting);
      waiting = [];
      if (!head && bytes.length >= 24 && bytes.length >= bytes.readUInt32BE(4)) {
        head = { sampleRateHz: bytes.readUInt32BE(16), channels: bytes.readUInt32BE(20) };
        bytes = bytes.subarray(bytes.readUInt32BE(4));
      }
      const frameBytes = 4 * (head?.channels ?? 1);
      const frames = head ? Math.floor(bytes.length / frameBytes) : 0;
      if (frames * frameBytes < bytes.length) waiting.push(bytes.subarray(frames * frameBytes));
      if (!head || frames === 0) return undefined;
      return { sampleRateHz: head.sampleRateHz, channels: planes(bytes, frames, head.channels) };
    },
  };
}

function planes(bytes: Buffer, frames: number, channels: number): Float32Array[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  return Array.from({ length: channels }, (_, c) => {
    const out = new Float32Array(frames);
    for (let i = 0; i < frames; i++) out[i] = view.getFloat32(4 * (i * channels + c));
    return out;
  });
}
