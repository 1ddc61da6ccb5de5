import { useMemo } from "preact/hooks";
import { LazyFold } from "../../../parts/lazy-fold";
import { Why } from "../../../why/why";
import { say } from "../say";
import { type Compared, docOf } from "./throws";

/** Why each of the others differs from the first, worked out for the one that is opened. */
export function Reasons({ all }: { all: Compared[] }) {
  const [first, ...others] = all;
  if (!first) return null;
  return (
    <>
      {others.map((other) => (
        <LazyFold
          key={other.item.id}
          summary={say("compare-why", { other: other.letter, first: first.letter })}
        >
          <Reason first={first} other={other} />
        </LazyFold>
      ))}
    </>
  );
}

function Reason({ first, other }: { first: Compared; other: Compared }) {
  // The same docs as long as they say the same, so that nothing is worked out twice.
  const a = useMemo(() => docOf(first.thrown), [JSON.stringify(first.thrown)]);
  const b = useMemo(() => docOf(other.thrown), [JSON.stringify(other.thrown)]);
  return <Why a={a} b={b} labels={[first.letter, other.letter]} />;
}
