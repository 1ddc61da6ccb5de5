import { useRef, useState } from "preact/hooks";

export type Point = [number, number];

/** Inches to drawing units, kept still while a point is dragged. */
interface Frame {
  scale: number;
  low: number;
  size: number;
}

const AXIS_X = 80;
const TOP_Y = 20;
const EXTENT = 120;

function frameOf(profile: Point[]): Frame {
  const radius = Math.max(0.1, ...profile.map(([r]) => Math.abs(r)));
  const heights = profile.map(([, z]) => z);
  const low = Math.min(...heights);
  const size = Math.max(2 * radius, Math.max(...heights) - low, 0.2);
  return { scale: EXTENT / size, low, size };
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
  const y = (z: number) => TOP_Y + (frame.size - (z - frame.low)) * frame.scale;
  const path = (side: 1 | -1) => `M${profile.map(([r, z]) => `${x(side * r)} ${y(z)}`).join("L")}Z`;

  function move(event: PointerEvent) {
    const matrix = svg.current?.getScreenCTM();
    if (!held || !matrix) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const r = (at.x - AXIS_X) / frame.scale;
    const z = frame.low + frame.size - (at.y - TOP_Y) / frame.scale;
    onMove(held.at, [Math.max(0, hundredth(r)), hundredth(z)]);
  }

  return (
    <svg
      class="profile-outline"
      viewBox="0 0 160 160"
      role="img"
      aria-label="The outline and its mirror image"
      ref={svg}
      onPointerMove={move}
      onPointerUp={() => setHeld(null)}
      onPointerCancel={() => setHeld(null)}
    >
      <path class="outline-mirror" d={path(-1)} />
      <path class="outline-solid" d={path(1)} />
      <path class="outline-axis" d="M80 4V156" />
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
