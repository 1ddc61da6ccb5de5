// How friction follows from the film for this cover, beside a cover of which
// nothing is said.
import { useMemo } from "preact/hooks";
import { line } from "../../../draw/lane-frame";
import { type Args, Say } from "../../../locale/say";
import { CoverSurface } from "../../../parts/cover-surface";
import { NumberField } from "../../../parts/field";
import { Fold } from "../../../parts/fold";
import { SayTerms } from "../../../parts/say-terms";
import { Aside } from "../../../parts/term";
import { isProblem } from "../../../problem";
import { type Store, useStore } from "../../../store";
import type { Coverstock, Friction, FrictionCurve, OiledLane, Roll } from "../../../types";
import { digits, measure, number, reading, written } from "../../../units";
import { say } from "./say";

/** Used where the file leaves them out; see the module's law. */
const USUAL: Required<Friction> = { mu_oil: 0.04, mu_dry: 0.2, film_half_um: 0.3 };

/** The texts of each number: what it is, what this cover makes of it, and its source. */
const ROWS = [
  {
    key: "mu_oil",
    name: "oil-mu-oil",
    made: "oil-with-cover",
    source: "oil-mu-oil-source",
    quantity: "friction",
    min: 0,
    max: 0.15,
    step: 0.005,
  },
  {
    key: "mu_dry",
    name: "oil-mu-dry",
    made: "oil-with-cover",
    source: "oil-mu-dry-source",
    quantity: "friction",
    min: 0.05,
    max: 0.32,
    step: 0.005,
  },
  {
    key: "film_half_um",
    name: "oil-film-half",
    made: "oil-with-cover-choice",
    source: "oil-film-half-source",
    quantity: "film",
    min: 0.05,
    max: 2,
    step: 0.05,
  },
] as const;

const PLAIN: Coverstock = { density_g_cc: 1 };

/** A curve, or null while what it is made from is wrong. */
function curveOf({ wasm }: Store, cover: Coverstock, friction: Friction | null): FrictionCurve | null {
  try {
    return wasm.friction_curve(cover, friction);
  } catch (error) {
    if (isProblem(error)) return null;
    throw error;
  }
}

/** Friction on an oiled lane: its numbers, what the cover makes of them, and the curve. */
export function FrictionFold({ lane }: { lane: OiledLane }) {
  const store = useStore();
  const { file, roll, shot, shotProblem } = store.derived.value;
  const { units } = store.view.value;
  const good = "zones" in shot.lane ? lane : shot.lane;
  const friction = good.friction ?? null;
  const own = useMemo(() => curveOf(store, file.cover, friction), [file.cover, friction]);
  const plain = useMemo(() => curveOf(store, PLAIN, friction), [friction]);
  const wrong = shotProblem?.place.startsWith("lane.friction") ? shotProblem : null;
  if (!own || !plain) return null;

  function set(key: keyof Friction, value: number) {
    store.editShot((old) => {
      if ("zones" in old.lane) return old;
      return { ...old, lane: { ...old.lane, friction: { ...old.lane.friction, [key]: value } } };
    }, `friction.${key}`);
  }

  return (
    <Fold
      summary={say("oil-friction", { oil: digits(own.mu_oil, 3), dry: digits(own.mu_dry, 3) })}
      wrong={wrong !== null}
    >
      <div class="friction-fold">
        <Curve own={own} plain={plain} roll={roll} />
        <details>
          <summary>{say("oil-friction-table")}</summary>
          <CurveTable own={own} plain={plain} />
        </details>
        <CoverSurface />
        <fieldset>
          <legend>
            <SayTerms id="oil-plain-cover" terms={{ friction: "friction" }} />
          </legend>
          {ROWS.map(({ key, name, made, source, ...row }) => (
            <div key={key}>
              <NumberField
                {...row}
                label={say(name)}
                value={lane.friction?.[key] ?? USUAL[key]}
                problem={wrong?.place === `lane.friction.${key}` ? wrong : null}
                onChange={(value) => set(key, value)}
              />
              <p class="hint">
                <Say
                  id={made}
                  args={{ value: number(own[key], row.quantity, units) }}
                  parts={{ source: (words) => <Aside text={say(source)}>{words}</Aside> }}
                />
              </p>
            </div>
          ))}
          <p class="hint">
            <Aside text={say("oil-form-says")}>{say("oil-form")}</Aside>
          </p>
          {lane.friction && (
            <button
              type="button"
              onClick={() =>
                store.editShot((old) => ("zones" in old.lane ? old : { ...old, lane: { oil: old.lane.oil } }))
              }
            >
              {say("oil-usual")}
            </button>
          )}
        </fieldset>
      </div>
    </Fold>
  );
}

const WIDTH = 280;
const HEIGHT = 120;
const TICKS_UM = [0, 0.5, 1, 2, 4, 8];

interface CurveProps {
  own: FrictionCurve;
  plain: FrictionCurve;
  roll: Roll;
}

function Curve({ own, plain, roll }: CurveProps) {
  const { units } = useStore().view.value;
  const to_um = own.points.at(-1)?.film_um ?? 1;
  const top = Math.max(own.mu_dry, plain.mu_dry, 0.01) * 1.1;
  // Thin films matter most: the axis goes with the root of the film.
  const x = (film_um: number) => Math.sqrt(Math.min(1, film_um / to_um)) * WIDTH;
  const y = (mu: number) => HEIGHT - (mu / top) * HEIGHT;
  const path = ({ points }: FrictionCurve) =>
    line(points.map(({ film_um, mu }): [number, number] => [x(film_um), y(mu)]));
  const met = roll.samples.flatMap(({ film_um }) => (film_um === null ? [] : [film_um]));
  const range: Args =
    met.length > 0
      ? {
          met: "yes",
          most: reading(Math.max(...met), "film", units),
          least: reading(Math.min(...met), "film", units),
        }
      : { met: "no" };
  const mu = (value: number) => number(value, "friction", units);
  return (
    <>
      <svg
        class="chart friction-curve"
        viewBox={`-26 -10 ${WIDTH + 46} ${HEIGHT + 42}`}
        role="img"
        aria-labelledby="friction-title friction-desc"
      >
        <title id="friction-title">{say("oil-curve")}</title>
        <desc id="friction-desc">
          {say("oil-curve-says", {
            ...range,
            dry: mu(own.mu_dry),
            oil: mu(own.mu_oil),
            "plain-dry": mu(plain.mu_dry),
            "plain-oil": mu(plain.mu_oil),
          })}
        </desc>
        <path class="chart-axis" d={`M0 0V${HEIGHT}H${WIDTH}`} />
        {[0, 0.1, 0.2, 0.3]
          .filter((mu) => mu <= top)
          .map((mu) => (
            <text key={mu} x="-4" y={y(mu) + 4} text-anchor="end">
              {digits(mu, 1)}
            </text>
          ))}
        {TICKS_UM.map((film_um) => (
          <text key={film_um} x={x(film_um)} y={HEIGHT + 24} text-anchor="middle">
            {film_um === to_um ? `${written(String(film_um))}\u00a0µm` : written(String(film_um))}
          </text>
        ))}
        <path
          class="friction-met"
          d={met.map((film_um) => `M${x(film_um).toFixed(1)} ${HEIGHT}v8`).join("")}
        />
        <path class="friction-plain" d={path(plain)} />
        <path class="chart-line" d={path(own)} />
      </svg>
      <p class="hint">{say("oil-curve-hint", range)}</p>
    </>
  );
}

/** Points of the curve that a table shows: about 0, 0.1, 0.5, 1, 2, 4 and 8 µm. */
const SHOWN = [0, 9, 20, 28, 40, 57, 80];

function CurveTable({ own, plain }: { own: FrictionCurve; plain: FrictionCurve }) {
  const { units } = useStore().view.value;
  return (
    <table class="friction-table">
      <caption>
        <SayTerms id="oil-curve-table" terms={{ friction: "friction", film: "film" }} />
      </caption>
      <thead>
        <tr>
          <th scope="col">{say("oil-curve-film", { unit: measure("film", units).unit })}</th>
          <th scope="col">{say("oil-curve-own")}</th>
          <th scope="col">{say("oil-curve-plain")}</th>
        </tr>
      </thead>
      <tbody>
        {SHOWN.map((at) => {
          const [a, b] = [own.points[at], plain.points[at]];
          return a && b ? (
            <tr key={at}>
              <th scope="row">{number(a.film_um, "film", units)}</th>
              <td>{number(a.mu, "friction", units)}</td>
              <td>{number(b.mu, "friction", units)}</td>
            </tr>
          ) : null;
        })}
      </tbody>
    </table>
  );
}
