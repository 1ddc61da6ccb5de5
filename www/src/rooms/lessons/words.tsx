import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import "../../draw/draw.css";
import { Globe, track } from "../../draw/globe";
import { groundOf } from "../../draw/ground";
import { LaneDrawing } from "../../draw/lane";
import { place } from "../../draw/lane-frame";
import { LayoutDrawing } from "../../draw/layout";
import { endOf } from "../../draw/moment";
import { ShotsDrawing } from "../../draw/shots";
import { remPx } from "../../draw/use-size";
import { fromGlossary } from "../../lessons/at";
import { type Scene, sceneOf } from "../../lessons/scenes";
import { language } from "../../locale/language";
import { SectionDrawing } from "../../parts/section-drawing";
import { type Room, useStore } from "../../store";
import { meaningOf, nameOf, WORDS, type Word } from "../../words";
import { usePictures } from "./counted";
import { APART, apartSays, type Draws, drawsOf, NUMBERS, pictureOf } from "./pictures";
import { say } from "./say";

const ALL = Object.keys(WORDS) as Word[];
/** As a dictionary of the page's language has them. */
const sorted = (): Word[] =>
  ALL.toSorted((a, b) => nameOf(a).localeCompare(nameOf(b), language(), { sensitivity: "base" }));
/** Words of counting are shown on balls that are poured for them. */
const isCounted = (word: Word): boolean => drawsOf(word) === "counted";
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
  const all = useMemo(sorted, [language()]);
  const lists = [
    { title: say("words-trade"), words: all.filter((one) => !isCounted(one)) },
    { title: say("words-counting"), words: all.filter(isCounted) },
  ];
  // All of them are shown on one ball.
  const poured = useMemo(() => pictureOf("tolerance").doc.ball, [language()]);
  const counted = usePictures(poured);
  const order = word ? [word, ...all.filter((other) => other !== word)] : all;
  const due = new Set(order.slice(0, drawn));
  return (
    <section aria-label={say("lessons-words")}>
      {from && (
        <button type="button" class="primary" onClick={() => fromGlossary(store, from)}>
          {say(store.loan.value ? "words-back-to-lesson" : "words-back")}
        </button>
      )}
      <p>{say("words-says")}</p>
      {lists.map(({ title, words }) => (
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
                <h4>{nameOf(one)}</h4>
                <p>{meaningOf(one)}</p>
                {due.has(one) && (isCounted(one) ? counted(one) : <Drawn word={one} />)}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </section>
  );
}

function Drawn({ word }: { word: Word }) {
  const store = useStore();
  const { units } = store.view.value;
  const picture = pictureOf(word);
  const scene = sceneOf(store, picture.doc);
  const number = NUMBERS[word]?.(scene, units) ?? "";
  const says = number === "" ? picture.shows : say("words-here", { shows: picture.shows, number });
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
    // No wider than a phone, where letters are large.
    place: place(Math.min(remPx(18.75), document.documentElement.clientWidth - 64), remPx(9.4)),
    t_s: null,
    metric: units === "metric",
    title: say("words-on-lane", { word: nameOf(word) }),
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
          size_px={remPx(12.5)}
          title={say("words-on-ball", { word: nameOf(word) })}
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
          size_px={remPx(16.25)}
          units={units}
        />
      ) : null;
  }
}
