import { Column } from "../../parts/column";
import { NumberField } from "../../parts/field";
import { Said } from "../../parts/said";
import type { Problem } from "../../types";
import { count } from "../../units";
import { problemAt } from "./edits";
import { Outline, type Point } from "./outline";
import { say } from "./say";

interface ProfileProps {
  profile: Point[];
  place: string;
  problem: Problem | null;
  onChange(profile: Point[], key: string): void;
}

/** The outline of a piece turned on a lathe: a drawing and its table of points. */
export function Profile({ profile, place, problem, onChange }: ProfileProps) {
  const put = (at: number, point: Point, key: string) =>
    onChange(
      profile.map((old, i) => (i === at ? point : old)),
      key,
    );
  const whole = problem?.place === place ? problem : null;

  function insertAfter(at: number) {
    const here = profile[at];
    const next = profile[(at + 1) % profile.length];
    if (!here || !next) return;
    const middle: Point = [round((here[0] + next[0]) / 2), round((here[1] + next[1]) / 2)];
    onChange(profile.toSpliced(at + 1, 0, middle), "");
  }

  return (
    <div class="profile">
      <Outline profile={profile} onMove={(at, point) => put(at, point, `${at}`)} />
      <table class="profile-table">
        <caption class="visually-hidden">{say("bench-points")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("bench-point")}</th>
            <Column word="piece" name={say("bench-out")} />
            <Column word="piece" name={say("bench-up")} />
            <th scope="col">
              <span class="visually-hidden">{say("bench-add-or-remove")}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {profile.map(([r, z], at) => {
            const wrong = problemAt(problem, `${place}[${at}]`);
            const point = count(at + 1);
            return (
              <tr key={at}>
                <th scope="row">{point}</th>
                <td>
                  <NumberField
                    bare
                    label={<span class="visually-hidden">{say("bench-point-out", { point })}</span>}
                    value={r}
                    quantity="size"
                    min={0}
                    max={5}
                    step={0.05}
                    problem={wrong}
                    onChange={(value) => put(at, [value, z], `${at}.r`)}
                  />
                </td>
                <td>
                  <NumberField
                    bare
                    label={<span class="visually-hidden">{say("bench-point-up", { point })}</span>}
                    value={z}
                    quantity="size"
                    min={-5}
                    max={5}
                    step={0.05}
                    onChange={(value) => put(at, [r, value], `${at}.z`)}
                  />
                </td>
                <td class="profile-buttons">
                  <button
                    type="button"
                    aria-label={say("bench-point-add", { point })}
                    onClick={() => insertAfter(at)}
                  >
                    +
                  </button>
                  <button
                    type="button"
                    aria-label={say("bench-point-remove", { point })}
                    disabled={profile.length <= 3}
                    onClick={() => onChange(profile.toSpliced(at, 1), "")}
                  >
                    −
                  </button>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {whole && (
        <p class="says says-wrong">
          <Said problem={whole} />
        </p>
      )}
    </div>
  );
}

function round(value: number): number {
  return Number(value.toFixed(3));
}
