// The moment of the shot on show: plays, pauses, steps, and goes where it is put.
import type { RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";

export interface Player {
  /** Seconds after release. */
  t_s: number;
  playing: boolean;
  /** Share of real speed. */
  rate: number;
  play(): void;
  pause(): void;
  go(t_s: number): void;
  setRate(rate: number): void;
}

export const RATES = [1, 0.5, 0.25, 0.1];

const prefersStill = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;

/**
 * Runs the shot once, at half speed, when `stage` first comes into view; with
 * reduced motion it stays at the end with the whole path drawn. A run changed
 * by an edit is shown at the same moment, or at its end where it was at the end.
 */
export function usePlayer(end_s: number, stage: RefObject<Element | null>): Player {
  const [at, setAt] = useState(Number.POSITIVE_INFINITY);
  const [playing, setPlaying] = useState(false);
  const [rate, setRate] = useState(0.5);
  const touched = useRef(false);

  function play() {
    touched.current = true;
    setAt((old) => (old >= end_s ? 0 : old));
    setPlaying(true);
  }

  useEffect(() => {
    const element = stage.current;
    if (!element || prefersStill()) return;
    const seen = new IntersectionObserver((entries) => {
      if (!entries.some((entry) => entry.isIntersecting)) return;
      seen.disconnect();
      if (!touched.current) play();
    });
    seen.observe(element);
    return () => seen.disconnect();
  }, []);

  useEffect(() => {
    if (!playing) return;
    let frame = 0;
    let last = performance.now();
    const tick = (now: number) => {
      const passed = Math.max(0, now - last) / 1000;
      last = now;
      setAt((old) => old + passed * rate);
      frame = requestAnimationFrame(tick);
    };
    frame = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(frame);
  }, [playing, rate]);

  useEffect(() => {
    if (playing && at >= end_s) {
      setPlaying(false);
      setAt(Number.POSITIVE_INFINITY);
    }
  }, [playing, at, end_s]);

  return {
    t_s: Math.min(at, end_s),
    playing,
    rate,
    play,
    pause: () => setPlaying(false),
    go: (t_s) => {
      touched.current = true;
      setPlaying(false);
      setAt(t_s >= end_s ? Number.POSITIVE_INFINITY : Math.max(0, t_s));
    },
    setRate,
  };
}
