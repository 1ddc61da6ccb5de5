import { isBroken, useShelf } from "../../shelf/shelf";
import { saveWholeShelf } from "./exchange";

const TROUBLES = {
  forbidden:
    "This browser does not let the page keep anything: what you put on the shelf lasts for this visit only.",
  newer:
    "Another tab has the shelf in a newer version of this page. Load this page again; until then what you put here lasts for this visit only.",
  broken:
    "What this browser kept of the shelf cannot be opened, so what you put here lasts for this visit only. Closing the browser and coming back may help.",
};

/** What was done last, how to take it back, and whether the browser keeps the shelf. */
export function Standing() {
  const shelf = useShelf();
  const standing = shelf.standing.value;
  const removed = shelf.removed.value;
  const entries = shelf.entries.value;
  const unkept = shelf.unkept.value;
  const why = entries.find((entry) => entry.unkept)?.unkept;
  return (
    <div class="shelf-standing">
      {standing !== "opening" && standing !== "kept" && (
        <div class="stale" role="alert">
          <p>{TROUBLES[standing]}</p>
          {standing === "broken" && (
            <button type="button" onClick={() => void shelf.startAfresh()}>
              Throw it away and begin a new shelf
            </button>
          )}
        </div>
      )}
      {unkept > 0 && (
        <div class="stale" role="alert">
          <p>
            {unkept === 1 ? "One entry is" : `${unkept} entries are`} not kept. {why} Save the shelf to a file
            before you leave{standing === "kept" && ", or take something off it and try again"}.
          </p>
          <p class="choices">
            <button type="button" onClick={() => saveWholeShelf(entries)}>
              Save the shelf to a file now
            </button>
            {standing === "kept" && (
              <button type="button" onClick={() => void shelf.retry()}>
                Try again
              </button>
            )}
          </p>
        </div>
      )}
      <p class="shelf-said" role="status">
        {shelf.said.value}
      </p>
      {removed && (
        <button type="button" class="put-back" onClick={() => void shelf.putBack()}>
          Put back {isBroken(removed) ? "what could not be read" : removed.name}
        </button>
      )}
    </div>
  );
}
