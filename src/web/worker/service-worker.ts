/**
 * Where the browser allows it (https, or this machine): the pages open without a network. It keeps the
 * pages and what they are made of, and nothing of what is asked under /api.
 */
declare const self: ServiceWorkerGlobalScope;

/** Put in when the pages are built. */
const LIST = '__FILES__';
const FILES: readonly string[] = JSON.parse(LIST);
const PAGES = FILES.filter((file) => !file.startsWith('/assets/'));
const NAME = `handspike ${lengthAndSum(LIST)}`;
/** So long a slow network is waited for before the kept page is shown. */
const PATIENCE = 2500;

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(NAME)
      .then((cache) => cache.addAll([...FILES]))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(forgetOthers().then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin) return;
  if (request.mode === 'navigate' && PAGES.includes(pathname)) event.respondWith(page(request, pathname));
  else if (FILES.includes(pathname)) event.respondWith(keptOrFetched(request));
});

async function page(request: Request, pathname: string): Promise<Response> {
  const fresh = fetch(request, { signal: AbortSignal.timeout(PATIENCE) });
  const answer = await fresh.catch(() => null);
  if (answer?.ok) return answer;
  return (await caches.match(pathname)) ?? answer ?? Response.error();
}

const keptOrFetched = async (request: Request): Promise<Response> =>
  (await caches.match(request, { ignoreSearch: true })) ?? fetch(request);

async function forgetOthers(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith('handspike ') && name !== NAME);
  await Promise.all(names.map((name) => caches.delete(name)));
}

function lengthAndSum(text: string): string {
  let sum = 0;
  for (const letter of text) sum = (sum * 31 + letter.charCodeAt(0)) % 0xffffffff;
  return `${text.length}.${sum}`;
}
