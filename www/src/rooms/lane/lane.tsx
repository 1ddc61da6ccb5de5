import { useStore } from "../../store";

/** The shot down the lane. */
export function Lane() {
  const store = useStore();
  const summary = store.derived.value.roll.summary;
  return <p>{`Board ${summary.board_at_pins?.toFixed(1) ?? "none"} at the pins`}</p>;
}
