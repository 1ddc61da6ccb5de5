import { useShelf } from "../../shelf/shelf";
import { useStore } from "../../store";
import { useTyped } from "../../typed";
import type { Item } from "./items";
import { say } from "./say";

/** Keeps the bench's ball and shot as they are now, under a name and with a note. */
export function PutForm({ item }: { item: Item }) {
  const shelf = useShelf();
  const { ballProblem, shotProblem } = useStore().derived.value;
  const name = useTyped(`pithball.put.name.${item.name}`, item.name);
  const note = useTyped("pithball.put.note", "");
  return (
    <form
      class="put-form"
      data-own-undo
      onSubmit={async (event) => {
        event.preventDefault();
        const put = note.value;
        const stands = await shelf.add(name.value.trim() || item.name, put, item.shot);
        // What was refused, or typed meanwhile, stays.
        if (stands && note.value === put) note.value = "";
      }}
    >
      <label>
        <span>{say("shelf-name")}</span>
        <input
          type="text"
          value={name}
          onInput={(event) => {
            name.value = event.currentTarget.value;
          }}
        />
      </label>
      <label>
        <span>{say("shelf-note")}</span>
        <input
          type="text"
          value={note}
          placeholder={say("shelf-note-for")}
          onInput={(event) => {
            note.value = event.currentTarget.value;
          }}
        />
      </label>
      <button type="submit" class="primary">
        {say("shelf-put")}
      </button>
      {(ballProblem ?? shotProblem) && <p class="says says-caution">{say("shelf-last-good")}</p>}
    </form>
  );
}
