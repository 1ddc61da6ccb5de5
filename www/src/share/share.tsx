import { type Signal, useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { useStore } from "../store";
import { sentenceIn } from "../units";
import { addressOf, LONG_CHARS } from "./link";
import "./share.css";

/** The bar's button, and under it the address to pass on. */
export function ShareButton({ open }: { open: Signal<boolean> }) {
  return (
    <button
      type="button"
      aria-expanded={open.value}
      aria-controls="share"
      onClick={() => {
        open.value = !open.value;
      }}
    >
      Share link
    </button>
  );
}

/** What can be said about copying the address that is shown. */
type Copied = { address: string; allowed: boolean } | null;

export function SharePanel({ open }: { open: Signal<boolean> }) {
  return (
    <section id="share" class="share" aria-label="Share link" hidden={!open.value}>
      {open.value && <Made close={() => (open.value = false)} />}
    </section>
  );
}

function Made({ close }: { close: () => void }) {
  const store = useStore();
  const made = addressOf(store, store.doc.value);
  const copied = useSignal<Copied>(null);
  const field = useRef<HTMLInputElement>(null);

  async function copy(address: string): Promise<void> {
    try {
      await navigator.clipboard.writeText(address);
      copied.value = { address, allowed: true };
    } catch {
      // No secure address, or not allowed: the person copies by hand.
      copied.value = { address, allowed: false };
      field.current?.select();
    }
  }

  useEffect(() => {
    if ("address" in made) void copy(made.address);
  }, []);

  if ("problem" in made) {
    return (
      <p class="share-said" role="status">
        No link can be made. {sentenceIn(made.problem.message, store.view.value.units)}{" "}
        <button type="button" onClick={close}>
          Close
        </button>
      </p>
    );
  }
  const { address } = made;
  const now = copied.value?.address === address ? copied.value : null;
  return (
    <>
      <label class="share-field">
        <span>Link to this ball and shot</span>
        <input
          type="text"
          readOnly
          spellcheck={false}
          value={address}
          ref={field}
          onFocus={(event) => event.currentTarget.select()}
        />
      </label>
      <button type="button" onClick={() => void copy(address)}>
        Copy
      </button>
      <button type="button" onClick={close}>
        Close
      </button>
      <p class="share-said" role="status">
        {now &&
          (now.allowed ? "Copied. " : "The browser does not let the page copy: copy it from the field. ")}
        The link is {address.length} characters long.
        {address.length > LONG_CHARS &&
          " Some programs cut off a link this long: send the file of Save shot instead."}
      </p>
      <p class="share-note">
        The whole state is in the link itself: ball, layout, shot and lane, with their names and notes.
        Nothing is sent anywhere until you pass it on.
        {location.protocol === "file:" &&
          " This page is a file on your computer, so the link opens only there; for somebody else, send the file of Save shot."}
      </p>
    </>
  );
}
