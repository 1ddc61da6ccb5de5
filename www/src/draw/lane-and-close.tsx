import type { ComponentChildren } from "preact";
import { digits } from "../units";
import { place } from "./lane-frame";
import { say } from "./say";
import { CloseDrawing, closePlace, ShotsDrawing, type ShotsProps } from "./shots";
import { useSize } from "./use-size";

interface LaneAndCloseProps extends Omit<ShotsProps, "id" | "place"> {
  /** Begins the names of both drawings and of their places, which are as high as their classes say. */
  id: string;
  /** The place of the drawing from above and its size, as `useSize` gives them. */
  above: ReturnType<typeof useSize<HTMLDivElement>>;
  /** What the closer drawing shows, in words. */
  closeDesc: string;
  /** After by how much the drawings are too wide. */
  more?: string;
  /** Between the drawings and what is said of them. */
  children?: ComponentChildren;
}

/** Shots on one lane from above, and its last third closer. */
export function LaneAndClose({ id, above, closeDesc, more = "", children, ...shown }: LaneAndCloseProps) {
  const [box, size] = above;
  const [closeBox, closeSize] = useSize<HTMLDivElement>();
  const lane = size && size.width_px > 0 && place(size.width_px, size.height_px);
  const close =
    closeSize && closeSize.width_px > 0 && closePlace(shown.shots, closeSize.width_px, closeSize.height_px);
  return (
    <>
      <div class={`${id}-lane`} ref={box}>
        {lane && <ShotsDrawing {...shown} id={`${id}-lane`} place={lane} />}
      </div>
      <div class={`${id}-close`} ref={closeBox}>
        {close && (
          <CloseDrawing
            {...shown}
            id={`${id}-close`}
            place={close}
            title={say("draw-close")}
            desc={closeDesc}
          />
        )}
      </div>
      {children}
      <p class="fine-print">
        {lane &&
          say(close ? "draw-stretch-both" : "draw-stretch", {
            wide: digits(lane.stretch, 1),
            close: close ? digits(close.stretch, 1) : "",
          })}
        {more}
      </p>
    </>
  );
}
