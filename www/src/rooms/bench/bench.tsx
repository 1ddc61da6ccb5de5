import { useStore } from "../../store";

/** Where the ball is made. */
export function Bench() {
  const store = useStore();
  return <p>{store.doc.value.ball.name}</p>;
}
