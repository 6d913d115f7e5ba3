// Decodes a pack of real sounds where neither ffmpeg nor a decoder for Python is at hand:
// node unpack-sounds.mjs <sounds.pack>. Writes <sounds>.i16 (all clips end to end) and <sounds>.lengths.json beside it.
import { readFileSync, writeFileSync } from 'node:fs';
import { OggVorbisDecoder } from '@wasm-audio-decoders/ogg-vorbis';

const [path] = process.argv.slice(2);
const data = readFileSync(path);
if (data.toString('latin1', 0, 8) !== 'SOUNDS01') throw new Error(`${path} is no pack of sounds`);
const size = data.readUInt32LE(8);
const clips = JSON.parse(data.toString('utf8', 12, 12 + size));
const body = data.subarray(12 + size);
const decoder = new OggVorbisDecoder();
await decoder.ready;
const pieces = [];
const lengths = [];
for (const { at, bytes, name } of clips) {
  const { channelData, sampleRate } = await decoder.decodeFile(body.subarray(at, at + bytes));
  const [samples] = channelData;
  if (!samples || sampleRate !== 16000) throw new Error(`${name} could not be decoded`);
  pieces.push(
    Int16Array.from(samples, (x) => Math.max(-32768, Math.min(32767, Math.round(x * 32768)))),
  );
  lengths.push(samples.length);
  await decoder.reset();
}
const out = path.replace(/\.pack$/, '');
writeFileSync(`${out}.i16`, Buffer.concat(pieces.map((x) => Buffer.from(x.buffer))));
writeFileSync(`${out}.lengths.json`, JSON.stringify(lengths));
process.stdout.write(`${lengths.length} clips, ${lengths.reduce((a, b) => a + b, 0)} samples\n`);
process.exit(0);
