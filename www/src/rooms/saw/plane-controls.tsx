import { useState } from "preact/hooks";
import { Say } from "../../locale/say";
import { BoundedField } from "../../parts/bounded-field";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import {
  type Facing,
  facingOf,
  flipped,
  normalOf,
  type Plane,
  PRESETS,
  presetOf,
  throughHoles,
} from "./plane";
import { say } from "./say";

const DEPTH_STEP_IN = 0.05;

interface PlaneControlsProps {
  /** Whether the picture can be pulled apart: a flat drawing cannot. */
  apart: boolean;
  /** Turns the picture to face a plane just chosen. */
  onFace(plane: Plane): void;
}

/** Which way the saw cuts, how deep, and how far the pieces are pulled apart. */
export function PlaneControls({ apart, onFace }: PlaneControlsProps) {
  const store = useStore();
  const { plane, exploded } = store.view.value;
  const radius_in = store.derived.value.file.diameter_in / 2;
  // Whole steps either way, so that the slider can stand at the centre.
  const reach_in = Math.floor(radius_in / DEPTH_STEP_IN) * DEPTH_STEP_IN;
  // Square to the pin axis the turn about it shows in nothing, but the slider must not jump.
  const [round_deg, setRound] = useState(0);
  const facing = plane ? facingOf(plane.normal) : null;
  const shown: Facing | null =
    facing && (Math.abs(facing.up_deg) > 89.99 ? { ...facing, round_deg } : facing);

  function choose(next: Plane | null) {
    store.look({ plane: next });
    if (next) onFace(next);
  }

  function turn(change: Partial<Facing>) {
    if (!plane || !shown) return;
    const next = { ...shown, ...change };
    setRound(next.round_deg);
    store.look({ plane: { ...plane, normal: normalOf(next) } });
  }

  const holes = throughHoles(store.derived.value.made);
  const atHoles =
    holes &&
    plane &&
    Math.abs(holes.depth_in - plane.depth_in) < 1e-9 &&
    holes.normal.every((part, n) => Math.abs(part - (plane.normal[n] ?? 0)) < 1e-9);
  const current = atHoles ? "holes" : plane ? presetOf(plane.normal) : "whole";
  return (
    <fieldset class="plane-controls">
      <legend>
        <Say id="saw-cut" parts={{ cut: (word) => <Term word="cut">{word}</Term> }} />
      </legend>
      <div class="choices">
        {holes && (
          <button type="button" aria-pressed={current === "holes"} onClick={() => choose(holes)}>
            {say("saw-through-holes")}
          </button>
        )}
        {PRESETS.map(({ key, name, facing }) => (
          <button
            type="button"
            key={key}
            aria-pressed={current === key}
            onClick={() => choose({ normal: normalOf(facing), depth_in: 0 })}
          >
            {say(name)}
          </button>
        ))}
        <button type="button" aria-pressed={current === "whole"} onClick={() => choose(null)}>
          {say("saw-whole")}
        </button>
        {plane && (
          <button type="button" onClick={() => choose(flipped(plane))}>
            {say("saw-other-half")}
          </button>
        )}
      </div>
      {plane && shown && (
        <>
          <BoundedField
            label={say("saw-depth")}
            value={plane.depth_in}
            quantity="size"
            min={-reach_in}
            max={reach_in}
            least={-radius_in}
            most={radius_in}
            step={DEPTH_STEP_IN}
            onChange={(depth_in) => store.look({ plane: { ...plane, depth_in } })}
          />
          <BoundedField
            label={say("saw-turn")}
            value={Number(shown.round_deg.toFixed(2))}
            quantity="angle"
            min={-180}
            max={180}
            step={1}
            onChange={(value) => turn({ round_deg: value })}
          />
          <BoundedField
            label={say("saw-lean")}
            value={Number(shown.up_deg.toFixed(2))}
            quantity="angle"
            min={-90}
            max={90}
            step={1}
            onChange={(value) => turn({ up_deg: value })}
          />
        </>
      )}
      {apart && (
        <BoundedField
          label={say("saw-pull-apart")}
          value={exploded}
          quantity="share"
          min={0}
          max={1}
          step={0.02}
          onChange={(value) => store.look({ exploded: value })}
        />
      )}
    </fieldset>
  );
}
