import "../../draw/draw.css";
import "./lane.css";
import { Charts } from "./charts";
import { Controls } from "./controls";
import { ExampleShots } from "./example-shots";
import { Honest } from "./honest";
import { Numbers } from "./numbers";
import { Stage } from "./stage";

/** The shot down the lane: what happened, the pictures of it, the controls, the numbers. */
export function Lane() {
  return (
    <div class="lane">
      <div class="lane-columns">
        <Stage />
        <div class="lane-more">
          <Controls />
          <ExampleShots />
          <Numbers />
          <Honest />
          <Charts />
        </div>
      </div>
    </div>
  );
}
