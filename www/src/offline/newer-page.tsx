import { useState } from "preact/hooks";
import { newer, takeNewer } from "./offline";

/** Offers a newer Pithball; nothing changes before the reader says so. */
export function NewerPage() {
  const [later, setLater] = useState(false);
  const offered = newer.value !== null && !later;
  return (
    <div class="notice-place" role="status">
      {offered && (
        <p class="notice">
          A newer Pithball is here. Your ball and shot stay as they are; only Undo begins afresh.{" "}
          <span>
            <button type="button" onClick={takeNewer}>
              Use it now
            </button>{" "}
            <button type="button" onClick={() => setLater(true)}>
              Later
            </button>
          </span>
        </p>
      )}
    </div>
  );
}
