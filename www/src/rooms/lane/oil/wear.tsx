// What games do to the oil, and to the shot: a model, and labelled as one.

import { useMemo, useState } from "preact/hooks";
import { FilmDrawing, filmFrame } from "../../../draw/film";
import { line } from "../../../draw/lane-frame";
import { useSize } from "../../../draw/use-size";
import { useJobs } from "../../../jobs";
import { BoundedField } from "../../../parts/bounded-field";
import { LazyFold } from "../../../parts/lazy-fold";
import { Term } from "../../../parts/term";
import { type Shot, type Units, useStore } from "../../../store";
import type { OilMap, Roll, Worn } from "../../../types";
import { digits, measure, number, reading } from "../../../units";
import { useWhenStill } from "../../../when-still";
import { boardOf } from "./map";
import { BOARDS, painted, ROWS } from "./paint";
import { oiled } from "./presets";

/** How long the lane must be still before its games are followed anew, ms. */
const STILL_MS = 250;
const MOST_GAMES = 40;
const HEIGHT_PX = 130;

/** The lane as games go by; followed only while it is open. */
export function WearFold() {
  const [games, setGames] = useState(3);
  return (
    <LazyFold class="wear-fold" summary={`As games go by: ${told(games)}`}>
      <Wear games={games} setGames={setGames} />
    </LazyFold>
  );
}

/** What was followed, and for which shot. */
interface Found {
  shot: Shot;
  worn: Worn;
  fresh: OilMap;
  map: OilMap;
  before: Roll;
  after: Roll;
}

function Wear({ games, setGames }: { games: number; setGames(games: number): void }) {
  const store = useStore();
  const jobs = useJobs();
  const { units } = store.view.value;
  const { file, shot } = store.derived.value;
  const [found, setFound] = useState<Found | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  useWhenStill(
    STILL_MS,
    async (signal) => {
      const worn = await jobs.run("wear", { ball: file, shot, games }, signal);
      setFound(whatBecame(worn));
      setRefused(null);
    },
    (problem) => setRefused(problem.message),
    [file, shot, games],
  );

  /** Taken at once: the ball at hand is still the one asked about. */
  function whatBecame(worn: Worn): Found | null {
    if ("zones" in shot.lane || typeof shot.lane.oil === "string") return null;
    const { wasm, derived } = store;
    const { ball, roll } = derived.value;
    return {
      shot,
      worn,
      fresh: wasm.oil_map(shot.lane.oil),
      map: wasm.oil_map(worn.oil),
      before: roll,
      after: ball.roll({ ...shot, lane: oiled(shot.lane, worn.oil) }),
    };
  }

  return (
    <div class="oil-fold">
      <BoundedField
        label={<Term word="oil pattern">Games</Term>}
        value={games}
        quantity="count"
        min={1}
        max={12}
        most={MOST_GAMES}
        step={1}
        onChange={(value) => setGames(Math.round(value))}
      />
      {refused !== null && <p class="says says-caution">{refused}</p>}
      {refused === null && !found && <p class="hint">Following {told(games)}…</p>}
      {refused === null && found && <Became found={found} units={units} />}
    </div>
  );
}

const told = (games: number): string => (games === 1 ? "1 game" : `${games} games`);

function Became({ found, units }: { found: Found; units: Units }) {
  const store = useStore();
  const { worn, fresh, map, before, after, shot } = found;
  const games = worn.games.length - 1;
  const [first, last] = [worn.games[0], worn.games[games]];
  if (!first || !last) return null;
  const ml = (value: number) => reading(value, "oil", units);
  return (
    <>
      <p aria-live="polite">{whatChanged(first.summary, last.summary, games, shot, units)}</p>
      <Picture id="oil-fresh" map={fresh} rolls={[before]} title="The fresh lane" units={units} />
      <Picture id="oil-worn" map={map} rolls={[before, after]} title={`After ${told(games)}`} units={units} />
      <p class="hint">Dashed: the shot on the fresh lane. Solid: the same shot now.</p>
      <p>
        Of {ml(first.volume_ml)}, {ml(last.volume_ml)} is still on the lane and {ml(last.taken_away_ml)} went
        with the balls; {ml(last.carried_down_ml)} was taken up and laid down again further on.
      </p>
      <details>
        <summary>Game by game, as a table</summary>
        <GameTable worn={worn} units={units} />
      </details>
      <p class="hint">
        {worn.model} Here a ball takes up {number(worn.taken_up_share, "share", units)}% of the film in a band
        one board wide, and over {reading(worn.carried_ft, "distance", units)} would lay down all but a third
        of what it carries; a game is {worn.shots_a_game} first balls, each up to{" "}
        {digits(worn.spread_boards, 1)} boards off its line. No oil is made or lost.
      </p>
      <button
        type="button"
        class="to-model"
        onClick={() => {
          const oil = worn.oil;
          const tidy =
            "film_um" in oil ? { ...oil, film_um: painted(oil.film_um, new Set(), (um) => um) } : oil;
          store.editShot((old) => ({ ...old, lane: oiled(old.lane, tidy) }));
        }}
      >
        Use the worn lane
      </button>
    </>
  );
}

function whatChanged(
  a: Roll["summary"],
  b: Roll["summary"],
  games: number,
  shot: Shot,
  units: Units,
): string {
  const now = `After ${told(games)} the same shot`;
  if (
    a.board_at_pins === null ||
    b.board_at_pins === null ||
    a.entry_angle_deg === null ||
    b.entry_angle_deg === null
  ) {
    if (b.gutter) return `${now} falls into the gutter.`;
    return `${now} does not compare: one of the two does not reach the pins.`;
  }
  const boards = b.board_at_pins - a.board_at_pins;
  // Boards count from the bowler's own side.
  const side = boards > 0 === (shot.hand === "right") ? "left" : "right";
  const where =
    Math.abs(boards) < 0.05
      ? "arrives on the same board"
      : `arrives ${digits(Math.abs(boards), 1)} boards further ${side}, on board ${digits(b.board_at_pins, 1)}`;
  const turn = b.entry_angle_deg - a.entry_angle_deg;
  const angle =
    Math.abs(turn) < 0.05
      ? "at the same angle"
      : `at ${reading(b.entry_angle_deg, "angle", units)} instead of ${reading(a.entry_angle_deg, "angle", units)}`;
  const further = b.breakpoint.distance_ft - a.breakpoint.distance_ft;
  const breakpoint =
    Math.abs(further) < 0.5
      ? ""
      : ` Its breakpoint lies ${reading(Math.abs(further), "distance", units)} ${further > 0 ? "further down the lane" : "sooner"}.`;
  return `${now} ${where}, ${angle}.${breakpoint}`;
}

interface PictureProps {
  id: string;
  map: OilMap;
  rolls: Roll[];
  title: string;
  units: Units;
}

function Picture({ id, map, rolls, title, units }: PictureProps) {
  const [box, size] = useSize<HTMLDivElement>();
  const frame = useMemo(
    () => (size && size.width_px > 60 ? filmFrame(size.width_px, HEIGHT_PX, BOARDS, ROWS) : null),
    [size],
  );
  return (
    <figure class="wear-picture">
      <figcaption>
        {title}: {reading(map.volume_ml, "oil", units)}, {reading(map.length_ft, "distance", units)} long
      </figcaption>
      <div ref={box} class="wear-box">
        {frame && (
          <FilmDrawing
            id={id}
            map={map}
            frame={frame}
            metric={units === "metric"}
            title={title}
            desc={`Oil over boards and distance, at its thickest ${reading(map.thickest_um, "film", units)}, and the ball's path.`}
          >
            {rolls.map((roll, i) => (
              <path
                key={i}
                class={i === 0 ? "film-path" : "film-path film-path-now"}
                d={line(
                  roll.samples.map(({ x_in, y_ft }): [number, number] => frame.at(boardOf(x_in), y_ft)),
                )}
              />
            ))}
          </FilmDrawing>
        )}
      </div>
    </figure>
  );
}

function GameTable({ worn, units }: { worn: Worn; units: Units }) {
  const { unit } = measure("oil", units);
  return (
    <div class="wear-table">
      <table>
        <caption>The lane and the shot after each game</caption>
        <thead>
          <tr>
            <th scope="col">Game</th>
            <th scope="col">
              <Term word="oil pattern">On lane</Term>, {unit}
            </th>
            <th scope="col">
              <Term word="film">Gone</Term>, {unit}
            </th>
            <th scope="col">
              <Term word="film">Moved</Term>, {unit}
            </th>
            <th scope="col">
              <Term word="board">Board</Term>
            </th>
            <th scope="col">
              <Term word="entry angle">Angle</Term>, °
            </th>
          </tr>
        </thead>
        <tbody>
          {worn.games.map(({ game, volume_ml, taken_away_ml, carried_down_ml, summary }) => (
            <tr key={game}>
              <th scope="row">{game === 0 ? "fresh" : game}</th>
              <td>{number(volume_ml, "oil", units)}</td>
              <td>{number(taken_away_ml, "oil", units)}</td>
              <td>{number(carried_down_ml, "oil", units)}</td>
              <td>
                {summary.board_at_pins === null ? "none" : number(summary.board_at_pins, "board", units)}
              </td>
              <td>
                {summary.entry_angle_deg === null ? "none" : number(summary.entry_angle_deg, "angle", units)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
