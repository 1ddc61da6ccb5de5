// The edits a person makes to a ball, each as a function from ball to ball.

import { offered } from "../../locale/names";
import type { Store } from "../../store";
import type { BallFile, Hole, Piece, Problem } from "../../types";
import { say } from "./say";

export function editPiece(store: Store, at: number, change: (piece: Piece) => Piece, key = ""): void {
  store.editBall(
    (ball) => ({ ...ball, pieces: ball.pieces.map((piece, i) => (i === at ? change(piece) : piece)) }),
    key && `pieces[${at}].${key}`,
  );
}

/** Changes which pieces there are; what was hidden by number shows again. */
function recount(store: Store, change: (pieces: Piece[]) => Piece[], selected: number | null): void {
  store.editBall((ball) => ({ ...ball, pieces: change(ball.pieces) }));
  store.look({ selected, hidden: [] });
}

export function addPiece(store: Store): void {
  const count = store.doc.value.ball.pieces.length;
  const piece: Piece = {
    name: freeName(store.doc.value.ball, offered("piece", "new piece")),
    density_g_cc: 1.8,
    shape: { kind: "sphere", diameter_in: 1.5 },
  };
  recount(store, (pieces) => [...pieces, piece], count + 1);
}

export function duplicatePiece(store: Store, at: number): void {
  const ball = store.doc.value.ball;
  const original = ball.pieces[at];
  if (!original) return;
  const copy = {
    ...structuredClone(original),
    name: freeName(ball, say("bench-copy", { piece: original.name })),
  };
  recount(store, (pieces) => pieces.toSpliced(at + 1, 0, copy), at + 2);
}

export function removePiece(store: Store, at: number): void {
  const left = store.doc.value.ball.pieces.length - 1;
  recount(store, (pieces) => pieces.toSpliced(at, 1), Math.min(at + 1, left));
}

/** Moves a piece one place earlier (-1) or later (+1) in the pouring order. */
export function movePiece(store: Store, at: number, by: -1 | 1): void {
  recount(
    store,
    (pieces) => {
      const piece = pieces[at];
      return piece ? pieces.toSpliced(at, 1).toSpliced(at + by, 0, piece) : pieces;
    },
    at + by + 1,
  );
}

export function editHoles(store: Store, change: (holes: Hole[]) => Hole[], key = ""): void {
  store.editBall((ball) => {
    const { holes, ...rest } = ball;
    const next = change(holes ?? []);
    return next.length > 0 ? { ...rest, holes: next } : rest;
  }, key && `holes.${key}`);
}

function freeName(ball: BallFile, wish: string): string {
  const taken = new Set(ball.pieces.map((piece) => piece.name));
  if (!taken.has(wish)) return wish;
  let n = 2;
  while (taken.has(`${wish} ${n}`)) n += 1;
  return `${wish} ${n}`;
}

/** The problem, if it lies at this place of the file or below it. */
export function problemAt(problem: Problem | null, place: string): Problem | null {
  if (!problem?.place.startsWith(place)) return null;
  const next = problem.place[place.length];
  return next === undefined || next === "." || next === "[" ? problem : null;
}

/** True where a field of the editor shows the problem itself. */
export function hasField(place: string): boolean {
  return /^(diameter_in|cover\.density_g_cc|(pieces|holes)\[\d+\].*\.(density_g_cc|\w+_(in|deg)(\[\d+\])*|squash(\[\d\])?|entry|axis|profile_in.*))$/.test(
    place,
  );
}
