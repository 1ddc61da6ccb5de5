// The two modules as the page calls them.

import type { Phrase } from "../locale/worded";
import type { Checked, Cover, Drilled, Ladder, Section, Weighed } from "./ball";
import type {
  BallFile,
  Coverstock,
  Friction,
  LayoutFile,
  OilFile,
  OilMap,
  ReadShelf,
  ShotFile,
  Vec3,
} from "./file";
import type { Area, FrictionCurve, Roll, WhyTold, Worn } from "./lane";
import type { ClassTable, LessonProblem, ProgressFile, WasmLesson } from "./lesson";
import type { Look, MarkPlace, Pick } from "./look";
import type {
  BallMap,
  Control,
  Lever,
  Levers,
  Poured,
  Scattered,
  Sought,
  TargetFile,
  TolerancesFile,
} from "./maker";

/** Bound to `crates/web`, its feature `first`. Every throwing call throws a `Problem`. */
export interface WasmBall {
  weigh(): Weighed;
  check(): Checked;
  cover(): Cover;
  /** Inches of cover in one direction; NaN: a hole. */
  cover_along(direction: Vec3): number;
  controls(): Control[];
  /** The ball's file with two controls at other values. */
  turned(x: string, x_value: number, y: string, y_value: number): BallFile;
  /** Tolerances to begin with (model choice). */
  usual_tolerances(): TolerancesFile;
  section(normal: Vec3, depth_in: number): Section;
  /** `shot.ball` is ignored. */
  roll(shot: Omit<ShotFile, "ball">): Roll;
  /** This ball drilled as the shot says, or as it is: a ball of its own, to be freed. Throws a `Problem`. */
  drilled(shot: ShotFile | Omit<ShotFile, "ball">): WasmBall;
  /** What drilling did; null for a ball not drilled by a shot. */
  drilling(): Drilled | null;
  /** The ball's file with the holes and inserts that were drilled. */
  file(): BallFile;
  /** Part at a point of the ball in inches; -1 outside it or in a hole. */
  part_at(at_in: Vec3): number;
  free(): void;
}

/** The ball of the second module, the feature `more`: what workers work out of it. */
export interface WorkBall {
  cover(): Cover;
  section(normal: Vec3, depth_in: number): Section;
  /** `shot.ball` is ignored. */
  roll(shot: Omit<ShotFile, "ball">): Roll;
  /** Row by row from the pin down, from +x round, two numbers a place: inches of cover (the radius: no core below)
   * and inches to the nearest hole's wall (below 0: it opens here; infinite: no hole). */
  cover_map(rows: number, columns: number): Float64Array;
  /** Changes the parts of these numbers alone, in proportion; 0 is the cover. */
  ladder(parts: Uint32Array, by_size: boolean): Ladder;
  /** What controls `from..to` move; any worker may do any of them. */
  levers(from: number, to: number): Lever[];
  all_levers(): Levers;
  /** Rows `from..to` of a map; any worker may do any of them. */
  map_rows(
    x: string,
    x_range: Float64Array,
    y: string,
    y_range: Float64Array,
    count: number,
    from: number,
    to: number,
  ): BallMap["rows"];
  /** The map without its rows. */
  map(x: string, x_range: Float64Array, y: string, y_range: Float64Array, count: number): BallMap;
  pour(waste?: number): Poured;
  /** The shot's oil over 1 to 40 games of this throw; some milliseconds a game. */
  wear(shot: Omit<ShotFile, "ball">, games: number): Worn;
  free(): void;
}

export interface WasmView {
  /** Draws at once, into the canvas; says where the marks are. Does nothing while the context is lost. */
  draw(ball: WasmBall, look: Look): MarkPlace[];
  /** What is under a canvas point, from the top left in CSS pixels. */
  pick(ball: WasmBall, look: Look, x_px: number, y_px: number): Pick | null;
  free(): void;
}

/** One shot thrown again and again; `area` takes all parts, one after another. */
export interface WasmThrows {
  readonly count: number;
  part(from: number, to: number): Float64Array;
  area(parts: Float64Array): Area | null;
  free(): void;
}

/** Units of work that any worker may do; put together in their order they are the same to the bit. */
export interface WasmScatter {
  units(): number;
  /** Results of units `from..to`. */
  run(from: number, to: number): Float64Array;
  /** From the results of all units, one after the other. */
  merge(results: Float64Array): Scattered;
  free(): void;
}

/** Starts that any worker may try; the results of those done so far, in their order, can be put together. */
export interface WasmSeek {
  units(): number;
  run(from: number, to: number): Float64Array;
  merge(results: Float64Array): Sought;
  free(): void;
}

/** What the first picture and every edit need. */
export interface WasmModule {
  /** Revs of `b` from a hand whose effort gives the ball of `a` the revs that `b` names. */
  same_effort_revs_rpm(a: ShotFile, b: ShotFile): number;
  /** Checks a target file; returns it or throws a `Problem`. */
  read_target(file: TargetFile | string): TargetFile;
  /** Checks a tolerances file; returns it or throws a `Problem`. */
  read_tolerances(file: TolerancesFile | string): TolerancesFile;
  /** `new Ball(file)` takes a ball file's object or text; throws a `Problem`. */
  Ball: new (
    file: BallFile | string,
  ) => WasmBall;
  /** Checks a shot file's object or text; returns it or throws a `Problem`. */
  read_shot(file: ShotFile | string): ShotFile;
  /** The same for a layout file. */
  read_layout(file: LayoutFile | string): LayoutFile;
  /** Reads a shelf file's text entry by entry; throws a `Problem` with the whole. */
  read_shelf(text: string): ReadShelf;
  /** The fragment, without its #, that holds a shot and its ball; throws a `Problem`. */
  link(file: ShotFile | string): string;
  /** The shot, its ball inside, that an address or its fragment holds; throws a `Problem`. */
  unlink(link: string): ShotFile;
  /** Checks an oil file's object or text; returns it or throws a `Problem`. */
  read_oil(file: OilFile | string): OilFile;
  oil_map(file: OilFile): OilMap;
  /** Friction by film of a ball with this cover; throws a `Problem` from `cover` or `friction` on. */
  friction_curve(cover: Coverstock, friction: Friction | null): FrictionCurve;
  /** Throws a string where WebGL2 cannot be had. */
  View: new (
    canvas: HTMLCanvasElement,
  ) => WasmView;
}

/** What is fetched in the quiet after the first picture: lessons, and what workers do. */
export interface MoreModule {
  /** Reads a lesson's text; `files` has what it may name by path, as `balls/no-1-simple.ball.json`.
   * Throws a list of `LessonProblem`. */
  Lesson: new (
    text: string,
    files: Record<string, unknown>,
  ) => WasmLesson;
  /** Everything wrong with a lesson, its soundness too; empty for a sound one. */
  lesson_problems(text: string, files: Record<string, unknown>): LessonProblem[];
  /** The names that a lesson's expressions know; a name with something in brackets shows an example of it. */
  lesson_names(): { name: string; unit: string; words: Phrase }[];
  /** Checks a progress file; returns it or throws a `Problem`. */
  read_progress(file: ProgressFile | string): ProgressFile;
  /** Progress files put together, each with what it is called. */
  class_table(names: string[], files: (ProgressFile | string)[]): ClassTable;
  /** `new Ball(file)` takes a ball file's object or text; throws a `Problem`. */
  Ball: new (
    file: BallFile | string,
  ) => WorkBall;
  /** Each shot with its ball inside; the labels are what the sentence calls them. Throws a `Problem`. */
  why(a: ShotFile, b: ShotFile, same_effort: boolean, label_a: string, label_b: string): WhyTold;
  /** Takes a shot with its ball inside; throws a `Problem`. */
  Throws: new (
    file: ShotFile | string,
  ) => WasmThrows;
  /** Throws a `Problem` whose place begins with `ball` or `target`. */
  Seek: new (
    ball: BallFile | string,
    target: TargetFile | string,
  ) => WasmSeek;
  /** Throws a `Problem` whose place begins with `ball` or `tolerances`. */
  Scatter: new (
    ball: BallFile | string,
    tolerances: TolerancesFile | string,
  ) => WasmScatter;
}
