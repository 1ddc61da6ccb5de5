// Room for error: the shot thrown again and again beside the page, a little
// otherwise each time, and where the throws arrive.

import { type Phrase, worded } from "../../locale/worded";
import { Broken } from "../../parts/broken";
import { SayTerms } from "../../parts/say-terms";
import "./area.css";
import { useEffect, useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import type { Args } from "../../locale/say";
import { LazyFold } from "../../parts/lazy-fold";
import { Result } from "../../parts/result";
import { type Doc, type Units, useStore, wholeShot } from "../../store";
import type { Area, Kind, Stretch } from "../../types";
import { count, digits, number, reading, sentenceIn, written } from "../../units";
import { useWhenStill } from "../../when-still";
import { AreaMap } from "./area-map";
import { say } from "./area-say";

/** How long the shot must be still before it is thrown again, ms. */
const STILL_MS = 300;
/** Tasks for the two workers: enough for a bar that moves. */
const PARTS = 24;

/** The texts of each. */
const KINDS: { kind: Kind; name: string; says: string }[] = [
  { kind: "pocket", name: "area-pocket", says: "area-pocket-says" },
  { kind: "shallow", name: "area-shallow", says: "area-shallow-says" },
  { kind: "steep", name: "area-steep", says: "area-steep-says" },
  { kind: "light", name: "area-light", says: "area-light-says" },
  { kind: "high", name: "area-high", says: "area-high-says" },
  { kind: "lost", name: "area-lost", says: "area-lost-says" },
];

/** Board and angle apart: a throw may meet the one and not the other. */
const APART: { part: "on_boards" | "at_angles"; name: string; says: string }[] = [
  { part: "on_boards", name: "area-on-boards", says: "area-on-boards-says" },
  { part: "at_angles", name: "area-at-angles", says: "area-at-angles-says" },
];

export function AreaFold() {
  return (
    <LazyFold summary={say("area-name")}>
      <Panel />
    </LazyFold>
  );
}

type State = { area: Area; of: Doc } | { share: number } | { refused: Phrase } | "stopped";

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
  const { stop, broken } = useWhenStill(
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
        <Result of={again}>{say("area-stopped")}</Result>
        <button type="button" onClick={() => setAgain(again + 1)}>
          {say("area-again")}
        </button>
      </div>
    );
  }
  if (broken) return <Broken broken={broken} />;
  if ("refused" in state) return <Result of={state.refused}>{sentenceIn(state.refused, units)}</Result>;
  if ("share" in state) {
    return (
      <div class="area">
        <label class="area-progress">
          {say("area-throwing")}
          <progress max={1} value={state.share} />
        </label>
        <button
          type="button"
          onClick={() => {
            stop();
            setState("stopped");
          }}
        >
          {say("area-stop")}
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
      <Result class="why-says" of={area}>
        {sentenceIn(area.sentence, units)}
      </Result>
      <AreaMap area={area} hand={doc.shot.hand} />
      <table>
        <caption>
          <SayTerms id="area-table" terms={{ pocket: "pocket" }} />
        </caption>
        <thead>
          <tr>
            <th scope="col">{say("area-comes-in")}</th>
            <th scope="col">{say("area-of-map")}</th>
            <th scope="col">{say("area-of-hand")}</th>
          </tr>
        </thead>
        <tbody>
          {KINDS.map(({ kind, name, says }) => (
            <tr key={kind}>
              <th scope="row">
                <svg class="area-key" viewBox="0 0 16 16" aria-hidden="true">
                  <rect class={`area-${kind}`} width="16" height="16" />
                </svg>
                {say(name)}
                <span class="area-says">{say(says)}</span>
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
                {say(name)}
                <span class="area-says">{say(says)}</span>
              </th>
              <td>{number(map.apart[part], "share", units)}</td>
              <td>{number(scatter.apart[part], "share", units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ul class="plain">
        <li>
          {say(
            "area-board-room",
            roomOf(area.board_room, (value) => number(value, "board", units)),
          )}
        </li>
        <li>
          {say(
            "area-angle-room",
            roomOf(area.launch_angle_room_deg, (value) => `${digits(value, 2)}°`),
          )}
        </li>
      </ul>
      <p class="readout-says">
        {say("area-how", {
          throws: count(area.throws),
          "from-board": number(boards[0], "board", units),
          "to-board": number(boards[1], "board", units),
          "from-angle": reading(angles[0], "angle", units),
          "to-angle": reading(angles[1], "angle", units),
          boards: written(String(scatter.spread_board)),
          angle: reading(scatter.spread_launch_angle_deg, "angle", units),
          speed: reading(scatter.spread_speed_mph, "speed", units),
          revs: reading(scatter.spread_revs_rpm, "revs", units),
          window: worded(area.window.source),
        })}
      </p>
    </div>
  );
}

/** The stretch that will do, for its sentence. */
function roomOf(room: Stretch | null, end: (value: number) => string): Args {
  if (!room) return { room: "none" };
  const open = room.open[0] || room.open[1];
  const reaches = room.holds
    ? open
      ? "reaches-further"
      : "reaches"
    : open
      ? "would-reach-further"
      : "would-reach";
  return { room: reaches, from: end(room.from), to: end(room.to) };
}
