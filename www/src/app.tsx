import { useErrorBoundary } from "preact/hooks";
import { Announcer } from "./announce";
import { Bar } from "./bar";
import { Fault } from "./parts/fault";
import { Hatches } from "./parts/swatch";
import { Bench } from "./rooms/bench/bench";
import { Lane } from "./rooms/lane/lane";
import { Saw } from "./rooms/saw/saw";
import { Scale } from "./rooms/scale/scale";
import { type Room, useStore } from "./store";
import { Strip } from "./strip";

const ROOMS: { room: Room; name: string; View: () => preact.JSX.Element | null }[] = [
  { room: "bench", name: "Bench", View: Bench },
  { room: "saw", name: "Saw", View: Saw },
  { room: "scale", name: "Scale", View: Scale },
  { room: "lane", name: "Lane", View: Lane },
];

/** All rooms at once on a desk; the one in front on a phone. */
export function App() {
  const store = useStore();
  const front = store.view.value.room;
  const [broken] = useErrorBoundary();
  const fault = store.fault.value ?? broken;
  if (fault) return <Fault error={fault} doc={store.doc.value} />;
  return (
    <div class="page">
      <a class="skip" href="#rooms">
        Skip to the ball
      </a>
      <Hatches />
      <Bar />
      <nav class="rooms-nav" aria-label="Rooms">
        {ROOMS.map(({ room, name }) => (
          <button
            type="button"
            key={room}
            aria-current={front === room ? "true" : undefined}
            onClick={() => store.look({ room })}
          >
            {name}
          </button>
        ))}
      </nav>
      <Strip />
      <Elsewhere />
      <main class="rooms" id="rooms" tabIndex={-1} data-front={front}>
        {ROOMS.map(({ room, name, View }) => (
          <section class={`room room-${room}`} key={room} aria-labelledby={`room-${room}`}>
            <h2 class="room-name" id={`room-${room}`}>
              {name}
            </h2>
            <div class="room-body">
              {room !== "bench" && <Stale />}
              <View />
            </div>
          </section>
        ))}
      </main>
      <Announcer />
    </div>
  );
}

/** Says so while an edit is wrong and the rooms show the ball before it. */
function Stale() {
  const problem = useStore().derived.value.ballProblem;
  if (!problem) return null;
  return <p class="stale">The ball on the Bench has a mistake; this is still the last good one.</p>;
}

/** The invitation, where the Bench that makes it is not in view. */
function Elsewhere() {
  const store = useStore();
  if (store.canUndo.value || store.view.value.room === "bench") return null;
  return (
    <aside class="invitation invitation-elsewhere" aria-label="Where to start">
      Change something: make a piece heavier on the{" "}
      <button type="button" class="term" onClick={() => store.look({ room: "bench" })}>
        Bench
      </button>{" "}
      and watch these numbers answer.
    </aside>
  );
}
