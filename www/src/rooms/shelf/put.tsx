import { useState } from "preact/hooks";
import { MOST_NAME_CHARS, MOST_NOTE_CHARS, useShelf } from "../../shelf/shelf";
import { useStore } from "../../store";
import type { Item } from "./items";
import { say } from "./say";

/** Keeps the bench's ball and shot as they are now, under a name and with a note. */
export function PutForm({ item }: { item: Item }) {
  const shelf = useShelf();
  const { ballProblem, shotProblem } = useStore().derived.value;
  const [name, setName] = useState(item.name);
  const [note, setNote] = useState("");
  return (
    <form
      class="put-form"
      data-own-undo
      onSubmit={(event) => {
        event.preventDefault();
        void shelf.add(name.trim() || item.name, note, item.shot);
        setNote("");
      }}
    >
      <label>
        <span>{say("shelf-name")}</span>
        <input
          type="text"
          value={name}
          maxLength={MOST_NAME_CHARS}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      <label>
        <span>{say("shelf-note")}</span>
        <input
          type="text"
          value={note}
          maxLength={MOST_NOTE_CHARS}
          placeholder={say("shelf-note-for")}
          onInput={(event) => setNote(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="primary">
        {say("shelf-put")}
      </button>
      {(ballProblem ?? shotProblem) && <p class="says says-caution">{say("shelf-last-good")}</p>}
    </form>
  );
}
