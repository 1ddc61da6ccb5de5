import { useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { Broken } from "../../parts/broken";
import { SectionDrawing } from "../../parts/section-drawing";
import { useStore } from "../../store";
import type { BallFile, Ladder, Section } from "../../types";
import { digits, reading } from "../../units";
import { useWhenStill } from "../../when-still";
import { say } from "./say";

/** How long the saw must be still before the balls are cut anew, ms. */
const STILL_MS = 100;
/** The cut shown while the saw cuts nothing. */
const ALONG: Pick<Section, "normal" | "depth_in"> = { normal: [1, 0, 0], depth_in: 0 };

type Rung = Ladder["rungs"][number];

interface RungCardsProps {
  ladder: Ladder;
  weight(lb: number): string;
}

/** Every ball that can be had, sawn open in one plane at one scale, to be put on the bench. */
export function RungCards({ ladder, weight }: RungCardsProps) {
  const store = useStore();
  const jobs = useJobs();
  const { plane } = store.view.value;
  const { normal, depth_in } = plane ?? ALONG;
  const made = ladder.rungs.filter(
    (rung): rung is Rung & { ball: BallFile } => rung.feasible && rung.ball !== null,
  );
  const [sections, setSections] = useState<(Section | null)[]>([]);
  const key = JSON.stringify([normal, depth_in]);

  const { broken } = useWhenStill(
    STILL_MS,
    async (signal) => {
      const asked = { balls: made.map(({ ball }) => ball), plane: { normal, depth_in } };
      setSections(await jobs.run("sections", asked, signal));
    },
    store.fail,
    [ladder, key],
  );

  if (made.length === 0) return null;
  return (
    <section class="rungs" aria-label={say("scale-line-cards")}>
      <p class="readout-says">{say(plane ? "scale-line-cards-saw" : "scale-line-cards-along")}</p>
      {broken && <Broken broken={broken} />}
      <ul class="rung-cards">
        {made.map(({ weight_lb, ball, changed, size_factor }, n) => {
          const section = sections[n];
          const density =
            ladder.by === "density"
              ? changed.map(({ density_g_cc }) =>
                  reading(density_g_cc ?? 0, "density", store.view.value.units),
                )
              : [say("scale-line-size", { factor: digits(size_factor ?? 1, 3) })];
          return (
            <li class="rung-card" key={weight_lb}>
              {section ? (
                <SectionDrawing section={section} diameter_in={ball.diameter_in} />
              ) : (
                <svg class="section-drawing" viewBox="0 0 1 1" aria-hidden="true" />
              )}
              <p>
                <strong>{weight(weight_lb)}</strong>
                <br />
                {density.join(", ")}
              </p>
              <button
                type="button"
                aria-label={say("scale-line-to-bench-ball", { ball: ball.name })}
                onClick={() => store.replace({ ball }, ball.name)}
              >
                {say("scale-line-to-bench")}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
