import type { Signal } from "@preact/signals";
import { useEffect, useMemo } from "preact/hooks";
import { BowlerEye } from "../../draw/bowler-eye";
import { Globe, track } from "../../draw/globe";
import { groundOf } from "../../draw/ground";
import { LaneDrawing } from "../../draw/lane";
import { place } from "../../draw/lane-frame";
import { endOf, momentAt } from "../../draw/moment";
import { remPx, useSize } from "../../draw/use-size";
import { Said } from "../../parts/said";
import { Aside } from "../../parts/term";
import { useStore } from "../../store";
import { reading } from "../../units";
import { usePlayer } from "./player";
import { whatHappened } from "./sentence";
import { bandWords } from "./track";
import { Transport } from "./transport";

const READING =
  "On the lane: dots and tint are oil, stronger where there is more; long dashes are skid, short dashes hook, a solid line roll; ball, pins and arrows are marks, not to scale. On the ball: rings (thin, thicker, thick) show where the lane has touched it, the wedge where it touches now, the diamond the PAP, where the axis it spins about left the ball at release. At the end of the run a bar stands where the rings lie widest apart and a bow-tie where they cross.";

/** The shot as pictures of one moment: from above, as the bowler sees it, and the ball close up. */
export function Stage({ t_s }: { t_s: Signal<number> }) {
  const store = useStore();
  const { roll, shot, file, made, shotProblem } = store.derived.value;
  const { units } = store.view.value;
  const [box, size] = useSize<HTMLDivElement>();
  const player = usePlayer(endOf(roll), box);
  useEffect(() => {
    t_s.value = player.t_s;
  }, [t_s, player.t_s]);
  const shown = size !== null && size.width_px > 0;
  useEffect(() => {
    if (!shown) player.pause();
  }, [shown]);
  const points = useMemo(() => track(roll), [roll]);
  const whole = player.t_s >= endOf(roll);
  const said = whatHappened(roll, shot.hand, units);
  const layout = size && shown && place(size.width_px, size.height_px);
  const now = momentAt(roll, player.t_s);
  const ground = useMemo(() => groundOf(store.wasm, shot.lane), [shot.lane]);
  const common = { roll, hand: shot.hand, ground };
  return (
    <div class="stage">
      <div class="stage-top">
        <div class="stage-words">
          <p class="lane-says">{said}</p>
          {shotProblem && (
            <p class="stale">
              <Said problem={shotProblem} /> The shot shown is the last good one.
            </p>
          )}
        </div>
        <div class="stage-lane" ref={box}>
          {layout && (
            <LaneDrawing
              {...common}
              id="lane-above"
              place={layout}
              metric={units === "metric"}
              t_s={whole ? null : player.t_s}
              title="The lane from above"
              desc={said}
            />
          )}
        </div>
        <Transport
          player={player}
          end_s={endOf(roll)}
          place={
            now
              ? `${reading(now.t_s, "time", units)}, ${reading(now.y_ft, "distance", units)}, ${now.phase}`
              : ""
          }
        />
      </div>
      <div class="stage-close">
        <figure class="stage-globe">
          <Globe
            {...common}
            id="lane-ball"
            points={points}
            holes={made.holes ?? []}
            radius_in={made.diameter_in / 2}
            measured={whole}
            t_s={player.t_s}
            size_px={Math.round(remPx(10))}
            title="The ball close up, from behind and a little above"
            desc={`Rings where the lane has touched it${now ? `, at ${reading(now.revs_rpm, "revs", units)}` : ""}. ${bandWords(roll.track, units)}`}
          />
          <figcaption>
            {now && `${reading(now.speed_mph, "speed", units)}, ${reading(now.revs_rpm, "revs", units)}`}
            {whole &&
              roll.track.widest &&
              `; at the bar the rings lie ${reading(roll.track.widest.width_in, "size", units)} wide`}
          </figcaption>
        </figure>
        <figure class="stage-eye">
          <BowlerEye
            {...common}
            id="lane-eye"
            radius_in={file.diameter_in / 2}
            t_s={whole ? null : player.t_s}
            width_px={Math.round(remPx(11.4))}
            height_px={Math.round(remPx(10.5))}
            title="The lane as the bowler sees it"
            desc={said}
          />
          <figcaption>As the bowler sees it, true to scale</figcaption>
        </figure>
      </div>
      {layout && (
        <p class="stage-scale">
          Drawn {layout.stretch.toFixed(1)} times too wide, so angles look larger.{" "}
          <Aside text={READING}>How to read the pictures</Aside>
        </p>
      )}
    </div>
  );
}
