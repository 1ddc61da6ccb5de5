// A lesson as the module tells it, and what learners did.

import type { Phrase } from "../locale/worded";
import type { BallFile, Problem, ShotFile } from "./file";

/** A part of a sentence; a value keeps its kind, so that it is shown in the reader's units. */
export type Said =
  | { kind: "text"; text: Phrase }
  | {
      kind: "value";
      value: number;
      quantity: LessonQuantity;
      decimals: number | null;
      /** Of a difference the two numbers, the second taken from the first. */
      between?: [number, number];
    }
  | { kind: "term"; word: string; text: Phrase }
  | { kind: "strong" | "emphasis"; said: Said[] };

/** The kinds that `units.ts` knows by the same names. */
export type LessonQuantity =
  | "size"
  | "rg"
  | "weight"
  | "imbalance"
  | "density"
  | "volume"
  | "oil"
  | "film"
  | "count"
  | "angle"
  | "speed"
  | "distance"
  | "revs"
  | "time"
  | "board"
  | "friction"
  | "ratio"
  | "share";

export type ProseBlock =
  | { kind: "paragraph"; said: Said[] }
  | { kind: "list"; ordered: boolean; items: Said[][] };

/** A lesson before it is worked through. */
export interface LessonDoc {
  id: string;
  title: string;
  course: string;
  order: number;
  aim: ProseBlock[];
  minutes: number;
  words: string[];
  teacher: ProseBlock[];
  steps: LessonStep[];
}

export interface LessonStep {
  id: string;
  title: string;
  kind: "explore" | "predict" | "do" | "observe" | "explain";
  /** The rooms that are shown; null: all. */
  rooms: ("bench" | "saw" | "scale" | "lane")[] | null;
  /** The only places that may be changed, with what lies below each; null: everything. */
  free: string[] | null;
  asks:
    | { kind: "option"; options: number }
    | { kind: "number"; quantity: LessonQuantity }
    | { kind: "path" }
    | null;
}

/** A step with the numbers on the bench filled in. */
export interface ShownStep {
  text: ProseBlock[];
  watch: { what: Said[]; start: Said; now: Said }[];
  options: Said[][];
  /** Three, or none where there is nothing to do. */
  hints: Said[][];
}

export interface CheckedStep {
  passed: boolean;
  /** A sentence each. */
  missing: Said[][];
  /** What to say of the way taken; null where nothing fits. */
  wrong: Said[] | null;
  /** Places that were changed and may not be. */
  fixed: string[];
  /** What to say once it is passed. */
  done: Said[] | null;
}

/** An answer; points are `[board, ft]`, one beyond the other. */
export type Guess = { option: number } | { number: number } | { path: [number, number][] };

export interface AnsweredStep {
  outcome: "right" | "wrong" | "low" | "high";
  say: Said[];
  truth: { option: number | null } | { number: Said } | { path: [number, number][] };
  /** The bench afterwards. */
  doc: { ball: BallFile; shot: Omit<ShotFile, "ball"> };
}

/** A mistake in a lesson, line and column from 1. */
export interface LessonProblem extends Problem {
  line: number;
  column: number;
}

type Bench = { ball: BallFile; shot: Omit<ShotFile, "ball"> };

export interface WasmLesson {
  about(): LessonDoc;
  /** The bench as a step opens; `left` is what the step before left there, null for the first. */
  opens(step: number, left: Bench | null): Bench;
  /** The bench as the step ends by the lesson's own solution. */
  ends(step: number, start: Bench): Bench;
  shown(step: number, start: Bench, now: Bench): ShownStep;
  check(step: number, start: Bench, now: Bench): CheckedStep;
  answer(step: number, start: Bench, guess: Guess): AnsweredStep;
  free(): void;
}

/** A prediction and what came of it; `said` in the learner's language and the trade's units. */
export interface GivenAnswer {
  outcome: "right" | "wrong" | "low" | "high";
  said: string;
  option?: number;
  number?: number;
  path?: [number, number][];
}

/** What one learner did in lessons. */
export interface ProgressFile {
  format: "pithball.progress/1";
  learner: string;
  lessons: {
    id: string;
    title: string;
    of_steps: number;
    finished_at?: string;
    steps: {
      id: string;
      title: string;
      passed: boolean;
      tries?: number;
      hints?: number;
      /** The learner was shown the lesson's own way. */
      shown?: boolean;
      answer?: GivenAnswer;
    }[];
  }[];
}

export interface ClassTable {
  lessons: { id: string; title: string; begun: number; finished: number }[];
  learners: {
    file: string;
    learner: string;
    finished: number;
    /** In the order of `lessons` above; null where it was not begun. */
    lessons: ({
      passed: number;
      of_steps: number;
      finished: boolean;
      right: number;
      predicted: number;
      hints: number;
      tries: number;
      shown: number;
    } | null)[];
  }[];
  /** The most often mistaken first. */
  questions: {
    lesson: string;
    lesson_title: string;
    step: string;
    title: string;
    answered: number;
    right: number;
    wrong: { said: string; answer: GivenAnswer; count: number }[];
  }[];
  /** The one with the most failed tries first. */
  tasks: {
    lesson: string;
    lesson_title: string;
    step: string;
    title: string;
    begun: number;
    passed: number;
    tries: number;
    hints: number;
  }[];
}
