import type { Signal } from "@preact/signals";
import { useEffect, useMemo } from "preact/hooks";
import { BowlerEye } from "../../draw/bowler-eye";
import { Globe, track } from "../../draw/globe";
import { groundOf } from "../../draw/ground";
import { LaneDrawing } from "../../draw/lane";
import { place } from "../../draw/lane-frame";
import { endOf, momentAt } from "../../draw/moment";
import { phaseName } from "../../draw/say";
import { remPx, useSize } from "../../draw/use-size";
import { Say } from "../../locale/say";
import { Said } from "../../parts/said";
import { Aside } from "../../parts/term";
import { useStore } from "../../store";
import { digits, reading } from "../../units";
import { usePlayer } from "./player";
import { say } from "./say";
import { whatHappened } from "./sentence";
import { bandWords } from "./track";
import { Transport } from "./transport";

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
  const speed = reading(now?.speed_mph ?? 0, "speed", units);
  const revs = reading(now?.revs_rpm ?? 0, "revs", units);
  const { widest } = roll.track;
  const ground = useMemo(() => groundOf(store.wasm, shot.lane), [shot.lane]);
  const common = { roll, hand: shot.hand, ground };
  return (
    <div class="stage">
      <div class="stage-top">
        <div class="stage-words">
          <p class="lane-says">{said}</p>
          {shotProblem && (
            <p class="stale">
              <Say id="lane-stale" parts={{ problem: () => <Said problem={shotProblem} /> }} />
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
              title={say("lane-above")}
              desc={said}
            />
          )}
        </div>
        <Transport
          player={player}
          end_s={endOf(roll)}
          said={said}
          place={
            now
              ? say("lane-moment", {
                  time: reading(now.t_s, "time", units),
                  distance: reading(now.y_ft, "distance", units),
                  phase: phaseName(now.phase),
                })
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
            title={say("lane-close")}
            desc={say("lane-close-says", { revs, band: bandWords(roll.track, units) })}
          />
          <figcaption>
            {whole && widest
              ? say("lane-close-end", { speed, revs, width: reading(widest.width_in, "size", units) })
              : say("lane-close-moment", { speed, revs })}
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
            title={say("lane-eye")}
            desc={said}
          />
          <figcaption>{say("lane-eye-caption")}</figcaption>
        </figure>
      </div>
      {layout && (
        <p class="stage-scale">
          <Say
            id="lane-stretch"
            args={{ times: digits(layout.stretch, 1) }}
            parts={{ how: (words) => <Aside text={say("lane-reading")}>{words}</Aside> }}
          />
        </p>
      )}
    </div>
  );
}
