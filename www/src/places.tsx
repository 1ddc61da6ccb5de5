// Where one can be on the page: the workshop's rooms, together on a desk and
// one at a time on a phone, and rooms that take the whole space.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { say } from "./frame";
import { startEditions } from "./lessons/editions";
import { later } from "./parts/later";
import { part } from "./parts/part";
import { Bench } from "./rooms/bench/bench";
import { Lane } from "./rooms/lane/lane";
import { Saw } from "./rooms/saw/saw";
import { Scale } from "./rooms/scale/scale";
import { FIRST_VIEW, type Room, useStore } from "./store";

export interface Place {
  room: Room;
  View: () => JSX.Element | null;
  /** Reached from another room, not from the bar. */
  aside?: true;
}

export const WORKSHOP: Place[] = [
  { room: "bench", View: Bench },
  { room: "saw", View: Saw },
  { room: "scale", View: Scale },
  { room: "lane", View: Lane },
];

const module = part(async () => (await import("./more")).startMore());
const startMore = () => Promise.all([module(), startEditions()]);
const LessonPanel = later(async () => {
  await startMore();
  return (await import("./rooms/lesson/lesson")).LessonPanel;
});
const Lessons = later(async () => {
  await startMore();
  return (await import("./rooms/lessons/lessons")).Lessons;
});
const Shelf = later(async () => (await import("./rooms/shelf/shelf")).Shelf);
const Sheet = later(async () => (await import("./rooms/sheet/sheet")).Sheet);
const ModelNote = later(async () => (await import("./rooms/model/model")).ModelNote);

/** Beside the workshop while a lesson has the bench. */
const LESSON: Place = { room: "lesson", View: LessonPanel };

/** Rooms that take the whole space; shown alone, and only then built. */
export const WHOLE: Place[] = [
  { room: "shelf", View: Shelf },
  { room: "sheet", View: Sheet },
  { room: "lessons", View: Lessons },
  { room: "model", View: ModelNote, aside: true },
];
const NAMES: Record<Room, string> = {
  bench: "room-bench",
  saw: "room-saw",
  scale: "room-scale",
  lane: "room-lane",
  lesson: "room-lesson",
  shelf: "room-shelf",
  sheet: "room-sheet",
  lessons: "room-lessons",
  model: "room-model",
};

export const roomName = (room: Room): string => say(NAMES[room]);

const IN_BAR = WHOLE.filter(({ aside }) => !aside);

export const inWorkshop = (room: Room): boolean =>
  room === "lesson" || WORKSHOP.some((place) => place.room === room);

/** The workshop as it stands: all rooms, or those that a step of a lesson shows, after the lesson. */
export function useWorkshop(): Place[] {
  const taken = useStore().loan.value?.taken;
  if (!taken) return WORKSHOP;
  // In the order in which the lesson names them: what the step is about comes first.
  const named = taken.rooms?.flatMap((name) => WORKSHOP.filter(({ room }) => room === name));
  return [LESSON, ...(named ?? WORKSHOP)];
}

/** The room in front; what is kept from another version may name one that is not there. */
export function useFront(): Room {
  const { room } = useStore().view.value;
  const workshop = useWorkshop();
  if ([...workshop, ...WHOLE].some((place) => place.room === room)) return room;
  return workshop === WORKSHOP ? FIRST_VIEW.room : "lesson";
}

/** Goes to a room and takes the reader's place on the page along. */
function useGo(): (room: Room) => void {
  const store = useStore();
  return (room) => {
    store.look({ room });
    // Once it is drawn, which the change above asked for first.
    requestAnimationFrame(() => {
      // At its beginning, not where the one before was left.
      document.getElementById("rooms")?.scrollTo(0, 0);
      document.getElementById(`room-${room}`)?.focus({ preventScroll: true });
    });
  };
}

interface TabProps {
  name: string;
  current: boolean;
  onGo(): void;
}

function Tab({ name, current, onGo }: TabProps) {
  return (
    <button type="button" aria-current={current ? "true" : undefined} onClick={onGo}>
      {name}
    </button>
  );
}

/** Workshop or a room that takes the whole space, where the workshop fits as a whole. */
export function PlacesNav() {
  const go = useGo();
  const front = useFront();
  // A lesson has the workshop: one is in both.
  const lesson = useStore().loan.value !== null && inWorkshop(front);
  const last = useRef<Room>(FIRST_VIEW.room);
  useEffect(() => {
    if (inWorkshop(front)) last.current = front;
  }, [front]);
  return (
    <nav class="places-nav" aria-label={say("room-places")}>
      <Tab name={say("room-workshop")} current={inWorkshop(front)} onGo={() => go(last.current)} />
      {IN_BAR.map(({ room }) => (
        <Tab
          key={room}
          name={roomName(room)}
          current={front === room || (lesson && room === "lessons")}
          onGo={() => go(room)}
        />
      ))}
    </nav>
  );
}

/** Every room by itself, where only one fits. */
export function RoomsNav() {
  const go = useGo();
  const front = useFront();
  const workshop = useWorkshop();
  return (
    <nav class="rooms-nav" aria-label={say("room-rooms")}>
      {[...workshop, ...IN_BAR].map(({ room }) => (
        <Tab key={room} name={roomName(room)} current={front === room} onGo={() => go(room)} />
      ))}
    </nav>
  );
}
