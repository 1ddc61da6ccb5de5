import { NumberField } from "../../parts/field";
import { Fold } from "../../parts/fold";
import { Term } from "../../parts/term";
import { problemAt } from "../../rooms/bench/edits";
import { type Units, useStore } from "../../store";
import type { PieceTolerances, Problem, TolerancesFile, Vec3 } from "../../types";
import { reading } from "../../units";
import { listed } from "../say";
import { say } from "./say";
import { ofPiece, type Tolerances } from "./tolerances";

/** Names of texts, along x, y and z. */
const CORE = ["stray-core-x", "stray-core-y", "stray-core-z"];
const PLACE = ["stray-place-x", "stray-place-y", "stray-place-z"];

/** How far every part may stray. */
export function ToleranceFields({ tolerances }: { tolerances: Tolerances }) {
  const store = useStore();
  const { file, problem, change } = tolerances;
  const { units } = store.view.value;
  const { pieces } = store.derived.value.file;
  const cover = file.cover ?? {};
  const every = file.every_piece ?? {};
  const names = pieces.map(({ name }) => name);
  return (
    <>
      <Fold
        summary={say("stray-ball-and-cover", { says: coverSays(cover, units) })}
        wrong={problemAt(problem, "cover") !== null}
      >
        <NumberField
          label={<Term word="density">{say("stray-cover-density")}</Term>}
          value={cover.density_percent ?? 0}
          quantity="percent"
          min={0}
          max={3}
          step={0.1}
          problem={problemAt(problem, "cover.density_percent")}
          onChange={(density_percent) => change({ cover: { ...cover, density_percent } })}
        />
        <NumberField
          label={<Term word="ball diameter">{say("stray-diameter")}</Term>}
          value={cover.diameter_in ?? 0}
          quantity="rg"
          min={0}
          max={0.05}
          step={0.001}
          problem={problemAt(problem, "cover.diameter_in")}
          onChange={(diameter_in) => change({ cover: { ...cover, diameter_in } })}
        />
        <Along
          along={CORE}
          value={cover.core_shift_in}
          place="cover.core_shift_in"
          problem={problem}
          onChange={(core_shift_in) => change({ cover: { ...cover, core_shift_in } })}
        />
      </Fold>
      <Fold
        summary={say("stray-every-piece", { says: pieceSays(every, units) })}
        wrong={problemAt(problem, "every_piece") !== null}
      >
        <PieceFields
          value={every}
          place="every_piece"
          problem={problem}
          onChange={(every_piece) => change({ every_piece })}
        />
      </Fold>
      {names.map((name, at) => {
        const { own, tolerances: value } = ofPiece(file, name);
        const others = (file.pieces ?? []).filter((_, n) => n !== own);
        // By its name: of two that share one, neither can have its own.
        if (names.indexOf(name) !== names.lastIndexOf(name)) return null;
        return (
          <Fold
            key={at}
            summary={say("stray-piece", {
              piece: name,
              says: own < 0 ? say("stray-as-every") : pieceSays(value, units),
            })}
            wrong={own >= 0 && problemAt(problem, `pieces[${own}]`) !== null}
          >
            <label class="optional-label">
              <input
                type="checkbox"
                checked={own >= 0}
                onChange={(event) =>
                  change({
                    pieces: event.currentTarget.checked ? [...others, { piece: name, ...value }] : others,
                  })
                }
              />
              <span>{say("stray-own")}</span>
            </label>
            {own >= 0 && (
              <PieceFields
                value={value}
                place={`pieces[${own}]`}
                problem={problem}
                onChange={(next) =>
                  change({
                    pieces: (file.pieces ?? []).map((one, n) => (n === own ? { piece: name, ...next } : one)),
                  })
                }
              />
            )}
          </Fold>
        );
      })}
      <Strangers tolerances={tolerances} names={names} />
    </>
  );
}

/** Tolerances of pieces that the ball does not have, to be dropped. */
function Strangers({ tolerances, names }: { tolerances: Tolerances; names: string[] }) {
  const all = tolerances.file.pieces ?? [];
  const strangers = all.filter(({ piece }) => names.filter((name) => name === piece).length !== 1);
  if (strangers.length === 0) return null;
  return (
    <p class="says says-caution">
      {say("stray-strangers", { pieces: listed(strangers.map(({ piece }) => piece)) })}{" "}
      <button
        type="button"
        onClick={() => tolerances.change({ pieces: all.filter((one) => !strangers.includes(one)) })}
      >
        {say("stray-drop")}
      </button>
    </p>
  );
}

interface PieceFieldsProps {
  value: PieceTolerances;
  place: string;
  problem: Problem | null;
  onChange(value: PieceTolerances): void;
}

function PieceFields({ value, place, problem, onChange }: PieceFieldsProps) {
  return (
    <>
      <NumberField
        label={<Term word="density">{say("stray-density")}</Term>}
        value={value.density_percent ?? 0}
        quantity="percent"
        min={0}
        max={5}
        step={0.1}
        problem={problemAt(problem, `${place}.density_percent`)}
        onChange={(density_percent) => onChange({ ...value, density_percent })}
      />
      <NumberField
        label={<Term word="piece">{say("stray-size")}</Term>}
        value={value.size_percent ?? 0}
        quantity="percent"
        min={0}
        max={3}
        step={0.1}
        problem={problemAt(problem, `${place}.size_percent`)}
        onChange={(size_percent) => onChange({ ...value, size_percent })}
      />
      <Along
        along={PLACE}
        value={value.at_in}
        place={`${place}.at_in`}
        problem={problem}
        onChange={(at_in) => onChange({ ...value, at_in })}
      />
      <NumberField
        label={<Term word="position">{say("stray-tilt")}</Term>}
        value={value.tilt_deg ?? 0}
        quantity="angle"
        min={0}
        max={5}
        step={0.1}
        problem={problemAt(problem, `${place}.tilt_deg`)}
        onChange={(tilt_deg) => onChange({ ...value, tilt_deg })}
      />
    </>
  );
}

interface AlongProps {
  /** Names of the three texts. */
  along: string[];
  value?: Vec3;
  place: string;
  problem: Problem | null;
  onChange(value: Vec3): void;
}

function Along({ along, value = [0, 0, 0], place, problem, onChange }: AlongProps) {
  return (
    <>
      {along.map((axis, n) => (
        <NumberField
          key={axis}
          label={<Term word="position">{say(axis)}</Term>}
          value={value[n] ?? 0}
          quantity="rg"
          min={0}
          max={0.2}
          step={0.005}
          problem={problemAt(problem, `${place}[${n}]`)}
          onChange={(next) => onChange(value.map((old, k) => (k === n ? next : old)) as Vec3)}
        />
      ))}
    </>
  );
}

/** The largest of three, where they differ. */
function placeSays(value: Vec3 | undefined, units: Units): string | null {
  const most = Math.max(...(value ?? [0]));
  if (most === 0) return null;
  const same = value?.every((one) => one === most);
  return say(same ? "stray-says-place" : "stray-says-place-most", { by: reading(most, "rg", units) });
}

function inARow(parts: (string | null | false | 0 | undefined)[]): string {
  return parts.filter(Boolean).join(", ") || say("stray-exact");
}

function pieceSays(value: PieceTolerances, units: Units): string {
  const { density_percent, size_percent, at_in, tilt_deg } = value;
  return inARow([
    density_percent && say("stray-says-density", { by: reading(density_percent, "percent", units) }),
    size_percent && say("stray-says-size", { by: reading(size_percent, "percent", units) }),
    placeSays(at_in, units),
    tilt_deg && say("stray-says-tilt", { by: reading(tilt_deg, "angle", units) }),
  ]);
}

function coverSays(value: NonNullable<TolerancesFile["cover"]>, units: Units): string {
  const { density_percent, diameter_in, core_shift_in } = value;
  return inARow([
    density_percent && say("stray-says-density", { by: reading(density_percent, "percent", units) }),
    diameter_in && say("stray-says-diameter", { by: reading(diameter_in, "rg", units) }),
    placeSays(core_shift_in, units),
  ]);
}
