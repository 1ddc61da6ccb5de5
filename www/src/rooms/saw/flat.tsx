// The section drawing of a plane, with what it shows as its title and text.
import { SectionDrawing } from "../../draw/section";
import { remPx } from "../../draw/use-size";
import { add, scale } from "../../draw/vectors";
import { paintOf } from "../../palette";
import { shorten } from "../../shorten";
import type { Units } from "../../store";
import type { Section } from "../../types";
import { reading } from "../../units";
import { narrowestWords } from "./narrowest";
import { marksOf, partNames, type Shown } from "./parts";
import { planeWords } from "./plane";
import { say } from "./say";
import { areas } from "./walk";

export interface FlatProps {
  id: string;
  derived: Shown;
  section: Section;
  units: Units;
  width_px: number;
  height_px: number;
  dark: boolean;
  /** The sheet it is drawn on, where it is not the page's. */
  paper?: string;
  /** Height of the text, where it is not the page's. */
  text_px?: number;
  marked: boolean;
  /** Whether the narrowest cover is measured. */
  measured?: boolean;
  highlighted?: number | null;
  onPick?: (part: number) => void;
}

/** Letters of a name in a drawing, where it is not shorter still, and in what is said of it. */
const MOST_NAME = 60;

export function Flat(props: FlatProps) {
  const { derived, section, units } = props;
  const { made } = derived;
  const radius_in = made.diameter_in / 2;
  const names = partNames(derived).map((name) => shorten(name, MOST_NAME));
  const cut = planeWords(section, (inches) => reading(inches, "size", units));
  const parts = areas(section).map(({ part }) => names[part]);
  const narrowest = props.measured ? section.narrowest : null;
  return (
    <SectionDrawing
      id={props.id}
      section={section}
      radius_in={radius_in}
      names={names}
      partAt={([u, v]) =>
        derived.ball.part_at(
          add(scale(section.normal, section.depth_in), add(scale(section.u, u), scale(section.v, v))),
        )
      }
      paint={names.map((_, part) => paintOf(part))}
      marks={props.marked ? marksOf(derived, section, radius_in) : []}
      narrowest={
        narrowest && {
          core: narrowest.core_in,
          surface: narrowest.surface_in,
          text: reading(narrowest.thickness_in, "cover", units),
        }
      }
      width_px={props.width_px}
      height_px={props.height_px}
      paper={props.paper ?? (props.dark ? "#d6d1c6" : "#fffdf8")}
      title={say("saw-section-title", { ball: shorten(made.name, MOST_NAME), plane: cut })}
      desc={[
        say("saw-section-shows", { parts: parts.join(", ") }),
        ...(narrowest ? [narrowestWords(narrowest, section, units)] : []),
      ].join(" ")}
      text_px={props.text_px ?? remPx(0.8125)}
      metric={units === "metric"}
      highlighted={props.highlighted ?? null}
      onPick={props.onPick}
    />
  );
}
