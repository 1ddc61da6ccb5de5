import { useErrorBoundary } from "preact/hooks";
import { Announcer } from "./announce";
import { Bar } from "./bar";
import { say } from "./frame";
import { arrange } from "./lessons/arrange";
import { waits } from "./lessons/taken";
import { Say } from "./locale/say";
import { Fault } from "./parts/fault";
import { Hatches } from "./parts/swatch";
import { inWorkshop, type Place, RoomsNav, roomName, useFront, useWorkshop, WHOLE, WORKSHOP } from "./places";
import { useStore } from "./store";
import { Strip } from "./strip";

/** The workshop on a desk, one room of it on a phone, or a room that takes the whole space. */
export function App() {
  const store = useStore();
  const front = useFront();
  const [broken] = useErrorBoundary();
  const fault = store.fault.value ?? broken;
  if (fault) {
    const { file, shot } = store.derived.value;
    return <Fault error={fault} doc={store.doc.value} good={{ ball: file, shot }} />;
  }
  const workshop = inWorkshop(front);
  const lesson = store.loan.value !== null;
  const large = lesson ? null : store.view.value.large;
  const shown = useWorkshop();
  const waiting = waits(store.loan.value?.taken);
  return (
    <div class="page">
      <a class="skip" href="#rooms">
        {workshop ? say("frame-skip-ball") : say("frame-skip-room", { room: roomName(front) })}
      </a>
      <Hatches />
      <Bar />
      <RoomsNav />
      {workshop && <Strip away={waiting} />}
      <main
        class="rooms"
        id="rooms"
        tabIndex={-1}
        data-place={workshop ? "workshop" : front}
        data-large={large ?? undefined}
        data-lesson={(workshop && lesson) || undefined}
        style={workshop && lesson ? arrange(shown.map(({ room }) => room)) : undefined}
      >
        {workshop && !lesson && <Elsewhere />}
        {shown.slice(0, lesson ? 1 : 0).map((place) => (
          <Room key={place.room} {...place} kind="workshop" stale={false} out={!workshop} />
        ))}
        {WORKSHOP.map((place) => (
          <Room
            key={place.room}
            {...place}
            kind="workshop"
            stale={place.room !== "bench"}
            out={!shown.some(({ room }) => room === place.room)}
          />
        ))}
        {WHOLE.filter(({ room }) => room === front).map((place) => (
          <Room key={place.room} {...place} kind="whole" stale={false} out={false} />
        ))}
      </main>
      <Announcer />
    </div>
  );
}

interface RoomProps extends Place {
  kind: "workshop" | "whole";
  stale: boolean;
  /** Kept as it is, out of view. */
  out: boolean;
}

function Room({ room, View, kind, stale, out }: RoomProps) {
  const name = roomName(room);
  const store = useStore();
  const front = useFront();
  const lesson = store.loan.value !== null;
  const large = !lesson && store.view.value.large === room;
  return (
    <section
      class={`room room-${room}`}
      id={`room-${room}`}
      tabIndex={-1}
      aria-labelledby={`room-${room}-name`}
      data-kind={kind}
      data-front={front === room || undefined}
      data-large={large || undefined}
      data-out={out || undefined}
    >
      <h2 class="room-name" id={`room-${room}-name`}>
        {name}
      </h2>
      {kind === "workshop" && room !== "bench" && !lesson && <Larger room={room} name={name} large={large} />}
      {stale && <Stale />}
      <div class="room-body">
        <View />
      </div>
    </section>
  );
}

/** Gives a room of the workshop the space of the others, beside the Bench, and back. */
function Larger({ room, name, large }: { room: Place["room"]; name: string; large: boolean }) {
  const store = useStore();
  return (
    <button
      type="button"
      class="room-larger"
      aria-label={large ? undefined : say("frame-larger-room", { room: name })}
      onClick={() => store.look({ large: large ? null : room })}
    >
      {large ? say("frame-all-rooms") : say("frame-larger")}
    </button>
  );
}

/** Says so while an edit is wrong and the rooms show the ball before it. */
function Stale() {
  const problem = useStore().derived.value.ballProblem;
  if (!problem) return null;
  return (
    <p class="stale room-stale">
      <span class="room-stale-whole">{say("frame-stale")}</span>
      <span class="room-stale-short" aria-hidden="true">
        {say("frame-stale-short")}
      </span>
    </p>
  );
}

/** The invitation, where the Bench that makes it is not in view. */
function Elsewhere() {
  const store = useStore();
  if (store.canUndo.value || store.view.value.room === "bench") return null;
  return (
    <p class="invitation invitation-elsewhere">
      <Say
        id="frame-elsewhere"
        parts={{
          bench: (word) => (
            <button type="button" class="term" onClick={() => store.look({ room: "bench" })}>
              {word}
            </button>
          ),
        }}
      />
    </p>
  );
}
