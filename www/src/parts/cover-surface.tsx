import { useStore } from "../store";
import type { Coverstock, Family } from "../types";
import { NumberField } from "./field";
import { say } from "./say";
import { SayTerms } from "./say-terms";
import { Term } from "./term";

/** Each with the text that names it. */
const FAMILIES: [Family, string][] = [
  ["polyester", "surface-polyester"],
  ["urethane", "surface-urethane"],
  ["reactive", "surface-reactive"],
];
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
        <SayTerms id="surface-what" terms={{ finish: "finish" }} />
      </legend>
      <label class="line">
        <span class="field-label">{say("surface-family")}</span>
        <select
          value={family ?? ""}
          onChange={(event) => {
            edit({ family: (event.currentTarget.value || undefined) as Family | undefined }, "");
          }}
        >
          <option value="">{say("surface-not-said")}</option>
          {FAMILIES.map(([family, name]) => (
            <option key={family} value={family}>
              {say(name)}
            </option>
          ))}
        </select>
      </label>
      <label class="line">
        <span class="field-label">{say("surface-finish")}</span>
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
          <option value="">{say("surface-not-said")}</option>
          <option value="sanded">{say("surface-sanded")}</option>
          <option value="polished">{say("surface-polished")}</option>
        </select>
      </label>
      {finish && (
        <NumberField
          label={<Term word="grit">{say("surface-grit")}</Term>}
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
        <SayTerms
          id={"zones" in shot.lane ? "surface-says-zones" : "surface-says-oil"}
          terms={{
            polyester: "polyester",
            urethane: "urethane",
            reactive: "reactive",
            polish: "polish",
            friction: "friction",
          }}
        />
      </p>
    </fieldset>
  );
}
