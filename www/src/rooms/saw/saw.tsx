import { useStore } from "../../store";

/** The ball sawn open. */
export function Saw() {
  const store = useStore();
  return <p>{store.derived.value.file.name}</p>;
}
