import { useStore } from "../../store";
import { say } from "./say";

/** The way to the model note, from where the model is used. */
export function ToModelNote() {
  const store = useStore();
  return (
    <button type="button" class="to-model" onClick={() => store.look({ room: "model" })}>
      {say("model-to-note")}
    </button>
  );
}
