import "./saw.css";
import { render } from "preact";
import { useRef, useState } from "preact/hooks";
import { byFinger } from "../../by-finger";
import { useSize } from "../../draw/use-size";
import { download, fileName } from "../../files";
import { Result } from "../../parts/result";
import { useStore } from "../../store";
import type { Section, Vec3 } from "../../types";
import { type Camera, facingCamera } from "./camera";
import { CoverPicture, CoverWords } from "./cover-picture";
import { CutWords } from "./cut-words";
import { useDark } from "./dark";
import { Flat } from "./flat";
import { PartList } from "./part-list";
import { aboutPart } from "./parts";
import type { Plane } from "./plane";
import { PlaneControls } from "./plane-controls";
import { say } from "./say";
import { clampCamera, Solid } from "./solid";
import { TwoCuts } from "./two-cuts";

type Picture = "solid" | "flat" | "two" | "cover";
/** Each with the name of its text. */
const PICTURES: { key: Picture; name: string }[] = [
  { key: "solid", name: "saw-solid" },
  { key: "flat", name: "saw-drawing" },
  { key: "two", name: "saw-two-cuts" },
  { key: "cover", name: "saw-cover" },
];

/** The ball sawn open: turn it, cut it anywhere, ask what a part is. */
export function Saw() {
  const store = useStore();
  const { plane, selected } = store.view.value;
  const [picture, setPicture] = useState<Picture>("solid");
  const [missing, setMissing] = useState<string | null>(null);
  const [mapped, setMapped] = useState(false);
  const [place, setPlace] = useState<Vec3 | null>(null);
  const [camera, setCamera] = useState<Camera>(() => facingCamera(plane?.normal ?? [1, 0, 0]));
  const [said, setSaid] = useState("");
  // A part in hand on the Bench is told of here, but only one asked for here stands out.
  const [asked, setAsked] = useState<number | null>(null);
  const highlighted = asked === selected ? asked : null;
  const takePicture = useRef<(() => Promise<Blob | null>) | null>(null);

  function pick(part: number | null) {
    setAsked(part);
    store.look({ selected: part });
    setSaid(
      part === null ? say("saw-no-part") : aboutPart(store.derived.peek(), part, store.view.peek().units),
    );
  }

  const solid = picture === "solid" && missing === null;
  const globe = picture === "cover" && missing === null && !mapped;
  const onReady = (picture: () => Promise<Blob | null>) => {
    takePicture.current = picture;
  };
  return (
    <div class="saw">
      <div class="saw-columns" data-picture={picture}>
        <div class="saw-picture">
          <fieldset class="choices" aria-label={say("saw-picture")}>
            {PICTURES.map(({ key, name }) => (
              <button type="button" key={key} aria-pressed={picture === key} onClick={() => setPicture(key)}>
                {say(name)}
              </button>
            ))}
          </fieldset>
          {missing !== null && picture === "solid" && (
            <Result class="saw-missing" of={missing}>
              {say("saw-flat-instead")}
            </Result>
          )}
          {missing !== null && picture === "cover" && (
            <Result class="saw-missing" of={missing}>
              {say("saw-map-instead")}
            </Result>
          )}
          {picture === "two" ? (
            <TwoCuts highlighted={highlighted} />
          ) : picture === "cover" ? (
            <CoverPicture
              camera={camera}
              onCamera={setCamera}
              onMissing={setMissing}
              onReady={onReady}
              onPlace={setPlace}
              flat={!globe}
            />
          ) : solid ? (
            <Solid
              highlighted={highlighted}
              camera={camera}
              onCamera={setCamera}
              onPick={pick}
              onMissing={setMissing}
              onReady={onReady}
            />
          ) : (
            <FlatPicture highlighted={highlighted} onPick={pick} />
          )}
          {(solid || globe) && <CameraButtons camera={camera} onCamera={setCamera} plane={plane} />}
        </div>
        <div class="saw-tools">
          {picture === "cover" ? (
            <>
              {missing === null && (
                <fieldset class="choices" aria-label={say("saw-show-cover")}>
                  <button type="button" aria-pressed={!mapped} onClick={() => setMapped(false)}>
                    {say("saw-on-ball")}
                  </button>
                  <button type="button" aria-pressed={mapped} onClick={() => setMapped(true)}>
                    {say("saw-as-map")}
                  </button>
                </fieldset>
              )}
              <CoverWords place={place} clickable={globe} onCut={() => setPicture("flat")} />
            </>
          ) : (
            <>
              <p class="saw-about">
                {selected === null
                  ? say(byFinger() ? "saw-click-finger" : "saw-click")
                  : aboutPart(store.derived.value, selected, store.view.value.units)}
              </p>
              <p class="visually-hidden" role="status">
                {said}
              </p>
              {picture !== "two" && (
                <PlaneControls apart={solid} onFace={(next: Plane) => setCamera(facingCamera(next.normal))} />
              )}
              <PartList onPick={pick} />
              {picture !== "two" && <CutWords id="cut-words" />}
            </>
          )}
          <Saves
            solid={solid || globe}
            takePicture={() => takePicture.current?.() ?? Promise.resolve(null)}
          />
        </div>
      </div>
    </div>
  );
}

function FlatPicture({ highlighted, onPick }: { highlighted: number | null; onPick(part: number): void }) {
  const store = useStore();
  const { units, markers, hidden } = store.view.value;
  const [box, size] = useSize<HTMLDivElement>();
  const dark = useDark();
  const section = store.section.value;
  return (
    <div class="flat" ref={box}>
      {section && size && (
        <Flat
          id="cut"
          derived={store.derived.value}
          section={shownOf(section, hidden)}
          units={units}
          {...size}
          dark={dark}
          marked={markers}
          measured={!hidden.includes(0)}
          highlighted={highlighted}
          onPick={onPick}
        />
      )}
      {!section && <p>{say("saw-whole-ball")}</p>}
    </div>
  );
}

/** The cut without the parts taken out of the picture. */
const shownOf = (section: Section, hidden: number[]): Section => ({
  ...section,
  regions: section.regions.filter(({ part }) => !hidden.includes(part)),
});

interface CameraButtonsProps {
  camera: Camera;
  onCamera(camera: Camera): void;
  plane: Plane | null;
}

/** The same as dragging and pinching, by single clicks. */
function CameraButtons({ camera, onCamera, plane }: CameraButtonsProps) {
  const go = (change: Partial<Camera>) => onCamera(clampCamera({ ...camera, ...change }));
  return (
    <fieldset class="choices camera" aria-label={say("saw-turn-and-zoom")}>
      <button
        type="button"
        aria-label={say("saw-turn-left")}
        onClick={() => go({ yaw_deg: camera.yaw_deg + 15 })}
      >
        ←
      </button>
      <button
        type="button"
        aria-label={say("saw-turn-right")}
        onClick={() => go({ yaw_deg: camera.yaw_deg - 15 })}
      >
        →
      </button>
      <button
        type="button"
        aria-label={say("saw-higher")}
        onClick={() => go({ pitch_deg: camera.pitch_deg + 15 })}
      >
        ↑
      </button>
      <button
        type="button"
        aria-label={say("saw-lower")}
        onClick={() => go({ pitch_deg: camera.pitch_deg - 15 })}
      >
        ↓
      </button>
      <button type="button" aria-label={say("saw-zoom-in")} onClick={() => go({ zoom: camera.zoom * 1.25 })}>
        +
      </button>
      <button type="button" aria-label={say("saw-zoom-out")} onClick={() => go({ zoom: camera.zoom / 1.25 })}>
        −
      </button>
      <button type="button" onClick={() => onCamera(facingCamera(plane?.normal ?? [1, 0, 0]))}>
        {say("saw-face-cut")}
      </button>
      <span class="saw-hint">{say(byFinger() ? "saw-drag-finger" : "saw-drag")}</span>
    </fieldset>
  );
}

interface SavesProps {
  solid: boolean;
  takePicture(): Promise<Blob | null>;
}

function Saves({ solid, takePicture }: SavesProps) {
  const store = useStore();
  const { plane } = store.view.value;

  function saveSection() {
    const section = store.section.peek();
    if (!section) return;
    const derived = store.derived.value;
    const sheet = document.createElement("div");
    render(
      <Flat
        id="section"
        derived={derived}
        section={shownOf(section, store.view.value.hidden)}
        units={store.view.value.units}
        width_px={840}
        height_px={680}
        dark={false}
        text_px={14}
        marked={store.view.value.markers}
        measured
      />,
      sheet,
    );
    const drawing = sheet.firstElementChild;
    if (drawing) {
      const text = new XMLSerializer().serializeToString(drawing);
      download(fileName(derived.file.name, "section.svg"), `${text}\n`, "image/svg+xml");
    }
    render(null, sheet);
  }

  async function savePicture() {
    const picture = await takePicture();
    if (picture) download(fileName(store.derived.value.file.name, "png"), picture, "image/png");
  }

  return (
    <div class="choices saves">
      <button type="button" disabled={!plane} onClick={saveSection}>
        {say("saw-save-section")}
      </button>
      <button type="button" disabled={!solid} onClick={() => void savePicture()}>
        {say("saw-save-picture")}
      </button>
    </div>
  );
}
