import { saveBall } from "../files";
import { keepInstead, startAfresh } from "../persist";
import { type Doc, describe } from "../store";

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
      <h1>Pithball has stopped</h1>
      <div role="alert">
        <p>
          Something broke in the page itself; it was not your doing. What you made is kept in this browser and
          comes back when you load the page again. If it stops again,{" "}
          {before && "go back to before the last change, or "}
          save the ball to a file and start with a fresh one.
        </p>
      </div>
      <p class="fault-actions">
        <button type="button" onClick={() => location.reload()}>
          Load the page again
        </button>
        {before && (
          <button
            type="button"
            onClick={() => {
              keepInstead(before);
              location.reload();
            }}
          >
            Go back to before the last change
          </button>
        )}
        {doc && (
          <button type="button" onClick={() => saveBall(doc)}>
            Save the ball to a file
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
            Start with a fresh ball
          </button>
        )}
      </p>
      <p>What the browser said:</p>
      <pre>{describe(error)}</pre>
    </main>
  );
}
