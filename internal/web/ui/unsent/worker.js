// Keeps pages and sheets for use without a signal. NAME and ASSETS stand
// above; NAME is made from their content.
const PAGES = `${NAME}-pages`;

self.addEventListener('install', event => {
  event.waitUntil((async () => {
    await (await caches.open(NAME)).addAll(ASSETS);
    await self.skipWaiting();
  })());
});

self.addEventListener('activate', event => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith('bedweek-') && name !== NAME && name !== PAGES) await caches.delete(name);
    }
    await self.clients.claim();
  })());
});

// gather keeps the pages worth having at the bed, a few at a time.
async function gather() {
  const list = await fetch('/offline', { cache: 'no-store' });
  if (!list.ok) return;
  const cache = await caches.open(PAGES);
  for (const path of await list.json()) {
    try {
      const page = await fetch(path);
      if (page.ok && !page.redirected) await cache.put(keyOf(new URL(path, location)), page);
    } catch { return; }
  }
  for (const client of await self.clients.matchAll()) client.postMessage('gathered');
}

self.addEventListener('message', event => {
  if (event.data === 'gather') event.waitUntil(gather());
});

// keyOf is under which name a page is kept: its path; for the pages that are
// many under one path, the question too.
const keyOf = url => url.pathname + (/^\/(walk|quick)$/.test(url.pathname) ? url.search : '');

const later = ms => new Promise((_, no) => setTimeout(() => no(new Error('slow')), ms));

// page asks the program first, and shows the kept copy when it does not answer.
async function page(request) {
  const url = new URL(request.url);
  url.searchParams.delete('saved');
  const path = keyOf(url);
  const cache = await caches.open(PAGES);
  try {
    const fresh = await Promise.race([fetch(request), later(4000)]);
    if (fresh.ok && !fresh.redirected) await cache.put(path, fresh.clone());
    return fresh;
  } catch (cause) {
    const kept = await cache.match(path) || await cache.match(url.pathname, { ignoreSearch: true });
    if (kept) return kept;
    return (await cache.match('/unsent')) || Response.error();
  }
}

self.addEventListener('fetch', event => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== location.origin) return;
  if (url.pathname.startsWith('/assets/')) {
    event.respondWith(caches.match(request).then(kept => kept || fetch(request)));
  } else if (request.mode === 'navigate' && !/^\/(export|plan\.ics|trust|pair|phones|authority)/.test(url.pathname)) {
    event.respondWith(page(request));
  }
});
