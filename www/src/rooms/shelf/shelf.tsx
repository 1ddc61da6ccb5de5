import "./shelf.css";
import { House } from "./house";

/** Balls to keep and to compare. */
export function Shelf() {
  return (
    <div class="shelf">
      <House />
    </div>
  );
}
