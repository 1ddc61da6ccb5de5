import "../../draw/draw.css";
import "./lane.css";
import { useSignal } from "@preact/signals";
import { Fixed } from "../../parts/fixed";
import { ToModelNote } from "../model/to-note";
import { AreaFold } from "./area";
import { Charts } from "./charts";
import { Controls } from "./controls";
import { ExampleShots } from "./example-shots";
import { Honest } from "./honest";
import { Numbers } from "./numbers";
import { OilFold } from "./oil/oil";
import { Stage } from "./stage";
import { TrackRings } from "./track";
import { BeforeDrilling } from "./undrilled";
import { WhyFold } from "./why-fold";

/** The shot down the lane: what happened, the pictures of it, the controls, the numbers. */
export function Lane() {
  const t_s = useSignal(Number.POSITIVE_INFINITY);
  return (
    <div class="lane">
      <div class="lane-columns">
        <Stage t_s={t_s} />
        <div class="lane-more">
          <Controls />
          <Fixed place="shot.lane">
            <OilFold />
          </Fixed>
          <Fixed place="shot" whole away>
            <ExampleShots />
          </Fixed>
          <Numbers />
          <WhyFold />
          <AreaFold />
          <TrackRings />
          <BeforeDrilling />
          <Honest />
          <Charts t_s={t_s} />
          <ToModelNote />
        </div>
      </div>
    </div>
  );
}
