// What the page has to say of itself: once, until it is closed, and what holds until it is mended.

import { useEffect, useState } from "preact/hooks";
import { download } from "./files";
import { say } from "./frame";
import { throwUnreadAway, unread } from "./persist";
import { useStore } from "./store";

/** What is to be said as the page opens comes into the place, not with it, or it would not be heard. */
function useThere(): boolean {
  const [there, setThere] = useState(false);
  useEffect(() => setThere(true), []);
  return there;
}

export function Notice() {
  const store = useStore();
  const notice = store.notice.value;
  const there = useThere();
  return (
    <div class="notice-place" role="status">
      {there && notice !== null && (
        <p class="notice">
          {notice()}{" "}
          <button
            type="button"
            onClick={() => {
              store.notice.value = null;
            }}
          >
            {say("frame-close")}
          </button>
        </p>
      )}
    </div>
  );
}

/** That changes are not kept, as long as they are not; and what an earlier visit left that cannot be read. */
export function Standing() {
  const { unkept } = useStore();
  const there = useThere();
  const left = unread.value;
  return (
    <div class="notice-place" role="status">
      {there && unkept.value !== null && <p class="notice">{unkept.value()}</p>}
      {there && left !== null && (
        <p class="notice">
          <span>{say("frame-unread")}</span>
          <span class="notice-ways">
            <button type="button" onClick={() => download("pithball-unread.txt", left, "text/plain")}>
              {say("frame-unread-save")}
            </button>
            <button type="button" onClick={throwUnreadAway}>
              {say("frame-unread-away")}
            </button>
          </span>
        </p>
      )}
    </div>
  );
}
