// What a lesson shows to a room, one thing after the other.

import type { ToldStep } from "../../lessons/told";
import { worded } from "../../locale/worded";
import type { Doc } from "../../store";
import type { LessonDoc, ProseBlock, Said } from "../../types";

/** What stands beside or below a text. */
export interface Beside {
  cut: Doc | null;
  shot: Doc | null;
  numbers: boolean;
}

/** One thing on the screen. */
export type Slide =
  | { is: "title" | "words" | "end" }
  | { is: "text" | "done"; one: ToldStep; blocks: ProseBlock[]; beside: Beside }
  | { is: "ask" | "answer"; one: ToldStep; blocks: ProseBlock[] }
  | { is: "task"; one: ToldStep; blocks: ProseBlock[]; beside: Beside };

const NOTHING: Beside = { cut: null, shot: null, numbers: false };
/** So much text stands on one slide, beside the ball or numbers, over the lane. */
const MOST = 520;
const MOST_BESIDE = 440;
const MOST_OVER = 400;
const MOST_NUMBERS = 4;

const long = (said: Said[]): number =>
  said.reduce(
    (sum, part) =>
      sum + (part.kind === "value" ? 8 : "said" in part ? long(part.said) : worded(part.text).length),
    0,
  );
const longBlock = (block: ProseBlock): number =>
  block.kind === "paragraph" ? long(block.said) : block.items.reduce((sum, item) => sum + long(item) + 30, 0);
const longAll = (blocks: ProseBlock[]): number => blocks.reduce((sum, block) => sum + longBlock(block), 0);

/** Paragraphs put together as far as they fit on one slide. */
function parted(blocks: ProseBlock[], most: number): ProseBlock[][] {
  const parts: ProseBlock[][] = [];
  for (const block of blocks) {
    const last = parts.at(-1);
    if (last && longAll(last) + longBlock(block) <= most) last.push(block);
    else parts.push([block]);
  }
  return parts;
}

export function slidesOf(about: LessonDoc, steps: ToldStep[]): Slide[] {
  const slides: Slide[] = [{ is: "title" }];
  if (about.words.length > 0) slides.push({ is: "words" });
  let cut = "";
  let shot = "";
  /** The pictures of a bench, where they are new. */
  function pictured(one: ToldStep, doc: Doc): Beside {
    const rooms = one.step.rooms ?? [];
    const beside = { ...NOTHING };
    const ball = JSON.stringify(doc.ball);
    if ((rooms.includes("saw") || rooms.includes("bench")) && ball !== cut) {
      beside.cut = doc;
      cut = ball;
    }
    const throws = JSON.stringify(doc);
    if (rooms.includes("lane") && throws !== shot && one.step.kind !== "do" && one.step.kind !== "predict") {
      beside.shot = doc;
      shot = throws;
    }
    return beside;
  }
  /** A text with its pictures; the numbers go on its last slide, or on one of their own. */
  function texts(one: ToldStep, blocks: ProseBlock[], beside: Beside, numbers: boolean) {
    const watched = numbers ? one.after.watch.length : 0;
    const { cut: ball, shot: thrown } = beside;
    const most = thrown && !ball ? MOST_OVER : ball || watched > 0 ? MOST_BESIDE : MOST;
    const parts = parted(blocks, most);
    // The lane has a slide of its own where the ball is beside the text.
    const apart = ball !== null && thrown !== null;
    const fits =
      watched <= MOST_NUMBERS && !apart && (!thrown || longAll(parts.at(-1) ?? []) < MOST_OVER / 2);
    parts.forEach((part, n) => {
      const last = fits && watched > 0 && n === parts.length - 1;
      const shown = { cut: ball, shot: apart ? null : thrown, numbers: last };
      slides.push({ is: "text", one, blocks: part, beside: shown });
    });
    if (apart || (watched > 0 && !fits)) {
      const shown = { cut: null, shot: apart ? thrown : null, numbers: watched > 0 };
      slides.push({ is: "text", one, blocks: [], beside: shown });
    }
  }
  for (const one of steps) {
    const { text } = one.shown;
    const { kind } = one.step;
    if (kind === "predict") {
      const beside = pictured(one, one.start);
      // The question itself stands with the answers; what leads up to it comes before.
      const question = text.slice(-1);
      const before = text.length > 1 ? text.slice(0, -1) : text;
      if (text.length > 1 || beside.cut) texts(one, before, beside, false);
      slides.push({ is: "ask", one, blocks: question }, { is: "answer", one, blocks: question });
      const numbers = one.after.watch.length > 0;
      const after = { ...pictured(one, one.end), numbers };
      if (after.cut || numbers) slides.push({ is: "text", one, blocks: [], beside: after });
    } else if (kind === "do") {
      slides.push({ is: "task", one, blocks: text, beside: pictured(one, one.start) });
      const numbers = one.after.watch.length > 0;
      slides.push({ is: "done", one, blocks: [], beside: { ...pictured(one, one.end), numbers } });
    } else {
      texts(one, text, pictured(one, one.start), true);
    }
  }
  slides.push({ is: "end" });
  return slides;
}
