import { useRef } from "preact/hooks";
import { Say } from "../../locale/say";
import { LeversFold } from "../../maker/levers/levers";
import { LeversContext, useHint, useWorkedOut } from "../../maker/levers/use-levers";
import { SeekFold } from "../../maker/seek/seek";
import { CoverSurface } from "../../parts/cover-surface";
import { NumberField } from "../../parts/field";
import { Fixed } from "../../parts/fixed";
import { Said } from "../../parts/said";
import { SayTerms } from "../../parts/say-terms";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import { reading } from "../../units";
import { Drill } from "./drill";
import { addPiece, hasField, problemAt } from "./edits";
import { Holes } from "./holes";
import { MaterialFields } from "./material-fields";
import { followFocus, PartRow, PieceRow, partSays } from "./piece";
import { say } from "./say";
import { TemplateRow } from "./template-row";

/** Where the ball is made. */
export function Bench() {
  return (
    <LeversContext.Provider value={useWorkedOut()}>
      <Parts />
    </LeversContext.Provider>
  );
}

function Parts() {
  const store = useStore();
  const { ball } = store.doc.value;
  const { ballProblem, undrilled } = store.derived.value;
  const units = store.view.value.units;
  const cover = problemAt(ballProblem, "cover");
  // Told here where no piece, field or hole can show it.
  const whole =
    ballProblem && !/^(pieces\[|cover|holes\[)/.test(ballProblem.place) && !hasField(ballProblem.place)
      ? ballProblem
      : null;
  return (
    <>
      <Invitation />
      <Fixed place="ball" whole away>
        <TemplateRow />
      </Fixed>
      {whole && (
        <p class="says says-wrong">
          <Said problem={whole} />
        </p>
      )}
      <label class="line ball-name">
        <span class="field-label">{say("bench-ball")}</span>
        <input
          type="text"
          value={ball.name}
          onInput={(event) => {
            const name = event.currentTarget.value;
            store.editBall((old) => ({ ...old, name }), "name");
          }}
        />
      </label>
      {ball.note && <p class="hint">{ball.note}</p>}
      <h3 class="part-list-name" id="part-list">
        {say("bench-parts")}
      </h3>
      <ol class="parts" aria-labelledby="part-list">
        {ball.pieces.map((piece, at) => (
          <PieceRow key={at} piece={piece} at={at} problem={ballProblem} />
        ))}
        <PartRow
          part={0}
          name={ball.cover.name ?? say("bench-cover")}
          says={partSays(ball.cover.density_g_cc, ballProblem ? null : undrilled.pieces[0], units)}
          problem={cover}
        >
          <p class="hint">
            <SayTerms id="bench-cover-says" terms={{ coverstock: "coverstock" }} />
          </p>
          <MaterialFields
            place="cover"
            made={ball.cover}
            problem={problemAt(cover, "cover.density_g_cc")}
            caution={null}
            onChange={(made, key) =>
              store.editBall((old) => ({ ...old, cover: { ...old.cover, ...made } }), key && `cover.${key}`)
            }
          />
          <Fixed place="ball.cover">
            <CoverSurface />
          </Fixed>
          <Fixed place="ball.diameter_in">
            <NumberField
              label={<Term word="ball diameter">{say("bench-diameter-of-ball")}</Term>}
              hint={useHint("diameter_in")}
              value={ball.diameter_in}
              quantity="size"
              min={8.4}
              max={8.7}
              step={0.005}
              problem={problemAt(ballProblem, "diameter_in")}
              caution={
                ball.diameter_in < 8.5 || ball.diameter_in > 8.595
                  ? say("bench-diameter-caution", {
                      low: reading(8.5, "rg", units),
                      high: reading(8.595, "rg", units),
                    })
                  : null
              }
              onChange={(diameter_in) => store.editBall((old) => ({ ...old, diameter_in }), "diameter_in")}
            />
          </Fixed>
        </PartRow>
      </ol>
      <Fixed place="ball.pieces" whole away>
        <button
          type="button"
          class="add-piece"
          onClick={() => {
            addPiece(store);
            followFocus(".part-head");
          }}
        >
          {say("bench-add-piece")}
        </button>
      </Fixed>
      <Fixed place="ball.holes" away>
        <Holes problem={ballProblem} />
      </Fixed>
      <Fixed place="shot.drilling" away>
        <Drill />
      </Fixed>
      <LeversFold />
      <Fixed place="ball" whole away>
        <SeekFold />
      </Fixed>
    </>
  );
}

/** One sentence for a visitor who has changed nothing yet. */
/** Goes with the next part or ball that is opened, not at the first edit: nothing moves from under a slider. */
function Invitation() {
  const store = useStore();
  const { ball } = store.doc.value;
  const piece = ball.pieces.at(-1);
  const here = `${store.view.value.selected} ${ball.name}`;
  const asked = useRef<string | null>(null);
  if (!store.canUndo.value) asked.current = here;
  else if (asked.current !== here) asked.current = null;
  if (asked.current === null || store.loan.value || !piece) return null;
  return (
    <p class="invitation">
      <Say
        id="bench-invitation"
        args={{ piece: piece.name }}
        parts={{ piece: (name) => <strong>{name}</strong> }}
      />
    </p>
  );
}
