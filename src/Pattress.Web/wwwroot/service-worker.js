// Keeps the app on the device. A new version is fetched beside the old one and waits until the user takes it.
self.importScripts('./service-worker-assets.js');

const cacheName = 'pattress-' + self.assetsManifest.version;
const wanted = /\.(html|m?js|css|svg|png|wasm|dat|json|webmanifest|ttf|woff2?)$/;
// What a wall can be edited without: fetched when the app has time, or when it is first wanted.
const later = /(^|\/)(later|highs|fonts)\/|PdfSharp|Pattress\.Pdf|\.ttf$/i;
const never = /(^|\/)service-worker/;
const assets = self.assetsManifest.assets.filter(a => wanted.test(a.url) && !never.test(a.url));
const asked = a => new Request(a.url, { integrity: a.hash, cache: 'no-cache' });

self.addEventListener('install', event => event.waitUntil(fill(assets.filter(a => !later.test(a.url)))));
self.addEventListener('activate', event => event.waitUntil(taken()));
self.addEventListener('fetch', event => {
  const url = new URL(event.request.url);
  if (event.request.method === 'GET' && url.origin === self.origin && !url.pathname.startsWith('/api/')) event.respondWith(answer(event.request, url));
});
self.addEventListener('message', event => {
  if (event.data === 'take') self.skipWaiting();
  if (event.data === 'rest') event.waitUntil(rest());
});

let cacheOpened;

function opened() {
  return cacheOpened ??= caches.open(cacheName).catch(error => { cacheOpened = undefined; throw error; });
}

async function fill(list) {
  const cache = await caches.open(cacheName);
  await cache.addAll(list.map(asked));
}

async function taken() {
  for (const name of await caches.keys()) if (name.startsWith('pattress-') && name !== cacheName) await caches.delete(name);
  await self.clients.claim();
}

async function rest() {
  const cache = await caches.open(cacheName);
  for (const asset of assets.filter(a => later.test(a.url))) {
    if (!await cache.match(asset.url)) await cache.add(asked(asset)).catch(() => { });
  }
}

async function answer(request, url) {
  const cache = await opened();
  // By address: a match that ignores what stands behind the ? would look through everything that is kept, each time.
  const kept = await cache.match(request.mode === 'navigate' ? 'index.html' : url.origin + url.pathname);
  if (kept) return kept;
  const fresh = await fetch(request);
  const asset = assets.find(a => new URL(a.url, self.registration.scope).pathname === url.pathname);
  if (asset && fresh.ok) await cache.put(request, fresh.clone()).catch(() => { });
  return fresh;
}
