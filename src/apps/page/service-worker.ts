/**
 * Keeps the page for use without a network. What belongs to the first view is kept at once, everything
 * else when it is first asked for. A new build has a new name and drops the old one as a whole.
 */

/** Written into the bundle by the build. */
declare const BUILD: { version: string; core: string[] };

/** What a service worker offers; the DOM types describe pages only. */
interface WorkerEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface FetchEvent extends WorkerEvent {
  request: Request;
  respondWith(answer: Promise<Response>): void;
}
declare const self: {
  location: Location;
  clients: { claim(): Promise<void> };
  addEventListener(type: 'install' | 'activate', listener: (event: WorkerEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void;
};

const PREFIX = 'arc-transfer-';
const NAME = PREFIX + BUILD.version;

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(NAME).then((cache) => cache.addAll(BUILD.core)));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOld().then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
});

async function dropOld(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== NAME);
  await Promise.all(old.map((name) => caches.delete(name)));
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(NAME);
  const kept = await cache.match(request, { ignoreSearch: true });
  if (kept) return kept;
  const fresh = await fetch(request);
  if (fresh.ok) await cache.put(request, fresh.clone());
  return fresh;
}
