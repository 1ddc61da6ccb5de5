// What games do to the oil, and to the shot: a model, and labelled as one.

import { useMemo, useState } from "preact/hooks";
import { FilmDrawing, filmFrame } from "../../../draw/film";
import { line } from "../../../draw/lane-frame";
import { useSize } from "../../../draw/use-size";
import { useJobs } from "../../../jobs";
import { BoundedField } from "../../../parts/bounded-field";
import { Broken } from "../../../parts/broken";
import { LazyFold } from "../../../parts/lazy-fold";
import { Result } from "../../../parts/result";
import { SayTerms } from "../../../parts/say-terms";
import { type Shot, type Units, useStore } from "../../../store";
import type { OilMap, Problem, Roll, Worn } from "../../../types";
import { count, digits, measure, number, reading, sentenceIn } from "../../../units";
import { useWhenStill } from "../../../when-still";
import { boardOf } from "./map";
import { BOARDS, painted, ROWS } from "./paint";
import { oiled } from "./presets";
import { say } from "./say";
import { gamesFrom, gamesOn, whatChanged, wornOf } from "./wear-words";

/** How long the lane must be still before its games are followed anew, ms. */
const STILL_MS = 250;
const MOST_GAMES = 40;
const HEIGHT_PX = 130;

/** The lane as games go by; followed only while it is open. */
export function WearFold() {
  const [games, setGames] = useState(3);
  const { lane } = useStore().derived.value.shot;
  return (
    <LazyFold class="wear-fold" summary={say("oil-wear", gamesFrom(lane, games))}>
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
  const [refused, setRefused] = useState<Problem | null>(null);
  const { broken } = useWhenStill(
    STILL_MS,
    async (signal) => {
      const worn = await jobs.run("wear", { ball: file, shot, games }, signal);
      setFound(whatBecame(worn));
      setRefused(null);
    },
    setRefused,
    [file, shot, games],
  );

  /** Taken at once: the ball at hand is still the one asked about. */
  function whatBecame(worn: Worn): Found | null {
    if ("zones" in shot.lane || typeof shot.lane.oil === "string") return null;
    const { wasm, derived } = store;
    const { ball, roll } = derived.value;
    const { oil } = shot.lane;
    return {
      shot,
      worn: { ...worn, oil: { ...worn.oil, ...wornOf(oil, games) } },
      fresh: wasm.oil_map(oil),
      map: wasm.oil_map(worn.oil),
      before: roll,
      after: ball.roll({ ...shot, lane: oiled(shot.lane, worn.oil) }),
    };
  }

  return (
    <div class="oil-fold">
      <BoundedField
        label={<SayTerms id="oil-games" terms={{ pattern: "oil pattern" }} />}
        value={games}
        quantity="count"
        min={1}
        max={12}
        most={MOST_GAMES}
        step={1}
        onChange={(value) => setGames(Math.round(value))}
      />
      {broken && <Broken broken={broken} />}
      {refused !== null && (
        <Result class="says says-caution" of={refused}>
          {sentenceIn(refused.message, units)}
        </Result>
      )}
      {!broken && refused === null && !found && (
        <p class="hint">{say("oil-wear-following", gamesFrom(shot.lane, games))}</p>
      )}
      {!broken && refused === null && found && <Became found={found} units={units} />}
    </div>
  );
}

function Became({ found, units }: { found: Found; units: Units }) {
  const store = useStore();
  const { worn, fresh, map, before, after, shot } = found;
  const [first, last] = [worn.games[0], worn.games.at(-1)];
  const games = gamesFrom(shot.lane, worn.games.length - 1);
  if (!first || !last) return null;
  const ml = (value: number) => reading(value, "oil", units);
  return (
    <>
      <Result class="wear-says" of={found}>
        {whatChanged(first.summary, last.summary, games, shot.hand, units)}
      </Result>
      <Picture
        id="oil-fresh"
        map={fresh}
        rolls={[before]}
        title={say("oil-wear-begun", { ...games, before: gamesOn(shot.lane) })}
        units={units}
      />
      <Picture
        id="oil-worn"
        map={map}
        rolls={[before, after]}
        title={say("oil-wear-after", games)}
        units={units}
      />
      <p class="hint">{say("oil-wear-key")}</p>
      <p>
        {say("oil-wear-where", {
          all: ml(first.volume_ml),
          left: ml(last.volume_ml),
          taken: ml(last.taken_away_ml),
          moved: ml(last.carried_down_ml),
        })}
      </p>
      <details>
        <summary>{say("oil-wear-table")}</summary>
        <GameTable worn={worn} units={units} />
      </details>
      <p class="hint">
        {say("oil-wear-model", {
          share: number(worn.taken_up_share, "share", units),
          carried: reading(worn.carried_ft, "distance", units),
          shots: count(worn.shots_a_game),
          spread: digits(worn.spread_boards, 1),
        })}
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
        {say("oil-wear-use")}
      </button>
    </>
  );
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
        {say("oil-wear-caption", {
          title,
          volume: reading(map.volume_ml, "oil", units),
          length: reading(map.length_ft, "distance", units),
        })}
      </figcaption>
      <div ref={box} class="wear-box">
        {frame && (
          <FilmDrawing
            id={id}
            map={map}
            frame={frame}
            metric={units === "metric"}
            title={title}
            desc={say("oil-wear-picture", { thickest: reading(map.thickest_um, "film", units) })}
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
        <caption>{say("oil-games-table")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("oil-game")}</th>
            <th scope="col">
              <SayTerms id="oil-game-left" args={{ unit }} terms={{ pattern: "oil pattern" }} />
            </th>
            <th scope="col">
              <SayTerms id="oil-game-gone" args={{ unit }} terms={{ film: "film" }} />
            </th>
            <th scope="col">
              <SayTerms id="oil-game-moved" args={{ unit }} terms={{ film: "film" }} />
            </th>
            <th scope="col">
              <SayTerms id="oil-game-board" terms={{ board: "board" }} />
            </th>
            <th scope="col">
              <SayTerms id="oil-game-angle" terms={{ angle: "entry angle" }} />
            </th>
          </tr>
        </thead>
        <tbody>
          {worn.games.map(({ game, volume_ml, taken_away_ml, carried_down_ml, summary }) => (
            <tr key={game}>
              <th scope="row">{game === 0 ? say("oil-game-begun") : game}</th>
              <td>{number(volume_ml, "oil", units)}</td>
              <td>{number(taken_away_ml, "oil", units)}</td>
              <td>{number(carried_down_ml, "oil", units)}</td>
              <td>
                {summary.board_at_pins === null
                  ? say("oil-no-number")
                  : number(summary.board_at_pins, "board", units)}
              </td>
              <td>
                {summary.entry_angle_deg === null
                  ? say("oil-no-number")
                  : number(summary.entry_angle_deg, "angle", units)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
