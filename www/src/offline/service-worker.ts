// Keeps the whole page in the visitor's browser, so that it opens without network.
// A newer page waits beside it until no page is open, or until the reader asks for it.
import { clientsClaim } from "workbox-core";
import { cleanupOutdatedCaches, type PrecacheEntry, precacheAndRoute } from "workbox-precaching";
import { TAKE_OVER } from "./messages";

/** Every file of the page, put in by bundle.mjs. */
declare const PRECACHE: PrecacheEntry[];

// The page's own types are the window's; of a worker's only this is needed.
const worker = self as unknown as EventTarget & { skipWaiting(): Promise<void> };

worker.addEventListener("message", (event) => {
  if ((event as MessageEvent).data === TAKE_OVER) void worker.skipWaiting();
});
cleanupOutdatedCaches();
precacheAndRoute(PRECACHE, { ignoreURLParametersMatching: [/./] });
clientsClaim();
