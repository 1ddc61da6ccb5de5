import { NumberField } from "../../parts/field";
import type { Problem } from "../../types";
import { problemAt } from "./edits";

type Point = [number, number];

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
      <Outline profile={profile} />
      <table class="profile-table">
        <caption class="visually-hidden">Points of the outline, in order</caption>
        <thead>
          <tr>
            <th scope="col">Point</th>
            <th scope="col">Out from axis</th>
            <th scope="col">Up</th>
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
      {whole && <p class="says says-wrong">{whole.message}</p>}
    </div>
  );
}

/** The outline with its mirror image, points numbered as in the table. */
function Outline({ profile }: { profile: Point[] }) {
  const radius = Math.max(0.1, ...profile.map(([r]) => Math.abs(r)));
  const heights = profile.map(([, z]) => z);
  const low = Math.min(...heights);
  const size = Math.max(2 * radius, Math.max(...heights) - low, 0.2);
  const scale = 120 / size;
  const x = (r: number) => 80 + r * scale;
  const y = (z: number) => 20 + (size - (z - low)) * scale;
  const path = (side: 1 | -1) => `M${profile.map(([r, z]) => `${x(side * r)} ${y(z)}`).join("L")}Z`;
  return (
    <svg
      class="profile-outline"
      viewBox="0 0 160 160"
      role="img"
      aria-label="The outline and its mirror image"
    >
      <path class="outline-mirror" d={path(-1)} />
      <path class="outline-solid" d={path(1)} />
      <path class="outline-axis" d="M80 4V156" />
      {profile.map(([r, z], at) => (
        <g key={at}>
          <circle class="outline-point" cx={x(r)} cy={y(z)} r="2.5" />
          <text class="outline-number" x={x(r) + 5} y={y(z) + 3}>
            {at + 1}
          </text>
        </g>
      ))}
    </svg>
  );
}

function round(value: number): number {
  return Number(value.toFixed(3));
}
