// The link as a code to scan: a QR Code of one path, drawn in vectors.
import { encode } from "uqr";

/** More characters than this make a code too fine to scan off paper. */
export const MOST_CODE_CHARS = 1200;
/** Up to this many the code is printed small. */
export const SMALL_CODE_CHARS = 320;
/** Clear modules round a code, as its standard asks. */
const QUIET = 4;

export function Code({ text }: { text: string }) {
  const { data, size } = encode(text, { ecc: "L", boostEcc: true, border: 0 });
  const whole = size + 2 * QUIET;
  return (
    <svg
      class="sheet-code"
      viewBox={`${-QUIET} ${-QUIET} ${whole} ${whole}`}
      aria-hidden="true"
      shape-rendering="crispEdges"
    >
      <rect x={-QUIET} y={-QUIET} width={whole} height={whole} fill="#fff" />
      <path d={data.map(stretches).join("")} fill="#000" />
    </svg>
  );
}

/** The dark stretches of one row. */
function stretches(row: boolean[], y: number): string {
  let path = "";
  for (let from = 0; from < row.length; from++) {
    if (!row[from]) continue;
    let to = from;
    while (row[to + 1]) to++;
    path += `M${from} ${y}h${to + 1 - from}v1H${from}z`;
    from = to;
  }
  return path;
}
