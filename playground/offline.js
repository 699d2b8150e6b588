// The service worker of the built page: everything the page is made of is kept on the first visit, so that it works
// without a network. A new version waits until no page of the old one is open, since pages fetch parts of themselves late.
/* global caches, clients */
const version = "VERSION";
const files = ["FILES"];

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(version).then((cache) => cache.addAll(files)));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name !== version).map((name) => caches.delete(name))))
      .then(() => clients.claim()),
  );
});

self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") return;
  event.respondWith(kept(event.request).then((found) => found ?? fetch(event.request)));
});

/** What is kept under the address asked for; to whoever goes anywhere else on this site, the page. */
async function kept(request) {
  const cache = await caches.open(version);
  // Servers mark answers as varying by where the request came from; here they are all the page's own.
  const found = await cache.match(request, { ignoreVary: true });
  return found ?? (request.mode === "navigate" ? cache.match("./", { ignoreVary: true }) : undefined);
}
