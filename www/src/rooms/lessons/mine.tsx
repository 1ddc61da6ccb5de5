import { useSignal } from "@preact/signals";
import {
  addProgress,
  forgetProgress,
  MOST_PROGRESS_BYTES,
  nameLearner,
  notProgress,
  progress,
  saveProgress,
  trouble,
} from "../../lessons/progress";
import { OpenFile } from "../../parts/open-file";
import { isProblem } from "../../problem";
import { textOf } from "../../read-file";
import { say } from "./say";

/** What this learner has done: to hand in, to carry elsewhere, to forget. */
export function Mine() {
  const said = useSignal("");
  const sure = useSignal(false);
  const { learner, lessons } = progress.value;
  return (
    <section class="lessons-mine" aria-labelledby="lessons-mine">
      <h3 id="lessons-mine" tabIndex={-1}>
        {say("mine-title")}
      </h3>
      <p>{say("mine-says")}</p>
      {trouble.value && <p class="stale">{say(trouble.value)}</p>}
      <label class="lessons-name">
        {say("mine-name")}
        <input
          type="text"
          data-own-undo
          autocomplete="off"
          maxLength={80}
          value={learner}
          onChange={(event) => nameLearner(event.currentTarget.value)}
        />
      </label>
      <div class="choices">
        <button type="button" disabled={lessons.length === 0} onClick={saveProgress}>
          {say("mine-save")}
        </button>
        <OpenFile
          label={say("mine-file")}
          onOpen={async ([file]) => {
            if (!file) return;
            try {
              const taken = addProgress(await textOf(file, MOST_PROGRESS_BYTES));
              said.value =
                taken > 0
                  ? say("mine-taken", { file: file.name, lessons: taken })
                  : say("mine-no-further", { file: file.name });
            } catch (error) {
              if (!isProblem(error)) throw error;
              said.value = say("mine-refused", { file: file.name, why: notProgress(error) });
            }
          }}
        >
          {say("mine-take-in")}
        </OpenFile>
        {sure.value ? (
          <>
            <button
              type="button"
              onClick={() => {
                forgetProgress();
                sure.value = false;
                said.value = say("mine-forgotten");
              }}
            >
              {say("mine-sure")}
            </button>
            <button
              type="button"
              onClick={() => {
                sure.value = false;
              }}
            >
              {say("mine-keep")}
            </button>
          </>
        ) : (
          <button
            type="button"
            disabled={lessons.length === 0}
            onClick={() => {
              sure.value = true;
            }}
          >
            {say("mine-forget")}
          </button>
        )}
      </div>
      <p role="status">{said.value}</p>
    </section>
  );
}
