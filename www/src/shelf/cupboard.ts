// Where the shelf is kept: the browser's IndexedDB, a record for each entry, so
// that two pages open at once never write over each other's work.

import { deleteDB, type IDBPDatabase, openDB } from "idb";
import { type Kept, token } from "./record";

const NAME = "pithball.shelf";
const VERSION = 1;
const STORE = "entries";

/** Why there is no cupboard. */
export type Missing = "forbidden" | "newer" | "broken";

export interface Cupboard {
  /** Every record as it is, by its key; null for one that the browser itself cannot read. */
  all(): Promise<{ id: string; raw: unknown }[]>;
  /**
   * Keeps records, all or none. One that was changed by another page since
   * `basis` was read, and not to the same, is kept beside that change under a new id, not over it.
   * Resolves to what is now kept.
   */
  put(changes: { kept: Kept; basis: string | null }[]): Promise<Kept[]>;
  /** Removes a record unless another page has changed it since; whether it did. */
  remove(id: string, basis: string | null): Promise<boolean>;
  close(): void;
}

/** How a cupboard is gone that was open: a newer page wants it, or it was deleted with all in it. */
export type Gone = "newer" | "deleted";

/** A browser that has not answered by then will not. */
const LONGEST_WAIT_MS = 8000;

export async function openCupboard(onGone: (how: Gone) => void): Promise<Cupboard | { missing: Missing }> {
  try {
    const opening = openDB(NAME, VERSION, {
      upgrade: (fresh) => fresh.createObjectStore(STORE, { keyPath: "id" }),
      // A newer page, or who deletes it, waits for this one to let go.
      blocking: (_was, will, event) => {
        (event.target as IDBDatabase).close();
        onGone(will === null ? "deleted" : "newer");
      },
      // Closed by the browser, as when the reader clears what it keeps.
      terminated: () => onGone("deleted"),
    });
    const silence = new Promise<never>((_, refuse) => {
      setTimeout(() => refuse(new Error("no answer")), LONGEST_WAIT_MS);
    });
    const db = await Promise.race([opening, silence]);
    if (!db.objectStoreNames.contains(STORE)) {
      db.close();
      return { missing: "broken" };
    }
    return cupboard(db);
  } catch (error) {
    return { missing: whyMissing(error) };
  }
}

/** Throws away what is kept, for a store that no longer opens. */
export async function clearCupboard(): Promise<void> {
  await deleteDB(NAME);
}

function whyMissing(error: unknown): Missing {
  const name = error instanceof Error || error instanceof DOMException ? error.name : "";
  if (name === "VersionError") return "newer";
  // No IndexedDB at all is a ReferenceError or TypeError; private windows refuse in several ways.
  const refusals = ["SecurityError", "InvalidStateError", "NotAllowedError", "ReferenceError", "TypeError"];
  return refusals.includes(name) ? "forbidden" : "broken";
}

const same = (a: Kept, b: Kept): boolean => a.name === b.name && a.note === b.note && a.shot === b.shot;

function cupboard(db: IDBPDatabase): Cupboard {
  /** A transaction that is on the disk before it says so. */
  function writing() {
    const tx = db.transaction(STORE, "readwrite", { durability: "strict" });
    // Where a step fails first, that is what is reported.
    tx.done.catch(() => {});
    return tx;
  }

  return {
    async all() {
      const keys = await db.getAllKeys(STORE);
      return Promise.all(
        keys.map(async (key) => {
          const raw: unknown = await db.get(STORE, key).catch(() => null);
          return { id: String(key), raw };
        }),
      );
    },
    async put(changes) {
      const tx = writing();
      const done: Kept[] = [];
      for (const { kept, basis } of changes) {
        const there = (await tx.store.get(kept.id)) as Kept | undefined;
        const mine = (there?.rev ?? null) === basis || (there !== undefined && same(there, kept));
        const record = mine ? kept : { ...kept, id: token() };
        await tx.store.put(record);
        done.push(record);
      }
      await tx.done;
      return done;
    },
    async remove(id, basis) {
      const tx = writing();
      const there = (await tx.store.get(id)) as Kept | undefined;
      const mine = there === undefined || basis === null || there.rev === basis;
      if (mine) await tx.store.delete(id);
      await tx.done;
      return mine;
    },
    close: () => db.close(),
  };
}
