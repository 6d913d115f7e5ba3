import { loadWaveFile } from './load-wavefile.js';

/** The 256 values of A-law or µ-law (ITU-T G.711), full scale at 1, index = code. */
export async function compandingTable(law: 'a-law' | 'mu-law'): Promise<Float64Array> {
  const WaveFile = await loadWaveFile();
  const codes = Uint8Array.from({ length: 256 }, (_, code) => code);
  const wav = new WaveFile();
  wav.fromScratch(1, 8000, law === 'a-law' ? '8a' : '8m', codes);
  if (law === 'a-law') wav.fromALaw();
  else wav.fromMuLaw();
  return Float64Array.from(
    wav.getSamples(true, Int16Array) as unknown as Int16Array,
    (v) => v / 32768,
  );
}
