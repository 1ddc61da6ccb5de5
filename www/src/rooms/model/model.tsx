import "./model.css";
import { useEffect, useRef } from "preact/hooks";
import rules from "../../../../docs/coach-rules.md";
import note from "../../../../docs/model.md";
import { useStore } from "../../store";
import { Edition } from "./edition";

/** What the model assumes and leaves out, and what coaches say: the notes of the repository, built into the page. */
export function ModelNote() {
  const store = useStore();
  const back = useRef<HTMLButtonElement>(null);
  // The reader comes from elsewhere on the page, and the keyboard with them.
  useEffect(() => back.current?.focus({ preventScroll: true }), []);
  return (
    <div class="model-note">
      <p class="model-actions">
        <button type="button" ref={back} onClick={() => store.look({ room: "lane" })}>
          Back to the lane
        </button>
        <button type="button" onClick={() => print()}>
          Print these notes
        </button>
      </p>
      {/* Fixed when the page was built: no text of anybody else's gets in here. */}
      <article dangerouslySetInnerHTML={{ __html: note }} />
      <article dangerouslySetInnerHTML={{ __html: rules }} />
      <Edition />
    </div>
  );
}
