// Keeps the page of a run and what it loads, so that it opens without a connection. Only the chair
// is served from here: its address is the scope of this worker.
"use strict";
const CACHE = "chairside-1";
const PATIENCE_MS = 4000;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => {
  const old = (names) => names.filter((name) => name.startsWith("chairside-") && name !== CACHE);
  event.waitUntil(
    caches.keys()
      .then((names) => Promise.all(old(names).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener("message", (event) => {
  const urls = event.data.keep || [];
  event.waitUntil(
    caches.open(CACHE)
      .then((cache) => Promise.all(urls.map((url) => keep(cache, url))))
      .then((kept) => event.source.postMessage({ kept: kept.every(Boolean) })),
  );
});

async function keep(cache, request) {
  try {
    const answer = await fetch(request);
    // led elsewhere, as to the sign-in: that is not this page
    const itself = answer.ok && !answer.redirected;
    if (itself) await cache.put(request, answer);
    return itself;
  } catch (lost) {
    return Boolean(await cache.match(request));
  }
}

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  const ours =
    url.origin === self.location.origin &&
    (url.pathname.startsWith("/chairside/run/") ||
      url.pathname.startsWith("/static/") ||
      url.pathname === "/theme.css");
  if (event.request.method === "GET" && ours) event.respondWith(answer(event.request));
});

async function answer(request) {
  const cache = await caches.open(CACHE);
  const late = new Promise((_, no) => setTimeout(no, PATIENCE_MS));
  try {
    const fresh = await Promise.race([fetch(request), late]);
    if (fresh.ok && !fresh.redirected) await cache.put(request, fresh.clone());
    return fresh;
  } catch (lost) {
    const kept = await cache.match(request, { ignoreVary: true });
    if (kept) return kept;
    throw lost || new Error("no connection");
  }
}
