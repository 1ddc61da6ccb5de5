import { useLayoutEffect, useRef, useState } from "preact/hooks";

export interface Size {
  width_px: number;
  height_px: number;
}

/** The content size of an element, kept as it changes; null until it is known. */
export function useSize<T extends HTMLElement>() {
  const ref = useRef<T>(null);
  const [size, setSize] = useState<Size | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => {
      const width_px = Math.floor(element.clientWidth);
      const height_px = Math.floor(element.clientHeight);
      setSize((old) =>
        old?.width_px === width_px && old.height_px === height_px ? old : { width_px, height_px },
      );
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, size] as const;
}

let pen: CanvasRenderingContext2D | null = null;

/** How wide a text of this height is, in the page's typeface. */
export function textPx(text: string, height_px: number, weight = 400): number {
  pen ??= document.createElement("canvas").getContext("2d");
  if (!pen) return text.length * height_px * 0.5;
  pen.font = `${weight} ${height_px}px "Source Sans 3", system-ui, sans-serif`;
  return pen.measureText(text).width;
}

/** Pixels for a length in the page's own measure, which grows on large screens. */
export const remPx = (rem: number): number =>
  rem * Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
