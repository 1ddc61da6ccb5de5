import { useStore } from "../store";
import type { Coverstock, Family } from "../types";
import { NumberField } from "./field";
import { Term } from "./term";

const FAMILIES: Family[] = ["polyester", "urethane", "reactive"];
/** What a finish starts from: the grit that changes nothing. */
const FIRST_GRIT = 2000;

/** What the ball's cover is and how it was finished: what friction on oil depends on. */
export function CoverSurface() {
  const store = useStore();
  const { ball, shot } = store.doc.value;
  const wrong = store.derived.value.ballProblem;
  const { family, finish } = ball.cover;

  function edit(change: Pick<Coverstock, "family" | "finish">, key: string) {
    store.editBall((old) => {
      const { family, finish, ...rest } = { ...old.cover, ...change };
      return { ...old, cover: { ...rest, ...(family && { family }), ...(finish && { finish }) } };
    }, key);
  }

  return (
    <fieldset class="cover-surface">
      <legend>
        What it is and how it was <Term word="finish">finished</Term>
      </legend>
      <label class="line">
        <span class="field-label">Family</span>
        <select
          value={family ?? ""}
          onChange={(event) => {
            edit({ family: (event.currentTarget.value || undefined) as Family | undefined }, "");
          }}
        >
          <option value="">not said</option>
          {FAMILIES.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label class="line">
        <span class="field-label">Finish</span>
        <select
          value={finish ? (finish.polished ? "polished" : "sanded") : ""}
          onChange={(event) => {
            const how = event.currentTarget.value;
            const grit = finish?.grit ?? FIRST_GRIT;
            edit(
              { finish: how === "" ? undefined : how === "polished" ? { grit, polished: true } : { grit } },
              "",
            );
          }}
        >
          <option value="">not said</option>
          <option value="sanded">sanded</option>
          <option value="polished">sanded, then polished</option>
        </select>
      </label>
      {finish && (
        <NumberField
          label={<Term word="grit">Grit</Term>}
          value={finish.grit}
          quantity="grit"
          min={300}
          max={6000}
          step={100}
          problem={wrong?.place === "cover.finish.grit" ? wrong : null}
          onChange={(grit) => edit({ finish: { ...finish, grit } }, "cover.grit")}
        />
      )}
      <p class="hint">
        <Term word="polyester">Polyester</Term>, <Term word="urethane" /> or <Term word="reactive" />;{" "}
        <Term word="polish" /> or none. On an oiled lane this changes <Term word="friction" />
        {"zones" in shot.lane
          ? ". This shot's lane has friction by distance, given as it is: there the cover changes nothing."
          : ", by factors that are a model choice: no figure is published."}
      </p>
    </fieldset>
  );
}
