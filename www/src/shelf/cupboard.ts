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
   * `basis` was read is kept beside that change under a new id, not over it.
   * Resolves to what is now kept.
   */
  put(changes: { kept: Kept; basis: string | null }[]): Promise<Kept[]>;
  /** Removes a record unless another page has changed it since; whether it did. */
  remove(id: string, basis: string | null): Promise<boolean>;
  close(): void;
}

/** A browser that has not answered by then will not. */
const LONGEST_WAIT_MS = 8000;

export async function openCupboard(onGone: () => void): Promise<Cupboard | { missing: Missing }> {
  try {
    const opening = openDB(NAME, VERSION, {
      upgrade: (fresh) => fresh.createObjectStore(STORE, { keyPath: "id" }),
      // A newer page waits for this one to let go.
      blocking: (_was, _will, event) => {
        (event.target as IDBDatabase).close();
        onGone();
      },
      terminated: onGone,
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
        const mine = (there?.rev ?? null) === basis;
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
