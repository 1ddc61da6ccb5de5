import { useMemo } from "preact/hooks";
import { useAloud } from "../../../aloud";
import { groundOf } from "../../../draw/ground";
import { LaneAndClose } from "../../../draw/lane-and-close";
import { endOf, momentAt } from "../../../draw/moment";
import type { OneShot } from "../../../draw/shots";
import { useSize } from "../../../draw/use-size";
import { useStore } from "../../../store";
import { reading, sentenceIn } from "../../../units";
import { usePlayer } from "../../lane/player";
import { whatHappened } from "../../lane/sentence";
import { Transport } from "../../lane/transport";
import { say } from "../say";
import { ShotTable } from "./table";
import { type Compared, onOtherLanes } from "./throws";
import { against } from "./words";

/** All shots on one lane from the same moment on, and what sets them apart. */
export function Shots({ all }: { all: Compared[] }) {
  const store = useStore();
  const { units } = store.view.value;
  const above = useSize<HTMLDivElement>();
  const shots: OneShot[] = all.flatMap(({ letter, roll }) => (roll ? [{ letter, roll }] : []));
  const end_s = Math.max(0, ...shots.map(({ roll }) => endOf(roll)));
  const player = usePlayer(end_s, above[0]);
  const [first] = all;
  const lane = first?.shot.lane;
  const ground = useMemo(() => (lane ? groundOf(store.wasm, lane) : { tints: [], oil_end_ft: null }), [lane]);
  const opening = first?.roll
    ? say("compare-wrong", { letter: first.letter, what: whatHappened(first.roll, first.shot.hand, units) })
    : "";
  const said = first
    ? [opening, ...all.slice(1).map((other) => against(first, other, units))].filter(Boolean)
    : [];
  const words = said.join(" ");
  useAloud(words, words);
  if (!first) return null;
  const now = shots.flatMap(({ letter, roll }) => {
    const moment = momentAt(roll, player.t_s);
    return moment ? [`${letter} ${reading(moment.y_ft, "distance", units)}`] : [];
  });
  const common = {
    shots,
    hand: first.shot.hand,
    ground,
    t_s: player.t_s >= end_s ? null : player.t_s,
    metric: units === "metric",
  };
  const others = onOtherLanes(all);
  const hands = all.filter(({ shot }) => shot.hand !== first.shot.hand);
  const more = [
    say(common.t_s === null ? "compare-at-rest" : "compare-same-moment"),
    others.length > 0 && say("compare-other-lanes", { first: first.letter, others: lettersOf(others) }),
    hands.length > 0 && say("compare-other-hands", { first: first.letter, others: lettersOf(hands) }),
  ];
  return (
    <section class="compare-part" aria-labelledby="compare-shots">
      <h4 id="compare-shots">{say("compare-shots")}</h4>
      {all.map(
        ({ letter, problem }) =>
          problem && (
            <p class="says says-wrong" key={letter}>
              {say("compare-wrong", { letter, what: sentenceIn(problem.message, units) })}
            </p>
          ),
      )}
      <ul class="compare-says">
        {said.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <LaneAndClose
        {...common}
        id="compare"
        above={above}
        title={say("compare-drawing", { many: shots.length })}
        desc={words}
        closeDesc={said.slice(1).join(" ")}
        more={` ${more.filter(Boolean).join(" ")}`}
      >
        <Transport
          player={player}
          end_s={end_s}
          said={words}
          place={[reading(player.t_s, "time", units), ...now].join(", ")}
        />
      </LaneAndClose>
      <ShotTable all={all} />
    </section>
  );
}

const lettersOf = (all: Compared[]): string => all.map(({ letter }) => letter).join(", ");
