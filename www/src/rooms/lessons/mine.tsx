import { useSignal } from "@preact/signals";
import {
  addProgress,
  forgetProgress,
  nameLearner,
  notProgress,
  progress,
  saveProgress,
  trouble,
} from "../../lessons/progress";
import { OpenFile } from "../../parts/open-file";
import { isProblem } from "../../store";

/** What this learner has done: to hand in, to carry elsewhere, to forget. */
export function Mine() {
  const said = useSignal("");
  const sure = useSignal(false);
  const { learner, lessons } = progress.value;
  return (
    <section class="lessons-mine" aria-labelledby="lessons-mine">
      <h3 id="lessons-mine" tabIndex={-1}>
        Your progress
      </h3>
      <p>
        It stays in this browser: nothing is sent anywhere. Save it to a file to hand it in or to go on
        elsewhere.
      </p>
      {trouble.value && <p class="stale">{trouble.value}</p>}
      <label class="lessons-name">
        Your name, or what you want to be called
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
          Save progress to a file
        </button>
        <OpenFile
          label="Progress to take in"
          onOpen={async ([file]) => {
            if (!file) return;
            try {
              const taken = addProgress(await file.text());
              said.value =
                taken > 0
                  ? `Taken in from ${file.name}: ${taken} ${taken === 1 ? "lesson" : "lessons"}.`
                  : `Nothing in ${file.name} goes further than what is here.`;
            } catch (error) {
              if (!isProblem(error)) throw error;
              said.value = `${file.name} was not taken in. ${notProgress(error)}`;
            }
          }}
        >
          Take in a progress file…
        </OpenFile>
        {sure.value ? (
          <>
            <button
              type="button"
              onClick={() => {
                forgetProgress();
                sure.value = false;
                said.value = "Your progress is forgotten.";
              }}
            >
              Yes, forget all of it
            </button>
            <button
              type="button"
              onClick={() => {
                sure.value = false;
              }}
            >
              No, keep it
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
            Forget it…
          </button>
        )}
      </div>
      <p role="status">{said.value}</p>
    </section>
  );
}
