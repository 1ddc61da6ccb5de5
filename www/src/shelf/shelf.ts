// The shelf as the page shows it. Every change is kept at once; one that the
// browser cannot keep stays here, says so, and can be saved to a file.

import { batch, computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { ToSay } from "../locale/say";
import { describe, isProblem } from "../problem";
import type { Store, WholeShot } from "../store";
import type { ShelfEntry } from "../types";
import { sentenceIn } from "../units";
import { type Cupboard, clearCupboard, type Gone, type Missing, openCupboard } from "./cupboard";
import { tooLong } from "./letters";
import { type Broken, type Entry, type Kept, readKept, readShot, toKept, token, whyUnkept } from "./record";
import { say } from "./say";

/** As the shelf file has it. */
export const MOST_ENTRIES = 1000;
export const MOST_CHOSEN = 4;

export interface Shelf {
  /** "opening" until it is known what the browser keeps. */
  standing: ReadonlySignal<"opening" | "kept" | Missing>;
  entries: ReadonlySignal<Entry[]>;
  broken: ReadonlySignal<Broken[]>;
  /** How many the browser does not keep as they are here. */
  unkept: ReadonlySignal<number>;
  /** What was last done, for the reader. */
  said: Signal<ToSay | null>;
  /** What was last taken off, to put back. */
  removed: ReadonlySignal<Entry | Broken | null>;
  /** Ids chosen to compare, the one compared with first. */
  chosen: Signal<string[]>;
  /** Every ball thrown as the first is. */
  sameShot: Signal<boolean>;
  /** Whether it now stands there. */
  add(name: string, note: string, shot: WholeShot): Promise<boolean>;
  /** Those of a file; the ones that are here already are left out. How many came in. */
  addAll(entries: ShelfEntry[]): Promise<number>;
  /** `seen` is the entry as it was when the reader began to change it. */
  change(seen: Entry, change: { name: string; note: string }): Promise<void>;
  duplicate(entry: Entry): Promise<boolean>;
  remove(entry: Entry | Broken): Promise<void>;
  putBack(): Promise<void>;
  /** Tries once more to keep what is not kept. */
  retry(): Promise<void>;
  /** Throws away a store that cannot be opened and begins a new one. */
  startAfresh(): Promise<void>;
}

export const isBroken = (one: Entry | Broken): one is Broken => "problem" in one;

/** What is said of one that is put there: kept, and kept for this visit only. */
const PUT: [string, string] = ["kept-put", "kept-put-visit"];
const PUT_AGAIN: [string, string] = ["kept-put-again", "kept-put-again-visit"];

function whyNotKept(error: unknown): ToSay {
  const name = error instanceof Error || error instanceof DOMException ? error.name : String(error);
  return name === "QuotaExceededError"
    ? () => say("kept-full-storage")
    : () => say("kept-not", { why: name });
}

function whyMissing(standing: Missing | "opening" | "kept"): ToSay {
  if (standing === "newer") return () => say("kept-newer");
  if (standing === "broken") return () => say("kept-broken");
  return () => say(standing === "forbidden" ? "kept-memory-only" : "kept-deleted");
}

/** Lets the page draw between two stretches of work. */
const breathe = () => pause(0);
const pause = (ms: number) => new Promise((resume) => setTimeout(resume, ms));
const STRETCH_MS = 12;
/** While a browser is deleting it opens nothing. */
const WAITS_MS = [100, 400, 1600, 3200];

export function createShelf({ wasm, fail, view }: Store): Shelf {
  const standing = signal<"opening" | "kept" | Missing>("opening");
  const entries = signal<Entry[]>([]);
  const broken = signal<Broken[]>([]);
  const said = signal<ToSay | null>(null);
  const removed = signal<Entry | Broken | null>(null);
  const chosen = signal<string[]>([]);
  let cupboard: Cupboard | null = null;
  let others: BroadcastChannel | null = null;

  const open = async () => takeUp(await openCupboard(gone));

  function gone(how: Gone): void {
    cupboard = null;
    if (how === "newer") standing.value = "newer";
    else inTurn(keepAnew).catch(unlessGone);
  }

  async function takeUp(found: Cupboard | { missing: Missing }): Promise<void> {
    if ("missing" in found) {
      standing.value = found.missing;
      return;
    }
    cupboard = found;
    try {
      await refresh();
      standing.value = "kept";
    } catch (error) {
      if (!(error instanceof DOMException)) throw error;
      found.close();
      cupboard = null;
      standing.value = "broken";
    }
  }

  /** After all that was kept was deleted: what is in view is not kept, and is kept again where that can be. */
  async function keepAnew(): Promise<void> {
    const unread = broken.peek();
    if (entries.peek().length + unread.length === 0) return open();
    entries.value = entries
      .peek()
      .map((entry) => ({ ...entry, rev: null, unkept: entry.unkept ?? (() => say("kept-deleted")) }));
    let found = await openCupboard(gone);
    for (const wait_ms of WAITS_MS) {
      if (!("missing" in found)) break;
      await pause(wait_ms);
      found = await openCupboard(gone);
    }
    await takeUp(found);
    // As they were, whatever they are.
    const raws = unread.flatMap(({ id, raw }) => (raw === null ? [] : [{ ...(raw as object), id } as Kept]));
    await cupboard?.put(raws.map((kept) => ({ kept, basis: null }))).catch(() => {});
    await keep(entries.peek());
    await refresh();
    const why = entries.peek().map(whyUnkept).find(Boolean);
    said.value = () => (why ? say("kept-still-not", { why: why() }) : say("kept-anew"));
  }

  /** Takes up what is kept now, without letting go of what is only here. */
  async function refresh(): Promise<void> {
    if (!cupboard) return;
    const records = await cupboard.all();
    const read: Entry[] = [];
    const unread: Broken[] = [];
    const before = new Map(entries.peek().map((entry) => [entry.id, entry]));
    let since = performance.now();
    for (const { id, raw } of records) {
      const known = before.get(id);
      const rev = typeof raw === "object" && raw !== null && "rev" in raw ? raw.rev : null;
      const entry = known?.unkept === null && known.rev === rev ? known : readKept(wasm, raw);
      if (isProblem(entry)) unread.push({ id, raw, problem: entry });
      else read.push(entry);
      if (performance.now() - since > STRETCH_MS) {
        await breathe();
        since = performance.now();
      }
    }
    const mine = new Map(
      entries.peek().flatMap((entry) => (entry.unkept === null ? [] : [[entry.id, entry] as const])),
    );
    const kept = read.map((entry) => mine.get(entry.id) ?? entry);
    const ids = new Set(kept.map(({ id }) => id));
    entries.value = [...kept, ...[...mine.values()].filter(({ id }) => !ids.has(id))];
    broken.value = unread;
  }

  function show(id: string, now: Entry | null): void {
    const rest = entries.peek();
    const at = rest.findIndex((entry) => entry.id === id);
    if (now === null) entries.value = rest.filter((entry) => entry.id !== id);
    else entries.value = at < 0 ? [...rest, now] : rest.with(at, now);
  }

  /** Shows entries as they are to be and keeps them; the name of one that went beside another page's change. */
  async function keep(wanted: Entry[]): Promise<string | null> {
    if (!cupboard) {
      const unkept = whyMissing(standing.peek());
      for (const entry of wanted) show(entry.id, { ...entry, unkept });
      return null;
    }
    batch(() => {
      for (const entry of wanted) show(entry.id, { ...entry, unkept: "not yet" });
    });
    let beside: string | null = null;
    try {
      const done = await cupboard.put(wanted.map((entry) => ({ kept: toKept(entry), basis: entry.rev })));
      batch(() => {
        for (const [i, entry] of wanted.entries()) {
          const record = done[i];
          if (!record) continue;
          if (record.id !== entry.id) {
            beside = entry.name;
            show(entry.id, null);
          }
          show(record.id, { ...entry, id: record.id, rev: record.rev, unkept: null });
        }
      });
      others?.postMessage("changed");
      if (beside !== null) await refresh();
    } catch (error) {
      const unkept = whyNotKept(error);
      for (const entry of wanted) show(entry.id, { ...entry, unkept });
    }
    return beside;
  }

  /** One change after the other, so that each sees what the one before has kept. */
  let last: Promise<unknown> = Promise.resolve();
  function inTurn<T>(act: () => Promise<T>): Promise<T> {
    const next = last.then(act);
    last = next.catch(() => {});
    return next;
  }

  const fresh = (name: string, note: string, shot: WholeShot, saved_at: string): Entry => ({
    id: token(),
    rev: null,
    name: name.trim(),
    note: note.trim(),
    saved_at,
    shot: structuredClone(shot),
    unkept: null,
  });

  const room = () => MOST_ENTRIES - entries.peek().length - broken.peek().length;

  async function add(
    name: string,
    note: string,
    shot: WholeShot,
    [put, putForVisit]: [string, string],
  ): Promise<boolean> {
    if (room() < 1) {
      said.value = () => say("kept-full", { most: String(MOST_ENTRIES) });
      return false;
    }
    const long = tooLong(name, note);
    if (long) {
      said.value = () => say("kept-refused", { why: sentenceIn(long.message, view.value.units) });
      return false;
    }
    // As the module reads it back, whatever order its keys came in.
    const read = readShot(wasm, JSON.stringify(shot));
    if (isProblem(read)) {
      said.value = () => say("kept-refused", { why: sentenceIn(read.message, view.value.units) });
      return false;
    }
    const entry = fresh(name, note, read, new Date().toISOString());
    await keep([entry]);
    const why = whyUnkept(entries.peek().find(({ id }) => id === entry.id) ?? entry);
    said.value = () =>
      why ? say(putForVisit, { name: entry.name, why: why() }) : say(put, { name: entry.name });
    return true;
  }

  async function remove(one: Entry | Broken): Promise<void> {
    const basis = isBroken(one) ? null : one.rev;
    if (cupboard && (isBroken(one) || one.rev !== null)) {
      try {
        if (!(await cupboard.remove(one.id, basis))) {
          await refresh();
          said.value = () => say("kept-changed-elsewhere");
          return;
        }
        others?.postMessage("changed");
      } catch (error) {
        said.value = () => say("kept-not-taken", { why: describe(error) });
        return;
      }
    }
    if (isBroken(one)) broken.value = broken.peek().filter(({ id }) => id !== one.id);
    else show(one.id, null);
    chosen.value = chosen.peek().filter((id) => id !== one.id);
    // What the browser itself cannot read could not be put back as it was.
    removed.value = isBroken(one) && one.raw === null ? null : one;
    said.value = () => (isBroken(one) ? say("kept-taken-unread") : say("kept-taken", { name: one.name }));
  }

  async function putBack(): Promise<void> {
    const one = removed.peek();
    if (!one) return;
    removed.value = null;
    if (isBroken(one)) {
      // It goes back as it was, whatever it is.
      const kept = { ...(one.raw as object), id: one.id } as never;
      try {
        await cupboard?.put([{ kept, basis: null }]);
        await refresh();
      } catch (error) {
        removed.value = one;
        said.value = () => say("kept-not-put-back", { why: describe(error) });
        return;
      }
      said.value = () => say("kept-put-back");
      return;
    }
    await keep([{ ...one, rev: null, unkept: null }]);
    said.value = () => say("kept-put-back-name", { name: one.name });
  }

  /** A store that goes away meanwhile says so itself. */
  function unlessGone(error: unknown): void {
    if (!(error instanceof DOMException)) fail(error);
  }

  const followOthers = () => void inTurn(refresh).catch(unlessGone);

  try {
    others = new BroadcastChannel("pithball.shelf");
    others.onmessage = followOthers;
  } catch {
    // Other pages are then noticed when this one is looked at again.
    addEventListener("focus", followOthers);
  }
  inTurn(open).catch(fail);

  return {
    standing,
    entries,
    broken,
    unkept: computed(() => entries.value.filter(whyUnkept).length),
    said,
    removed,
    chosen,
    sameShot: signal(true),
    add: (name, note, shot) => inTurn(() => add(name, note, shot, PUT)),
    addAll: (files) =>
      inTurn(async () => {
        const key = (name: string, note: string, shot: unknown) => JSON.stringify([name, note, shot]);
        const here = new Set(entries.peek().map(({ name, note, shot }) => key(name, note, shot)));
        const news = files
          .filter(({ name, note, shot }) => !here.has(key(name, note ?? "", shot)))
          .slice(0, room())
          .map(({ name, note, saved_at, shot }) =>
            fresh(name, note ?? "", shot as WholeShot, saved_at ?? new Date().toISOString()),
          );
        await keep(news);
        return news.length;
      }),
    change: (seen, { name, note }) =>
      inTurn(async () => {
        if (name === seen.name && note === seen.note) return;
        const now = entries.peek().find(({ id }) => id === seen.id);
        // The basis is what the reader saw, so that what another page did since is not written over.
        const beside = await keep([{ ...(now ?? seen), rev: seen.rev, name, note }]);
        said.value = () => say(beside === null ? "kept-changed" : "kept-changed-beside", { name });
      }),
    duplicate: (entry) =>
      inTurn(() => add(say("kept-copy", { name: entry.name }), entry.note, entry.shot, PUT_AGAIN)),
    remove: (one) => inTurn(() => remove(one)),
    putBack: () => inTurn(putBack),
    retry: () =>
      inTurn(async () => {
        await keep(entries.peek().filter((entry) => entry.unkept !== null));
        const why = entries.peek().map(whyUnkept).find(Boolean);
        said.value = () => (why ? say("kept-still-not", { why: why() }) : say("kept-all"));
      }),
    startAfresh: () =>
      inTurn(async () => {
        try {
          await clearCupboard();
        } catch (error) {
          said.value = () => say("kept-no-new", { why: describe(error) });
          return;
        }
        await open();
        await keep(entries.peek().filter((entry) => entry.unkept !== null));
        said.value = () => say("kept-new");
      }),
  };
}

export const ShelfContext = createContext<Shelf | null>(null);

export function useShelf(): Shelf {
  const shelf = useContext(ShelfContext);
  if (!shelf) throw new Error("no shelf around this part of the page");
  return shelf;
}
