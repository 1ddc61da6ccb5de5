import { useId } from "preact/hooks";
import { DENSITY_LIMIT_G_CC } from "../../limits";
import { offered } from "../../locale/names";
import { Say } from "../../locale/say";
import { useHint } from "../../maker/levers/use-levers";
import { NumberField } from "../../parts/field";
import { Fixed } from "../../parts/fixed";
import { Aside, Term } from "../../parts/term";
import type { Problem } from "../../types";
import { digits, written } from "../../units";
import { MATERIALS, type Material } from "./materials";
import { say } from "./say";

interface Made {
  material?: string;
  density_g_cc: number;
}

interface MaterialProps {
  /** Where the part stands in the file. */
  place: string;
  made: Made;
  problem: Problem | null;
  /** Something worth knowing about the piece as a whole. */
  caution: string | null;
  onChange(change: Made, key: string): void;
}

/** What a part is made of: a material to start from, and the density that counts. */
export function MaterialFields({ place, made, problem, caution, onChange }: MaterialProps) {
  const id = useId();
  const { density_g_cc, material } = made;
  const known = MATERIALS.find(({ name }) => name === material);
  const [low, high] = known?.density_g_cc ?? [0, Number.POSITIVE_INFINITY];
  return (
    <Fixed place={`ball.${place}.density_g_cc`}>
      <label class="line" for={id}>
        <span class="field-label">{say("bench-material")}</span>
        <select
          id={id}
          value={known?.name ?? ""}
          onChange={(event) => {
            const next = MATERIALS.find(({ name }) => name === event.currentTarget.value);
            if (next) {
              const [from, to] = next.density_g_cc;
              onChange({ material: next.name, density_g_cc: Number(((from + to) / 2).toFixed(3)) }, "");
            } else {
              onChange({ material: undefined, density_g_cc }, "");
            }
          }}
        >
          <option value="">{say("bench-own-mix")}</option>
          {MATERIALS.map(({ name }) => (
            <option key={name} value={name}>
              {offered("material", name)}
            </option>
          ))}
        </select>
      </label>
      <NumberField
        label={<Term word="density">{say("bench-density")}</Term>}
        hint={useHint(`${place}.density_g_cc`)}
        value={density_g_cc}
        quantity="density"
        min={0.1}
        max={4.5}
        step={0.01}
        problem={problem}
        caution={
          caution ??
          (density_g_cc > DENSITY_LIMIT_G_CC
            ? say("bench-too-dense", { limit: digits(DENSITY_LIMIT_G_CC, 2) })
            : known && (density_g_cc < low || density_g_cc > high)
              ? say("bench-density-unusual", { material: offered("material", known.name) })
              : null)
        }
        onChange={(value) => onChange({ material, density_g_cc: value }, "density_g_cc")}
      />
      {known && (
        <p class="hint">
          <Say
            id={low === high ? "bench-usually" : "bench-usually-between"}
            args={{ density: written(String(low)), low: written(String(low)), high: written(String(high)) }}
            parts={{
              source: (text) => (
                <Aside
                  text={say("bench-source", {
                    source: capital(sourceOf(known)),
                    uses: offered("use", known.for),
                  })}
                >
                  {text}
                </Aside>
              ),
            }}
          />
        </p>
      )}
    </Fixed>
  );
}

/** Where a material's figures come from, its marks in words. */
function sourceOf({ source }: Material): string {
  return offered("source", source)
    .replace(/^[SC], /, "")
    .replace("(S, ", "(")
    .replace(/\bM\b/, say("bench-from-memory"));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
