import { useMemo } from "preact/hooks";
import { offeredBall } from "../../locale/names";
import { SectionDrawing } from "../../parts/section-drawing";
import { useStore } from "../../store";
import type { BallFile, Section, WasmModule } from "../../types";
import { say } from "./say";
import { TEMPLATES } from "./templates";

/** Six balls to start from, each shown sawn through the middle. */
export function TemplateRow() {
  const store = useStore();
  const current = store.doc.value.ball;
  const sections = useMemo(() => TEMPLATES.map((ball) => middleSection(store.wasm, ball)), [store.wasm]);
  return (
    <fieldset class="templates">
      <legend>{say("bench-start")}</legend>
      {TEMPLATES.map((file, at) => {
        const ball = offeredBall(file);
        const section = sections[at];
        return (
          <button
            type="button"
            key={file.name}
            class="template"
            aria-label={say("bench-start-from", { ball: ball.name })}
            aria-current={ball.name === current.name ? "true" : undefined}
            title={ball.note ?? ball.name}
            onClick={() => {
              store.replace({ ball });
              store.look({ selected: ball.pieces.length });
            }}
          >
            {section && <SectionDrawing section={section} diameter_in={ball.diameter_in} />}
            <span>{shortName(ball)}</span>
          </button>
        );
      })}
    </fieldset>
  );
}

/** The words of "No. 3, three-piece" after its number, in whatever language. */
function shortName({ name }: BallFile): string {
  return name.replace(/^[^,]*\d, /, "");
}

function middleSection(wasm: WasmModule, file: BallFile): Section {
  const ball = new wasm.Ball(file);
  const section = ball.section([1, 0, 0], 0);
  ball.free();
  return section;
}
