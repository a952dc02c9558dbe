// Keeps every file of one edition on the device and serves from there. The build fills in the list of files;
// each is checked against its hash while it is stored, so an edition is whole or it is not installed.

const worker = /** @type {any} */ (self);
for (const part of ["core", "routing", "strategies", "precaching"]) {
  worker.importScripts(`vendor/workbox/workbox-${part}.prod.js`);
}
const { core, precaching } = worker.workbox;
/** @type {{url: string}[]} */
const files = worker.__PRECACHE_LIST;

core.setCacheNameDetails({ prefix: "seamwright", suffix: new URL(worker.registration.scope).pathname });
precaching.cleanupOutdatedCaches();
precaching.precacheAndRoute(files, { cleanURLs: false });

async function coverage() {
  const store = await caches.open(core.cacheNames.precache);
  const held = new Set((await store.keys()).map((request) => request.url));
  const missing = files.map((file) => file.url).filter((url) => !held.has(precaching.getCacheKeyForURL(url)));
  return { total: files.length, missing: missing.map((url) => new URL(url, worker.registration.scope).href) };
}

worker.addEventListener("message", (/** @type {any} */ event) => {
  if (event.data?.kind === "load") worker.skipWaiting();
  if (event.data?.kind === "coverage") {
    event.waitUntil(coverage().then((found) => event.ports[0].postMessage(found)));
  }
});
