import { useMemo } from "preact/hooks";
import { SectionDrawing } from "../../parts/section-drawing";
import { useStore } from "../../store";
import type { BallFile, Section, WasmModule } from "../../types";
import { TEMPLATES } from "./templates";

/** Six balls to start from, each shown sawn through the middle. */
export function TemplateRow() {
  const store = useStore();
  const current = store.doc.value.ball;
  const sections = useMemo(() => TEMPLATES.map((ball) => middleSection(store.wasm, ball)), [store.wasm]);
  return (
    <fieldset class="templates">
      <legend>Start from</legend>
      {TEMPLATES.map((ball, at) => {
        const section = sections[at];
        return (
          <button
            type="button"
            key={ball.name}
            class="template"
            aria-label={`Start from ${ball.name}`}
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

/** The words of "No. 3, three-piece" after its number. */
function shortName({ name }: BallFile): string {
  return name.replace(/^No\. \d+, /, "");
}

function middleSection(wasm: WasmModule, file: BallFile): Section {
  const ball = new wasm.Ball(file);
  const section = ball.section([1, 0, 0], 0);
  ball.free();
  return section;
}
