// The Saw's view of the cover: its thickness on the ball, or on a flat map of
// it where three dimensions cannot be had or are not wanted; and the same in words.
import { useAloud } from "../../aloud";
import { byFinger } from "../../by-finger";
import { Broken } from "../../parts/broken";
import { Term } from "../../parts/term";
import "../../cover/cover.css";
import { CLASSES, LIMITS_IN, limitText } from "../../cover/classes";
import { Legend } from "../../cover/legend";
import { say } from "../../cover/say";
import { COLUMNS, type Covered, ROWS, useCover } from "../../cover/use-cover";
import { besideHoles, computed, inPractice, thickness, whereabouts } from "../../cover/words";
import { CoverMap } from "../../draw/cover-map";
import { Say } from "../../locale/say";
import { type Units, useStore } from "../../store";
import type { Vec3 } from "../../types";
import type { Camera } from "./camera";
import { normalOf } from "./plane";
import { Solid } from "./solid";

/** Where the thickness is always told, each with the name of its text. */
const PLACES: { name: string; direction: Vec3 }[] = [
  { name: "cover-at-pin", direction: [0, 0, 1] },
  { name: "cover-opposite-pin", direction: [0, 0, -1] },
  { name: "cover-at-plus-x", direction: [1, 0, 0] },
  { name: "cover-at-minus-x", direction: [-1, 0, 0] },
  { name: "cover-at-plus-y", direction: [0, 1, 0] },
  { name: "cover-at-minus-y", direction: [0, -1, 0] },
];

interface CoverPictureProps {
  camera: Camera;
  onCamera(change: (camera: Camera) => Camera): void;
  onMissing(why: string): void;
  onReady(picture: () => Promise<Blob | null>): void;
  /** Told of a direction that was clicked. */
  onPlace(direction: Vec3): void;
  /** Shown flat: no WebGL2, or the reader's choice. */
  flat: boolean;
}

export function CoverPicture({ flat, onPlace, ...solid }: CoverPictureProps) {
  const store = useStore();
  const { units } = store.view.value;
  const { ball, file } = store.derived.value;
  const { covered, broken } = useCover();
  if (broken) return <Broken broken={broken} />;
  if (!covered) return <p>{say("cover-measuring")}</p>;
  if (flat) return <Flat covered={covered} units={units} />;
  const told = (direction: Vec3) => thickness(ball.cover_along(direction), file.diameter_in / 2, units);
  const spots = spotsOf(covered);
  const named = (spot: Vec3, n: number) =>
    n === 0 && covered.cover.thinnest ? say("cover-thinnest-mark", { thickness: told(spot) }) : told(spot);
  return (
    <Solid
      {...solid}
      highlighted={null}
      onPick={() => {}}
      cover={{
        look: { limits_in: LIMITS_IN, colours: CLASSES.map(({ colour }) => colour), spots },
        names: spots.map(named),
        onPlace,
      }}
    />
  );
}

/** The thinnest place first, then the fixed ones that are not all but the same. */
function spotsOf({ cover }: Covered): Vec3[] {
  const first = cover.thinnest?.direction;
  const others = PLACES.map(({ direction }) => direction);
  if (!first) return others;
  const apart = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2] < 0.9;
  return [first, ...others.filter((direction) => apart(first, direction))];
}

function Flat({ covered, units }: { covered: Covered; units: Units }) {
  const { cover, map, to_hole_in, file } = covered;
  const { thinnest } = cover;
  return (
    <CoverMap
      map={map}
      to_hole_in={to_hole_in}
      rows={ROWS}
      columns={COLUMNS}
      limits_in={LIMITS_IN}
      colours={CLASSES.map(({ css }) => css)}
      label={(limit_in) => limitText(limit_in, units)}
      mark={
        thinnest && cover.as_thin_share < 0.995
          ? {
              direction: thinnest.direction,
              text: say("cover-thinnest-mark", {
                thickness: thickness(thinnest.thickness_in, file.diameter_in, units),
              }),
            }
          : null
      }
      title={say("cover-map", { ball: file.name })}
      desc={computed(covered, units).join(" ")}
    />
  );
}

interface CoverWordsProps {
  /** Where the ball was clicked last. */
  place: Vec3 | null;
  /** Whether the picture can be clicked. */
  clickable: boolean;
  onCut(): void;
}

/** The same as the picture, in words, and the saw put through the thinnest place. */
export function CoverWords(props: CoverWordsProps) {
  const { covered } = useCover();
  return covered && <Words {...props} covered={covered} />;
}

function Words({ place, clickable, onCut, covered }: CoverWordsProps & { covered: Covered }) {
  const store = useStore();
  const { units } = store.view.value;
  const { ball, file } = store.derived.value;
  const { cover } = covered;
  const radius_in = file.diameter_in / 2;
  const { thinnest } = cover;
  const told = (direction: Vec3) => thickness(ball.cover_along(direction), radius_in, units);
  useAloud(covered, computed(covered, units)[0] ?? null);
  return (
    <div class="cover-words" id="cover-words">
      <Legend {...covered} />
      {clickable && (
        <p class="cover-place" role="status">
          {place
            ? say("cover-here", { place: whereabouts(place), thickness: told(place) })
            : say(byFinger() ? "cover-click-finger" : "cover-click")}
        </p>
      )}
      {computed(covered, units).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {thinnest && (
        <button
          type="button"
          onClick={() => {
            const [x, y] = thinnest.direction;
            const round_deg = Math.hypot(x, y) < 1e-9 ? 0 : (Math.atan2(y, x) * 180) / Math.PI + 90;
            store.look({ plane: { normal: normalOf({ round_deg, up_deg: 0 }), depth_in: 0 } });
            onCut();
          }}
        >
          {say("cover-cut")}
        </button>
      )}
      <table>
        <caption>
          <Say
            id="cover-along-radius"
            parts={{ coverstock: (word) => <Term word="coverstock">{word}</Term> }}
          />
        </caption>
        <tbody>
          {PLACES.map(({ name, direction }) => (
            <tr key={name}>
              <th scope="row">{say(name)}</th>
              <td>{told(direction)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {besideHoles(cover, units).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>{inPractice(cover, units)}</p>
      <p class="fine-print">{say("cover-in-practice-note")}</p>
    </div>
  );
}
