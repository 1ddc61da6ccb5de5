import { NumberField } from "../../parts/field";
import { Said } from "../../parts/said";
import { Term } from "../../parts/term";
import type { Problem } from "../../types";
import { problemAt } from "./edits";
import { Outline, type Point } from "./outline";

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
        <caption class="visually-hidden">Points of the outline, in order</caption>
        <thead>
          <tr>
            <th scope="col">Point</th>
            <th scope="col">
              <Term word="piece">Out from axis</Term>
            </th>
            <th scope="col">
              <Term word="piece">Up</Term>
            </th>
            <th scope="col">
              <span class="visually-hidden">Add or remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {profile.map(([r, z], at) => {
            const wrong = problemAt(problem, `${place}[${at}]`);
            return (
              <tr key={at}>
                <th scope="row">{at + 1}</th>
                <td>
                  <NumberField
                    bare
                    label={<span class="visually-hidden">Point {at + 1}, out from the axis</span>}
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
                    label={<span class="visually-hidden">Point {at + 1}, up</span>}
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
                    aria-label={`Add a point after point ${at + 1}`}
                    onClick={() => insertAfter(at)}
                  >
                    +
                  </button>
                  <button
                    type="button"
                    aria-label={`Remove point ${at + 1}`}
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
