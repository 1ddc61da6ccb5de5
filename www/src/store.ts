// One store. What a person can change is `doc` (kept, undone, saved) and `view`
// (how it is looked at). Everything else is derived from them, per edit, and
// never stored. While an edit is wrong, the last good ball stays in `derived`.

import { batch, computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { asItIs, begin, type Derived, tryBall, tryThrow } from "./derive";
import { changedOutside, type Taken } from "./lessons/taken";
import type { ToSay } from "./locale/say";
import { describe } from "./problem";
import type { BallFile, Section, ShotFile, TargetFile, TolerancesFile, Vec3, WasmModule } from "./types";
import { say } from "./work";

export type Shot = Omit<ShotFile, "ball">;

/** What a person makes: saved, opened, undone as one. */
export interface Doc {
  ball: BallFile;
  shot: Shot;
}

/** A shot file with its ball inside: ball, release, layout and lane, whatever they hold. */
export type WholeShot = ShotFile & { ball: BallFile };

/** A doc as one file: it says all there is to say. */
export function wholeShot({ ball, shot: { format, ...rest } }: Doc): WholeShot {
  return { format, ball, ...rest };
}

export const ROOMS = [
  "bench",
  "saw",
  "scale",
  "lane",
  "lesson",
  "lessons",
  "shelf",
  "sheet",
  "model",
] as const;
export type Room = (typeof ROOMS)[number];
export type Units = "trade" | "metric";
export type Theme = "system" | "light" | "dark";

/** How it is looked at and what is asked of it: kept between visits, not undone. */
export interface View {
  /** The room in front: of the workshop where only one fits, else the one that takes the whole space. */
  room: Room;
  /** The workshop's room that takes the others' space beside the Bench, on a desk. */
  large: Room | null;
  units: Units;
  theme: Theme;
  /** Part in hand: 0 is the cover, n the n-th piece. */
  selected: number | null;
  /** Parts not drawn, by number. */
  hidden: number[];
  /** Saw plane; what lies on the side `normal` points to is taken away. */
  plane: { normal: Vec3; depth_in: number } | null;
  /** 0 together to 1 fully pulled apart. */
  exploded: number;
  markers: boolean;
  /** What "the same hand" means when balls are compared: the same revs, or the same effort. */
  hand: "revs" | "effort";
  /** What the reader changed about the usual tolerances, and about the wanted core. */
  tolerances: Partial<TolerancesFile> | null;
  target: Partial<TargetFile> | null;
}

/** The bench lent to a lesson: the reader's own work lies aside until it is given back. */
export interface Loan {
  own: Doc;
  /** The last good of it, where `own` has a mistake. */
  ownGood: Doc;
  taken: Taken;
}

export interface Store {
  wasm: WasmModule;
  doc: ReadonlySignal<Doc>;
  view: ReadonlySignal<View>;
  derived: ReadonlySignal<Derived>;
  /** The cut of the last good ball along the saw plane. */
  section: ReadonlySignal<Section | null>;
  /** Work that links took the place of, oldest first: kept between visits, so that Undo still finds it. */
  aside: ReadonlySignal<Doc[]>;
  /** The lesson that has the bench; null while it is the reader's own. */
  loan: ReadonlySignal<Loan | null>;
  canUndo: ReadonlySignal<boolean>;
  canRedo: ReadonlySignal<boolean>;
  /** Something broke that is not the reader's mistake; null while all is well. */
  fault: ReadonlySignal<string | null>;
  /** Something worth saying once: a file opened, a link made. */
  notice: Signal<ToSay | null>;
  /** Why the browser does not keep what is made here now; null while it does. */
  unkept: Signal<ToSay | null>;
  /** Whether the bench is as a link brought it. */
  linked: ReadonlySignal<boolean>;
  /** One edit. Edits with the same key in quick succession undo as one. */
  editBall(change: (ball: BallFile) => BallFile, key?: string): void;
  editShot(change: (shot: Shot) => Shot, key?: string): void;
  /**
   * Puts another ball (and shot) on the bench, as one step of undo, and says so by the name it is given.
   * Where a lesson holds the bench fast that is said instead, and nothing changes.
   */
  replace(doc: Partial<Doc>, name?: string): void;
  /** Puts what a link holds on the bench: one step of undo, now and on the next visit. */
  openShared(doc: Doc): void;
  /** Puts what a lesson wants on the bench. Own work and its undo steps lie aside until `giveBack`. */
  lend(doc: Doc, taken: Taken): void;
  /** What is known of the lesson that has the bench, the bench left as it is. */
  keepTaken(taken: Taken): void;
  /** Ends the lesson: own work is on the bench again as it was. */
  giveBack(): void;
  undo(): void;
  redo(): void;
  look(change: Partial<View>): void;
  /** Reports what broke outside the store's own calls. */
  fail(error: unknown): void;
}

export const FIRST_VIEW: View = {
  room: "saw",
  large: null,
  units: "trade",
  theme: "system",
  selected: null,
  hidden: [],
  plane: { normal: [1, 0, 0], depth_in: 0 },
  exploded: 0,
  markers: true,
  hand: "revs",
  tolerances: null,
  target: null,
};

const SAME_GESTURE_MS = 1000;
const MOST_STEPS = 200;
const MOST_ASIDE = 5;

/** Builds the store around a doc whose ball may be wrong and a good one that is not. */
export function createStore(
  wasm: WasmModule,
  first: Doc,
  good: Doc,
  firstView: View,
  firstAside: Doc[] = [],
  firstLoan: Loan | null = null,
  firstLinked = false,
): Store {
  const doc = signal(first);
  const view = signal(firstView);
  const fault = signal<string | null>(null);
  const notice = signal<ToSay | null>(null);
  const unkept = signal<ToSay | null>(null);
  /** What a link brought last. */
  const fromLink = signal<Doc | null>(firstLinked ? first : null);
  const aside = signal(firstAside);
  const loan = signal(firstLoan);
  /** Undo steps of the reader's own work while the bench is lent. */
  let ownSteps: { past: Doc[]; future: Doc[] } = { past: firstAside, future: [] };
  const past = signal(firstLoan ? [] : firstAside);
  const future = signal<Doc[]>([]);
  const derived = signal(begin(wasm, good));
  let lastKey = "";
  let lastTime = Number.NEGATIVE_INFINITY;
  /** What was said last of a ball put on the bench. */
  let placed: ToSay | null = null;

  function fail(error: unknown): void {
    fault.value ??= describe(error);
  }

  /** Derives what can be derived, keeps the last good of the rest. */
  function settle(next: Doc, newStep: boolean): void {
    const old = derived.value;
    const now = { ...old };
    if (newStep) {
      now.before = old.weighed;
      now.rollBefore = old.roll;
      now.docBefore = { ball: old.file, shot: old.shot };
    }
    try {
      if (next.ball !== old.file || old.ballProblem) {
        const tried = tryBall(wasm, next.ball);
        if ("problem" in tried) {
          now.ballProblem = tried.problem;
        } else {
          Object.assign(now, tried, { file: next.ball, ballProblem: null });
        }
      }
      const rebuilt = now.base !== old.base;
      if (rebuilt || next.shot !== old.shot || old.shotProblem) {
        const thrown = tryThrow(now, next.shot, old);
        if ("problem" in thrown) {
          now.shotProblem = thrown.problem;
          // A new ball still rolls as the last good shot says, where it can at all.
          const again = rebuilt ? tryThrow(now, now.shot, old) : thrown;
          Object.assign(now, "problem" in again ? rebuilt && asItIs(now) : again);
        } else {
          Object.assign(now, thrown, { shot: next.shot, shotProblem: null });
        }
      }
    } catch (error) {
      doc.value = next;
      fail(error);
      return;
    }
    batch(() => {
      doc.value = next;
      derived.value = now;
    });
    for (const ball of new Set([old.ball, old.base])) {
      if (ball !== now.ball && ball !== now.base) ball.free();
    }
  }

  /** Whether the numbers are those of another doc, as this one has a mistake. */
  const mistaken = () => derived.value.ballProblem !== null || derived.value.shotProblem !== null;

  function edit(next: Doc, key: string): boolean {
    if (fault.value) return false;
    const fixed = loan.value && changedOutside(doc.value, next, loan.value.taken.free);
    if (fixed) {
      notice.value = () => say("work-held", { what: say(fixed) });
      return false;
    }
    const time = performance.now();
    const merges = key !== "" && key === lastKey && time - lastTime < SAME_GESTURE_MS;
    lastKey = key;
    lastTime = time;
    batch(() => {
      if (!merges) {
        past.value = [...past.value, doc.value].slice(-MOST_STEPS);
        outdated();
      }
      future.value = [];
      settle(next, !merges);
    });
    return true;
  }

  function step(from: Signal<Doc[]>, to: Signal<Doc[]>): void {
    const next = from.value.at(-1);
    if (!next || fault.value) return;
    lastKey = "";
    batch(() => {
      from.value = from.value.slice(0, -1);
      to.value = [...to.value, doc.value];
      outdated();
      settle(next, true);
      if (from !== past || !mistaken()) return;
      // What was undone is not the last good one before a mistake: back to what was good, and on from there.
      const again = [next];
      for (const before of past.value.toReversed()) {
        settle(before, false);
        if (!mistaken()) break;
        again.unshift(before);
      }
      for (const one of again) settle(one, false);
    });
  }

  function replace(change: Partial<Doc>, name?: string): void {
    if (!edit({ ...doc.value, ...change }, "")) return;
    if (change.ball) view.value = { ...view.value, selected: null, hidden: [] };
    if (!name) return;
    placed = () => say("work-on-bench", { name });
    notice.value = placed;
  }

  /** What was said of the ball put on the bench is not true any more. */
  function outdated(): void {
    if (notice.value === placed) notice.value = null;
  }

  /** Another bench with undo steps of its own. */
  function turnTo(now: Doc, steps: { past: Doc[]; future: Doc[] }, anew: boolean): void {
    lastKey = "";
    past.value = steps.past;
    future.value = steps.future;
    settle(now, true);
    // What stood there before has nothing to do with it.
    if (anew) derived.value = { ...derived.value, before: null, rollBefore: null, docBefore: null };
    view.value = { ...view.value, selected: null, hidden: [] };
  }

  function lend(lent: Doc, taken: Taken): void {
    if (fault.value) return;
    const anew = loan.value?.taken.step !== taken.step;
    batch(() => {
      if (!loan.value) {
        ownSteps = { past: past.value, future: future.value };
        const { file, shot } = derived.value;
        loan.value = { own: doc.value, ownGood: { ball: file, shot }, taken };
      } else {
        loan.value = { ...loan.value, taken };
      }
      turnTo(lent, { past: [], future: [] }, anew);
    });
  }

  function giveBack(): void {
    const back = loan.value;
    if (!back) return;
    batch(() => {
      loan.value = null;
      turnTo(back.ownGood, ownSteps, true);
      if (back.own !== back.ownGood) settle(back.own, false);
    });
  }

  if (first !== good) settle(first, false);

  const section = computed(() => {
    const plane = view.value.plane;
    if (!plane || fault.value) return null;
    try {
      return derived.value.ball.section(plane.normal, plane.depth_in);
    } catch (error) {
      queueMicrotask(() => fail(error));
      return null;
    }
  });

  return {
    wasm,
    doc,
    view,
    derived,
    section,
    fault,
    notice,
    unkept,
    linked: computed(() => doc.value === fromLink.value),
    aside,
    loan,
    canUndo: computed(() => past.value.length > 0),
    canRedo: computed(() => future.value.length > 0),
    editBall: (change, key = "") => {
      edit({ ...doc.value, ball: change(doc.value.ball) }, key && `ball.${key}`);
    },
    editShot: (change, key = "") => {
      edit({ ...doc.value, shot: change(doc.value.shot) }, key && `shot.${key}`);
    },
    replace,
    openShared: (shared) => {
      giveBack();
      const before = doc.value;
      // What a link brought and nobody changed is in the link, and takes no place of own work.
      const own = before !== fromLink.value;
      batch(() => {
        replace(shared);
        fromLink.value = doc.value;
        if (own) aside.value = [...aside.value, before].slice(-MOST_ASIDE);
      });
    },
    lend,
    keepTaken: (taken) => {
      if (loan.value) loan.value = { ...loan.value, taken };
    },
    giveBack,
    undo: () => step(past, future),
    redo: () => step(future, past),
    look: (change) => {
      view.value = { ...view.value, ...change };
    },
    fail,
  };
}

export const StoreContext = createContext<Store | null>(null);

export function useStore(): Store {
  const store = useContext(StoreContext);
  if (!store) throw new Error("no store around this part of the page");
  return store;
}
