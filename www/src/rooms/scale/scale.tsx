import { useStore } from "../../store";
import { reading } from "../../units";

/** The ball's numbers. */
export function Scale() {
  const store = useStore();
  return <p>{reading(store.derived.value.weighed.weight_lb, "weight", store.view.value.units)}</p>;
}
