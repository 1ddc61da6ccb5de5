import { whyUnkept } from "../../shelf/record";
import { isBroken, useShelf } from "../../shelf/shelf";
import { saveWholeShelf } from "./exchange";
import { say } from "./say";

/** The texts of what is wrong. */
const TROUBLES = { forbidden: "shelf-forbidden", newer: "shelf-newer", broken: "shelf-broken" };

/** What was done last, how to take it back, and whether the browser keeps the shelf. */
export function Standing() {
  const shelf = useShelf();
  const standing = shelf.standing.value;
  const removed = shelf.removed.value;
  const entries = shelf.entries.value;
  const unkept = shelf.unkept.value;
  const why = entries.map(whyUnkept).find(Boolean);
  return (
    <div class="shelf-standing">
      {standing !== "opening" && standing !== "kept" && (
        <div class="stale" role="alert">
          <p>{say(TROUBLES[standing])}</p>
          {standing === "broken" && (
            <button type="button" onClick={() => void shelf.startAfresh()}>
              {say("shelf-start-afresh")}
            </button>
          )}
        </div>
      )}
      {unkept > 0 && (
        <div class="stale" role="alert">
          <p>
            {say(standing === "kept" ? "shelf-unkept-retry" : "shelf-unkept", {
              many: unkept,
              why: why?.() ?? "",
            })}
          </p>
          <p class="choices">
            <button type="button" onClick={() => saveWholeShelf(entries)}>
              {say("shelf-save-now")}
            </button>
            {standing === "kept" && (
              <button type="button" onClick={() => void shelf.retry()}>
                {say("shelf-try-again")}
              </button>
            )}
          </p>
        </div>
      )}
      <p class="shelf-said" role="status">
        {shelf.said.value?.()}
      </p>
      {removed && (
        <button type="button" class="put-back" onClick={() => void shelf.putBack()}>
          {isBroken(removed) ? say("shelf-put-back-unread") : say("shelf-put-back", { name: removed.name })}
        </button>
      )}
    </div>
  );
}
