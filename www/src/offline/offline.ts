// The page without network. Over http a service worker keeps the whole page in
// the browser; from a file everything is there anyway.

import { type ReadonlySignal, signal } from "@preact/signals";
import { TAKE_OVER } from "./messages";

/** "file": opened from a disk. "kept": opens without network from now on. */
export type Standing = "file" | "keeping" | "kept" | "not here";

const nowStanding = signal<Standing>(location.protocol === "file:" ? "file" : "keeping");
const waiting = signal<ServiceWorker | null>(null);

export const standing: ReadonlySignal<Standing> = nowStanding;
/** A newer page is in the browser and waits to be asked for. */
export const newer: ReadonlySignal<ServiceWorker | null> = waiting;

/** Has the browser keep the page, and hears of newer ones. */
export async function keepPage(): Promise<void> {
  if (nowStanding.value === "file") return;
  if (!("serviceWorker" in navigator)) {
    nowStanding.value = "not here";
    return;
  }
  try {
    const registration = await navigator.serviceWorker.register("service-worker.js");
    listen(registration);
    await navigator.serviceWorker.ready;
    nowStanding.value = "kept";
  } catch {
    // The browser or its owner does not want it, or the network is gone already.
    nowStanding.value = navigator.serviceWorker.controller ? "kept" : "not here";
  }
}

function listen(registration: ServiceWorkerRegistration): void {
  const watch = (coming: ServiceWorker | null) => {
    if (!coming) return;
    const look = () => {
      // Without an older one there is nothing to take the place of.
      if (coming.state === "installed" && navigator.serviceWorker.controller) waiting.value = coming;
      else if (waiting.value === coming) waiting.value = null;
    };
    coming.addEventListener("statechange", look);
    look();
  };
  watch(registration.waiting);
  watch(registration.installing);
  registration.addEventListener("updatefound", () => watch(registration.installing));
}

/** Loads the newer page in this one's place; the work is kept as whenever a page is left. */
export function takeNewer(): void {
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  waiting.value?.postMessage(TAKE_OVER);
}
