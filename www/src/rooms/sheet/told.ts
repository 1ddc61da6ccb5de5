// What the sheet tells of a ball, all of it from the module.

import { useEffect, useMemo, useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { isProblem, orProblem } from "../../problem";
import { type Shot, useStore, wholeShot } from "../../store";
import type { NotDone } from "../../task";
import type {
  BallFile,
  Cover,
  Drilled,
  Ladder,
  Problem,
  Roll,
  Section,
  WasmBall,
  WasmModule,
  Weighed,
  WhyTold,
} from "../../types";
import { useWhenStill } from "../../when-still";
import type { JobList, JobName } from "../../worker";

/** A ball, and the shot of the sheet rolled with it. */
export interface Told {
  file: BallFile;
  /** With the holes and inserts that the shot drills. */
  made: BallFile;
  /** As thrown: drilled where the shot says so. */
  ball: WasmBall;
  /** Before drilling; `ball` itself where nothing is drilled. */
  base: WasmBall;
  weighed: Weighed;
  drilled: Drilled | null;
  roll: Roll;
}

/** The ball on the bench, or the last good one. */
export function useBench(): Told & { shot: Shot } {
  const { ball, base, file, made, weighed, drilled, roll, shot } = useStore().derived.value;
  return { ball, base, file, made, weighed, drilled, roll, shot };
}

/** Another ball with the same shot; a problem where it cannot be made or rolled. */
export function useOther(file: BallFile | null, shot: Shot): Told | Problem | null {
  const { wasm } = useStore();
  const told = useMemo(() => file && orProblem(() => tell(wasm, file, shot)), [wasm, file, shot]);
  useEffect(() => {
    const made = told && !isProblem(told) ? told : null;
    return () => made && free(made);
  }, [told]);
  return told;
}

function tell(wasm: WasmModule, file: BallFile, shot: Shot): Told {
  const base = new wasm.Ball(file);
  let ball = base;
  try {
    if (shot.drilling) ball = base.drilled(shot);
    return {
      file,
      made: ball.file(),
      ball,
      base,
      weighed: ball.weigh(),
      drilled: ball.drilling(),
      roll: ball.roll(shot),
    };
  } catch (error) {
    free({ ball, base });
    throw error;
  }
}

function free({ ball, base }: Pick<Told, "ball" | "base">): void {
  ball.free();
  if (base !== ball) base.free();
}

/** The cut through the pin, seen from the side. */
export function useMiddle(ball: WasmBall): Section {
  return useMemo(() => ball.section([1, 0, 0], 0), [ball]);
}

/** How much cover there is: before drilling, since what lines a hole is no core. */
export function useCover({ base }: Told): Cover {
  return useMemo(() => base.cover(), [base]);
}

/** The same shot with a ball of one material, as large and about as heavy: what is left without a core. */
export function usePlain(told: Told, shot: Shot): Told | null {
  const { wasm } = useStore();
  return useMemo(() => {
    const plain = orProblem(() => tell(wasm, plainBall(told), shot));
    if (isProblem(plain)) return null;
    free(plain);
    return plain;
  }, [wasm, told.ball, shot]);
}

function plainBall({ file, weighed }: Told): BallFile {
  const volume_cc = weighed.pieces.reduce((sum, piece) => sum + piece.volume_cc, 0);
  return {
    ...file,
    cover: { ...file.cover, density_g_cc: (weighed.mass_kg * 1000) / volume_cc },
    pieces: [],
  };
}

/** A ball at other weights by the density of one part; null until it is worked out, or where it cannot be. */
export function useLadder(file: BallFile | null, part: number): Asked<Ladder> {
  const asked = useMemo(
    () => (file === null ? null : { ball: file, parts: [part], by_size: false }),
    [file, part],
  );
  return useAsked("ladder", asked);
}

/** Why the second differs from the first, with the same revs. */
export function useWhy(a: Told, b: Told, shot: Shot, labels: [string, string]): Asked<WhyTold> {
  const asked = useMemo(
    () => ({
      a: wholeShot({ ball: a.file, shot }),
      b: wholeShot({ ball: b.file, shot }),
      same_effort: false,
      labels,
    }),
    [a.file, b.file, shot, ...labels],
  );
  return useAsked("why", asked);
}

/** What a worker is asked for: null until it answers, or where it cannot be had. */
export interface Asked<T> {
  found: T | null;
  pending: boolean;
  broken: NotDone | null;
}

function useAsked<Name extends JobName>(
  job: Name,
  asked: Parameters<JobList[Name]>[0] | null,
): Asked<ReturnType<JobList[Name]>> {
  const jobs = useJobs();
  const [answer, setAnswer] = useState<{ asked: unknown; found: ReturnType<JobList[Name]> | null } | null>(
    null,
  );
  const { broken } = useWhenStill(
    0,
    async (signal) => {
      if (asked !== null) setAnswer({ asked, found: await jobs.run(job, asked, signal) });
    },
    () => setAnswer({ asked, found: null }),
    [asked],
  );
  const known = answer?.asked === asked;
  return {
    found: known ? answer.found : null,
    pending: asked !== null && !known && broken === null,
    broken,
  };
}
