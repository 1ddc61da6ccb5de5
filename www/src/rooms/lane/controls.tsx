import { NumberField } from "../../parts/field";
import { Fixed } from "../../parts/fixed";
import { SayTerms } from "../../parts/say-terms";
import { type Shot, useStore } from "../../store";
import type { Hand, Layout, Release } from "../../types";
import type { Quantity } from "../../units";
import { say } from "./say";

interface Row<Key> {
  key: Key;
  label: preact.ComponentChildren;
  quantity: Quantity;
  min: number;
  max: number;
  step: number;
}

const RELEASE: Row<keyof Release>[] = [
  {
    key: "speed_mph",
    label: <SayTerms id="lane-speed" terms={{ speed: "speed" }} />,
    quantity: "speed",
    min: 8,
    max: 24,
    step: 0.1,
  },
  {
    key: "revs_rpm",
    label: <SayTerms id="lane-rev-rate" terms={{ revs: "rev rate" }} />,
    quantity: "revs",
    min: 0,
    max: 600,
    step: 5,
  },
  {
    key: "axis_rotation_deg",
    label: <SayTerms id="lane-axis-rotation" terms={{ rotation: "axis rotation" }} />,
    quantity: "angle",
    min: -20,
    max: 100,
    step: 1,
  },
  {
    key: "axis_tilt_deg",
    label: <SayTerms id="lane-axis-tilt" terms={{ tilt: "axis tilt" }} />,
    quantity: "angle",
    min: -10,
    max: 60,
    step: 1,
  },
  {
    key: "launch_angle_deg",
    label: <SayTerms id="lane-launch-angle" terms={{ angle: "launch angle" }} />,
    quantity: "angle",
    min: -6,
    max: 6,
    step: 0.1,
  },
  {
    key: "board",
    label: <SayTerms id="lane-board" terms={{ board: "board" }} />,
    quantity: "board",
    min: 1,
    max: 39,
    step: 0.5,
  },
];

const LAYOUT: Row<keyof Layout>[] = [
  {
    key: "pin_to_pap_in",
    label: <SayTerms id="lane-pin-to-pap" terms={{ pin: "pin", pap: "PAP" }} />,
    quantity: "size",
    min: 0,
    max: 6.75,
    step: 0.05,
  },
  {
    key: "drilling_angle_deg",
    label: <SayTerms id="lane-drilling-angle" terms={{ angle: "drilling angle" }} />,
    quantity: "angle",
    min: 0,
    max: 180,
    step: 1,
  },
  {
    key: "start_turn_deg",
    label: <SayTerms id="lane-start-turn" terms={{ turn: "start turn" }} />,
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
        <legend>{say("lane-release")}</legend>
        <Fixed place="shot.hand" whole>
          <fieldset class="choices" aria-label={say("lane-hand")}>
            {(["right", "left"] as const).map((hand) => (
              <button
                type="button"
                key={hand}
                aria-pressed={shot.hand === hand}
                onClick={() => setHand(hand)}
              >
                {say(hand === "right" ? "lane-right-hand" : "lane-left-hand")}
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
        <legend>{say("lane-in-hand")}</legend>
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
