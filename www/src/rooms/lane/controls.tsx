import { NumberField } from "../../parts/field";
import { Fixed } from "../../parts/fixed";
import { Term } from "../../parts/term";
import { type Shot, useStore } from "../../store";
import type { Hand, Layout, Release } from "../../types";
import type { Quantity } from "../../units";

interface Row<Key> {
  key: Key;
  label: preact.ComponentChildren;
  quantity: Quantity;
  min: number;
  max: number;
  step: number;
}

const RELEASE: Row<keyof Release>[] = [
  { key: "speed_mph", label: <Term word="speed">Speed</Term>, quantity: "speed", min: 8, max: 24, step: 0.1 },
  {
    key: "revs_rpm",
    label: <Term word="rev rate">Rev rate</Term>,
    quantity: "revs",
    min: 0,
    max: 600,
    step: 5,
  },
  {
    key: "axis_rotation_deg",
    label: <Term word="axis rotation">Axis rotation</Term>,
    quantity: "angle",
    min: -20,
    max: 100,
    step: 1,
  },
  {
    key: "axis_tilt_deg",
    label: <Term word="axis tilt">Axis tilt</Term>,
    quantity: "angle",
    min: -10,
    max: 60,
    step: 1,
  },
  {
    key: "launch_angle_deg",
    label: (
      <>
        <Term word="launch angle">Launch angle</Term>, to the right
      </>
    ),
    quantity: "angle",
    min: -6,
    max: 6,
    step: 0.1,
  },
  { key: "board", label: <Term word="board">Board</Term>, quantity: "board", min: 1, max: 39, step: 0.5 },
];

const LAYOUT: Row<keyof Layout>[] = [
  {
    key: "pin_to_pap_in",
    label: (
      <>
        <Term word="pin">Pin</Term> to <Term word="PAP" />
      </>
    ),
    quantity: "size",
    min: 0,
    max: 6.75,
    step: 0.05,
  },
  {
    key: "drilling_angle_deg",
    label: <Term word="drilling angle">Drilling angle</Term>,
    quantity: "angle",
    min: 0,
    max: 180,
    step: 1,
  },
  {
    key: "start_turn_deg",
    label: <Term word="start turn">Start turn</Term>,
    quantity: "angle",
    min: -180,
    max: 180,
    step: 5,
  },
];

/** How the ball is let go and how it sits in the hand. */
export function Controls() {
  const store = useStore();
  const { shot } = store.doc.value;
  const wrong = store.derived.value.shotProblem;
  const problemAt = (place: string) => (wrong?.place === place ? wrong : null);

  function setHand(hand: Hand) {
    store.editShot((old) => (old.hand === hand ? old : mirrored(old, hand)));
  }

  return (
    <div class="lane-controls">
      <fieldset>
        <legend>Release</legend>
        <Fixed place="shot.hand" whole>
          <fieldset class="choices" aria-label="Hand">
            {(["right", "left"] as const).map((hand) => (
              <button
                type="button"
                key={hand}
                aria-pressed={shot.hand === hand}
                onClick={() => setHand(hand)}
              >
                {hand === "right" ? "Right hand" : "Left hand"}
              </button>
            ))}
          </fieldset>
        </Fixed>
        {RELEASE.map(({ key, ...row }) => (
          <Fixed key={key} place={`shot.release.${key}`}>
            <NumberField
              {...row}
              value={shot.release[key]}
              problem={problemAt(`release.${key}`)}
              onChange={(value) =>
                store.editShot(
                  (old) => ({ ...old, release: { ...old.release, [key]: value } }),
                  `release.${key}`,
                )
              }
            />
          </Fixed>
        ))}
      </fieldset>
      <fieldset>
        <legend>Ball in the hand</legend>
        {LAYOUT.map(({ key, ...row }) => (
          <Fixed key={key} place={`shot.layout.${key}`}>
            <NumberField
              {...row}
              value={shot.layout[key]}
              problem={problemAt(`layout.${key}`)}
              onChange={(value) =>
                store.editShot(
                  (old) => ({ ...old, layout: { ...old.layout, [key]: value } }),
                  `layout.${key}`,
                )
              }
            />
          </Fixed>
        ))}
      </fieldset>
    </div>
  );
}

/** The other hand throws the mirror image: the launch angle is measured to the right for both. */
function mirrored(shot: Shot, hand: Hand): Shot {
  return {
    ...shot,
    hand,
    release: { ...shot.release, launch_angle_deg: -shot.release.launch_angle_deg || 0 },
  };
}
