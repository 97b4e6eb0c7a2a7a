/** Gives the page without a network. Its name changes with the page, so that a new one is taken up by the next load. */
interface Worker {
  readonly registration: { readonly scope: string };
  addEventListener(of: "install" | "activate", hears: (event: Waiting) => void): void;
  addEventListener(of: "fetch", hears: (event: Fetching) => void): void;
  skipWaiting(): Promise<void>;
}
interface Waiting {
  waitUntil(done: Promise<unknown>): void;
}
interface Fetching {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

const worker = self as unknown as Worker;
const PREFIX = "scarfline-bench-";
/** Put in when the page is written. */
declare const PAGE_DIGEST: string;
const CACHE = `${PREFIX}${PAGE_DIGEST}`;
const FILES = ["./", "manifest.webmanifest", "icon.svg"];

worker.addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(CACHE)
      .then((cache) => cache.addAll(FILES.map((file) => new Request(file, { cache: "reload" }))))
      .then(() => worker.skipWaiting()),
  );
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(
          names.filter((name) => name.startsWith(PREFIX) && name !== CACHE).map((name) => caches.delete(name)),
        ),
      ),
  );
});

worker.addEventListener("fetch", (event) => {
  const { pathname } = new URL(event.request.url);
  const file = pathname.endsWith("/index.html") ? "./" : event.request.url;
  event.respondWith(
    caches.open(CACHE).then(async (cache) => (await cache.match(file, { ignoreSearch: true })) ?? fetch(event.request)),
  );
});
