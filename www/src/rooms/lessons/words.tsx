import { useEffect, useRef, useState } from "preact/hooks";
import "../../draw/draw.css";
import { Globe, track } from "../../draw/globe";
import { groundOf } from "../../draw/ground";
import { LaneDrawing } from "../../draw/lane";
import { place } from "../../draw/lane-frame";
import { LayoutDrawing } from "../../draw/layout";
import { endOf } from "../../draw/moment";
import { ShotsDrawing } from "../../draw/shots";
import { fromGlossary } from "../../lessons/at";
import { type Scene, sceneOf } from "../../lessons/scenes";
import { SectionDrawing } from "../../parts/section-drawing";
import { type Room, useStore } from "../../store";
import { meaningOf, WORDS, type Word } from "../../words";
import { usePictures } from "./counted";
import { APART, apartSays, type Draws, NUMBERS, pictureOf } from "./pictures";

const ALL = (Object.keys(WORDS) as Word[]).sort((a, b) => a.localeCompare(b, "en", { sensitivity: "base" }));
/** Words of counting are shown on balls that are poured for them. */
const LISTS = [
  { title: "Words of the trade", words: ALL.filter((word) => pictureOf(word).draws !== "counted") },
  { title: "Words of counting", words: ALL.filter((word) => pictureOf(word).draws === "counted") },
];
/** All of them are shown on one. */
const POURED = pictureOf("tolerance").doc.ball;
const AT_ONCE = 3;

/** The trade's words, each with its meaning and a picture computed here. */
export function Words({ word, from }: { word: Word | null; from?: Room }) {
  const store = useStore();
  // A few at a time, the one that was asked for first.
  const [drawn, setDrawn] = useState(AT_ONCE);
  useEffect(() => {
    if (drawn >= ALL.length) return undefined;
    const timer = setTimeout(() => setDrawn(drawn + AT_ONCE), 16);
    return () => clearTimeout(timer);
  }, [drawn]);
  const front = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (word === null) return;
    // Once the room itself has taken the keyboard.
    requestAnimationFrame(() => requestAnimationFrame(() => front.current?.focus()));
  }, [word]);
  const counted = usePictures(POURED);
  const order = word ? [word, ...ALL.filter((other) => other !== word)] : ALL;
  const due = new Set(order.slice(0, drawn));
  return (
    <section aria-label="Words">
      {from && (
        <button type="button" class="primary" onClick={() => fromGlossary(store, from)}>
          {store.loan.value ? "Back to the lesson" : "Back to where you were"}
        </button>
      )}
      <p>
        Each picture is worked out by this page, from a ball and a shot of Harbour Street Lanes. Wherever a
        word has a dotted line under it, it opens its meaning, and from there you come here.
      </p>
      {LISTS.map(({ title, words }) => (
        <section key={title} aria-label={title}>
          <h3>{title}</h3>
          <ul class="words-list">
            {words.map((one) => (
              <li
                key={one}
                id={`word-${ALL.indexOf(one)}`}
                class="words-entry"
                tabIndex={one === word ? -1 : undefined}
                ref={one === word ? front : undefined}
              >
                <h4>{one}</h4>
                <p>{meaningOf(one)}</p>
                {due.has(one) &&
                  (words === LISTS[1]?.words ? counted(one, pictureOf(one).shows) : <Drawn word={one} />)}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </section>
  );
}

const LANE = place(300, 150);

function Drawn({ word }: { word: Word }) {
  const store = useStore();
  const { units } = store.view.value;
  const picture = pictureOf(word);
  const scene = sceneOf(store, picture.doc);
  const number = NUMBERS[word]?.(scene, units) ?? "";
  const says = number === "" ? picture.shows : `${picture.shows} Here: ${number}.`;
  const apart = APART[word]?.();
  const scenes = apart?.map(([, doc]) => sceneOf(store, doc));
  const id = `word-picture-${ALL.indexOf(word)}`;
  return (
    <>
      <figure>
        <Drawing id={id} draws={picture.draws} scenes={[scene]} word={word} says={says} />
        <figcaption>{says}</figcaption>
      </figure>
      {apart && scenes && (
        <Apart id={`${id}-apart`} word={word} names={apart.map(([name]) => name)} scenes={scenes} />
      )}
    </>
  );
}

interface ApartProps {
  id: string;
  word: Word;
  names: string[];
  scenes: Scene[];
}

/** Shots that differ in one thing. */
function Apart({ id, word, names, scenes }: ApartProps) {
  const { units } = useStore().view.value;
  const says = apartSays(names, scenes, units);
  return (
    <figure>
      <Drawing id={id} draws="lane" scenes={scenes} word={word} says={says} />
      <figcaption>{says}</figcaption>
    </figure>
  );
}

interface DrawingProps {
  id: string;
  draws: Draws;
  scenes: Scene[];
  word: Word;
  says: string;
}

function Drawing({ id, draws, scenes, word, says }: DrawingProps) {
  const store = useStore();
  const { units } = store.view.value;
  const [first] = scenes;
  if (!first) return null;
  const { hand } = first.shot;
  const lane = {
    id,
    hand,
    ground: groundOf(store.wasm, first.shot.lane),
    place: LANE,
    t_s: null,
    metric: units === "metric",
    title: `${word}, on the lane from above`,
    desc: says,
  };
  switch (draws) {
    case "cut":
      return (
        <div class="words-balls">
          {scenes.map(({ file, section }) => (
            <SectionDrawing key={file.name} section={section} diameter_in={file.diameter_in} />
          ))}
        </div>
      );
    case "lane":
      return scenes.length === 1 ? (
        <LaneDrawing {...lane} roll={first.roll} />
      ) : (
        <ShotsDrawing {...lane} shots={scenes.map(({ roll }, n) => ({ letter: "ABCD"[n] ?? "", roll }))} />
      );
    case "rings":
      return (
        <Globe
          id={id}
          roll={first.roll}
          hand={hand}
          points={track(first.roll)}
          holes={first.file.holes ?? []}
          radius_in={first.file.diameter_in / 2}
          measured
          t_s={endOf(first.roll)}
          size_px={200}
          title={`${word}, on the ball`}
          desc={says}
        />
      );
    case "counted":
      return null;
    case "layout":
      return first.drilled ? (
        <LayoutDrawing
          id={id}
          drilled={first.drilled}
          hand={hand}
          track={null}
          radius_in={first.file.diameter_in / 2}
          size_px={260}
          units={units}
        />
      ) : null;
  }
}
