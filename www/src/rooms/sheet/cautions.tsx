import { useMemo } from "preact/hooks";
import type { Units } from "../../store";
import { sentenceIn } from "../../units";
import type { Told } from "./told";

/** Limits passed, and what a page cannot decide. */
export function Cautions({ balls, units }: { balls: Told[]; units: Units }) {
  return (
    <footer class="sheet-cautions">
      <p>
        Against the published limits:{" "}
        {balls.map((told, n) => (
          <Outside key={n} told={told} letter={balls.length > 1 ? ("AB"[n] ?? "") : null} />
        ))}
      </p>
      {balls.flatMap(({ drilled }, n) =>
        (drilled?.conflicts ?? []).map(({ message }) => (
          <p key={`${n} ${sentenceIn(message, units)}`}>
            <b>Caution{balls.length > 1 && `, ${"AB"[n]}`}:</b> {sentenceIn(message, units)}
          </p>
        )),
      )}
      <p>
        Leave drilling to a qualified pro shop: cutting throws hot, sharp chips and dust. Lift with care: a
        ball weighs up to {units === "trade" ? "16\u00a0lb" : "7.3\u00a0kg"}. The rules in force decide what
        may be used in play, and a laboratory measures what is not computed here. All numbers are computed by
        Pithball from this recipe and release; a real ball and lane differ. * Common practice, no source.
      </p>
    </footer>
  );
}

/** Which published limits the ball does not keep to. */
function Outside({ told, letter }: { told: Told; letter: string | null }) {
  const { rules } = useMemo(() => told.ball.check(), [told.ball]);
  const named = (wanted: string) => rules.filter(({ verdict }) => verdict === wanted).map(({ name }) => name);
  const outside = named("fail");
  const close = named("too_close");
  return (
    <span>
      {letter && `${letter} `}
      {named("pass").length} within
      {outside.length > 0 && `, outside: ${outside.join(", ")}`}
      {close.length > 0 && `, too close to tell: ${close.join(", ")}`}.{" "}
    </span>
  );
}
