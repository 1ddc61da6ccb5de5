import { useRef, useState } from "preact/hooks";
import { say } from "./say";

export type Point = [number, number];

/** Inches to drawing units, kept still while a point is dragged. */
interface Frame {
  scale: number;
  high: number;
  /** Height of the drawing. */
  tall: number;
}

const AXIS_X = 80;
const MARGIN = 20;
const WIDEST = 120;
const TALLEST = 130;

function frameOf(profile: Point[]): Frame {
  const radius = Math.max(0.1, ...profile.map(([r]) => Math.abs(r)));
  const heights = profile.map(([, z]) => z);
  const high = Math.max(...heights);
  const span = Math.max(high - Math.min(...heights), 0.1);
  const scale = Math.min(WIDEST / (2 * radius), TALLEST / span);
  return { scale, high, tall: span * scale + 2 * MARGIN };
}

interface OutlineProps {
  profile: Point[];
  onMove(at: number, point: Point): void;
}

/** The outline with its mirror image, points numbered as in the table; they can be dragged. */
export function Outline({ profile, onMove }: OutlineProps) {
  const svg = useRef<SVGSVGElement>(null);
  const [held, setHeld] = useState<{ at: number; frame: Frame } | null>(null);
  const frame = held?.frame ?? frameOf(profile);
  const x = (r: number) => AXIS_X + r * frame.scale;
  const y = (z: number) => MARGIN + (frame.high - z) * frame.scale;
  const path = (side: 1 | -1) => `M${profile.map(([r, z]) => `${x(side * r)} ${y(z)}`).join("L")}Z`;

  function move(event: PointerEvent) {
    const matrix = svg.current?.getScreenCTM();
    if (!held || !matrix) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const r = (at.x - AXIS_X) / frame.scale;
    const z = frame.high - (at.y - MARGIN) / frame.scale;
    onMove(held.at, [Math.max(0, hundredth(r)), hundredth(z)]);
  }

  return (
    <svg
      class="profile-outline"
      viewBox={`0 0 160 ${frame.tall}`}
      role="img"
      aria-label={say("bench-outline")}
      ref={svg}
      onPointerMove={move}
      onPointerUp={() => setHeld(null)}
      onPointerCancel={() => setHeld(null)}
    >
      <path class="outline-mirror" d={path(-1)} />
      <path class="outline-solid" d={path(1)} />
      <path class="outline-axis" d={`M${AXIS_X} 4V${frame.tall - 4}`} />
      {profile.map(([r, z], at) => (
        <g
          key={at}
          class="outline-handle"
          onPointerDown={(event) => {
            svg.current?.setPointerCapture(event.pointerId);
            setHeld({ at, frame: frameOf(profile) });
          }}
        >
          <circle class="outline-grip" cx={x(r)} cy={y(z)} r="9" />
          <circle class="outline-point" cx={x(r)} cy={y(z)} r="2.5" />
          <text class="outline-number" x={x(r) + 5} y={y(z) + 3}>
            {at + 1}
          </text>
        </g>
      ))}
    </svg>
  );
}

function hundredth(value: number): number {
  return Number(value.toFixed(2));
}
