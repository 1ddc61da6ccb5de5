import { worded } from "../../locale/worded";
import { addressOf } from "../../share/link";
import { type Shot, useStore } from "../../store";
import { Code, MOST_CODE_CHARS, SMALL_CODE_CHARS } from "./code";
import type { Told } from "./told";

/** Longer addresses are not worth printing: nobody types them. */
const MOST_PRINTED_CHARS = 1600;

/** A link to each ball with the shot, as text and as a code to scan. */
export function Links({ balls, shot }: { balls: Told[]; shot: Shot }) {
  const store = useStore();
  return (
    <section class="sheet-links" aria-label="Open it again">
      {balls.map((told, n) => {
        const made = addressOf(store, { ball: told.file, shot });
        const which = balls.length > 1 ? `${"AB"[n]} with this shot` : "this ball and shot";
        return (
          <div key={n} class="sheet-link">
            {"problem" in made ? (
              <p>
                There is no link to {which}: {worded(made.problem.message)}
              </p>
            ) : (
              <Link address={made.address} which={which} />
            )}
          </div>
        );
      })}
    </section>
  );
}

function Link({ address, which }: { address: string; which: string }) {
  if (address.length <= SMALL_CODE_CHARS) {
    return (
      <>
        <Scan address={address} which={which} />
        <p>
          Scan to open {which} on Pithball, or go to <a href={address}>{address}</a>
        </p>
      </>
    );
  }
  if (address.length <= MOST_CODE_CHARS) {
    return (
      <>
        <Scan address={address} which={which} />
        <p>
          Scan to open {which} on Pithball. The link itself, {address.length} characters, is too long to type:
          it is behind the code in a PDF.
        </p>
      </>
    );
  }
  if (address.length <= MOST_PRINTED_CHARS) {
    return (
      <p>
        The link to {which} is too much for a code that can be scanned:{" "}
        <a class="sheet-long" href={address}>
          {address}
        </a>
      </p>
    );
  }
  return (
    <p>
      The link to {which}, {address.length} characters, is too much for a code and too long to print: ask for
      the file of Save shot.
    </p>
  );
}

function Scan({ address, which }: { address: string; which: string }) {
  return (
    <a
      class="sheet-code-place"
      href={address}
      aria-label={`Link to ${which}`}
      data-large={address.length > SMALL_CODE_CHARS || undefined}
    >
      <Code text={address} />
    </a>
  );
}
