import { useMemo } from "preact/hooks";
import { Say } from "../../locale/say";
import { worded } from "../../locale/worded";
import type { Units } from "../../store";
import { count, digits, sentenceIn } from "../../units";
import { say } from "./say";
import type { Told } from "./told";

/** Limits passed, and what a page cannot decide. */
export function Cautions({ balls, units }: { balls: Told[]; units: Units }) {
  return (
    <footer class="sheet-cautions">
      <p>
        {say("sheet-limits")}{" "}
        {balls.map((told, n) => (
          <Outside key={n} told={told} letter={balls.length > 1 ? ("AB"[n] ?? "") : null} />
        ))}
      </p>
      {balls.flatMap(({ drilled }, n) =>
        (drilled?.conflicts ?? []).map(({ message }) => (
          <p key={`${n} ${sentenceIn(message, units)}`}>
            <Say
              id={balls.length > 1 ? "sheet-caution-of" : "sheet-caution"}
              args={{ letter: "AB"[n] ?? "", what: sentenceIn(message, units) }}
              parts={{ b: (inner) => <b>{inner}</b> }}
            />
          </p>
        )),
      )}
      <p>
        {say("sheet-care", {
          most: units === "trade" ? "16\u00a0lb" : `${digits(7.3, 1)}\u00a0kg`,
        })}
      </p>
    </footer>
  );
}

/** Which published limits the ball does not keep to. */
function Outside({ told, letter }: { told: Told; letter: string | null }) {
  const { rules } = useMemo(() => told.ball.check(), [told.ball]);
  const named = (wanted: string) =>
    rules.filter(({ verdict }) => verdict === wanted).map(({ name }) => worded(name));
  const outside = named("fail");
  const close = named("too_close");
  const limits = say(
    outside.length === 0
      ? close.length === 0
        ? "sheet-limits-within"
        : "sheet-limits-close"
      : close.length === 0
        ? "sheet-limits-outside"
        : "sheet-limits-both",
    { within: count(named("pass").length), outside: outside.join(", "), close: close.join(", ") },
  );
  return <span>{letter ? say("sheet-limits-of", { letter, limits }) : limits} </span>;
}
