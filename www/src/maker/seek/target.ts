// What is wanted: what the ball on the bench has, with what the reader changed.

import { useMemo } from "preact/hooks";
import { useStore } from "../../store";
import type { BallFile, Control, Problem, TargetFile, Weighed } from "../../types";
import { usualRange } from "../controls";
import { useMistake } from "../mistake";

export type Want = TargetFile["want"];
export type Free = TargetFile["free"];
export const USUAL_STARTS = 24;

export interface Target {
  file: TargetFile;
  controls: Control[];
  problem: Problem | null;
  own: boolean;
  change(change: Partial<TargetFile>): void;
  usual(): void;
}

export function useTarget(): Target {
  const store = useStore();
  const { base, file: ball, undrilled } = store.derived.value;
  const own = store.view.value.target;
  const controls = useMemo(() => base.controls(), [base]);
  const file = useMemo(() => {
    const usual: TargetFile = {
      format: "pithball.target/1",
      want: usualWant(undrilled),
      free: usualFree(ball, controls),
    };
    const asked = { ...usual, ...own };
    // Another ball may not have them.
    const known = asked.free.filter(({ control }) => controls.some((one) => one.control === control));
    return { ...asked, free: known.length === 0 && asked.free.length > 0 ? usual.free : known };
  }, [ball, undrilled, controls, own]);
  const problem = useMistake(() => store.wasm.read_target(file), file);
  return {
    file,
    controls,
    problem,
    own: own !== null,
    change: (change) => store.look({ target: { ...store.view.value.target, ...change } }),
    usual: () => store.look({ target: null }),
  };
}

function usualWant({ weight_lb, rg_in, differential_in }: Weighed): Want {
  return {
    weight_lb: Number(weight_lb.toFixed(2)),
    rg_in: Number(rg_in.low.toFixed(3)),
    differential_in: Number(differential_in.toFixed(3)),
  };
}

/** The density of every piece, and the sizes of the last one that is turned on a lathe, or of the last. */
function usualFree(ball: BallFile, controls: Control[]): Free {
  const lathe = ball.pieces.findLastIndex(({ shape }) => shape.kind === "lathe");
  const core = lathe < 0 ? ball.pieces.length - 1 : lathe;
  const sizes = [`pieces[${core}].shape.wide`, `pieces[${core}].shape.tall`, `pieces[${core}].scale`];
  const own = sizes.filter((size) => controls.some(({ control }) => control === size)).slice(0, 2);
  return controls
    .filter(({ control }) => /^pieces\[\d+\]\.density_g_cc$/.test(control) || own.includes(control))
    .map((control) => {
      const [from, to] = usualRange(ball, control);
      return { control: control.control, from, to };
    });
}
