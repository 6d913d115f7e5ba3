/**
 * The model document that comes with the package for a feature set, where there is no file system: fetched
 * from beside this module. It must not be changed.
 *
 * @param featureSet `sound`, `voltage`, `current` or `voltage-current`
 */
export async function loadShippedModel(featureSet: string): Promise<unknown> {
  const answer = await fetch(placeOf(featureSet));
  if (answer.ok) return answer.json();
  throw new Error(`The model for ${featureSet} could not be loaded (status ${answer.status}).`);
}

/** Written out one by one, so that bundlers find the files and carry them along. */
function placeOf(featureSet: string): URL {
  if (featureSet === 'sound') return new URL('./shipped/sound.json', import.meta.url);
  if (featureSet === 'voltage') return new URL('./shipped/voltage.json', import.meta.url);
  if (featureSet === 'current') return new URL('./shipped/current.json', import.meta.url);
  return new URL('./shipped/voltage-current.json', import.meta.url);
}
