/**
 * Loads `wavefile` when it is first needed. It is a CommonJS package whose types promise named exports
 * that Node does not find, so the class is taken from the default export.
 */
export async function loadWaveFile(): Promise<typeof import('wavefile').WaveFile> {
  const module = (await import('wavefile')) as unknown as {
    default?: typeof import('wavefile');
    WaveFile?: typeof import('wavefile').WaveFile;
  };
  const WaveFile = module.default?.WaveFile ?? module.WaveFile;
  if (!WaveFile) throw new TypeError('wavefile has no WaveFile class');
  return WaveFile;
}
