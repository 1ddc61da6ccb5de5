import { useStore } from "../../store";

/** The way to the model note, from where the model is used. */
export function ToModelNote() {
  const store = useStore();
  return (
    <button type="button" class="to-model" onClick={() => store.look({ room: "model" })}>
      What this model leaves out
    </button>
  );
}
