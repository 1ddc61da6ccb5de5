/** Size of a histogram's drawing, and of the line of numbers at its foot. */
export const WIDTH = 300;
export const HEIGHT = 84;
export const FOOT = 18;

interface BarsProps {
  bins: { from: number; to: number; count: number }[];
  /** Where a value stands across. */
  x(value: number): number;
}

/** A histogram's bars on their line: the tallest nearly as high as the drawing. */
export function Bars({ bins, x }: BarsProps) {
  const tallest = Math.max(1, ...bins.map(({ count }) => count));
  return (
    <>
      {bins.map((bin) => {
        const tall = (bin.count / tallest) * (HEIGHT - 6);
        return (
          <rect
            key={bin.from}
            class="histogram-bar"
            x={x(bin.from)}
            y={HEIGHT - tall}
            width={Math.max(0.5, x(bin.to) - x(bin.from) - 0.5)}
            height={tall}
          />
        );
      })}
      <path class="histogram-axis" d={`M0 ${HEIGHT}H${WIDTH}`} />
    </>
  );
}
