import { useState } from "preact/hooks";
import { useAloud } from "../../aloud";
import { type Player, RATES } from "./player";
import { say } from "./say";

const STEP_S = 0.05;
const RATE_NAMES: Record<number, string> = { 1: "1×", 0.5: "½×", 0.25: "¼×", 0.1: "⅒×" };

interface TransportProps {
  player: Player;
  end_s: number;
  /** The moment on show in words. */
  place: string;
  /** What came of it, said aloud when it has run to its end as the reader asked. */
  said: string;
}

/** Play, pause, step, go to a moment, and how fast. */
export function Transport({ player, end_s, place, said }: TransportProps) {
  /** Which run the reader has started; 0 where a moment was chosen since. */
  const [run, setRun] = useState(0);
  const ended = run > 0 && !player.playing && player.t_s >= end_s;
  useAloud(ended && run, ended ? said : null);
  const go = (t_s: number) => {
    setRun(0);
    player.go(t_s);
  };
  return (
    <fieldset class="transport" aria-label={say("lane-playing")}>
      <button
        type="button"
        class="play"
        onClick={() => {
          if (player.playing) return player.pause();
          setRun(run + 1);
          player.play();
        }}
      >
        {say(player.playing ? "lane-pause" : "lane-play")}
      </button>
      <button type="button" aria-label={say("lane-step-back")} onClick={() => go(player.t_s - STEP_S)}>
        −
      </button>
      <button type="button" aria-label={say("lane-step-on")} onClick={() => go(player.t_s + STEP_S)}>
        +
      </button>
      <input
        type="range"
        class="scrub"
        aria-label={say("lane-scrub")}
        aria-valuetext={place}
        min={0}
        max={Math.ceil(end_s * 100) / 100}
        step={0.01}
        value={player.t_s}
        onInput={(event) => go(Number(event.currentTarget.value))}
      />
      <select
        aria-label={say("lane-rate")}
        value={player.rate}
        onChange={(event) => player.setRate(Number(event.currentTarget.value))}
      >
        {RATES.map((rate) => (
          <option key={rate} value={rate}>
            {RATE_NAMES[rate]}
          </option>
        ))}
      </select>
    </fieldset>
  );
}
