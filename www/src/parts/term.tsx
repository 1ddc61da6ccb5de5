import type { ComponentChildren } from "preact";
import { useId, useRef } from "preact/hooks";
import { toGlossary } from "../lessons/at";
import { useStore } from "../store";
import { WORDS, type Word } from "../words";

/** A word of the trade; its dotted underline opens its meaning. */
export function Term({ word, children }: { word: Word; children?: ComponentChildren }) {
  const store = useStore();
  const more = (
    <button type="button" class="to-word" onClick={() => toGlossary(store, word)}>
      See it drawn<span class="visually-hidden"> {word}</span>
    </button>
  );
  return (
    <Aside text={WORDS[word]} more={more}>
      {children ?? word}
    </Aside>
  );
}

/** Words with a dotted underline that opens one more sentence. */
export function Aside(props: { text: string; more?: ComponentChildren; children: ComponentChildren }) {
  const { text, more, children } = props;
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const note = useRef<HTMLSpanElement>(null);

  function place(event: Event) {
    const word = button.current;
    const box = note.current;
    if (!word || !box || (event as ToggleEvent).newState !== "open") return;
    const at = word.getBoundingClientRect();
    const left = Math.max(8, Math.min(at.left, innerWidth - box.offsetWidth - 8));
    const below = at.bottom + 4;
    const top = below + box.offsetHeight < innerHeight - 8 ? below : at.top - box.offsetHeight - 4;
    box.style.left = `${left}px`;
    box.style.top = `${Math.max(8, top)}px`;
  }

  return (
    <>
      <button type="button" class="term" ref={button} popovertarget={id}>
        {children}
      </button>
      <span class="meaning" id={id} popover="auto" ref={note} onToggle={place}>
        {text} {more}
      </span>
    </>
  );
}
