import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import { MOST_NAME_CHARS, MOST_NOTE_CHARS } from "../../shelf/letters";
import type { Entry } from "../../shelf/record";
import { useShelf } from "../../shelf/shelf";
import { say } from "./say";

/** Name and note of an entry; what is typed is kept even where the room is left meanwhile. */
export function EditForm({ seen, onDone }: { seen: Entry; onDone(): void }) {
  const shelf = useShelf();
  const [name, setName] = useState(seen.name);
  const [note, setNote] = useState(seen.note);
  const typed = useRef<{ name: string; note: string } | null>(null);
  const first = useRef<HTMLInputElement>(null);
  typed.current = { name, note };

  // At once, so that nobody who is already typing elsewhere is called away.
  useLayoutEffect(() => first.current?.focus(), []);
  useEffect(() => {
    return () => {
      const last = typed.current;
      if (last) void shelf.change(seen, { name: last.name.trim() || seen.name, note: last.note.trim() });
    };
  }, []);

  return (
    <form
      class="edit-form"
      data-own-undo
      onSubmit={(event) => {
        event.preventDefault();
        onDone();
      }}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        setName(seen.name);
        setNote(seen.note);
        typed.current = null;
        onDone();
      }}
    >
      <label>
        <span>{say("shelf-name")}</span>
        <input
          type="text"
          ref={first}
          value={name}
          maxLength={MOST_NAME_CHARS}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      <label>
        <span>{say("shelf-note")}</span>
        <textarea
          rows={3}
          value={note}
          maxLength={MOST_NOTE_CHARS}
          onInput={(event) => setNote(event.currentTarget.value)}
        />
      </label>
      <div class="choices">
        <button type="submit">{say("shelf-done")}</button>
        <button
          type="button"
          onClick={() => {
            typed.current = null;
            onDone();
          }}
        >
          {say("shelf-leave")}
        </button>
      </div>
    </form>
  );
}
