// Room for error: the shot thrown again and again beside the page, a little
// otherwise each time, and where the throws arrive.
import { Term } from "../../parts/term";
import "./area.css";
import { useEffect, useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { LazyFold } from "../../parts/lazy-fold";
import { type Doc, type Units, useStore, wholeShot } from "../../store";
import type { Area, Kind, Stretch } from "../../types";
import { number, reading, sentenceIn } from "../../units";
import { useWhenStill } from "../../when-still";
import { AreaMap } from "./area-map";

/** How long the shot must be still before it is thrown again, ms. */
const STILL_MS = 300;
/** Tasks for the two workers: enough for a bar that moves. */
const PARTS = 24;

const KINDS: { kind: Kind; name: string; says: string }[] = [
  { kind: "pocket", name: "Pocket", says: "boards 17 to 18.5 at 4° to 6°" },
  { kind: "shallow", name: "Too flat", says: "those boards, under 4°" },
  { kind: "steep", name: "Too steep", says: "those boards, over 6°" },
  { kind: "light", name: "Short of it", says: "below board 17" },
  { kind: "high", name: "Past it", says: "above board 18.5" },
  { kind: "lost", name: "Gutter", says: "never reaches the pins" },
];

/** Board and angle apart: a throw may meet the one and not the other. */
const APART: { part: "on_boards" | "at_angles"; name: string; says: string }[] = [
  { part: "on_boards", name: "The board", says: "17 to 18.5, at any angle" },
  { part: "at_angles", name: "The angle", says: "4° to 6°, on any board" },
];

export function AreaFold() {
  return (
    <LazyFold summary="Room for error">
      <Panel />
    </LazyFold>
  );
}

type State = { area: Area; of: Doc } | { share: number } | { refused: string } | "stopped";

function Panel() {
  const store = useStore();
  const jobs = useJobs();
  const { file: ball, shot } = store.derived.value;
  const { units } = store.view.value;
  const [state, setState] = useState<State>({ share: 0 });
  const [again, setAgain] = useState(0);

  useEffect(() => {
    setState({ share: 0 });
  }, [ball, shot, again]);
  const stop = useWhenStill(
    STILL_MS,
    async (signal) => {
      const whole = wholeShot({ ball, shot });
      const asked = Array.from({ length: PARTS }, (_, part) => ({ shot: whole, part, parts: PARTS }));
      const parts = await jobs.all("throws", asked, { signal, progress: (share) => setState({ share }) });
      const arrivals = Float64Array.from(parts.flatMap((part) => [...part]));
      const area = await jobs.run("area", { shot: whole, arrivals }, signal);
      if (area) setState({ area, of: { ball, shot } });
    },
    (problem) => setState({ refused: problem.message }),
    [ball, shot, again],
  );

  if (state === "stopped") {
    return (
      <div class="area">
        <p role="status">Stopped.</p>
        <button type="button" onClick={() => setAgain(again + 1)}>
          Throw again
        </button>
      </div>
    );
  }
  if ("refused" in state) return <p role="status">{sentenceIn(state.refused, units)}</p>;
  if ("share" in state) {
    return (
      <div class="area">
        <label class="area-progress">
          Throwing it again and again …
          <progress max={1} value={state.share} />
        </label>
        <button
          type="button"
          onClick={() => {
            stop();
            setState("stopped");
          }}
        >
          Stop
        </button>
      </div>
    );
  }
  return <Found area={state.area} doc={state.of} units={units} />;
}

function Found({ area, doc, units }: { area: Area; doc: Doc; units: Units }) {
  const { map, scatter } = area;
  const ends = (values: number[]) => [values[0] ?? 0, values.at(-1) ?? 0] as const;
  const [boards, angles] = [ends(map.boards), ends(map.launch_angles_deg)];
  return (
    <div class="area">
      <p class="why-says" role="status">
        {sentenceIn(area.sentence, units)}
      </p>
      <AreaMap area={area} hand={doc.shot.hand} />
      <table>
        <caption>
          Where the throws come in, in every 100: the <Term word="pocket" /> and beside it
        </caption>
        <thead>
          <tr>
            <th scope="col">Comes in</th>
            <th scope="col">Of the map</th>
            <th scope="col">Of a steady hand</th>
          </tr>
        </thead>
        <tbody>
          {KINDS.map(({ kind, name, says }) => (
            <tr key={kind}>
              <th scope="row">
                <svg class="area-key" viewBox="0 0 16 16" aria-hidden="true">
                  <rect class={`area-${kind}`} width="16" height="16" />
                </svg>
                {name}
                <span class="area-says">{says}</span>
              </th>
              <td>{number(map.shares[kind], "share", units)}</td>
              <td>{number(scatter.shares[kind], "share", units)}</td>
            </tr>
          ))}
        </tbody>
        <tbody>
          {APART.map(({ part, name, says }) => (
            <tr key={part}>
              <th scope="row">
                {name}
                <span class="area-says">{says}</span>
              </th>
              <td>{number(map.apart[part], "share", units)}</td>
              <td>{number(scatter.apart[part], "share", units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ul class="plain">
        <li>
          {roomSays("Board at the foul line", area.board_room, (value) => number(value, "board", units))}
        </li>
        <li>
          {roomSays(
            "Launch angle",
            area.launch_angle_room_deg,
            (value) => `${value.toFixed(2).replace("-", "−")}°`,
          )}
        </li>
      </ul>
      <p class="readout-says">
        {area.throws.toLocaleString("en")} throws. The map: boards {number(boards[0], "board", units)} to{" "}
        {number(boards[1], "board", units)} by launch angles {reading(angles[0], "angle", units)} to{" "}
        {reading(angles[1], "angle", units)}, evenly. A steady hand: board, angle, speed and revs vary
        together with standard deviations of {scatter.spread_board},{" "}
        {reading(scatter.spread_launch_angle_deg, "angle", units)},{" "}
        {reading(scatter.spread_speed_mph, "speed", units)} and{" "}
        {reading(scatter.spread_revs_rpm, "revs", units)} (model choice). The window: {area.window.source}.
      </p>
    </div>
  );
}

/** The stretch that will do, told with its ends. */
function roomSays(what: string, room: Stretch | null, say: (value: number) => string): string {
  if (!room) return `${what}: none near it reaches the pocket while the other stays.`;
  const open = room.open[0] || room.open[1];
  const ends = `from ${say(room.from)} to ${say(room.to)}`;
  return `${what}: ${room.holds ? "reaches" : "would reach"} the pocket ${ends}${open ? ", and further than the map goes" : ""}.`;
}
