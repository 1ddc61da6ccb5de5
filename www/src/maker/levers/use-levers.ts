// What every control of the ball on the bench moves, worked out beside the page
// once the bench has come to rest; the hints beside the sliders follow from it.

import { createContext } from "preact";
import { useContext, useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { useStore } from "../../store";
import type { NotDone } from "../../task";
import type { BallFile, Figures, Lever } from "../../types";
import { useWhenStill } from "../../when-still";
import { isFactor, placeOfPart } from "../controls";
import { listed, say } from "../say";

const STILL_MS = 400;
/** Controls in one task. */
const TASK = 4;

export interface Levered {
  /** The ball they are of. */
  file: BallFile;
  levers: Lever[];
}

interface WorkedOut {
  /** null until they are worked out; those of the ball before stay while the next are. */
  found: Levered | null;
  broken: NotDone | null;
}

export function useWorkedOut(): WorkedOut {
  const store = useStore();
  const jobs = useJobs();
  const { file, base } = store.derived.value;
  const [found, setFound] = useState<Levered | null>(null);
  const { broken } = useWhenStill(
    STILL_MS,
    async (signal) => {
      const count = base.controls().length;
      const tasks = Array.from({ length: Math.ceil(count / TASK) }, (_, n) => ({
        ball: file,
        from: n * TASK,
        to: Math.min(count, (n + 1) * TASK),
      }));
      setFound({ file, levers: (await jobs.all("levers", tasks, { signal })).flat() });
    },
    store.fail,
    [file, base],
  );
  return { found, broken };
}

export const LeversContext = createContext<WorkedOut>({ found: null, broken: null });

/** By how much a lever moves a number, whichever way; 0 where that is not beyond the error. */
export function moves({ raised, lowered }: Lever, figure: keyof Figures): number {
  const sizes = [raised, lowered].map((moved) => {
    const size = Math.abs(moved?.by[figure] ?? 0);
    return moved && size > Math.abs(moved.error[figure]) ? size : 0;
  });
  return Math.max(...sizes);
}

/** The one that moves the number most first; those that do not move it are left out. */
export function ranked(levers: Lever[], figure: keyof Figures): Lever[] {
  return levers
    .filter((lever) => moves(lever, figure) > 0)
    .toSorted((a, b) => moves(b, figure) - moves(a, figure));
}

const HINTED: [keyof Figures, string][] = [
  ["low_rg_in", "levers-hint-rg"],
  ["differential_in", "levers-hint-differential"],
  ["weight_lb", "levers-hint-weight"],
];

/** Factors on a whole piece have no slider. */
const hasSlider = ({ control }: Lever) => !isFactor(control);

/** What the slider at a place of the ball file moves more than the others do. */
export function useHint(place: string): string | null {
  const { found } = useContext(LeversContext);
  if (!found) return null;
  const sliders = found.levers.filter(hasSlider);
  const first = (levers: Lever[]) =>
    HINTED.flatMap(([figure, name]) => (ranked(levers, figure)[0]?.control === place ? [name] : []));
  const most = first(sliders);
  const part = placeOfPart(place);
  const own = part === "" ? [] : first(sliders.filter(({ control }) => placeOfPart(control) === part));
  const here = own.filter((name) => !most.includes(name));
  const says = {
    most: listed(most.map((name) => say(name))),
    here: listed(here.map((name) => say(name))),
  };
  if (most.length > 0) return say(here.length > 0 ? "levers-hint-both" : "levers-hint-most", says);
  return here.length > 0 ? say("levers-hint-here", says) : null;
}
