import { useState } from "preact/hooks";
import { say } from "../frame";
import { newer, takeNewer } from "./offline";

/** Offers a newer Pithball; nothing changes before the reader says so. */
export function NewerPage() {
  const [later, setLater] = useState(false);
  const offered = newer.value !== null && !later;
  return (
    <div class="notice-place" role="status">
      {offered && (
        <p class="notice">
          {say("newer-here")}{" "}
          <span>
            <button type="button" onClick={takeNewer}>
              {say("newer-use")}
            </button>{" "}
            <button type="button" onClick={() => setLater(true)}>
              {say("newer-later")}
            </button>
          </span>
        </p>
      )}
    </div>
  );
}
