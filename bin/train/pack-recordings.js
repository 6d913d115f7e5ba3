// Packs a draw of a foreign world for scoring during training: node pack-recordings.mjs <file> <first seed> <arcs>
// <others>. 16 kHz, int16. World `circuit` only: it serves choices, the other worlds must not.
import { writeFileSync } from 'node:fs';
import { Resampler } from '../../src/model/network/index.ts';
import { circuit } from '../../tests/foreign/circuit/index.ts';
import { foreignItems } from '../../tests/support/foreign-set.ts';

const [file, ...numbers] = process.argv.slice(2);
const [first, arcs, others] = numbers.map(Number);
const header = [];
const pieces = [];
for (const { arc, condition, recording, isHeard } of foreignItems(circuit, first, arcs))
  add(recording, { condition, mode: arc.truth.mode, heard: isHeard, seed: arc.seed });
for (let seed = first; seed < first + others; seed++) {
  const other = circuit.drawOther(seed);
  add(other, { condition: 'other', mode: null, kind: other.kind, seed });
}
const text = Buffer.from(JSON.stringify(header));
const size = Buffer.alloc(4);
size.writeUInt32LE(text.length);
writeFileSync(file, Buffer.concat([Buffer.from('RECORD01'), size, text, ...pieces]));
process.stdout.write(`${header.length} recordings\n`);

function add({ samples, sampleRateHz }, facts) {
  const resampler = new Resampler(sampleRateHz, 16000);
  const x = [...resampler.push(samples), ...resampler.flush()];
  const codes = Int16Array.from(x, (v) => Math.max(-32768, Math.min(32767, Math.round(v * 32767))));
  header.push({ ...facts, length: codes.length });
  pieces.push(Buffer.from(codes.buffer));
}
