/** Makes the page answer without a network from the second opening on, where the browser can. */
export async function goOffline(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  // Refused where the certificate is not trusted; the page then works with its server only.
  await navigator.serviceWorker.register('service-worker.js').catch(() => {});
}

/**
 * Fetches every file of the page once, so that the service worker keeps them all.
 * @throws where one can't be had, or nothing keeps them
 */
export async function fetchAll(): Promise<void> {
  if (!navigator.serviceWorker?.controller) throw new Error('nothing keeps the files');
  const answer = await fetch('files.json');
  if (!answer.ok) throw new Error('files.json');
  const { files } = (await answer.json()) as { files: string[] };
  for (const file of files) {
    const one = await fetch(file);
    if (!one.ok) throw new Error(file);
    await one.arrayBuffer();
  }
}
