import { offered } from "../../locale/names";
import { Fold } from "../../parts/fold";
import { Said } from "../../parts/said";
import { SayTerms } from "../../parts/say-terms";
import type { Cut, Piece, Problem } from "../../types";
import { count } from "../../units";
import { problemAt } from "./edits";
import { say } from "./say";
import { extent } from "./shapes";
import { PlaceFold, ShapeFields } from "./solid-fields";

interface CutsProps {
  piece: Piece;
  /** Place of the piece in the file. */
  place: string;
  problem: Problem | null;
  reach_in: number;
  onChange(change: (piece: Piece) => Piece, key: string): void;
}

/** A round groove about the piece's waist. */
function channelFor(piece: Piece): Cut {
  const across = Math.min(...extent(piece.shape).slice(0, 2));
  return {
    name: offered("cut", "flow channel"),
    shape: { kind: "ring", ring_diameter_in: hundredth(across), tube_diameter_in: hundredth(across / 6) },
  };
}

function hundredth(value: number): number {
  return Number(value.toFixed(2));
}

/** What is cut out of a piece, in the piece's own frame. */
export function Cuts({ piece, place, problem, reach_in, onChange }: CutsProps) {
  const cuts = piece.cuts ?? [];
  const set = (change: (cuts: Cut[]) => Cut[], key = "") =>
    onChange((old) => {
      const { cuts: was, ...rest } = old;
      const next = change(was ?? []);
      return next.length > 0 ? { ...rest, cuts: next } : rest;
    }, key);
  return (
    <Fold
      summary={say("bench-cuts", { cuts: count(cuts.length) })}
      wrong={problemAt(problem, `${place}.cuts`) !== null}
    >
      <p class="hint">
        <SayTerms id="bench-cuts-say" terms={{ channel: "flow channel" }} />
      </p>
      {cuts.map((cut, at) => {
        const here = `${place}.cuts[${at}]`;
        const change = (edit: (cut: Cut) => Cut, key: string) =>
          set((was) => was.map((old, i) => (i === at ? edit(old) : old)), key && `cuts[${at}].${key}`);
        const name = cut.name ?? say("bench-cut", { number: count(at + 1) });
        return (
          <fieldset class="nested" key={at}>
            <legend>{name}</legend>
            {problem?.place === here && (
              <p class="says says-wrong">
                <Said problem={problem} />
              </p>
            )}
            <ShapeFields solid={cut} place={here} problem={problem} reach_in={reach_in} onChange={change} />
            <PlaceFold solid={cut} place={here} problem={problem} reach_in={reach_in} onChange={change} />
            <button type="button" onClick={() => set((was) => was.toSpliced(at, 1))}>
              {say("bench-cut-remove", { cut: name })}
            </button>
          </fieldset>
        );
      })}
      <button type="button" onClick={() => set((was) => [...was, channelFor(piece)])}>
        {say("bench-add-channel")}
      </button>
    </Fold>
  );
}
