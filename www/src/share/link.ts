// The link: the page's own address with the doc in its fragment, and what
// happens when the page is opened or sent to such an address.

import { type Doc, isProblem, type Shot, type Store } from "../store";
import type { Problem, ShotFile } from "../types";

/** Addresses longer than this are cut off by some programs that send messages (from memory). */
export const LONG_CHARS = 2000;

/** The shot file with its ball inside: it says all there is to say. */
export function wholeShot({ ball, shot: { format, ...rest } }: Doc): ShotFile {
  return { format, ball, ...rest };
}

/** The address that reopens this doc, or what stands in its way. */
export function addressOf(store: Store, doc: Doc): { address: string } | { problem: Problem } {
  try {
    return { address: `${pageAddress()}#${store.wasm.link(wholeShot(doc))}` };
  } catch (error) {
    if (isProblem(error)) return { problem: error };
    throw error;
  }
}

function pageAddress(): string {
  return location.href.split("#", 1)[0] ?? "";
}

/** Opens the link the page was opened with, and those it is sent to later. */
export function watchLinks(store: Store): void {
  const look = () => {
    try {
      openLink(store);
    } catch (error) {
      store.fail(error);
    }
  };
  look();
  addEventListener("hashchange", look);
}

function openLink(store: Store): void {
  const { hash } = location;
  // Any other fragment, such as that of the way past the bar, is no link of ours.
  if (!/^#p\d/.test(hash)) return;
  // First of all, so that going back to this page or loading it again brings the
  // work that is on it, and not the link once more, whatever the link holds.
  history.replaceState(history.state, "", pageAddress());
  let shared: Doc;
  try {
    const { ball, ...shot } = store.wasm.unlink(hash);
    if (typeof ball === "string") return;
    shared = { ball, shot: shot as Shot };
  } catch (error) {
    if (!isProblem(error)) throw error;
    store.notice.value = `The link was not opened, and your work is as it was. ${error.message}`;
    return;
  }
  if (sameDoc(store, store.doc.value, shared)) {
    store.notice.value = "The ball and shot of the link are on the bench already.";
    return;
  }
  store.openShared(shared);
  store.notice.value = `Opened from the link: ${shared.ball.name}. Undo brings back what was on the bench.`;
}

function sameDoc(store: Store, one: Doc, other: Doc): boolean {
  const [a, b] = [addressOf(store, one), addressOf(store, other)];
  return "address" in a && "address" in b && a.address === b.address;
}
