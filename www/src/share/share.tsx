import { type Signal, useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { useAloud } from "../aloud";
import { Result } from "../parts/result";
import { useStore } from "../store";
import { sentenceIn } from "../units";
import { say } from "../work";
import { addressOf, LONG_CHARS } from "./link";
import "./share.css";

/** Away with the address, the keyboard back on the button that asked for it. */
export function closeShare(open: Signal<boolean>): void {
  open.value = false;
  document.getElementById("share-button")?.focus();
}

/** The bar's button, and under it the address to pass on. */
export function ShareButton({ open }: { open: Signal<boolean> }) {
  return (
    <button
      type="button"
      id="share-button"
      aria-expanded={open.value}
      aria-controls="share"
      onClick={() => {
        open.value = !open.value;
      }}
    >
      {say("link-share")}
    </button>
  );
}

/** What can be said about copying the address that is shown. */
type Copied = { address: string; allowed: boolean } | null;

export function SharePanel({ open }: { open: Signal<boolean> }) {
  return (
    <section id="share" class="share" aria-label={say("link-share")} hidden={!open.value}>
      {open.value && <Made close={() => closeShare(open)} />}
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

  const none =
    "problem" in made
      ? say("link-none", { why: sentenceIn(made.problem.message, store.view.value.units) })
      : null;
  useAloud(none, none);
  if ("problem" in made) {
    return (
      <p class="share-said">
        {none}{" "}
        <button type="button" onClick={close}>
          {say("link-close")}
        </button>
      </p>
    );
  }
  const { address } = made;
  const now = copied.value?.address === address ? copied.value : null;
  return (
    <>
      <label class="share-field">
        <span>{say("link-to")}</span>
        <input
          type="text"
          dir="ltr"
          readOnly
          spellcheck={false}
          value={address}
          ref={field}
          onFocus={(event) => event.currentTarget.select()}
        />
      </label>
      <button type="button" onClick={() => void copy(address)}>
        {say("link-copy")}
      </button>
      <button type="button" onClick={close}>
        {say("link-close")}
      </button>
      <Result class="share-said" of={now ?? address}>
        {[
          now && say(now.allowed ? "link-copied" : "link-copy-by-hand"),
          say("link-long", { many: String(address.length) }),
          address.length > LONG_CHARS && say("link-cut-off"),
        ]
          .filter(Boolean)
          .join(" ")}
      </Result>
      <p class="share-note">
        {say("link-holds")}
        {location.protocol === "file:" && ` ${say("link-file")}`}
      </p>
    </>
  );
}
