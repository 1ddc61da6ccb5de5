import { Say } from "../../locale/say";
import { addressOf } from "../../share/link";
import { type Shot, useStore } from "../../store";
import { sentenceIn } from "../../units";
import { Code, MOST_CODE_CHARS, SMALL_CODE_CHARS } from "./code";
import { say } from "./say";
import type { Told } from "./told";

/** Longer addresses are not worth printing: nobody types them. */
const MOST_PRINTED_CHARS = 1600;

/** A link to each ball with the shot, as text and as a code to scan. */
export function Links({ balls, shot }: { balls: Told[]; shot: Shot }) {
  const store = useStore();
  return (
    <section class="sheet-links" aria-label={say("sheet-open-again")}>
      {balls.map((told, n) => {
        const made = addressOf(store, { ball: told.file, shot });
        const which = balls.length > 1 ? say("sheet-that", { letter: "AB"[n] ?? "" }) : say("sheet-this");
        return (
          <div key={n} class="sheet-link">
            {"problem" in made ? (
              <p>
                {say("sheet-no-link", {
                  which,
                  why: sentenceIn(made.problem.message, store.view.value.units),
                })}
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
          <Say id="sheet-scan" args={{ which }} parts={{ link: () => <a href={address}>{address}</a> }} />
        </p>
      </>
    );
  }
  if (address.length <= MOST_CODE_CHARS) {
    return (
      <>
        <Scan address={address} which={which} />
        <p>{say("sheet-scan-only", { which, characters: String(address.length) })}</p>
      </>
    );
  }
  if (address.length <= MOST_PRINTED_CHARS) {
    return (
      <p>
        <Say
          id="sheet-link-only"
          args={{ which }}
          parts={{
            link: () => (
              <a class="sheet-long" href={address}>
                {address}
              </a>
            ),
          }}
        />
      </p>
    );
  }
  return <p>{say("sheet-link-too-long", { which, characters: String(address.length) })}</p>;
}

function Scan({ address, which }: { address: string; which: string }) {
  return (
    <a
      class="sheet-code-place"
      href={address}
      aria-label={say("sheet-link-to", { which })}
      data-large={address.length > SMALL_CODE_CHARS || undefined}
    >
      <Code text={address} />
    </a>
  );
}
