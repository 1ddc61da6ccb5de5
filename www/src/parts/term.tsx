import { type ComponentChildren, createContext } from "preact";
import { useContext, useId, useRef, useState } from "preact/hooks";
import { toGlossary } from "../lessons/at";
import { isRightToLeft } from "../locale/language";
import { Say } from "../locale/say";
import { useStore } from "../store";
import { meaningOf, nameOf, type Word } from "../words";
import "./say";

/** Whether what stands here is held fast by a step of a lesson, so that no button works. */
export const Held = createContext(false);

/** A word of the trade; its dotted underline opens its meaning. */
export function Term({ word, children }: { word: Word; children?: ComponentChildren }) {
  return (
    <Aside text={meaningOf(word)} more={<ToWord word={word} />}>
      {children ?? nameOf(word)}
    </Aside>
  );
}

/** To a word's entry in the glossary, with its picture. */
export function ToWord({ word }: { word: Word }) {
  const store = useStore();
  return (
    <Press class="to-word" onPress={() => toGlossary(store, word)}>
      <Say
        id="parts-drawn"
        args={{ word: nameOf(word) }}
        parts={{ word: (name) => <span class="visually-hidden">{name}</span> }}
      />
    </Press>
  );
}

/** Words with a dotted underline that opens one more sentence. */
export function Aside(props: { text: string; more?: ComponentChildren; children: ComponentChildren }) {
  const { text, more, children } = props;
  const id = useId();
  const held = useContext(Held);
  const word = useRef<HTMLElement>(null);
  const note = useRef<HTMLSpanElement>(null);
  // What was never opened is not there: a page has hundreds of words.
  const [opened, setOpened] = useState(false);

  function place(event: Event) {
    const box = note.current;
    if (!word.current || !box || (event as ToggleEvent).newState !== "open") return;
    const at = word.current.getBoundingClientRect();
    const start = isRightToLeft() ? at.right - box.offsetWidth : at.left;
    const left = Math.max(8, Math.min(start, innerWidth - box.offsetWidth - 8));
    const below = at.bottom + 4;
    const top = below + box.offsetHeight < innerHeight - 8 ? below : at.top - box.offsetHeight - 4;
    box.style.left = `${left}px`;
    box.style.top = `${Math.max(8, top)}px`;
  }

  return (
    <>
      {held ? (
        <Press class="term" at={word} onPress={() => note.current?.togglePopover()}>
          {children}
        </Press>
      ) : (
        <button
          type="button"
          class="term"
          ref={(button) => {
            word.current = button;
          }}
          popovertarget={id}
        >
          {children}
        </button>
      )}
      <span
        class="meaning"
        id={id}
        popover="auto"
        ref={note}
        onBeforeToggle={() => setOpened(true)}
        onToggle={place}
      >
        {opened && (
          <>
            {text} {more}
          </>
        )}
      </span>
    </>
  );
}

interface PressProps {
  class: string;
  onPress(): void;
  at?: { current: HTMLElement | null };
  children: ComponentChildren;
}

/** A button; where controls are held fast one that a disabled group leaves alone. */
function Press({ class: name, onPress, at, children }: PressProps) {
  if (!useContext(Held)) {
    return (
      <button type="button" class={name} onClick={onPress}>
        {children}
      </button>
    );
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button in a disabled fieldset could not be pressed.
    <span
      role="button"
      tabIndex={0}
      class={name}
      ref={(span) => {
        if (at) at.current = span;
      }}
      onClick={(event) => {
        // In a label it would go on to the field.
        event.preventDefault();
        onPress();
      }}
      onKeyDown={(event) => {
        if (event.key !== "Enter" && event.key !== " ") return;
        event.preventDefault();
        onPress();
      }}
    >
      {children}
    </span>
  );
}
