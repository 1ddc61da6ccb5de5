import { useEffect, useRef } from "preact/hooks";
import { WEIGHT_LIMIT_LB } from "../../limits";
import { Fixed } from "../../parts/fixed";
import { Said } from "../../parts/said";
import { Swatch } from "../../parts/swatch";
import { type Units, useStore } from "../../store";
import type { Piece, Problem } from "../../types";
import { LB_KG, reading } from "../../units";
import { Cuts } from "./cuts";
import { duplicatePiece, editPiece, hasField, movePiece, problemAt, removePiece } from "./edits";
import { MaterialFields } from "./material-fields";
import { say } from "./say";
import { PlaceFold, ShapeFields } from "./solid-fields";

interface PartRowProps {
  part: number;
  name: string;
  says: string;
  problem: Problem | null;
  children: preact.ComponentChildren;
}

/** A part in the list; opens to what can be changed about it. */
export function PartRow({ part, name, says, problem, children }: PartRowProps) {
  const store = useStore();
  const open = store.view.value.selected === part;
  const id = `part-${part}`;
  const row = useRef<HTMLLIElement>(null);
  const wasOpen = useRef(open);
  useEffect(() => {
    // Opened from elsewhere, such as the cut: bring it into view.
    if (open && !wasOpen.current) row.current?.scrollIntoView({ block: "nearest" });
    wasOpen.current = open;
  }, [open]);
  return (
    <li class="part" ref={row} data-wrong={problem ? "" : undefined} data-open={open || undefined}>
      <button
        type="button"
        class="part-head"
        aria-expanded={open}
        aria-controls={id}
        aria-describedby={problem ? `${id}-problem` : undefined}
        onClick={() => store.look({ selected: open ? null : part })}
      >
        <Swatch part={part} />
        <span class="part-title">{name}</span>
        <span class="part-says">{says}</span>
      </button>
      {problem && !(open && hasField(problem.place)) && (
        <p class="says says-wrong part-problem" id={`${id}-problem`}>
          <Said problem={problem} />
        </p>
      )}
      <div id={id} class="part-body" hidden={!open}>
        {open && children}
      </div>
    </li>
  );
}

/** The short line of a part: its density, and its weight where that is known. */
export function partSays(density_g_cc: number, share: { mass_kg: number } | null | undefined, units: Units) {
  const density = reading(density_g_cc, "density", units);
  return share
    ? say("bench-part-says", { density, weight: reading(share.mass_kg / LB_KG, "weight", units) })
    : density;
}

/** Takes the keyboard along to the part that is open after an edit of the list. */
export function followFocus(selector: string): void {
  requestAnimationFrame(() => {
    const part = document.querySelector(".part[data-open]");
    const wanted = part?.querySelector<HTMLElement>(`${selector}:not(:disabled)`);
    (wanted ?? part?.querySelector<HTMLElement>(".part-head"))?.focus();
  });
}

/** One poured piece: its row and its editor. */
export function PieceRow({ piece, at, problem }: { piece: Piece; at: number; problem: Problem | null }) {
  const store = useStore();
  const { undrilled, ballProblem } = store.derived.value;
  const { ball } = store.doc.value;
  const place = `pieces[${at}]`;
  const mine = problemAt(problem, place);
  const units = store.view.value.units;
  const last = ball.pieces.length - 1;
  const share = ballProblem ? undefined : undrilled.pieces[at + 1];
  const weight_lb = (share?.mass_kg ?? 0) / LB_KG;
  const says = partSays(piece.density_g_cc, share, units);
  const change = (edit: (piece: Piece) => Piece, key: string) => editPiece(store, at, edit, key);
  const solid = {
    solid: piece,
    place,
    problem: mine,
    reach_in: ball.diameter_in,
    onChange: change,
  };
  return (
    <PartRow part={at + 1} name={piece.name} says={says} problem={mine}>
      <Fixed place="ball.pieces" whole away>
        <div class="part-actions">
          <button
            type="button"
            class="part-earlier"
            disabled={at === 0}
            aria-label={say("bench-earlier-label", { piece: piece.name })}
            onClick={() => {
              movePiece(store, at, -1);
              followFocus(".part-earlier");
            }}
          >
            {say("bench-earlier")}
          </button>
          <button
            type="button"
            class="part-later"
            disabled={at === last}
            aria-label={say("bench-later-label", { piece: piece.name })}
            onClick={() => {
              movePiece(store, at, 1);
              followFocus(".part-later");
            }}
          >
            {say("bench-later")}
          </button>
          <button
            type="button"
            aria-label={say("bench-duplicate-label", { piece: piece.name })}
            onClick={() => {
              duplicatePiece(store, at);
              followFocus(".part-head");
            }}
          >
            {say("bench-duplicate")}
          </button>
          <button
            type="button"
            aria-label={say("bench-remove-label", { piece: piece.name })}
            onClick={() => {
              removePiece(store, at);
              followFocus(".part-head");
            }}
          >
            {say("bench-remove")}
          </button>
        </div>
      </Fixed>
      <MaterialFields
        place={place}
        made={piece}
        problem={problemAt(mine, `${place}.density_g_cc`)}
        caution={
          weight_lb > WEIGHT_LIMIT_LB
            ? say("bench-too-heavy", {
                weight: reading(weight_lb, "weight", units),
                limit: reading(WEIGHT_LIMIT_LB, "weight", units),
              })
            : null
        }
        onChange={(made, key) => change((old) => ({ ...old, ...made }), key)}
      />
      <ShapeFields {...solid} />
      <PlaceFold {...solid} />
      <Fixed place={`ball.${place}.cuts`}>
        <Cuts piece={piece} place={place} problem={mine} reach_in={ball.diameter_in} onChange={change} />
      </Fixed>
      <label class="line">
        <span class="field-label">{say("bench-name")}</span>
        <input
          type="text"
          value={piece.name}
          onInput={(event) => {
            const name = event.currentTarget.value;
            change((old) => ({ ...old, name }), "name");
          }}
        />
      </label>
    </PartRow>
  );
}
