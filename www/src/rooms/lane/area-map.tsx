import { worded } from "../../locale/worded";
import { useStore } from "../../store";
import type { Area, Hand, Kind } from "../../types";
import { number, reading } from "../../units";
import { say } from "./area-say";

const WIDTH = 246;
const HEIGHT = 183;
const ORDER: Kind[] = ["lost", "light", "high", "shallow", "steep", "pocket"];

/** Where each throw of the map comes in: boards as the bowler sees them, launch angle upwards. */
export function AreaMap({ area, hand }: { area: Area; hand: Hand }) {
  const { units } = useStore().view.value;
  const { boards, launch_angles_deg, kinds } = area.map;
  const [columns, rows] = [boards.length, launch_angles_deg.length];
  const [w, h] = [WIDTH / columns, HEIGHT / rows];
  // A right-hander's board 1 lies on the right.
  const left = (at: number) => (hand === "right" ? columns - 1 - at : at) * w;
  const board = (at: number) => number(boards[at] ?? 0, "board", units);
  const angle = (at: number) => reading(launch_angles_deg[at] ?? 0, "angle", units);
  const [atLeft, atRight] = hand === "right" ? [columns - 1, 0] : [0, columns - 1];
  return (
    <figure class="area-figure">
      <svg
        class="area-map"
        viewBox={`-44 -6 ${WIDTH + 52} ${HEIGHT + 40}`}
        role="img"
        aria-labelledby="area-map-title area-map-desc"
      >
        <title id="area-map-title">{say("area-map")}</title>
        <desc id="area-map-desc">{worded(area.sentence)}</desc>
        <defs class="area-pattern">
          <pattern id="area-dots" width="6" height="6" patternUnits="userSpaceOnUse">
            <circle cx="1.5" cy="1.5" r="0.9" />
          </pattern>
          <pattern id="area-lines" width="6" height="6" patternUnits="userSpaceOnUse">
            <path d="M0 6L6 0" />
          </pattern>
          <pattern id="area-flat" width="4" height="4" patternUnits="userSpaceOnUse">
            <path d="M0 2H4" />
          </pattern>
          <pattern id="area-steep" width="4" height="4" patternUnits="userSpaceOnUse">
            <path d="M2 0V4" />
          </pattern>
        </defs>
        {ORDER.map((kind) => (
          <path
            key={kind}
            class={`area-${kind}`}
            d={kinds.map((row, at) => runs(row, kind, (n) => left(n), w, (rows - 1 - at) * h, h)).join("")}
          />
        ))}
        <path class="chart-axis" d={`M0 0V${HEIGHT}H${WIDTH}`} />
        <g class="area-here">
          <circle cx={WIDTH / 2} cy={HEIGHT / 2} r="6" />
          <path d={`M${WIDTH / 2 - 10} ${HEIGHT / 2}h20m-10 -10v20`} />
        </g>
        <text x="0" y={HEIGHT + 14}>
          {say("area-map-board", { board: board(atLeft) })}
        </text>
        <text x={WIDTH} y={HEIGHT + 14} text-anchor="end">
          {board(atRight)}
        </text>
        <text x={WIDTH / 2} y={HEIGHT + 29} text-anchor="middle">
          {say("area-map-boards")}
        </text>
        <text x="-4" y="9" text-anchor="end">
          {angle(rows - 1)}
        </text>
        <text x="-4" y={HEIGHT} text-anchor="end">
          {angle(0)}
        </text>
        <text x="-4" y={HEIGHT / 2 + 4} text-anchor="end">
          {angle((rows - 1) / 2)}
        </text>
      </svg>
      <figcaption>{say("area-map-says")}</figcaption>
    </figure>
  );
}

/** The cells of one kind in a row, neighbours joined. */
function runs(
  row: Kind[],
  kind: Kind,
  left: (at: number) => number,
  w: number,
  top: number,
  h: number,
): string {
  let path = "";
  for (let at = 0; at < row.length; at += 1) {
    if (row[at] !== kind) continue;
    let end = at;
    while (row[end + 1] === kind) end += 1;
    const x = Math.min(left(at), left(end));
    path += `M${x.toFixed(2)} ${top.toFixed(2)}h${((end - at + 1) * w).toFixed(2)}v${h.toFixed(2)}h${(-(end - at + 1) * w).toFixed(2)}z`;
    at = end;
  }
  return path;
}
