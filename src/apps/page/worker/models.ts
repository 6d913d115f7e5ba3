const FEATURE_SETS = ['sound', 'voltage', 'current', 'voltage-current'];

/** A model document of the page, by its feature set. Comes from the page's own store when offline. */
export async function loadPageModel(featureSet: string): Promise<unknown> {
  if (!FEATURE_SETS.includes(featureSet))
    throw new Error(`The page has no model for ${featureSet}.`);
  const answer = await fetch(`models/${featureSet}.json`);
  if (!answer.ok) throw new Error(`The model for ${featureSet} could not be loaded.`);
  return answer.json();
}
