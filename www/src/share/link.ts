// The link: the page's own address with the doc in its fragment, and what
// happens when the page is opened or sent to such an address.

import type { Jobs } from "../jobs";
import type { ToSay } from "../locale/say";
import { isProblem } from "../problem";
import { type Doc, type Shot, type Store, wholeShot } from "../store";
import type { Problem } from "../types";
import { sentenceIn } from "../units";
import { say } from "../work";
import { attempt } from "./attempt";

/** Addresses longer than this are cut off by some programs that send messages (from memory). */
export const LONG_CHARS = 2000;

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
export function watchLinks(store: Store, jobs: Jobs): void {
  let last = new AbortController();
  const look = () => {
    const { hash } = location;
    // Any other fragment, such as that of the way past the bar, is no link of ours.
    if (!/^#p\d/.test(hash)) return;
    // First of all, so that going back to this page or loading it again brings the
    // work that is on it, and not the link once more, whatever the link holds.
    history.replaceState(history.state, "", pageAddress());
    last.abort();
    last = new AbortController();
    openLink(store, jobs, hash, last.signal).catch((error) => store.fail(error));
  };
  look();
  addEventListener("hashchange", look);
}

async function openLink(store: Store, jobs: Jobs, hash: string, newer: AbortSignal): Promise<void> {
  const refuse = (why: ToSay) => {
    store.notice.value = () => say("link-not-opened", { why: why() });
  };
  let shared: Doc;
  try {
    const { ball, ...shot } = store.wasm.unlink(hash);
    if (typeof ball === "string") return;
    shared = { ball, shot: shot as Shot };
  } catch (error) {
    if (!isProblem(error)) throw error;
    refuse(() => sentenceIn(error.message, store.view.value.units));
    return;
  }
  if (sameDoc(store, store.doc.value, shared)) {
    store.notice.value = () => say("link-already");
    return;
  }
  store.notice.value = () => say("link-opening");
  try {
    await attempt(jobs, shared, newer);
  } catch (error) {
    if (newer.aborted) return;
    if (!isProblem(error)) throw error;
    refuse(() => sentenceIn(error.message, store.view.value.units));
    return;
  }
  store.openShared(shared);
  store.notice.value = () => say("link-opened", { ball: shared.ball.name });
}

function sameDoc(store: Store, one: Doc, other: Doc): boolean {
  const [a, b] = [addressOf(store, one), addressOf(store, other)];
  return "address" in a && "address" in b && a.address === b.address;
}
