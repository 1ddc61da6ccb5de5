import { saveBall } from "../files";
import { say } from "../frame";
import { keepInstead, startAfresh } from "../persist";
import { describe } from "../problem";
import type { Doc } from "../store";

interface FaultProps {
  error: unknown;
  /** The work in hand. */
  doc: Doc | null;
  /** The work as it was when everything still went well. */
  good?: Doc;
}

/** Says what broke and keeps the work within reach. */
export function Fault({ error, doc, good }: FaultProps) {
  const before = good && (good.ball !== doc?.ball || good.shot !== doc?.shot) ? good : null;
  return (
    <main class="fault">
      <h1>{say("fault-stopped")}</h1>
      <div role="alert">
        <p>{before ? say("fault-says-before") : say("fault-says")}</p>
      </div>
      <p class="fault-actions">
        <button type="button" onClick={() => location.reload()}>
          {say("frame-reload")}
        </button>
        {before && (
          <button
            type="button"
            onClick={() => {
              keepInstead(before);
              location.reload();
            }}
          >
            {say("fault-back")}
          </button>
        )}
        {doc && (
          <button type="button" onClick={() => saveBall(doc)}>
            {say("fault-save")}
          </button>
        )}
        {doc && (
          <button
            type="button"
            onClick={() => {
              startAfresh();
              location.reload();
            }}
          >
            {say("fault-afresh")}
          </button>
        )}
      </p>
      <p>{say("fault-browser")}</p>
      <pre>{describe(error)}</pre>
    </main>
  );
}
